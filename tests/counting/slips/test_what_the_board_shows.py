"""Slips are told of what stands on the board and of what the class knows; each claim was once told otherwise."""

import re

import pytest

from routines.counting import Count, EqualName, Grid, Other, Right, Slip, Style, classify
from routines.words import classify as spoken
from routines.words import likely_slips


def grid_of(kind: str, start: str, step: str, terms: int = 12, **style: object) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style)), 4)


def heard(grid: Grid, rule: str, level: int) -> dict[int, str]:
    return {slip.n: slip.heard for slip in likely_slips(grid, level) if slip.rule == rule}


class TestUnlikeParts:
    def test_parts_that_are_alike_on_the_board_are_not_told_to_be_unlike(self) -> None:
        assert not heard(grid_of("fraction", "2 2/8", "1/8"), "F12", 5)
        assert not heard(grid_of("fraction", "4/8", "1/8"), "F12", 5)

    def test_each_in_its_simplest_form_they_are_unlike_and_wholes_are_added_to_wholes(self) -> None:
        eighths = grid_of("fraction", "2 1/4", "1/8", fractions="simplified")  # 2 1/4 2 3/8 2 1/2 2 5/8
        assert heard(eighths, "F12", 5)[2] == "2 2/12"
        assert 3 not in heard(eighths, "F12", 5)  # 2 3/8 and 1/8 are alike

    def test_what_the_board_writes_over_sixths_is_told_by_its_simplest_names(self) -> None:
        slip = next(slip for slip in likely_slips(grid_of("fraction", "1/2", "2/3", 8), 5) if slip.rule == "F12")
        assert (slip.heard, slip.correct) == ("3/5", "1 1/6")
        assert slip.why.startswith("By their simplest names 3/6 and the jump of 4/6 have unlike parts")

    def test_a_whole_has_no_parts_to_be_unlike(self) -> None:
        grid = grid_of("fraction", "2 1/2", "1/3", fractions="simplified")
        wholes = [n for n in range(2, 13) if grid.count.value(n - 1).denominator == 1]
        assert not set(wholes) & set(heard(grid, "F12", 5))


class TestKnownMultiples:
    def test_the_well_known_multiples_do_not_reach_a_thousand(self) -> None:
        assert not heard(grid_of("whole", "997", "3", 20), "W20", 4)
        assert not heard(grid_of("whole", "20", "17"), "W20", 4)

    def test_they_end_at_the_twelfth_multiple(self) -> None:
        assert heard(grid_of("whole", "25", "3"), "W20", 4) == {2: "27", 3: "30", 4: "33", 5: "36"}

    def test_tens_from_a_seven_still_give_way_to_tens(self) -> None:
        assert heard(grid_of("whole", "67", "10"), "W45", 2)[2] == "70"


@pytest.mark.parametrize(("step", "said"), [("-0.15", "taken away"), ("0.15", "added")])
def test_a_place_too_far_is_added_or_taken_away_as_the_count_goes(step: str, said: str) -> None:
    slip = next(slip for slip in likely_slips(grid_of("decimal", "3.0", step), 5) if slip.rule == "D07")
    assert f"are {said} one place too far" in slip.why


class TestMoney:
    def test_three_digits_of_cents_from_off_the_dime_are_told_as_such(self) -> None:
        dimes = grid_of("money", "$1.83", "$0.10")
        assert heard(dimes, "M07", 3) == {3: "$1.103"}
        assert not heard(dimes, "M01", 3)
        told = classify(dimes, 3, "$1.103")
        assert isinstance(told, Slip)
        assert told.rule == "M07"

    @pytest.mark.parametrize("said", ["0.65¢", ".65¢", "0.65c", "0.65 c", "0.65 cents", "0.65 centavos"])
    @pytest.mark.parametrize("start", ["60c", "$0.60"])
    def test_a_point_before_cents_is_the_slip_however_cents_are_written(self, start: str, said: str) -> None:
        told = classify(grid_of("money", start, "5c"), 2, said)
        assert isinstance(told, Slip)
        assert told.rule == "M04"

    @pytest.mark.parametrize("said", ["65¢", "65c", "65 c", "65 cents"])
    def test_cents_are_right_however_they_are_written(self, said: str) -> None:
        assert isinstance(classify(grid_of("money", "60c", "5c"), 2, said), Right)


