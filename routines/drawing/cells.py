"""One cell of a grid: its numeral, or what else stands there."""

from routines.counting.written_units import in_both_units

from .layout import Layout
from .numerals import Box, pieces_of_words, with_minus
from .said_words import set_within
from .svg import Pen, element, path_of, plain


def draw_cell(pen: Pen, layout: Layout, n: int, label: str, *, interactive: bool, chosen: bool) -> str:
    """One term: its numeral or its state, in a group that can be tapped where the grid is interactive, as `label` says."""
    box, entry = layout.rectangle(n), layout.entry(n)
    x, y = layout.middle(n)
    numeral = layout.numerals.get(n)
    drawn = []
    if entry.state == "covered":
        drawn.append(_slip(pen, layout, box))
    elif entry.state == "left-out":
        drawn.append(_left_out(pen, layout, x, y))
    elif entry.state == "next":
        drawn.append(_next(pen, layout, box))
    elif entry.state == "prediction" and numeral:
        drawn.append(_frame(pen, layout, box, "g-guess", 0.1))
        drawn.append(numeral.draw(pen, x, y, look="g-guessed"))
    elif numeral:
        if entry.state == "corrected":
            drawn.append(_struck(pen, layout, box, entry.said))
        drawn.append(numeral.draw(pen, x, y))
    if not interactive:
        content = "".join(drawn)
        return content if pen.flat or not content else element("g", pen.look("g-cell"), content, data_n=n)
    hit = element(
        "rect", pen.look("g-hit"), x=box.left, y=box.top, width=layout.width, height=layout.height, rx=layout.radius / 2
    )
    row, column = layout.grid.place(n)
    return element(
        "g",
        pen.look("g-cell"),
        hit + "".join(drawn),
        data_n=n,
        data_place=f"{row} {column}",
        role="button",
        tabindex=0 if n == 1 else -1,
        aria_pressed="true" if chosen else "false",
        aria_label=f"{label} ({row}, {column})",
    )


def draw_numerals(pen: Pen, layout: Layout) -> str:
    """The numerals of a count that is written whole, in a group that says what they share."""
    drawn = (layout.numerals[n].draw(pen, *layout.middle(n), look="") for n in layout.shown())
    return element("g", pen.look("g-numeral"), "".join(drawn), font_size=layout.numeral)


def _frame(pen: Pen, layout: Layout, box: Box, look: str, inset: float) -> str:
    by = inset * layout.height
    return element(
        "rect",
        pen.look(look),
        x=box.left + by,
        y=box.top + by,
        width=layout.width - 2 * by,
        height=layout.height - 2 * by,
        rx=0.12 * layout.height,
        stroke_width=max(0.03 * layout.height, 1.5),
        stroke_dasharray=f"0 {max(0.075 * layout.height, 3.6):.1f}" if look == "g-guess" else None,
    )


def _next(pen: Pen, layout: Layout, box: Box) -> str:
    """The place where the class writes next: an ink frame and a short writing line."""
    middle, foot = (box.left + box.right) / 2, box.bottom - 0.24 * layout.height
    half = 0.3 * layout.numeral
    line = element(
        "path",
        pen.look("g-writing"),
        d=path_of(((middle - half, foot), (middle + half, foot))),
        stroke_width=max(0.035 * layout.height, 1.5),
    )
    return _frame(pen, layout, box, "g-next", 0.045) + line


def _left_out(pen: Pen, layout: Layout, x: float, y: float) -> str:
    """The count that the class went past: a short slanted stroke, as on the board."""
    half, rise = 0.25 * layout.numeral, 0.06 * layout.numeral
    return element(
        "path",
        pen.look("g-left-out"),
        d=path_of(((x - half, y + rise), (x + half, y - rise))),
        stroke_width=max(0.06 * layout.numeral, 1.2),
    )


def _slip(pen: Pen, layout: Layout, box: Box) -> str:
    """A plain paper slip over the cell: what is under it is not in the drawing at all."""
    by = 0.04 * layout.height
    lines = "".join(
        f"M{plain(box.left + by)} {plain(box.top + share * layout.height)}H{plain(box.right - by)}"
        for share in (0.28, 0.5, 0.72)
    )
    return element(
        "rect",
        pen.look("g-slip"),
        x=box.left + by,
        y=box.top + by,
        width=layout.width - 2 * by,
        height=layout.height - 2 * by,
    ) + element("path", pen.look("g-slip-line"), d=lines)


def _struck(pen: Pen, layout: Layout, box: Box, said: str) -> str:
    """What was said first: half size, top left, one slanted stroke through it; smaller where it would leave its cell."""
    room = layout.height / 2 - 0.5 * layout.numeral
    numeral = set_within(pieces_of_words(said), 0.5 * layout.numeral, 0.86 * layout.width, room)
    x = box.left + 0.07 * layout.width + numeral.width / 2
    y = box.top + 0.08 * layout.height - numeral.box.top
    reach = numeral.width / 2 + 0.08 * layout.numeral
    rise = min(0.09 * layout.numeral, 0.2 * reach)
    stroke = element(
        "path",
        pen.look("g-strike"),
        d=path_of(((x - reach, y + rise), (x + reach, y - rise))),
        stroke_width=max(0.045 * layout.numeral, 1.2),
    )
    return numeral.draw(pen, x, y, look="g-quiet") + stroke


def read_aloud(layout: Layout, n: int) -> str:
    """What can be read in the cell of term n, for those who hear the drawing; nothing where nothing is written."""
    if n not in layout.numerals:
        return ""
    entry = layout.entry(n)
    count = layout.grid.count
    words = with_minus(entry.text or in_both_units(count, count.value(n)))
    return words + "?" if entry.state == "prediction" else words
