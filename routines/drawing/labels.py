"""Small labels under the numerals: which crate, which ticket of a word problem each count belongs to."""

from collections.abc import Collection, Mapping

from routines.counting import Grid
from routines.counting.written_units import in_larger_unit, larger_unit_size

from .metrics import text_width
from .svg import Pen, element, text_of

LABEL = 0.36  # of the numeral
SMALLEST_READ = 11.0  # of an amount in its larger unit: px
LABEL_HEIGHT = 1.3  # with the white above and below it, of its own size
LABEL_FOOT = 0.55  # from the cell's edge to its baseline, of its own size
CORNER, CORNER_IN = 0.5, 0.16  # in a cell to be written in: of the numeral, and from its corner, of the cell's height
SIDES = 0.9  # of the cell's width may be taken


def labels_that_fit(labels: Mapping[int, str], size: float, cell_width: float) -> dict[int, str]:
    """The labels, or where one is too long for its cell only their numbers: "crate 3" or "3"."""
    if all(text_width(words, size) <= SIDES * cell_width for words in labels.values()):
        return dict(labels)
    return {n: str(n) for n in labels}


def larger_units(grid: Grid, landmarks: Collection[int], size: float, cell_width: float) -> dict[int, str]:
    """Under each landmark that fills a larger unit evenly, how much it is in that: "2 lb" under 32 oz, where it can be read."""
    unit = larger_unit_size(grid.count)
    whole = [n for n in landmarks if unit and grid.count.value(n) and not grid.count.value(n) % unit]
    words = {n: in_larger_unit(grid.count, grid.count.value(n)) for n in whole}
    fits = size >= SMALLEST_READ and all(text_width(text, size) <= SIDES * cell_width for text in words.values())
    return words if fits else {}


def draw_label(pen: Pen, words: str, middle: float, foot: float, size: float) -> str:
    """The label centred on x `middle`, in a cell whose lower edge is at y `foot`."""
    x = middle - text_width(words, size) / 2
    return element("text", pen.look("g-quiet"), text_of(words), x=x, y=foot - LABEL_FOOT * size, font_size=size)


def draw_corner_label(pen: Pen, words: str, left: float, top: float, numeral: float, height: float) -> str:
    """The label of an empty cell to be written in, larger and in its corner: the letter of a question."""
    size, inside = CORNER * numeral, CORNER_IN * height
    y = top + inside + 0.75 * size
    return element("text", pen.look("g-numeral"), text_of(words), x=left + inside, y=y, font_size=size)
