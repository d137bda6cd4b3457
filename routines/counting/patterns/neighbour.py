"""Neighbour: the next cell to the right, below or diagonally differs by the same amount everywhere on the page.

Always. Source: proof - two cells next to each other in one direction are a fixed number of terms apart (1, the line
length, or one more or less), so their values are that many steps apart.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..claims import DIRECTIONS, Direction, NeighbourClaim, stated
from ..grid import Fill, Grid
from ..results import Pattern, Verdict

DOWN = {"right": 0, "down": 1, "down-right": 1, "down-left": 1}
RIGHT = {"right": 1, "down": 0, "down-right": 1, "down-left": -1}


def find(grid: Grid) -> Iterator[Pattern]:
    for direction in DIRECTIONS:
        pairs = neighbours(grid, direction, grid.terms)
        if len(pairs) >= 2:
            yield Pattern.of(NeighbourClaim(direction, grid.count.step * terms_apart(grid, direction)), pairs)


def completed(claim: NeighbourClaim, grid: Grid) -> Iterator[NeighbourClaim]:
    for direction in DIRECTIONS if claim.direction is None else (claim.direction,):
        difference = claim.difference
        if difference is None:
            difference = grid.count.step * terms_apart(grid, direction)
        yield NeighbourClaim(direction, difference)


def judge(claim: NeighbourClaim, grid: Grid) -> Verdict:
    direction: Direction = stated(claim.direction)
    pairs = neighbours(grid, direction, grid.terms)
    if claim.difference == grid.count.step * terms_apart(grid, direction):
        return Verdict.so(seen=len(pairs) >= 2)
    if pairs:
        return Verdict.not_so(min(pairs, key=max))
    # The first pair of any direction comes by the time two whole lines stand beside each other.
    later = neighbours(grid, direction, grid.terms + 3 * grid.line_length)
    return Verdict.so(seen=False, breaks_at=min(map(max, later), default=None))


def cells_along(grid: Grid, direction: Direction) -> tuple[int, int]:
    """How a step in a direction of the page goes in fill order: so many fill lines on, so many cells on in the line."""
    down, right = DOWN[direction], RIGHT[direction]
    if grid.fill is Fill.DOWN:
        return right, down
    return (-down if grid.fill is Fill.ACROSS_UP else down), right


def terms_apart(grid: Grid, direction: Direction) -> int:
    """How many terms later the next cell in a direction comes (negative: earlier)."""
    lines_on, cells_on = cells_along(grid, direction)
    return lines_on * grid.line_length + cells_on


def neighbours(grid: Grid, direction: Direction, terms: int) -> tuple[tuple[int, int], ...]:
    """The pairs of cells that lie next to each other in a direction among the first terms, each in counting order."""
    lines_on, cells_on = cells_along(grid, direction)
    length, lead, apart = grid.line_length, grid.lead, lines_on * grid.line_length + cells_on
    first, last = max(1, 1 - apart), min(terms, terms - apart)
    ns = range(first, last + 1)
    if cells_on:
        wall = length - 1 if cells_on == 1 else 0  # the cell with no neighbour on that side
        ns_beside = [n for n in ns if (n + lead - 1) % length != wall]
    else:
        ns_beside = list(ns)
    return tuple([(n, n + apart) for n in ns_beside] if apart > 0 else [(n + apart, n) for n in ns_beside])
