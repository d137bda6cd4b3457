"""One slip is told once before all others have been told."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Kind, likely_slips


@given(st.integers(0, 30), st.sampled_from((2, 5, 10)), st.integers(6, 20), st.integers(0, 2))
def test_falling_back_into_ones_is_told_once_among_the_first(start: int, step: int, terms: int, level: int) -> None:
    grid = Grid(Count(Kind.WHOLE, Fraction(start), Fraction(step), terms), 5)
    slips = likely_slips(grid, audience=Audience(level))[:3]
    by_ones = [one for one in slips if one.rule in ("J01", "W36")]
    assert len(by_ones) <= 1 or len({one.rule for one in likely_slips(grid, audience=Audience(level))}) <= 2
