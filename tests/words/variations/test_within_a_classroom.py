"""Next counts stay with what a class of the grade counts, measures and does in a day, and claim nothing empty.

Numbers by grade: Common Core State Standards K.CC.A.1 (to 100), 1.NBT.A.1 (to 120); the rest is common practice.
"""

import re
from fractions import Fraction

import pytest

from routines.counting import Audience, Count, Grid
from routines.counting.outcome import Outcome
from routines.words import SpokenVariation, next_counts
from tests.counting.claims import a_claim


def grid_of(kind: str, start: str, step: str, terms: int = 12, length: int = 4) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


def all_next(grid: Grid, level: int) -> list[SpokenVariation]:
    return [one for outcome in tuple(Outcome) for one in next_counts(grid, outcome, level)]


CUPS = grid_of("capacity", "3/4 cup", "3/4 cup", 20, 5)
METERS = grid_of("length", "1.5 m", "0.25 m", 20, 5)

# The most of each that may come next, in the base unit: 2 gallons, 25 m, 60 ft, 50 lb, 25 kg, 20 L, half a day.
MOST = {"fl oz": 256, "cm": 2500, "in": 720, "oz": 800, "g": 25_000, "mL": 20_000, "min": 720}
MEASURED = [
    CUPS,
    METERS,
    grid_of("capacity", "1/2 cup", "1/4 cup"),
    grid_of("capacity", "2 cups", "3 cups", 8),
    grid_of("capacity", "1 L 700 mL", "150 mL"),
    grid_of("length", "1 ft 6 in", "9 in"),
    grid_of("length", "2 1/2 in", "1/2 in"),
    grid_of("length", "1.2 m", "0.3 m"),
    grid_of("mass", "1/2 lb", "1/4 lb"),
    grid_of("mass", "0.5 kg", "0.25 kg"),
    grid_of("mass", "250 g", "250 g"),
    grid_of("elapsed", "1 h 35 min", "35 min"),
]


class TestMeasures:
    @pytest.mark.parametrize("grid", MEASURED)
    @pytest.mark.parametrize("level", [2, 4, 6])
    def test_no_next_count_goes_past_what_a_class_measures(self, grid: Grid, level: int) -> None:
        for one in all_next(grid, level):
            count = one.grid.count
            assert max(count.value(1), count.value(count.terms)) <= MOST[count.base_unit], one.what

    @pytest.mark.parametrize("grid", [grid for grid in MEASURED if grid.count.kind != "elapsed"])
    def test_no_jump_is_many_times_as_long_as_before(self, grid: Grid) -> None:
        small = abs(grid.count.step)
        for one in all_next(grid, 4):
            assert abs(one.grid.count.step) <= max(8 * small, small + 12), one.what

    def test_parts_of_a_cup_go_round_by_the_cup(self) -> None:
        whats = [one.what for one in all_next(CUPS, 4)]
        assert (
            "The same start, each time a jump of 1 3/4 cups: 1 cup more in each jump. Only the first 10, as far as 16 2/4 cups."
            in whats
        )
        assert "Jumps of 3/8 cup instead of 3/4 cup." in whats
        assert "The same jumps of 3/4 cup, starting at 1 cup." in whats

    def test_decimal_meters_go_round_by_the_meter(self) -> None:
        whats = [one.what for one in all_next(METERS, 4)]
        assert "Jumps of 0.50 m instead of 0.25 m, starting at 1.50 m." in whats
        # A meter more in each jump would lead twice as far as the board went, even in two lines.
        assert not [what for what in whats if "1.25 m" in what]
        assert "Jumps of 0.75 m instead of 0.25 m." in whats

    def test_whole_cups_go_by_a_few_cups_more(self) -> None:
        whats = [one.what for one in next_counts(grid_of("capacity", "2 cups", "2 cups"), "ready-for-more", 4)]
        assert not [what for what in whats if "7 cups" in what]

    def test_what_does_not_fill_a_unit_does_not(self) -> None:
        for grid in MEASURED:
            for one in next_counts(grid, "ready-for-more", 4):
                if found := re.match(r"Jumps of (.+?) do not fit evenly into (.+?), so", one.reason):
                    jump, full = (one.grid.count.read(text) for text in found.groups())
                    assert jump < full
                    assert full % jump != 0


