"""What is asked about at the end is thinking past it: never the very next count where one a full line on may be said."""

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Grid
from routines.counting.locate import locate
from routines.counting.probes import goes_below_zero
from routines.counting.stops import suggest_stops
from tests.counting.any_count import KINDS, grids


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8))
def test_what_comes_past_the_end_comes_a_full_line_on(grid: Grid, level: int) -> None:
    end, count, on = suggest_stops(grid, grade=level)[-1], grid.count, grid.terms + grid.line_length
    below = goes_below_zero(grid, level)
    nothing_more = not below and count.value(grid.terms + 1) < 0
    reached = locate(grid, count.value(on)).n == on and (below or count.value(on) >= 0)
    if end.asked is not None and reached and not nothing_more:
        n = locate(grid, end.asked).n
        assert n is not None
        assert n >= on
