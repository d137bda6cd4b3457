"""Table: each value is its position times the step, as in a multiplication table.

Always. Source: proof - v(n) = start + (n - 1) * step is n * step for every n exactly when start = step, and two terms
already fix both numbers.
"""

from __future__ import annotations

from collections.abc import Iterator

from ..claims import TableClaim, stated
from ..errors import CountError
from ..grid import Grid
from ..results import Pattern, Verdict


def find(grid: Grid) -> Iterator[Pattern]:
    count = grid.count
    if count.wrap is None and count.start == count.step and grid.terms >= 2:
        yield Pattern.of(TableClaim(count.step), (tuple(range(1, grid.terms + 1)),))


def completed(claim: TableClaim, grid: Grid) -> Iterator[TableClaim]:
    yield TableClaim(grid.count.step) if claim.step is None else claim


def judge(claim: TableClaim, grid: Grid) -> Verdict:
    if grid.count.wrap is not None:
        raise CountError("family", "table-on-a-clock")
    step = stated(claim.step)
    wrong = next((n for n in (1, 2) if grid.count.value(n) != n * step), None)
    if wrong is None:
        return Verdict.so(seen=grid.terms >= 2)
    return Verdict.not_so((wrong,)) if wrong <= grid.terms else Verdict.so(seen=False, breaks_at=wrong)
