"""How much work finding patterns is, in calls of Python functions: a count that is the same on every machine."""

import sys

import pytest

from routines.counting import Count, Grid, find_patterns

COUNTS = [
    ("whole", "58", "6", 5),
    ("whole", "1,325", "-50", 4),
    ("decimal", "0.25", "0.35", 8),
    ("fraction", "3/4", "3/4", 4),
    ("length", "1 ft 3 in", "9 in", 4),
    ("clock", "10:50", "20 min", 3),
    ("money", "$0.20", "$0.25", 4),
]


def calls(grid: Grid) -> int:
    """The calls of Python functions while the patterns of a grid are found and put into words."""
    counted = 0

    def count(frame, event, argument) -> None:
        nonlocal counted
        counted += event == "call"

    sys.setprofile(count)
    try:
        find_patterns(grid)
    finally:
        sys.setprofile(None)
    return counted


def grid_of(kind: str, start: str, step: str, line_length: int, terms: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), line_length=line_length)


@pytest.mark.parametrize(("kind", "start", "step", "line_length"), COUNTS)
def test_forty_cells_are_bounded(kind, start, step, line_length):
    assert 100 < calls(grid_of(kind, start, step, line_length, 40)) < 25_000


@pytest.mark.parametrize(("kind", "start", "step", "line_length"), COUNTS)
def test_five_times_the_cells_are_far_from_five_times_five_the_work(kind, start, step, line_length):
    few, many = (calls(grid_of(kind, start, step, line_length, terms)) for terms in (40, 200))
    assert many < 8 * few
