"""What nobody would say is not foreseen, or comes late: each is told by the numbers alone, whatever rule foresees it.

Common practice, no source.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Slip, likely_slips
from routines.counting.kinds.names import Kind

FIRST = 3
LEVELS = st.integers(0, 8)


def slips_of(kind: str, start: str, step: str, terms: int, level: int) -> list[Slip]:
    return likely_slips(Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), 4), level)


def whole(start: int, step: int, terms: int = 14) -> Grid:
    return Grid(Count(Kind.WHOLE, Fraction(start), Fraction(step), terms), 5)


def number(slip: Slip) -> int | None:
    said = slip.heard.replace(",", "")
    return int(said) if said.removeprefix("-").isdigit() else None


@given(st.integers(85, 1200), st.integers(0, 2))
def test_the_ten_that_is_not_said_yet_is_no_ten_to_fall_back_into(start: int, level: int) -> None:
    """100 after 109 and 200 after 209 are not among the first, where counting by ones is learned."""
    grid = whole(start, 1)
    for slip in likely_slips(grid, level)[:FIRST]:
        before = int(grid.count.value(slip.n - 1))
        if before % 100 == 9 and before > 100:
            assert number(slip) != before - 9


@given(st.integers(5, 105), LEVELS)
def test_nine_after_ten_keeps_no_ten(start: int, level: int) -> None:
    """Nor does ninety-nine after a hundred: of a place that is emptied none is left to keep, and no smaller one is."""
    heard = {
        (slip.correct, slip.heard)
        for slip in likely_slips(whole(start, -1, min(start, 12)), level)
        if slip.rule == "C01"
    }
    assert heard.isdisjoint({("9", "19"), ("99", "109")})


@given(st.integers(-60, 0), st.integers(1, 25), LEVELS)
def test_counting_up_past_zero_no_count_gets_a_sign_of_its_own_nor_is_said_twice(
    start: int, step: int, level: int
) -> None:
    grid = whole(start, step)
    for slip in likely_slips(grid, level):
        if slip.rule == "N08":
            assert grid.count.value(slip.n - 1) < 0
            assert number(slip) != grid.count.value(slip.n - 1)


@given(st.integers(-200, -1), st.integers(1, 40), LEVELS)
def test_turning_round_below_zero_leads_no_further_than_zero(start: int, step: int, level: int) -> None:
    assert all((number(slip) or 0) <= 0 for slip in likely_slips(whole(start, -step), level) if slip.rule == "N09")


@pytest.mark.parametrize(
    ("kind", "start", "step", "level", "heard", "due"),
    [
        ("decimal", "4.75", "-0.25", 5, "4.75", "3.75"),
        ("money", "$2.00", "-$0.25", 2, "$2.75", "$1.75"),
        ("money", "$12.50", "-$0.75", 5, "$11.25", "$10.25"),
        ("fraction", "3", "-1/4", 3, "3 3/4", "2 3/4"),
        ("length", "2 m", "-30 cm", 4, "2 m 70 cm", "1 m 70 cm"),
    ],
)
def test_the_whole_that_is_left_in_counting_back_is_kept_among_the_first(
    kind: str, start: str, step: str, level: int, heard: str, due: str
) -> None:
    first = [(slip.heard, slip.correct) for slip in slips_of(kind, start, step, 7, level)[:FIRST]]
    assert (heard, due) in first


@pytest.mark.parametrize(
    ("kind", "start", "step", "heard"),
    [
        ("money", "35c", "25c", "95¢"),
        ("length", "75 cm", "25 cm", "85 cm"),
        ("whole", "500", "-20", "490"),
        ("whole", "7", "10", "98"),
        ("mass", "300 g", "25 g", "310 g"),
    ],
)
def test_a_long_jump_gives_way_to_tens_and_a_short_one_to_ones(kind: str, start: str, step: str, heard: str) -> None:
    assert heard in {slip.heard for slip in slips_of(kind, start, step, 12, 2) if slip.rule == "J01"}


@pytest.mark.parametrize(
    ("kind", "start", "step"), [("clock", "1:00", "1 h"), ("length", "1 m 20 cm", "1 m"), ("money", "$3", "$1")]
)
def test_whole_hours_feet_and_dollars_are_counted_as_ones_are(kind: str, start: str, step: str) -> None:
    assert not [slip for slip in slips_of(kind, start, step, 10, 1) if slip.rule == "J01"]


def test_hundreds_are_not_counted_by_tens() -> None:
    assert not [slip for slip in slips_of("whole", "240", "100", 16, 2) if slip.rule == "J01"]


@pytest.mark.parametrize("level", [2, 3, 4])
def test_ten_hundred_is_said_but_not_a_hundred_hundred(level: int) -> None:
    assert not [slip for slip in slips_of("whole", "9,700", "100", 8, level) if "hundred hundred" in slip.heard]
    assert [slip for slip in slips_of("whole", "700", "100", 8, level) if slip.heard == "ten hundred"]


def test_minutes_past_an_hour_are_foreseen_in_hours_too() -> None:
    named = [slip for slip in slips_of("elapsed", "25 min", "25 min", 15, 3) if slip.equal_name]
    assert (named[0].heard, named[0].correct) == ("1 h 15 min", "75 min")


@pytest.mark.parametrize("step", ["7", "6", "-5", "1"])
def test_sixty_and_seventy_are_mixed_up_first_only_where_the_tens_are_new(step: str) -> None:
    def first(level: int) -> set[str]:
        grid = Grid(Count.parse(kind="whole", start="86" if step == "-5" else "48", step=step, terms=14), 5)
        return {slip.rule for slip in likely_slips(grid, audience=Audience(level, "es"))[:1]}

    assert first(3).isdisjoint({"S01", "S08"})
