"""The thread through a lit pattern: in counting order, never across a numeral, out of the grid where it goes on."""

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from routines.counting import Claim

from .layout import Layout
from .numerals import Box

Point = tuple[float, float]


class Stretch(NamedTuple):
    """One piece of thread. It leaves term `start` and belongs with term `end` (its own start, for stubs and arrows)."""

    start: int
    end: int
    points: tuple[Point, Point]
    arrow: bool = False


class Knot(NamedTuple):
    """Where a thread passes through one term: the point, the box it keeps out of, the digit to underline."""

    at: Point
    box: Box
    digit: Box | None


def knots(layout: Layout, cells: Sequence[int], claim: Claim) -> dict[int, Knot]:
    """The knots of the shown cells; a pattern of one digit or part passes through that digit, which is underlined."""
    found = {}
    asked = {name: value for name, value in claim.subject.items() if name in ("place", "part")}
    for n in cells:
        if layout.cell(n) is None:
            continue
        x, y = layout.middle(n)
        box, digit = layout.halo(n), None
        numeral = layout.numerals.get(n)
        span = layout.grid.count.span(n, **asked) if asked and numeral and not layout.entry(n).text else None
        if span and numeral:
            digit = numeral.digits(*span).moved(x, y)
            x = (digit.left + digit.right) / 2
            box = Box(box.left, box.top, box.right, max(box.bottom, digit.bottom + 0.3 * layout.numeral))
        found[n] = Knot((x, y), box, digit)
    return found


def thread(layout: Layout, group: Sequence[int], tied: dict[int, Knot], goes_on: bool) -> list[Stretch]:
    """The stretches of one group's thread, in counting order; the last one is an arrow where the pattern goes on."""
    stretches: list[Stretch] = []
    shown = [n for n in group if n in tied]
    last_hop: tuple[int, int] | None = None
    for a, b in pairwise(shown):
        hop = _hop(layout, a, b)
        if max(abs(hop[0]), abs(hop[1])) == 1:
            _add(stretches, a, b, between(tied[a], tied[b]))
        else:
            # A count that runs on into the next line leaves the line straight ahead.
            ahead = last_hop if b == a + 1 and last_hop else None
            _add(stretches, a, a, _stub(layout, a, tied[a], ahead or hop))
        last_hop = hop
    if goes_on and len(group) > 1 and shown[-1:] == [group[-1]]:
        arrow = _arrow(layout, group, tied[group[-1]])
        if arrow:
            stretches.append(Stretch(shown[-1], shown[-1], arrow, arrow=True))
    return stretches


def between(a: Knot, b: Knot) -> tuple[Point, Point] | None:
    """The straight stretch between two knots, outside both boxes; None where there is no room for one."""
    start, end = leave(a.at, b.at, a.box), leave(b.at, a.at, b.box)
    forward = (end[0] - start[0]) * (b.at[0] - a.at[0]) + (end[1] - start[1]) * (b.at[1] - a.at[1])
    if forward <= 0 or abs(end[0] - start[0]) + abs(end[1] - start[1]) < 1.5:
        return None
    return start, end


def leave(inside: Point, towards: Point, box: Box) -> Point:
    """The point where the way from `inside` the box towards another point leaves the box."""
    dx, dy = towards[0] - inside[0], towards[1] - inside[1]
    ways = []
    if dx:
        ways.append(((box.right if dx > 0 else box.left) - inside[0]) / dx)
    if dy:
        ways.append(((box.bottom if dy > 0 else box.top) - inside[1]) / dy)
    t = min(way for way in ways) if ways else 0.0
    return inside[0] + t * dx, inside[1] + t * dy


def _add(stretches: list[Stretch], start: int, end: int, points: tuple[Point, Point] | None) -> None:
    if points:
        stretches.append(Stretch(start, end, points))


def _hop(layout: Layout, a: int, b: int) -> tuple[int, int]:
    (row_a, column_a), (row_b, column_b) = layout.grid.place(a), layout.grid.place(b)
    return row_b - row_a, column_b - column_a


def _stub(layout: Layout, n: int, knot: Knot, hop: tuple[int, int]) -> tuple[Point, Point] | None:
    """A short beginning towards a far cell: it ends just outside its own cell, before the next numeral, in the grid."""
    x, y = knot.at
    towards = (x + hop[1] * layout.width, y + hop[0] * layout.height)
    start = leave(knot.at, towards, knot.box)
    end = leave(knot.at, towards, layout.rectangle(n).grown(0.08 * layout.numeral).within(layout.frame))
    return (start, end) if start != end else None


def _arrow(layout: Layout, group: Sequence[int], knot: Knot) -> tuple[Point, Point] | None:
    """The way out of the grid after the last cell, towards where the pattern's next cell will stand.

    The next cell is as many counts further as the last hop was. A thread through the whole count leaves straight ahead,
    though its next cell may be at the start of a new line.
    """
    before, last = group[-2], group[-1]
    after = 2 * last - before
    hop = _hop(layout, before, last)
    grown = layout.grid.grown(after)
    (row, column), (next_row, next_column) = grown.place(last), grown.place(after)
    goes_straight = (next_row - row, next_column - column) == hop
    cell = layout.cell(last)
    if cell is None or max(map(abs, hop)) != 1 or not (goes_straight or len(group) == layout.grid.terms):
        return None
    if layout.at(cell[0] + hop[0], cell[1] + hop[1]) is not None:
        return None
    x, y = knot.at
    towards = (x + hop[1] * layout.width, y + hop[0] * layout.height)
    start = leave(knot.at, towards, knot.box)
    end = leave(knot.at, towards, layout.rectangle(last).grown(arrow_reach(layout)))
    return start, end


def arrow_reach(layout: Layout) -> float:
    """How far an arrow comes out of its cell, head and all."""
    return max(0.17 * layout.height, 8)
