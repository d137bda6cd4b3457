"""Jumps on a grid: arcs with an arrowhead and a label, outside the cells where a margin lets them run there.

The same lines as the board draws (static/js/lesson/board/ink_lines.js); on paper there is always a margin.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import atan2, cos, hypot, pi, sin

from .layout import Layout
from .numerals import Box, Numeral, pieces_of_words, set_numeral
from .svg import Pen, element, plain

INSIDE, OUTSIDE = 0.42, 0.5  # a label's size, of the numeral
HEAD, HEAD_OPENS = 0.3, 0.5  # an arrowhead's length, of the numeral, and half its angle

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class JumpArc:
    first: int
    last: int
    label: str


@dataclass(frozen=True, slots=True)
class Arc:
    """A jump as it is drawn: its line with its head, its label with the label's middle, all that it takes outside the cells."""

    d: str
    label: Numeral
    at: Point
    reach: Box
    inside: bool

    def draw(self, pen: Pen, size: float) -> str:
        line = element("path", pen.look("g-ink-jump"), d=self.d, stroke_width=max(0.05 * size, 1.3))
        ground = ""
        if self.inside:
            ground = self.label.box.moved(*self.at).grown(0.06 * size).draw(pen, "g-sheet", rx=3)
        return line + ground + self.label.draw(pen, *self.at, look="g-quiet")


@dataclass(frozen=True, slots=True)
class _End:
    row: int
    column: int
    cell: Box
    ink: Box  # its numeral, or the room of one


class _Lanes:
    """Arcs that run along the same side, so that a second one over the same stretch runs further out."""

    def __init__(self) -> None:
        self.taken: list[tuple[str, int, int, int]] = []

    def take(self, side: str, a: int, b: int) -> int:
        low, high = min(a, b), max(a, b)
        over = [lane for other, first, last, lane in self.taken if other == side and first < high and low < last]
        lane = max(over, default=-1) + 1
        self.taken.append((side, low, high, lane))
        return lane


def arcs_of(layout: Layout, jumps: Sequence[JumpArc]) -> list[Arc]:
    """The arcs between cells that are in the drawing."""
    lanes, drawn = _Lanes(), []
    for jump in jumps:
        start, end = _end(layout, jump.first), _end(layout, jump.last)
        if start is None or end is None:
            continue
        if start.column == end.column:
            drawn.append(_upright(layout, start, end, jump.label, lanes))
        elif start.row == end.row:
            drawn.append(_level(layout, start, end, jump.label, lanes))
        else:
            drawn.append(_slanted(layout, start, end, jump.label))
    return drawn


def _end(layout: Layout, n: int) -> _End | None:
    place = layout.cell(n)
    return _End(*place, layout.rectangle(n), layout.ink(n)) if place else None


def _upright(layout: Layout, start: _End, end: _End, words: str, lanes: _Lanes) -> Arc:
    font = layout.numeral
    side = -1 if start.column == 0 else 1 if start.column == layout.columns - 1 else 0
    out = lanes.take("left" if side < 0 else "right", start.row, end.row) if side else 0
    y0, y1 = _middle_y(start.ink), _middle_y(end.ink)
    down = 1 if y1 > y0 else -1
    way = side or 1
    beside = 0.2 if side else 0.1  # between two columns of wide numerals there is little room
    if way > 0:
        x, edge = max(start.ink.right, end.ink.right) + beside * font, start.cell.right
    else:
        x, edge = min(start.ink.left, end.ink.left) - beside * font, start.cell.left
    a, b = y0 + down * 0.12 * font, y1 - down * 0.12 * font
    turn = edge + way * (0.75 + 0.7 * out if side else 0.1) * font
    if not side:
        turn = max(turn, x + 0.3 * font)
    peak = (x + 3 * turn) / 4
    label = set_numeral(pieces_of_words(words), (OUTSIDE if side else INSIDE) * font)
    # inside, the label stands between two lines, where no numeral is
    y = (a + b) / 2 if side else start.cell.bottom if down > 0 else start.cell.top
    at = (peak + way * (0.16 * font + label.width / 2), y)
    d = f"M{_at(x, a)}C{_at(turn, a)} {_at(turn, b)} {_at(x, b)}" + _head(x, b, pi if way > 0 else 0, font)
    return Arc(d, label, at, _reach(label, at, Box(min(x, turn), min(a, b), max(x, turn), max(a, b))), not side)


