"""Step: each count is the step more than the one before.

Always. Source: proof - the count is arithmetic: v(n+1) - v(n) = step for every n.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..claims import StepClaim
from ..grid import Grid
from ..results import Pattern, Verdict


def find(grid: Grid) -> Iterator[Pattern]:
    if grid.terms >= 2:
        yield Pattern.of(StepClaim(grid.count.step), (tuple(range(1, grid.terms + 1)),))


def completed(claim: StepClaim, grid: Grid) -> Iterator[StepClaim]:
    yield StepClaim(grid.count.step) if claim.difference is None else claim


def judge(claim: StepClaim, grid: Grid) -> Verdict:
    if claim.difference == grid.count.step:
        return Verdict.so(seen=grid.terms >= 2)
    if grid.terms == 1:
        return Verdict.so(seen=False, breaks_at=2)
    return Verdict.not_so((1, 2))
