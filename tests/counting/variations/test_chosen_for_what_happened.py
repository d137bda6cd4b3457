"""Next counts an experienced coach would propose: for what happened, for the grade. Common practice, no source."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Kind, Style, classify
from routines.counting.outcome import Outcome
from routines.words import SpokenVariation, likely_slips, next_counts
from tests.counting.claims import a_claim


def grid_of(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


def typed(variations: list[SpokenVariation]) -> list[tuple[str, str, int, int]]:
    return [(one.typed_start, one.typed_step, one.grid.terms, one.grid.line_length) for one in variations]


BACK = grid_of("whole", "1,325", "-50", 16, 4)
ONES = grid_of("whole", "4,990", "1", 20, 10)


class TestSlips:
    def test_a_slip_at_a_landmark_is_met_again_at_a_smaller_one(self) -> None:
        found = next_counts(ONES, "not-yet", 4, slips=[11])  # 4,999 to 5,000
        assert typed(found)[:2] == [("4,997", "1", 10, 5), ("997", "1", 10, 5)]
        assert found[1].what == (
            "The same jumps, starting at 997, so that we reach 1,000 and not 5,000, in lines of 5. "
            "Only the first 10, as far as 1,006."
        )
        assert "from 999 to 1,000" in found[1].reason
        assert "999" in found[1].ask

    def test_the_smaller_one_keeps_the_look_of_the_jump(self) -> None:
        tens = grid_of("whole", "374", "10", 16, 4)  # 394 to 404
        smaller = next_counts(tens, "not-yet", 2, slips=[4])[1]
        assert [smaller.grid.count.value(n) for n in range(1, 5)] == [74, 84, 94, 104]

    def test_two_slips_are_both_practised(self) -> None:
        found = next_counts(BACK, "not-yet", 4, slips=[8, 12])
        assert "from 1,025 to 975" in found[0].reason
        assert "from 825 to 775" in found[1].reason

    def test_a_slip_of_writing_is_looked_at_as_writing(self) -> None:
        hundreds = grid_of("whole", "97", "1", 20, 5)
        slip = next(slip for slip in likely_slips(hundreds, 2) if slip.rule == "W18")  # 1001 for 101
        first = next_counts(hundreds, "not-yet", 2, slips=[slip])[0]
        assert first.grid.count.position_of(101) is not None  # type: ignore[arg-type]
        assert "written" in first.reason
        assert "write" in first.ask

    def test_what_classify_heard_may_be_given_as_it_is(self) -> None:
        heard = classify(BACK, 8, "925")
        assert next_counts(BACK, "not-yet", 4, slips=[heard]) == next_counts(BACK, "not-yet", 4, slips=[8])


class TestUnseen:
    def test_without_a_missed_pattern_only_what_is_round_is_worth_a_fold(self) -> None:
        elevens = grid_of("whole", "34", "11", 12, 4)  # in lines of 5 the multiples of 5 would line up
        assert not [one for one in next_counts(elevens, "not-yet", 3) if "lines of" in one.what]
        eighths = grid_of("fraction", "1/8", "1/8", 24, 7)
        assert typed(next_counts(eighths, "not-yet", 4))[0][3] == 8

    def test_a_missed_pattern_is_folded_into_line(self) -> None:
        elevens = grid_of("whole", "34", "11", 12, 4)
        fives = a_claim("landmarks", multiple="5", every=5, first=2, lie="scattered", lines=[])
        assert typed(next_counts(elevens, "not-yet", 3, unseen=[fives]))[0] == ("34", "11", 12, 5)


class TestGrades:
    @given(st.integers(0, 90), st.sampled_from([1, 2, 5, 10, -1, -2]), st.integers(6, 30), st.integers(0, 5))
    def test_no_class_is_led_below_zero_before_it_knows_of_it(
        self, start: int, step: int, terms: int, level: int
    ) -> None:
        if start + step * (terms - 1) < 0:
            return
        grid = Grid(Count(kind="whole", start=start, step=step, terms=terms), min(5, terms))  # type: ignore[arg-type]
        for outcome in tuple(Outcome):
            for one in next_counts(grid, outcome, level):
                assert one.grid.count.value(one.grid.count.terms) >= 0

    @pytest.mark.parametrize(("level", "largest"), [(0, 100), (1, 120), (2, 1200)])
    def test_no_class_is_led_past_the_numbers_of_its_grade(self, level: int, largest: int) -> None:
        for grid in (
            grid_of("whole", "1", "1", 20, 5),
            grid_of("whole", "5", "5", 20, 5),
            grid_of("whole", "2", "2", 20, 5),
        ):
            for outcome in tuple(Outcome):
                for one in next_counts(grid, outcome, level):
                    assert max(one.grid.count.value(1), one.grid.count.value(one.grid.count.terms)) <= largest

    def test_kindergarten_counts_tens_from_a_ten(self) -> None:
        tens = [
            one for one in next_counts(grid_of("whole", "1", "1", 20, 5), "ready-for-more", 0) if one.typed_step == "10"
        ]
        assert typed(tens) == [("10", "10", 10, 5)]
        assert all(
            one.grid.count.start % 10 == 0 for one in next_counts(grid_of("whole", "0", "10", 10, 5), "as-planned", 0)
        )

    def test_thousandths_wait_for_grade_five(self) -> None:
        hundredths = grid_of("decimal", "0.95", "0.05", 16, 4)
        assert "0.005" not in [one.typed_step for one in next_counts(hundredths, "ready-for-more", 4)]
        assert "0.005" in [one.typed_step for one in next_counts(hundredths, "ready-for-more", 5)]

    def test_counting_by_ones_again_from_one_is_for_the_first_grades(self) -> None:
        assert all(one.typed_start != "1" for one in next_counts(ONES, "not-yet", 4))


class TestReadyForMore:
    def test_ones_become_tens_and_small_steps_ten_times_as_long(self) -> None:
        assert ("97", "10", 20, 5) in typed(next_counts(grid_of("whole", "97", "1", 20, 5), "ready-for-more", 2))
        assert "50" in [one.typed_step for one in next_counts(grid_of("whole", "5", "5", 12, 4), "ready-for-more", 3)]

    def test_a_friendly_step_is_made_one_less(self) -> None:
        assert "24" in [one.typed_step for one in next_counts(grid_of("whole", "0", "25", 16, 4), "ready-for-more", 3)]

    def test_what_goes_up_from_below_zero_passes_a_landmark_below_zero(self) -> None:
        first = next_counts(grid_of("whole", "-23", "1", 30, 10), "ready-for-more", 6)[0]
        assert "reaches -100" in first.what

    def test_steps_of_measures_are_amounts_people_use(self) -> None:
        liters = next_counts(grid_of("capacity", "1 L 700 mL", "150 mL", 12, 4), "ready-for-more", 4)
        assert all(one.grid.count.step % 50 == 0 for one in liters)
        hours = next_counts(grid_of("elapsed", "1 h 35 min", "35 min", 12, 4), "as-planned", 4)
        assert all(one.grid.count.start % 5 == 0 for one in hours)


class TestAsPlanned:
    def test_counting_by_ones_goes_on_where_the_board_ended(self) -> None:
        found = next_counts(grid_of("whole", "1", "1", 20, 5), "as-planned", 0)[0]
        assert typed([found])[0][:2] == ("21", "1")
        assert found.what == "The same jumps of 1, going on from 20, where the board ended."

    def test_measures_start_at_a_whole_unit_rather_than_at_a_strange_multiple(self) -> None:
        feet = next_counts(grid_of("length", "1 ft 3 in", "9 in", 12, 4), "not-yet", 4)
        assert feet[0].typed_start == "1 ft"

    def test_the_same_numbers_the_other_way_are_all_of_them_or_none(self) -> None:
        """From midnight to eight, the way back would be cut at six in the morning."""
        night = Grid(Count(Kind.CLOCK, Fraction(0), Fraction(24), 21), 1)
        assert not any("other way" in one.what for one in next_counts(night, "as-planned", 0))
        assert any(
            "other way" in one.what for one in next_counts(grid_of("clock", "8:00", "24 min", 21, 7), "as-planned", 3)
        )


@pytest.mark.parametrize(
    ("kind", "start", "step", "level", "jump"),
    [
        ("whole", "7", "7", 3, "5"),
        ("fraction", "3/8", "3/8", 4, "1/8"),
        ("fraction", "1/4", "1/4", 3, "2/4"),
        ("mass", "6 oz", "6 oz", 4, "8 oz"),
        ("mass", "250 g", "250 g", 3, "500 g"),
        ("elapsed", "25 min", "25 min", 3, "30 min"),
        ("decimal", "0.3", "0.3", 4, "0.5"),
    ],
)
def test_a_jump_that_fits_into_what_is_round_is_easier(kind: str, start: str, step: str, level: int, jump: str) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=16)
    found = next_counts(Grid(count, 4), "not-yet", audience=Audience(level))
    (easier,) = [one for one in found if one.change == "friendlier jump"]
    assert easier.typed_step == easier.typed_start == jump


@pytest.mark.parametrize(
    ("kind", "start", "step", "level"),
    [("mass", "250 g", "250 g", 3), ("capacity", "150 mL", "150 mL", 5), ("length", "75 cm", "25 cm", 2)],
)
def test_amounts_are_not_led_far_past_what_was_weighed(kind: str, start: str, step: str, level: int) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=16)
    for outcome in ("not-yet", "as-planned"):
        for one in next_counts(Grid(count, 4), outcome, audience=Audience(level)):
            assert one.grid.count.value(one.grid.terms) <= 2 * count.value(16)
    further = next_counts(Grid(count, 4), "ready-for-more", audience=Audience(level))
    assert not any(one.change.startswith("landmark") for one in further)


def test_places_a_turn_of_the_clock_apart_are_practised_once() -> None:
    # 00:00 and 12:00 in turns: the short counts at the 2nd and the 6th begin alike.
    day = Grid(Count("clock", Fraction(0), Fraction(13_680), 10, Style(clock=24)), 1)
    whats = [one.what for one in next_counts(day, "not-yet", slips=[2, 6], audience=Audience(0))]
    assert len(set(whats)) == len(whats)