def _level(layout: Layout, start: _End, end: _End, words: str, lanes: _Lanes) -> Arc:
    font, outside = layout.numeral, start.row == 0
    out = lanes.take("top", start.column, end.column) if outside else 0
    x0, x1 = _middle_x(start.cell), _middle_x(end.cell)
    y = min(start.ink.top, end.ink.top) - 0.2 * font
    lowest = -(0.1 + 0.7 * out) * font if outside else start.cell.top - 0.02 * font
    turn = y - 4 * (y - lowest) / 3
    toward = 1 if x1 > x0 else -1
    a, b = x0 + toward * 0.1 * font, x1 - toward * 0.1 * font
    label = set_numeral(pieces_of_words(words), (OUTSIDE if outside else INSIDE) * font)
    at = ((a + b) / 2, lowest - 0.12 * font - label.box.bottom)
    d = f"M{_at(a, y)}C{_at(a, turn)} {_at(b, turn)} {_at(b, y)}" + _head(b, y, pi / 2, font)
    return Arc(d, label, at, _reach(label, at, Box(min(a, b), lowest, max(a, b), y)), not outside)


def _slanted(layout: Layout, start: _End, end: _End, words: str) -> Arc:
    font = layout.numeral
    ax, ay = _middle_x(end.cell) - _middle_x(start.cell), _middle_y(end.ink) - _middle_y(start.ink)
    long = hypot(ax, ay)
    x0, y0 = _leaving(start, ax, ay, font)
    x1, y1 = _leaving(end, -ax, -ay, font)
    bend = min(0.12 * long, 0.5 * font)
    tx, ty = (x0 + x1) / 2 + bend * ay / long, (y0 + y1) / 2 - bend * ax / long
    label = set_numeral(pieces_of_words(words), INSIDE * font)
    # The label stands on the edge between two rows that is nearest the middle of the line: no numeral is there.
    low, high = min(start.row, end.row) + 1, max(start.row, end.row)
    edge = min(range(low, high + 1), key=lambda row: abs(row * layout.height - (y0 + y1) / 2)) * layout.height
    along = min((step / 40 for step in range(41)), key=lambda t: abs(_between(y0, ty, y1, t) - edge))
    at = (_between(x0, tx, x1, along) + 0.16 * font + label.width / 2, edge)
    d = f"M{_at(x0, y0)}Q{_at(tx, ty)} {_at(x1, y1)}" + _head(x1, y1, atan2(y1 - ty, x1 - tx), font)
    return Arc(d, label, at, _reach(label, at, Box(min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1))), True)


def _between(start: float, turn: float, end: float, t: float) -> float:
    """Where a curve with one turning point is after the share t of its way."""
    return (1 - t) ** 2 * start + 2 * t * (1 - t) * turn + t**2 * end


def _leaving(end: _End, dx: float, dy: float, font: float) -> Point:
    """Where a line from the middle of the numeral leaves it."""
    wide = (end.ink.right - end.ink.left) / 2 + 0.18 * font
    high = (end.ink.bottom - end.ink.top) / 2 + 0.18 * font
    scale = min(wide / max(abs(dx), 0.01), high / max(abs(dy), 0.01))
    return _middle_x(end.ink) + dx * scale, _middle_y(end.ink) + dy * scale


def _head(x: float, y: float, angle: float, font: float) -> str:
    one, other = (
        _at(x - HEAD * font * cos(turned), y - HEAD * font * sin(turned))
        for turned in (angle - HEAD_OPENS, angle + HEAD_OPENS)
    )
    return f"M{one}L{_at(x, y)}L{other}"


def _reach(label: Numeral, at: Point, line: Box) -> Box:
    words = label.box.moved(*at).grown(0.1 * label.size)
    return Box(
        min(words.left, line.left) - 2,
        min(words.top, line.top) - 2,
        max(words.right, line.right) + 2,
        max(words.bottom, line.bottom) + 2,
    )


def _at(x: float, y: float) -> str:
    return f"{plain(x)} {plain(y)}"


def _middle_x(box: Box) -> float:
    return (box.left + box.right) / 2


def _middle_y(box: Box) -> float:
    return (box.top + box.bottom) / 2
