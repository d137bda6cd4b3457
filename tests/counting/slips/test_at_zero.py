"""Where a count passes zero, what is heard at zero comes among the first slips, at every level that is shown such a count.

Sources: Bofferding (2014), Journal for Research in Mathematics Education 45(2), and Aqazade & Bofferding (2021), Journal of
Numerical Cognition 7(2): signs are ignored or appended, and zero is taken for the smallest number (general findings).
That it comes among the first three: common practice, no source.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, likely_slips
from tests.counting.slips.happenings import happenings_of

FIRST = 3
PARTS = {"whole": (1,), "decimal": (2, 5, 10), "fraction": (2, 3, 4, 6, 8)}


@st.composite
def grids_across_zero(draw: st.DrawFn) -> Grid:
    """A count with terms on both sides of zero, up or down, landing on it or not."""
    kind = draw(st.sampled_from(list(PARTS)))
    part = Fraction(1, draw(st.sampled_from(PARTS[kind])))
    step = draw(st.integers(1, 30)) * part
    ahead, behind = draw(st.integers(1, 8)), draw(st.integers(1, 8))
    start = -ahead * step + draw(st.integers(0, int(step / part) - 1)) * part
    up = draw(st.booleans())
    terms = ahead + behind + 1
    return Grid(Count(kind, start if up else -start, step if up else -step, terms), min(terms, draw(st.integers(2, 6))))


@given(grids_across_zero(), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_what_is_heard_at_zero_is_among_the_first(grid: Grid, level: int, language: str) -> None:
    value = grid.count.value
    slips = likely_slips(grid, audience=Audience(level, language))
    first = [slip for slip in slips[:FIRST] if value(slip.n - 1) * value(slip.n) <= 0]
    assert any(happenings_of(slip.rule) & {"zero crossed", "sign lost", "direction lost"} for slip in first), slips[
        :FIRST
    ]


@given(grids_across_zero(), st.integers(0, 8))
def test_the_sign_is_lost_or_kept_on_the_first_count_past_zero(grid: Grid, level: int) -> None:
    value = grid.count.value
    past = next(n for n in range(2, grid.terms + 1) if value(n) != 0 and value(n) * value(1) < 0)
    assert (past, grid.count.text_of(-value(past))) in {(slip.n, slip.heard) for slip in likely_slips(grid, level)}


@pytest.mark.parametrize("level", [0, 3, 5, 8])
def test_what_is_heard_going_down_across_zero(level: int) -> None:
    grid = Grid(Count.parse(kind="whole", start="15", step="-5", terms=16), 4)
    heard = {(slip.correct, slip.heard) for slip in likely_slips(grid, level)}
    # The sign is lost, zero is left out, said again, and the count turns back towards it.
    assert heard >= {("-5", "5"), ("0", "-5"), ("-5", "0"), ("-10", "0")}


@pytest.mark.parametrize("level", [0, 3, 5, 8])
def test_what_is_heard_where_zero_is_jumped_over(level: int) -> None:
    grid = Grid(Count.parse(kind="whole", start="7", step="-3", terms=8), 4)
    assert {("-2", "2"), ("-2", "-3")} <= {(slip.correct, slip.heard) for slip in likely_slips(grid, level)}
