"""Digits that ran and are over: the same as where every view is looked at."""

from random import Random

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, Grid, ended
from routines.counting.patterns import digit_run
from tests.counting.random_grids import any_grid


@given(st.randoms(use_true_random=False))
def test_no_run_is_seen_after_the_last_view_that_is_looked_at(random: Random) -> None:
    grid = any_grid(random)
    last = ended._last_with_a_run(grid)
    running = [n for n in range(2, grid.terms + 1) if any(digit_run.find(grid.cut(n)))]
    assert all(n <= last for n in running)


def test_where_the_amounts_differ_early_few_views_are_looked_at() -> None:
    """20 24 28 32 ...: in no direction does a digit go by one amount up to the ninth count, 52."""
    grid = Grid(Count.parse(kind="whole", start="20", step="4", terms=48), 6)
    assert ended._last_with_a_run(grid) == 8
    assert not any(digit_run.find(grid.cut(9)))
