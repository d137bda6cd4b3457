"""Pairs of a pattern become lines; what does not hang together stays as it is."""

from itertools import pairwise

from hypothesis import given

from routines.counting import Grid
from routines.drawing.groups import drawn_groups
from tests.routines.drawing.grids import drawn_grids, pattern


def pairs(lines):
    return [pair for line in lines for pair in pairwise(line)]


@given(drawn_grids())
def test_the_pairs_down_each_column_are_drawn_as_the_columns(of: Grid) -> None:
    columns = [line for line in of.lines("column") if len(line) > 1]
    if columns:
        assert sorted(drawn_groups(pattern(pairs(columns)))) == sorted(columns)


def test_pairs_that_do_not_meet_stay_pairs() -> None:
    assert drawn_groups(pattern([(1, 8), (2, 7)])) == ((1, 8), (2, 7))


def test_groups_that_fork_stay_as_they_are() -> None:
    assert drawn_groups(pattern([(1, 2), (1, 5), (2, 3)])) == ((1, 2), (1, 5), (2, 3))


def test_single_cells_stay_single() -> None:
    assert drawn_groups(pattern([(1,), (4,), (7,)])) == ((1,), (4,), (7,))
