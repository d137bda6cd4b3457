"""The first few slips of a count are those a coach would name first, and no rule comes twice before all have come once.

Which ones a coach names: the heaviest rules of the table for such counts; common practice, no source.
"""

import pytest

from routines.counting import Count, Grid, likely_slips
from routines.counting.slips.foreseeing import rules_for

FIRST = 5

# kind, start, step, terms, line length, level; what must be heard among the first five, at which count.
CLASSROOM = [
    ("whole", "1", "1", 20, 10, 0, {(20, "91"), (13, "30")}),  # nineteen as ninety, thirteen as thirty
    ("whole", "0", "10", 11, 5, 0, {(11, "tenty"), (4, "13")}),
    ("whole", "88", "1", 24, 6, 1, {(3, "eighty-ten"), (13, "ninety-ten"), (14, "200")}),
    ("whole", "72", "-1", 16, 4, 1, {(4, "79"), (3, "60")}),
    ("whole", "374", "10", 16, 4, 2, {(4, "304")}),
    ("whole", "97", "1", 20, 10, 2, {(5, "200"), (14, "200")}),
    ("whole", "830", "100", 12, 4, 3, {(3, "1,300")}),
    ("whole", "0", "25", 16, 4, 3, {(6, "150")}),
    ("whole", "58", "6", 20, 5, 3, {(2, "65"), (2, "60")}),
    ("whole", "14", "-6", 20, 5, 6, {(4, "-6"), (4, "4")}),
    ("whole", "-23", "1", 20, 10, 6, {(2, "-24"), (5, "-29")}),
    ("fraction", "1/8", "1/8", 200, 8, 4, {(2, "2/16"), (8, "8/8"), (9, "1/8")}),
    ("fraction", "2/3", "1/3", 12, 3, 3, {(3, "1/3"), (2, "3/6")}),
    ("fraction", "3 1/5", "-2/5", 8, 4, 5, {(5, "1"), (2, "3 4/5")}),
    ("decimal", "2.7", "0.1", 16, 4, 4, {(4, "2.10"), (5, "4.0")}),
    ("decimal", "5.97", "0.01", 20, 5, 4, {(4, "5.100")}),
    ("money", "$2.85", "5c", 12, 4, 2, {(4, "$2.100"), (5, "$3.5")}),
    ("clock", "10:50", "20 min", 12, 3, 3, {(2, "10:70"), (2, "10:10")}),
    ("clock", "9:30", "5 min", 12, 6, 2, {(7, "9:60"), (8, "10:5")}),
    ("length", "1 ft 3 in", "9 in", 12, 4, 4, {(2, "1 ft 12 in"), (2, "2 ft 2 in")}),
    ("mass", "2 lb 6 oz", "5 oz", 12, 4, 4, {(3, "2 lb 16 oz"), (2, "3 lb 1 oz")}),
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


@pytest.mark.parametrize(("kind", "start", "step", "terms", "length", "level", "heard"), CLASSROOM)
def test_no_rule_comes_twice_before_all_have_come_once(
    kind: str, start: str, step: str, terms: int, length: int, level: int, heard: set[tuple[int, str]]
) -> None:
    grid = grid_of(kind, start, step, terms, length)
    slips = likely_slips(grid, level)
    rules = [slip.rule for slip in slips]
    several = len(set(rules))
    assert set(rules[:several]) == set(rules)
    weights = {rule.id: rule.weight for rule in rules_for(grid)}
    first = [weights[rule] for rule in rules[:several]]
    assert first == sorted(first, reverse=True)
