"""Two or three ways to a term: through the grid from a cell that is known, by jumps, on from a landmark."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from ..count import Count
from ..grid import Fill, Grid
from ..kinds.names import Kind

# From one cell to the next in this direction: rows and columns on the page.
STEPS = {"down": (1, 0), "up": (-1, 0), "right": (0, 1), "left": (0, -1)}
MOST_ROUTES = 3


@dataclass(frozen=True, slots=True)
class Move:
    """Go `times` cells in one direction ("down", "up", "right", "left"), or `times` jumps on in the count ("on")."""

    way: str
    times: int


@dataclass(frozen=True, slots=True)
class Route:
    """A way from a term that is known to the term looked for."""

    start: int
    moves: tuple[Move, ...]


def routes_to(grid: Grid, n: int) -> tuple[Route, ...]:
    """Give up to three different ways to the n-th term, from what is on the board; none to the first term."""
    routes: list[Route] = []
    ended: set[tuple[int, int]] = set()
    for start, moves in _ways(grid, n):
        # Along a single line "3 right" and "3 jumps" are the same way said twice.
        same = (start, sum(move.times for move in moves if move.way not in ("down", "up")))
        if not moves or (len(moves) == 1 and same in ended):
            continue
        ended.add(same)
        routes.append(Route(start, moves))
        if len(routes) == MOST_ROUTES:
            break
    return tuple(routes)


def landmark_multiples(count: Count) -> list[Fraction]:
    """Give the multiples worth naming as landmarks, largest first: no 9s or 11s among whole numbers.

    A multiple at which every term stands marks nothing.
    """
    multiples = [multiple for multiple in count.friendly_multiples() if count.step % multiple]
    if count.kind == Kind.WHOLE:
        multiples = [multiple for multiple in multiples if multiple % 5 == 0]
    return sorted(multiples, reverse=True)


def landmark_before(grid: Grid, n: int) -> int | None:
    """Give the last term on the board before the n-th that stands at the largest friendly multiple, or None."""
    for multiple in landmark_multiples(grid.count):
        for k in range(min(n - 1, grid.terms), 0, -1):
            value = grid.count.value(k)
            if value and value % multiple == 0:
                return k
    return None


def _ways(grid: Grid, n: int) -> Iterator[tuple[int, tuple[Move, ...]]]:
    landmark = landmark_before(grid, n)
    if landmark is not None and landmark != 1:
        yield landmark, _through_grid(grid, landmark, n)
    known = _same_place_in_line(grid, n)
    if known is not None:
        yield known, _through_grid(grid, known, n)
    if n > 1:
        yield 1, (Move("on", n - 1),)
        yield 1, _through_grid(grid, 1, n)
    if landmark is not None:
        yield landmark, (Move("on", n - landmark),)


def _same_place_in_line(grid: Grid, n: int) -> int | None:
    """Give the nearest earlier term on the board that stands at the same place of an earlier line."""
    lines_back = max(1, -(-(n - grid.terms) // grid.line_length))
    known = n - lines_back * grid.line_length
    return known if known >= 1 else None


def _through_grid(grid: Grid, start: int, n: int) -> tuple[Move, ...]:
    (row, column), (to_row, to_column) = grid.place(start), grid.place(n)
    down, right = to_row - row, to_column - column
    if grid.fill is Fill.ACROSS_UP:
        # A row keeps its distance to the others while rows are added above, not its number.
        down = -((n + grid.lead - 1) // grid.line_length - (start + grid.lead - 1) // grid.line_length)
    moves = []
    if down:
        moves.append(Move("down" if down > 0 else "up", abs(down)))
    if right:
        moves.append(Move("right" if right > 0 else "left", abs(right)))
    return tuple(moves)


def terms_moved(grid: Grid, move: Move) -> int:
    """Say how many terms on (or back, below 0) a move leads."""
    if move.way == "on":
        return move.times
    rows, columns = STEPS[move.way]
    if grid.fill is Fill.DOWN:
        return move.times * (rows + columns * grid.line_length)
    if grid.fill is Fill.ACROSS_UP:
        return move.times * (columns - rows * grid.line_length)
    return move.times * (rows * grid.line_length + columns)
