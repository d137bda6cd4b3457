"""Folding: where each term stands, whatever the fill, the lead and the ragged end."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, CountError, Grid
from tests.brute_force import grid_listing
from tests.counting.any_count import grids


def by_ones(terms: int) -> Count:
    return Count.parse(kind="whole", start=1, step=1, terms=terms)


@given(grids())
def test_cells_are_those_of_a_page_filled_by_hand(grid: Grid) -> None:
    page = grid_listing.page(grid.terms, grid.line_length, grid.fill, grid.lead)
    assert [[cell and cell.n for cell in row] for row in grid.cells()] == page
    assert (grid.rows, grid.columns) == (len(page), len(page[0]))


@given(grids())
def test_lines_are_those_of_a_page_filled_by_hand(grid: Grid) -> None:
    page = grid_listing.page(grid.terms, grid.line_length, grid.fill, grid.lead)
    for along in ("row", "column"):
        assert [list(line) for line in grid.lines(along)] == grid_listing.lines(page, along)
    assert grid.lines("count") == (tuple(range(1, grid.terms + 1)),)


@given(grids())
def test_place_and_at_undo_each_other(grid: Grid) -> None:
    for n in range(1, grid.terms + 1):
        assert grid.at(*grid.place(n)) == n
    assert grid.at(0, 1) is None
    assert grid.at(grid.rows + 1, 1) is None
    assert grid.at(1, grid.columns + 1) is None


@given(grids(), st.integers(1, 200))
def test_a_place_past_the_end_is_in_the_grid_grown_to_hold_it(grid: Grid, more: int) -> None:
    n = grid.terms + more
    page = grid_listing.page(n, grid.line_length, grid.fill, grid.lead)
    row, column = grid.place(n)
    assert page[row - 1][column - 1] == n
    assert grid.grown(n).place(n) == (row, column)


@given(grids(), st.data())
def test_a_cut_grid_keeps_the_fold_and_the_first_counts(grid: Grid, data: st.DataObject) -> None:
    upto = data.draw(st.integers(1, grid.terms))
    page = grid_listing.page(upto, grid.line_length, grid.fill, grid.lead)
    cut = grid.cut(upto)
    assert cut.terms == upto
    assert [[cell and cell.n for cell in row] for row in cut.cells()] == page
    for along in ("row", "column"):
        assert [list(line) for line in cut.lines(along)] == grid_listing.lines(page, along)


def test_lead_leaves_the_first_cells_of_the_first_line_empty() -> None:
    grid = Grid(by_ones(5), line_length=4, fill="across-up", lead=2)
    assert [[cell and cell.text for cell in row] for row in grid.cells()] == [
        ["3", "4", "5", None],
        [None, None, "1", "2"],
    ]


def test_cells_hold_number_value_and_text() -> None:
    count = Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12)
    first = Grid(count, line_length=4).cells()[0][1]
    assert first is not None
    assert (first.n, first.value, first.text) == (2, 24, "2 ft")


@pytest.mark.parametrize(
    ("field", "keywords"),
    [
        ("line_length", {"line_length": 13}),
        ("line_length", {"line_length": 0}),
        ("line_length", {"line_length": 2.0}),
        ("line_length", {"line_length": True}),
        ("line_length", {"line_length": "4"}),
        ("fill", {"line_length": 4, "fill": "up"}),
        ("fill", {"line_length": 4, "fill": None}),
        ("lead", {"line_length": 4, "lead": 4}),
        ("lead", {"line_length": 4, "lead": -1}),
        ("lead", {"line_length": 4, "lead": 0.0}),
        ("n", {"line_length": 4, "upto": 0}),
    ],
)
def test_a_fold_that_cannot_be_is_refused_at_its_field(field: str, keywords: dict[str, object]) -> None:
    with pytest.raises(CountError) as refused:
        Grid(by_ones(12), **keywords)  # type: ignore[arg-type]
    assert refused.value.field == field


@pytest.mark.parametrize("upto", [0, 13, True, 2.0, "3"])
def test_a_cut_outside_the_count_is_refused(upto: object) -> None:
    with pytest.raises(CountError) as refused:
        Grid(by_ones(12), line_length=4).cut(upto)  # type: ignore[arg-type]
    assert refused.value.field == "n"


def test_lines_run_along_the_count_the_rows_or_the_columns_only() -> None:
    with pytest.raises(CountError) as refused:
        Grid(by_ones(12), line_length=4).lines("diagonal")
    assert refused.value.field == "along"