class TestGrades:
    @pytest.mark.parametrize(
        ("start", "step", "terms"), [("1", "1", 20), ("0", "10", 10), ("50", "1", 30), ("5", "5", 20)]
    )
    def test_kindergarten_counts_to_a_hundred(self, start: str, step: str, terms: int) -> None:
        for one in all_next(grid_of("whole", start, step, terms, 5), 0):
            assert one.grid.count.value(one.grid.count.terms) <= 100

    def test_what_a_class_has_counted_past_its_grade_stays_open_to_it(self) -> None:
        past = grid_of("whole", "94", "1", 20, 5)  # to 113
        for level in (0, 1):
            for one in all_next(past, level):
                assert max(one.grid.count.value(1), one.grid.count.value(one.grid.count.terms)) <= 120

    @pytest.mark.parametrize("start", ["9:45 a.m.", "10:50", "8:15 a.m.", "1:30", "2:00 p.m."])
    @pytest.mark.parametrize("step", ["20 min", "25 min", "45 min"])
    def test_a_count_of_the_school_day_ends_before_bedtime(self, start: str, step: str) -> None:
        grid = grid_of("clock", start, step)
        afternoon = start in ("1:30", "2:00 p.m.")
        first = grid.count.value(1) + (720 if start == "1:30" else 0)
        latest = max(Fraction(21 * 60), first + 11 * grid.count.step)
        for one in all_next(grid, 3):
            count = one.grid.count
            begins = count.value(1) + (720 if afternoon and count.value(1) < 420 else 0)
            assert begins + (count.terms - 1) * count.step <= latest, one.what


class TestClaims:
    @pytest.mark.parametrize("level", [0, 1, 2])
    def test_nothing_is_shown_that_is_true_of_every_number(self, level: int) -> None:
        for start, step in (("94", "1"), ("60", "-1"), ("30", "1")):
            for one in all_next(grid_of("whole", start, step, 20, 5), level):
                assert not [claim for claim in one.shows if claim.parameters.get("modulus") == 1]

    def test_nor_what_is_true_of_every_count_in_such_parts(self) -> None:
        for grid, part in ((grid_of("fraction", "7/8", "1/8"), "1/8"), (grid_of("decimal", "2.7", "0.1"), "1/10")):
            for one in all_next(grid, 4):
                assert a_claim("remainder", modulus=part, along="count", blocks=[["0"]]) not in one.shows

    @pytest.mark.parametrize(
        ("kind", "start", "step"),
        [("length", "1 ft 6 in", "9 in"), ("whole", "374", "37"), ("whole", "740", "370"), ("decimal", "0.5", "0.35")],
    )
    def test_only_jumps_that_are_known_by_heart_are_said_to_be(self, kind: str, start: str, step: str) -> None:
        for one in next_counts(grid_of(kind, start, step), "not-yet", 5):
            assert "the class knows" not in one.reason

    def test_those_that_are_known_still_are(self) -> None:
        for start, step in (("58", "6"), ("1,325", "-50"), ("374", "10"), ("70", "25")):
            reasons = [one.reason for one in next_counts(grid_of("whole", start, step), "not-yet", 3)]
            assert [reason for reason in reasons if "the class knows" in reason], step


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("start", "step"), [("9:45 a.m.", "20 min"), ("3:10 p.m.", "-25 min")])
def test_a_sentence_that_ends_in_a_time_has_one_stop(start: str, step: str, language: str) -> None:
    grid = grid_of("clock", start, step)
    for outcome in tuple(Outcome):
        for one in next_counts(grid, outcome, audience=Audience(3, language)):
            assert ".." not in one.what + one.reason + one.ask
            assert " in in " not in one.what + one.reason + one.ask