class TestHowFarOff:
    @pytest.mark.parametrize(
        ("said", "takes", "note"),
        [
            ("75", "difference", "1 too little."),
            ("77", "difference", "1 too much."),
            ("66", "place", "One too few in one place: 10 too little."),
            ("176", "place", "One too many in one place: 100 too much."),
            ("706", "place", "A digit or the jump is one place off: 630 too much."),
        ],
    )
    def test_one_off_is_not_one_place_off(self, said: str, takes: str, note: str) -> None:
        told = spoken(grid_of("whole", "58", "6"), 4, said)
        assert isinstance(told.hearing, Other)
        assert (told.hearing.takes, told.note) == (takes, note)

    def test_a_cent_and_a_hundredth_are_one_off_too(self) -> None:
        for grid, said in ((grid_of("money", "$1.35", "$0.25"), "$1.61"), (grid_of("decimal", "1.35", "0.25"), "1.61")):
            told = classify(grid, 2, said)
            assert isinstance(told, Other)
            assert told.takes == "difference"


class TestOtherForms:
    @pytest.mark.parametrize("said", ["140/2", "70/1", "70.0", "+70.00", "210/3"])
    def test_a_whole_number_has_other_names(self, said: str) -> None:
        assert isinstance(classify(grid_of("whole", "58", "6"), 3, said), EqualName)

    @pytest.mark.parametrize("said", ["141/2", "70/0", "70.5", "70 1/2"])
    def test_what_is_no_whole_number_fits_nothing(self, said: str) -> None:
        told = classify(grid_of("whole", "58", "6"), 3, said)
        assert isinstance(told, Other)
        assert told.difference is None

    @pytest.mark.parametrize(
        ("grid", "n", "said"),
        [
            (grid_of("decimal", "1.9", "0.1"), 3, "2.10"),
            (grid_of("decimal", "1.9", "0.1"), 3, "2.100"),
            (grid_of("decimal", "2.09", "0.01"), 2, "2.1"),
            (grid_of("decimal", "2.09", "0.01"), 2, "2.100"),
        ],
    )
    def test_zeros_at_the_end_change_no_value(self, grid: Grid, n: int, said: str) -> None:
        assert isinstance(classify(grid, n, said), EqualName)

    @pytest.mark.parametrize(("start", "said"), [("2.98", "2.100"), ("1.98", "1.100")])
    def test_a_hundred_hundredths_read_on_are_a_slip(self, start: str, said: str) -> None:
        told = classify(grid_of("decimal", start, "0.01"), 3, said)
        assert isinstance(told, Slip)
        assert (told.rule, told.correct) == ("D03", f"{int(start[0]) + 1}.00")


@pytest.mark.parametrize("said", ["42 cm", "61 cm", "60.96 cm", "0.61 m", "1 km"])
def test_a_measure_of_the_other_system_fits_nothing(said: str) -> None:
    told = classify(grid_of("length", "1 ft 3 in", "9 in"), 2, said)
    assert isinstance(told, Other)
    assert (told.difference, told.takes) == (None, None)
    assert not isinstance(classify(grid_of("mass", "250 g", "250 g"), 2, "8 oz"), EqualName)


def test_no_sentence_about_a_clock_ends_in_two_stops() -> None:
    for start, step in (("9:45 a.m.", "20 min"), ("2:00 p.m.", "-15 min")):
        for language in ("en", "es"):
            grid = grid_of("clock", start, step, language=language)
            for slip in likely_slips(grid, 3):
                assert not re.search(r"\.\.", slip.why + slip.reply), slip
