"""Step: each count is the step more than the one before.

Always. Source: proof - the count is arithmetic: v(n+1) - v(n) = step for every n.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..claims import Claim
from ..grid import Grid
from .found import Found, Judged


def find(grid: Grid) -> Iterator[Found]:
    if grid.terms >= 2:
        claim = Claim.trusted("step", {"difference": grid.count.step})
        yield Found.of(claim, (tuple(range(1, grid.terms + 1)),))


def completed(claim: Claim, grid: Grid) -> Iterator[Claim]:
    yield claim if claim.get("difference") is not None else claim.with_(difference=grid.count.step)


def judge(claim: Claim, grid: Grid) -> Judged:
    if claim.get("difference") == grid.count.step:
        return Judged.so(seen=grid.terms >= 2)
    if grid.terms == 1:
        return Judged.so(seen=False, breaks_at=2)
    return Judged.not_so((1, 2))
