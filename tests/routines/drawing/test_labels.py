"""Labels of groups under the numerals."""

import re

from routines.counting import Count, Grid
from routines.drawing import Entry, draw_grid
from routines.drawing.layout import lay_out
from routines.drawing.sizes import SIZES


def crates(kind="whole", start="12", step="12", terms=20) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), line_length=5)


def labelled(grid: Grid, name: str) -> dict[int, str]:
    return {n: f"{name} {n}" for n in range(1, grid.terms + 1)}


def test_every_cell_says_its_group():
    grid = crates()
    drawn = draw_grid(grid, size="print", labels=labelled(grid, "crate"))
    assert re.findall(r">crate (\d+)<", drawn) == [str(n) for n in range(1, 21)]


def test_a_long_label_leaves_its_number():
    grid = crates()
    drawn = draw_grid(grid, size="print", labels=labelled(grid, "basket of early plums"))
    assert "basket" not in drawn
    assert ">20<" in drawn


def test_labels_are_escaped():
    grid = crates()
    assert "<b>" not in draw_grid(grid, size="print", labels=labelled(grid, "<b>"))


def test_stacked_fractions_stand_clear_of_their_labels():
    grid = crates("fraction", "3/4", "3/4", 20)
    plain, with_labels = (lay_out(grid, SIZES["print"], (), labels=labels) for labels in ({}, labelled(grid, "cup")))
    deepest = max(numeral.box.bottom for numeral in with_labels.numerals.values())
    assert with_labels.height > plain.height
    assert with_labels.height / 2 - deepest >= 0.36 * with_labels.numeral


def test_no_thread_enters_a_label():
    grid = crates()
    layout = lay_out(grid, SIZES["print"], (), labels=labelled(grid, "crate"))
    assert layout.halo(7).bottom >= layout.rectangle(7).bottom


def test_a_cell_to_be_written_in_has_its_letter_in_the_corner():
    grid = crates()
    drawn = draw_grid(grid, size="print", labels={8: "b"}, entries={1: Entry(), 8: Entry("next")})
    box = lay_out(grid, SIZES["print"], ()).rectangle(8)
    x, y = re.search(r'<text [^>]*?x="([\d.]+)" y="([\d.]+)"[^>]*>b<', drawn).groups()
    assert box.left < float(x) < (box.left + box.right) / 2
    assert box.top < float(y) < (box.top + box.bottom) / 2
