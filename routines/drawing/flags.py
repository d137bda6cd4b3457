"""The flag at the term where an idea dies: it flies outward from the grid and never over a numeral."""

from dataclasses import dataclass

from .layout import Layout
from .metrics import text_width
from .numerals import Box
from .svg import Pen, element, path_of, text_of

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Flag:
    """A planted flag. side: left, right or top of the grid; `box` is the whole flag with its pole."""

    side: str
    pole: tuple[Point, Point]
    banner: tuple[Point, ...]
    leader: tuple[Point, ...]
    words: str
    words_at: Point
    size: float
    box: Box


def plant(layout: Layout, n: int, words: str, taken: list[Box]) -> Flag | None:
    """Plant a flag for term n, clear of the flags in `taken`; None where the term is not in the drawing.

    In the first row it rises above the cell, elsewhere it flies from the nearer side of the row; a fine leader along the
    line between two rows shows the cell it belongs to.
    """
    cell = layout.cell(n)
    if cell is None:
        return None
    row, column = cell
    cloth = min(max(0.25 * layout.height, 9), 22)
    size = 0.66 * cloth if cloth >= 16 else 0.0
    said = words if layout.size.flag_words else ""
    if said and not size:
        cloth, size = 17.0, 11.5
    length = text_width(said, size, "bold") + 1.3 * cloth if said else 1.15 * cloth
    edge = column * layout.width
    line = row * layout.height
    leader: tuple[Point, ...] = ()
    if row == 0:
        side, foot = "top", (edge, 0.3 * layout.height)
    elif column + 0.5 <= layout.columns / 2:
        side, foot = "left", (0.0, line)
        leader = ((0.0, line), (edge, line), (edge, line + 0.3 * layout.height)) if column else ()
    else:
        side, foot = "right", (layout.frame.right, line)
        far = edge + layout.width
        beyond = column < layout.columns - 1
        leader = ((layout.frame.right, line), (far, line), (far, line + 0.3 * layout.height)) if beyond else ()
    shift = 0.0
    while True:
        flag = _sew(side, foot, cloth, length, shift, leader, said, size)
        if not any(flag.box.meets(other) for other in taken):
            return flag
        shift += cloth + 3


def _sew(
    side: str,
    foot: Point,
    cloth: float,
    length: float,
    shift: float,
    leader: tuple[Point, ...],
    words: str,
    size: float,
) -> Flag:
    x, y = foot
    tail = 0.28 * cloth
    out = -1 if side == "left" else 1
    if side == "top":
        top = -cloth - 5 - shift
        pole = ((x, y), (x, top))
    else:
        x += out * 2
        top = y - cloth - 1 + shift
        pole = ((x, y + 0.85 * cloth + shift), (x, top))
    middle, bottom, end = top + cloth / 2, top + cloth, x + out * length
    banner = ((x, top), (end, top), (end - out * tail, middle), (end, bottom), (x, bottom))
    words_from = min(x, end) + (tail + 0.25 * cloth if out < 0 else 0.4 * cloth)
    lowest = max(pole[0][1], bottom)
    box = Box(min(x, end) - 1, top, max(x, end) + 1, bottom if side == "top" else lowest)
    return Flag(side, pole, banner, leader, words, (words_from, middle + 0.36 * size), size, box)


def draw_flag(pen: Pen, flag: Flag, thick: float) -> str:
    """Draw the planted flag with its leader."""
    drawn = []
    if flag.leader:
        drawn.append(element("path", pen.look("g-leader"), d=path_of(flag.leader)))
    drawn.append(element("path", pen.look("g-pole"), d=path_of(flag.pole), stroke_width=max(thick * 0.8, 1.8)))
    drawn.append(element("path", pen.look("g-banner"), d=path_of(flag.banner, close=True)))
    if flag.words:
        x, y = flag.words_at
        drawn.append(
            element("text", pen.look("g-banner-words", "g-bold"), text_of(flag.words), x=x, y=y, font_size=flag.size)
        )
    return "".join(drawn)
