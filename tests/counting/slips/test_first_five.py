"""The first few slips of a count are those a coach would name first, and no rule comes twice before all have come once.

Which ones a coach names: the heaviest rules of the table for such counts; common practice, no source.
"""

import re
from fractions import Fraction

import pytest

from routines.counting import Count, Grid, Slip, likely_slips
from routines.counting.slips.foreseeing import AREAS, ONE_SLIP
from tests.counting.slips.happenings import happenings_of

FIRST = 5
MANY = 9

# kind, start, step, terms, line length, level; what must be heard among the first five, at which count.
CLASSROOM = [
    ("whole", "1", "1", 20, 10, 0, {(20, "10"), (13, "30")}),  # the ten of nineteen is kept, thirteen as thirty
    ("whole", "0", "10", 11, 5, 0, {(11, "tenty"), (4, "13")}),
    ("whole", "88", "1", 24, 6, 1, {(3, "eighty-ten"), (13, "ninety-ten"), (13, "90")}),
    ("whole", "72", "-1", 16, 4, 1, {(4, "79"), (3, "60")}),
    ("whole", "374", "10", 16, 4, 2, {(4, "304")}),
    ("whole", "97", "1", 20, 10, 2, {(5, "200"), (4, "90")}),
    ("whole", "830", "100", 12, 4, 3, {(3, "1,300")}),
    ("whole", "0", "25", 16, 4, 3, {(6, "150")}),
    ("whole", "58", "6", 20, 5, 3, {(8, "101"), (8, "106")}),
    ("whole", "14", "-6", 20, 5, 6, {(4, "-6"), (4, "4")}),
    ("whole", "-23", "1", 20, 10, 6, {(4, "-22"), (5, "-29")}),
    ("fraction", "1/8", "1/8", 200, 8, 4, {(8, "8/16"), (8, "8/8"), (9, "1/8")}),
    ("fraction", "2/3", "1/3", 12, 3, 3, {(3, "1/3"), (2, "3/6")}),
    ("fraction", "3 1/5", "-2/5", 8, 4, 5, {(5, "1"), (2, "3")}),
    ("decimal", "2.7", "0.1", 16, 4, 4, {(4, "2.10"), (5, "4.0")}),
    ("decimal", "5.97", "0.01", 20, 5, 4, {(4, "5.100")}),
    ("money", "$2.85", "5c", 12, 4, 2, {(4, "$2.100"), (5, "$3.5")}),
    ("clock", "10:50", "20 min", 12, 3, 3, {(2, "10:70"), (2, "10:10")}),
    ("clock", "9:30", "5 min", 12, 6, 2, {(7, "9:60"), (8, "10:5")}),
    ("length", "1 ft 3 in", "9 in", 12, 4, 4, {(2, "1 ft 12 in"), (2, "2 ft 2 in")}),
    ("mass", "2 lb 6 oz", "5 oz", 12, 4, 4, {(3, "2 lb 16 oz"), (3, "3 lb 6 oz")}),
    ("elapsed", "1 h 35 min", "35 min", 12, 4, 4, {(2, "1 h 70 min"), (2, "1 h 10 min")}),
]


def grid_of(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


@pytest.mark.parametrize(("kind", "start", "step", "terms", "length", "level", "heard"), CLASSROOM)
def test_what_a_coach_would_name_is_among_the_first_five(
    kind: str, start: str, step: str, terms: int, length: int, level: int, heard: set[tuple[int, str]]
) -> None:
    slips = likely_slips(grid_of(kind, start, step, terms, length), level)[:FIRST]
    assert {(slip.n, slip.heard) for slip in slips} >= heard


def test_both_slips_of_the_new_ten_are_foreseen_in_kindergarten() -> None:
    slips = likely_slips(grid_of("whole", "27", "1", 12, 4), 0)
    assert [(slip.n, slip.heard) for slip in slips[:2]] == [(4, "twenty-ten"), (4, "20")]


def test_a_count_by_tens_from_seven_foresees_what_is_said_at_the_hundred() -> None:
    slips = likely_slips(grid_of("whole", "7", "10", 15, 5), 2)
    assert {slip.heard for slip in slips if slip.correct == "107"} >= {"98", "100", "200", "1007"}


def test_nineteen_heard_as_ninety_comes_after_all_that_is_likely() -> None:
    slips = likely_slips(grid_of("whole", "1", "1", 30, 10), 0)
    weights = {rule.id: rule.weight for area in AREAS for rule in area.rules}
    at = next(i for i, slip in enumerate(slips) if slip.heard == "91")
    assert weights[slips[at].rule] == 0
    assert {slip.rule for slip in slips if weights[slip.rule]} <= {slip.rule for slip in slips[:at]}


@pytest.mark.parametrize("level", range(9))
@pytest.mark.parametrize("step", ["1", "10", "25", "-1", "-10", "6", "100"])
@pytest.mark.parametrize("start", ["7", "88", "190", "795", "1980"])
def test_a_jump_of_many_counts_left_out_never_comes_before_a_digit_left_as_it_was(
    start: str, step: str, level: int
) -> None:
    grid = grid_of("whole", start, step, 24, 6)
    slips = likely_slips(grid, level)
    left_out = [i for i, slip in enumerate(slips) if _left_out(grid, slip) >= MANY]
    crossed = [i for i, slip in enumerate(slips) if slip.rule in ("C01", "C02", "C03")]
    assert not left_out or not crossed or min(crossed) < min(left_out)


def _left_out(grid: Grid, slip: Slip) -> int:
    """How many counts are passed over by what is heard; 0 where it is no later count, or one written with other digits."""
    said = slip.heard.replace(",", "")
    if slip.of_writing or "digits swapped" in happenings_of(slip.rule) or not re.fullmatch(r"-?\d+", said):
        return 0
    jumps = (int(said) - grid.count.value(slip.n)) / grid.count.step
    return int(jumps) if jumps.denominator == 1 and grid.count.text_of(Fraction(said)) == slip.heard else 0


@pytest.mark.parametrize(("kind", "start", "step", "terms", "length", "level", "heard"), CLASSROOM)
def test_no_rule_comes_twice_before_all_have_come_once(
    kind: str, start: str, step: str, terms: int, length: int, level: int, heard: set[tuple[int, str]]
) -> None:
    grid = grid_of(kind, start, step, terms, length)
    slips = likely_slips(grid, level)
    rules = [ONE_SLIP.get(slip.rule, slip.rule) for slip in slips]  # one slip under two names is one
    several = len(set(rules))
    assert set(rules[:several]) == set(rules)
