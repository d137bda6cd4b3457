"""The five worked acceptance examples, whole: what can be seen, for how long, where, what is heard, where to stop."""

from dataclasses import replace
from typing import Any

from routines.counting import Audience, Carried, Count, EqualName, Grid, SkippedAhead, Slip, classify
from routines.words import (
    SpokenPattern,
    check,
    compare_folds,
    explain_cells,
    find_patterns,
    ideas,
    likely_slips,
    locate,
    suggest_stops,
)
from routines.words import classify as spoken
from tests.counting.claims import a_claim


def grid(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


def pattern(view: Grid, family: str, audience: Audience | None = None, **parameters: Any) -> SpokenPattern:
    """The listed pattern with just this claim."""
    claim = a_claim(family, **parameters)
    return next(p for p in find_patterns(view, audience=audience) if p.claim == claim)


class TestDownByFiftyFrom1325:
    """1,325 by -50, 16 counts, rows of 4."""

    view = grid("whole", "1,325", "-50", 16, 4)

    def test_down_a_column_is_200_less(self) -> None:
        assert pattern(self.view, "neighbour", direction="down", difference=-200).holds == "always"

    def test_the_endings_25_and_75_alternate_until_minus_25_where_75_was_due(self) -> None:
        tens = pattern(self.view, "digit", place=1, along="count", blocks=[[2, 7]])
        assert (tens.holds, tens.breaks_at) == ("shown", 28)
        assert self.view.count.text(28) == "-25"
        # What lies below zero is told to classes that know of it.
        knowing = pattern(self.view, "digit", Audience(level=6), place=1, along="count", blocks=[[2, 7]])
        assert "-25" in knowing.because
        assert "-25" not in tens.because
        ones = pattern(self.view, "digit", place=0, along="count", blocks=[[5]])
        assert (ones.holds, ones.breaks_at) == ("always", None)
        # As parts past a hundred they go on: -25 is 75 more than -100.
        assert pattern(self.view, "remainder", modulus=100, along="count", blocks=[["25", "75"]]).holds == "always"

    def test_475_will_come_and_500_will_not(self) -> None:
        yes = locate(self.view, 475)
        assert (yes.appears, yes.n, yes.row, yes.column) == (True, 18, 5, 2)
        no = locate(self.view, "500")
        assert (no.appears, no.before, no.after) == (False, 525, 475)

    def test_there_is_a_stop_just_after_the_seventh(self) -> None:
        assert 7 in [stop.after for stop in suggest_stops(self.view)]

    def test_925_and_then_875_are_one_skip_and_one_carried(self) -> None:
        first = classify(self.view, 8, "925")
        assert isinstance(first, SkippedAhead)
        assert first.by == 1
        assert isinstance(classify(self.view, 9, "875", earlier=[first]), Carried)


class TestNineInchesFrom1Foot3:
    """1 ft 3 in by 9 in, 12 counts, rows of 4."""

    view = grid("length", "1 ft 3 in", "9 in", 12, 4)

    def test_each_column_keeps_its_inches(self) -> None:
        inches = pattern(self.view, "digit", part="inches", along="column", blocks=[[3], [0], [9], [6]])
        assert inches.holds == "always"

    def test_whole_feet_are_2_6_and_10_in_column_2(self) -> None:
        feet = pattern(self.view, "landmarks", multiple=12, every=4, first=2, lie="column", lines=[2])
        assert (feet.cells, feet.holds) == ((2, 6, 10), "always")

    def test_14_feet_will_come_and_12_feet_will_not(self) -> None:
        yes = locate(self.view, "14 ft")
        assert (yes.appears, yes.n) == (True, 18)
        assert not locate(self.view, "12 ft").appears

    def test_1_ft_12_in_is_an_equal_name_and_3_ft_8_in_a_slip_traded_at_ten(self) -> None:
        assert isinstance(classify(self.view, 2, "1 ft 12 in"), EqualName)
        slip = classify(self.view, 4, "3 ft 8 in")
        assert isinstance(slip, Slip)
        assert slip.correct == "3 ft 6 in"
        why = spoken(self.view, 4, "3 ft 8 in").note
        assert "ten" in why or "10" in why
        foreseen = {(s.n, s.heard): s.equal_name for s in likely_slips(self.view, 4)}
        assert foreseen[2, "1 ft 12 in"] is True
        assert foreseen[4, "3 ft 8 in"] is False

    def test_rows_of_8_keep_the_inches_and_rows_of_5_do_not(self) -> None:
        keep = a_claim("digit", part="inches", along="column", length=1)
        for length, kept in ((8, True), (5, False)):
            fold = Grid(self.view.count, length)
            assert check(keep, fold).true is kept
            (report,) = compare_folds(self.view.count, (length,), ("across",))
            assert ("the inches" in [sight.name for sight in report.lines_up]) is kept


class TestTwentyMinutesFrom1050:
    """10:50 by 20 min on a 12-hour clock, 12 counts, rows of 3."""

    view = grid("clock", "10:50", "20 min", 12, 3)

    def test_each_column_keeps_its_minutes(self) -> None:
        minutes = pattern(self.view, "digit", part="minutes", along="column", blocks=[[50], [10], [30]])
        assert minutes.holds == "always"

    def test_it_is_never_on_the_hour(self) -> None:
        assert not check(a_claim("landmarks", multiple=60), self.view).true
        assert check(a_claim("remainder", modulus=60, along="count", blocks=[["50", "10", "30"]]), self.view).holds == (
            "always"
        )
        assert not any(locate(self.view, f"{hour}:00").appears for hour in range(1, 13))

    def test_it_is_back_at_the_start_with_the_37th(self) -> None:
        texts = [self.view.count.text(n) for n in range(2, 38)]
        assert texts.index("10:50") + 2 == 37

    def test_where_times_come(self) -> None:
        soon = locate(self.view, "4:10")
        assert (soon.appears, soon.n) == (True, 17)
        assert not locate(self.view, "4:20").appears
        late = locate(self.view, "9:30")
        assert (late.n, late.day_part) == (33, "night")

    def test_10_70_is_a_slip_and_13_10_an_equal_name(self) -> None:
        assert isinstance(classify(self.view, 2, "10:70"), Slip)
        assert isinstance(classify(self.view, 8, "13:10"), EqualName)


class TestSixesFrom58AndElevensFrom34:
    """58 by 6, 20 counts, rows of 5; and 34 by 11."""

    view = grid("whole", "58", "6", 20, 5)

    def test_cells_70_100_130_are_tens_in_column_3_every_fifth(self) -> None:
        cells = [n for n in range(1, 21) if self.view.count.text(n) in ("70", "100", "130")]
        best = explain_cells(self.view, cells)[0]
        assert best.claim == a_claim("landmarks", multiple=10, every=5, first=3, lie="column", lines=[3])
        assert best.holds == "always"

    def test_counts_in_each_ten_are_one_two_two(self) -> None:
        assert pattern(self.view, "how-many", multiple=10, block=[1, 2, 2]).holds == "always"

    def test_both_digits_go_up_one_until_the_seventh(self) -> None:
        view = grid("whole", "34", "11", 6, 3)
        for place in (0, 1):
            run = pattern(view, "digit-run", place=place, along="count", change=1)
            assert (run.cells, run.breaks_at) == ((1, 2, 3, 4, 5, 6), 7)
        dies = {
            idea.claim.parameters.get("place"): idea.dies_at
            for idea in ideas(grid("whole", "34", "11", 12, 3))
            if idea.claim.family == "digit-run" and idea.claim.parameters.get("along") == "count"
        }
        assert dies == {0: 7, 1: 7}


class TestDownBySixFrom14:
    """14 by -6, rows of 5: "each column keeps its ones digit"."""

    view = grid("whole", "14", "-6", 20, 5)
    keeps = a_claim("digit", place=0, along="column", length=1)

    def test_false_at_the_sixth_true_from_the_fourth_on(self) -> None:
        verdict = check(self.keeps, self.view)
        assert (verdict.true, verdict.breaks_at, verdict.counterexample[-1], verdict.true_from) == (False, 6, 6, 4)

    def test_always_true_of_lines_4_and_5(self) -> None:
        verdict = check(replace(self.keeps, lines=(4, 5)), self.view)
        assert (verdict.true, verdict.holds, verdict.breaks_at) == (True, "always", None)
