"""The worked acceptance examples of the engine, as far as they are about what can be seen and for how long."""

from typing import Any

from routines.counting import Claim, Count, Grid, Pattern, check, explain_cells, find_patterns, ideas


def grid(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


def pattern(view: Grid, family: str, **parameters: Any) -> Pattern:
    """The listed pattern with just this claim."""
    claim = Claim(family, **parameters)
    return next(p for p in find_patterns(view) if p.claim == claim)


class TestDownByFiftyFrom1325:
    view = grid("whole", "1,325", "-50", 16, 4)

    def test_each_row_down_is_200_less(self) -> None:
        assert pattern(self.view, "neighbour", direction="down", difference=-200).holds == "always"

    def test_the_endings_25_and_75_alternate_until_minus_25(self) -> None:
        tens = pattern(self.view, "digit", place=1, along="count", blocks=[[2, 7]])
        assert (tens.holds, tens.breaks_at) == ("shown", 28)
        assert self.view.count.text(28) == "-25"
        ones = pattern(self.view, "digit", place=0, along="count", blocks=[[5]])
        assert (ones.holds, ones.breaks_at) == ("always", None)

    def test_both_endings_as_parts_past_a_hundred_go_on_for_ever(self) -> None:
        # -25 is 75 more than -100: the remainders keep alternating where the written endings do not.
        assert pattern(self.view, "remainder", modulus=100, along="count", blocks=[["25", "75"]]).holds == "always"


class TestFeetAndInches:
    def test_each_column_of_four_keeps_its_inches(self) -> None:
        view = grid("length", "1 ft 3 in", "9 in", 12, 4)
        inches = pattern(view, "digit", part="inches", along="column", blocks=[[3], [0], [9], [6]])
        assert inches.holds == "always"

    def test_whole_feet_come_every_fourth_count_in_column_2(self) -> None:
        view = grid("length", "1 ft 3 in", "9 in", 12, 4)
        feet = pattern(view, "landmarks", multiple=12, every=4, first=2, lie="column", lines=[2])
        assert (feet.cells, feet.holds) == ((2, 6, 10), "always")

    def test_rows_of_eight_keep_the_inches_and_rows_of_five_do_not(self) -> None:
        keep = Claim("digit", part="inches", along="column", length=1)
        eight, five = (check(keep, grid("length", "1 ft 3 in", "9 in", 16, length)) for length in (8, 5))
        assert (eight.true, eight.seen, eight.holds) == (True, True, "always")
        assert (five.true, five.breaks_at) == (False, 6)


class TestTwentyMinutesOnAClock:
    view = grid("clock", "10:50", "20 min", 12, 3)

    def test_each_column_keeps_its_minutes(self) -> None:
        minutes = pattern(self.view, "digit", part="minutes", along="column", blocks=[[50], [10], [30]])
        assert minutes.holds == "always"

    def test_it_is_never_on_the_hour(self) -> None:
        assert not check(Claim("landmarks", multiple=60), self.view).true
        never = Claim("remainder", modulus=60, along="count", blocks=[["50", "10", "30"]])
        assert check(never, self.view).holds == "always"

    def test_it_is_back_at_the_start_with_the_37th(self) -> None:
        assert self.view.count.text(37) == self.view.count.text(1) == "10:50"


class TestSixesFrom58:
    view = grid("whole", "58", "6", 20, 5)

    def test_cells_70_100_130_are_tens_in_column_3_every_fifth(self) -> None:
        cells = [n for n in range(1, 21) if self.view.count.text(n) in ("70", "100", "130")]
        explained = explain_cells(self.view, cells)
        assert explained[0].claim == Claim("landmarks", multiple=10, every=5, first=3, lie="column", lines=[3])
        assert explained[0].holds == "always"
        assert len(explained) <= 3

    def test_each_ten_holds_one_two_two_counts(self) -> None:
        assert pattern(self.view, "how-many", multiple=10, block=[1, 2, 2]).holds == "always"


def test_elevens_from_34_raise_both_digits_until_the_seventh() -> None:
    view = grid("whole", "34", "11", 6, 3)
    for place in (0, 1):
        run = pattern(view, "digit-run", place=place, along="count", change=1)
        assert (run.cells, run.breaks_at) == ((1, 2, 3, 4, 5, 6), 7)
    whole = grid("whole", "34", "11", 12, 3)
    lives = {
        idea.claim.get("place"): (idea.seen_at, idea.dies_at)
        for idea in ideas(whole)
        if idea.claim.family == "digit-run" and idea.claim.get("along") == "count"
    }
    assert lives == {0: (3, 7), 1: (3, 7)}


def test_down_by_six_from_14_keeps_ones_digits_from_the_fourth_on() -> None:
    view = grid("whole", "14", "-6", 20, 5)
    keeps = Claim("digit", place=0, along="column", length=1)
    verdict = check(keeps, view)
    assert (verdict.true, verdict.breaks_at, verdict.true_from) == (False, 6, 4)
    assert check(keeps.with_(lines=[4, 5]), view).holds == "always"
