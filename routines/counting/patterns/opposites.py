"""Opposites: the pairs of terms whose values are each other's opposites, 9 and -9.

Source: proof - v(n) + v(m) = 2 * start + (n + m - 2) * step is 0 exactly when n + m is one fixed number; so the pairs lie
mirrored about zero, and after the view the next pair, if any, comes with the next term.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..claims import OppositesClaim, stated
from ..errors import CountError
from ..grid import Grid
from ..results import Pattern, Verdict


def find(grid: Grid) -> Iterator[Pattern]:
    pairs = opposite_pairs(grid, grid.terms) if grid.count.wrap is None else ()
    if pairs:
        yield Pattern(OppositesClaim(pairs), pairs, _next_pair(grid), "shown")


def completed(claim: OppositesClaim, grid: Grid) -> Iterator[OppositesClaim]:
    yield OppositesClaim(opposite_pairs(grid, grid.terms)) if claim.pairs is None else claim


def judge(claim: OppositesClaim, grid: Grid) -> Verdict:
    if grid.count.wrap is not None:
        raise CountError("family", "opposites-on-a-clock")
    said, there = set(stated(claim.pairs)), set(opposite_pairs(grid, grid.terms))
    wrong = sorted(said ^ there, key=lambda pair: (pair[1], pair[0]))
    if wrong:
        return Verdict.not_so(wrong[0])
    breaks_at = _next_pair(grid)
    return Verdict(True, bool(there), "shown", 1 if breaks_at is None else None, breaks_at)


def _sum_of_positions(grid: Grid) -> int | None:
    """The one number that n + m must be; None where no two terms are opposites."""
    count = grid.count
    steps, rest = divmod(-2 * count.scaled_start, count.scaled_step)
    return None if rest else steps + 2


def opposite_pairs(grid: Grid, terms: int) -> tuple[tuple[int, int], ...]:
    """All pairs of terms n < m among the first ones with opposite values other than 0."""
    both = _sum_of_positions(grid)
    if both is None:
        return ()
    return tuple((n, both - n) for n in range(max(1, both - terms), (both + 1) // 2))


def _next_pair(grid: Grid) -> int | None:
    """The first term beyond the view that is the opposite of an earlier one."""
    both = _sum_of_positions(grid)
    if both is None:
        return None
    later = max(grid.terms + 1, both // 2 + 1)
    return later if both - later >= 1 else None
