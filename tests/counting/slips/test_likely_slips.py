"""Likely slips: ranked, merged, and never what is due, except under another name."""

from itertools import groupby

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid
from routines.words import likely_slips
from tests.counting.any_count import KINDS, grids
from tests.counting.slips.table import EXAMPLE_GRIDS


def test_the_first_of_the_list_are_different_slips() -> None:
    for grid in EXAMPLE_GRIDS:
        slips = likely_slips(grid, 4)
        different = len({slip.rule for slip in slips})
        assert len({slip.rule for slip in slips[: min(different, 4)]}) == min(different, 4)


def test_the_same_answer_at_the_same_count_is_listed_once() -> None:
    grid = Grid(Count.parse(kind="decimal", start="2.7", step="0.1", terms=12), 4)
    heard = [(slip.n, slip.heard) for slip in likely_slips(grid, 4)]
    assert heard.count((4, "2.10")) == 1
    assert len(heard) == len(set(heard))


def test_a_slip_is_told_of_where_it_happens() -> None:
    grid = Grid(Count.parse(kind="whole", start="374", step="10", terms=8), 4)
    slip = next(slip for slip in likely_slips(grid, 2) if slip.rule == "W14")
    assert (slip.n, slip.heard, slip.correct, slip.equal_name) == (4, "304", "404", False)
    assert "394" in slip.why


def test_only_the_counts_in_view_are_looked_at() -> None:
    grid = Grid(Count.parse(kind="whole", start="374", step="10", terms=8), 4)
    assert {slip.n for slip in likely_slips(grid.cut(3), 2)} <= {2, 3}


def test_a_form_that_is_not_renamed_is_foreseen_as_an_equal_name() -> None:
    inches = Grid(Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12), 4)
    assert {slip.heard for slip in likely_slips(inches, 4) if slip.equal_name} >= {"1 ft 12 in"}
    clock = Grid(Count.parse(kind="clock", start="10:50", step="20 min", terms=12), 3)
    assert [slip.heard for slip in likely_slips(clock, 3) if slip.equal_name] == ["13:10"]


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_what_is_heard_is_not_what_is_due_unless_it_names_the_same(grid: Grid, level: int, language: str) -> None:
    slips = likely_slips(grid, audience=Audience(level, language))
    for slip in slips:
        assert 2 <= slip.n <= grid.terms
        assert slip.correct == grid.count.text(slip.n)
        assert slip.heard
        assert slip.heard != slip.correct
    for _, same in groupby(sorted(slips, key=lambda slip: (slip.n, slip.heard)), key=lambda slip: (slip.n, slip.heard)):
        assert len(list(same)) == 1
