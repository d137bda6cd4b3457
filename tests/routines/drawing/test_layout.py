"""Sizes: what a card may measure, numerals that never get too small, and numerals that fit their cells."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Grid
from routines.drawing.layout import lay_out
from routines.drawing.sizes import SIZES
from tests.routines.drawing.grids import drawn_grids, grid


@given(drawn_grids(), st.sampled_from(sorted(SIZES)))
def test_every_numeral_fits_its_cell(of: Grid, size: str) -> None:
    layout = lay_out(of, SIZES[size], landmarks=[1, 2])
    for n in layout.shown():
        box, cell = layout.numerals[n].box.moved(*layout.middle(n)), layout.rectangle(n)
        assert cell.left < box.left
        assert box.right < cell.right
        assert cell.top < box.top
        assert box.bottom < cell.bottom


@given(drawn_grids())
def test_a_card_keeps_within_270_by_150_and_its_numerals_within_14_to_16(of: Grid) -> None:
    layout = lay_out(of, SIZES["card"], landmarks=())
    assert 14 <= layout.numeral <= 16
    assert layout.frame.bottom <= 150
    # Two columns are kept whatever they measure.
    assert layout.frame.right <= 270 or layout.columns == 2


@given(drawn_grids(), st.sampled_from(sorted(SIZES)))
def test_only_cards_and_folds_leave_lines_away(of: Grid, size: str) -> None:
    layout = lay_out(of, SIZES[size], landmarks=())
    assert layout.is_cut <= SIZES[size].cut


@given(drawn_grids(), st.sets(st.integers(2, 12), min_size=2))
def test_tiles_of_one_count_are_drawn_to_one_scale(of: Grid, lengths: set[int]) -> None:
    folds = [Grid(of.count, length, of.fill) for length in lengths if length <= of.terms]
    layouts = [lay_out(fold, SIZES["tile"], landmarks=[1, 2]) for fold in folds]
    assert len({(layout.numeral, layout.width, layout.height) for layout in layouts}) <= 1


@pytest.mark.parametrize("columns", [5, 8, 12])
def test_the_board_never_writes_digits_smaller_than_53_px(columns: int) -> None:
    layout = lay_out(grid(terms=60, length=columns), SIZES["board"], landmarks=())
    assert layout.numerals[1].digits(0, 0, 1).bottom - layout.numerals[1].digits(0, 0, 1).top >= 52.7


@pytest.mark.parametrize(
    ("size", "numeral", "width", "height"),
    [("plan", 36, 96, 82), ("phone", 21, 62, 40), ("print", 31, 83, 70), ("board", 88, 262, 156)],
)
def test_five_in_a_line_is_drawn_at_the_size_the_look_names(size, numeral, width, height) -> None:
    layout = lay_out(grid(), SIZES[size], landmarks=())
    assert (layout.numeral, round(layout.width), round(layout.height)) == (numeral, width, height)


def test_across_up_keeps_its_first_rows_at_the_bottom_when_it_is_cut() -> None:
    layout = lay_out(grid(terms=100, fill="across-up"), SIZES["card"], landmarks=())
    assert layout.is_cut
    assert layout.cell(1) == (layout.rows - 1, 0)


def test_a_grid_keeps_its_size_while_it_fills() -> None:
    empty, full = (lay_out(grid(), SIZES["board"], (), upto=upto) for upto in (1, 25))
    assert (empty.width, empty.height, empty.numeral) == (full.width, full.height, full.numeral)
