"""Claims that fix the step, or tie the start to it: step, neighbour, line totals, table, opposites."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise

from ..claims import Direction, LineAlong, NeighbourClaim, OppositesClaim, StepClaim, SumsClaim, TableClaim
from ..grid import Grid
from .congruences import Span
from .numbers import Numbers
from .runs import Runs, just
from .wants import NEVER, NO_MATTER, Narrowing, Want

AWAY = {"right": (0, 1), "down": (1, 0), "down-right": (1, 1), "down-left": (1, -1)}


def step(claim: StepClaim, numbers: Numbers) -> Want:
    """The step has a given size."""
    return _fixed_step(claim.difference, numbers, lambda fold: 1)


def neighbour(claim: NeighbourClaim, direction: Direction, numbers: Numbers) -> Want:
    """The cell beside, below or on a diagonal is so much more."""
    rows, columns = AWAY[direction]

    def worth(fold: Grid) -> int | None:
        for n in range(1, fold.terms + 1):
            row, column = fold.place(n)
            other = fold.at(row + rows, column + columns)
            if other is not None:
                return other - n
        return None

    return _fixed_step(claim.difference, numbers, worth)


def line_totals(claim: SumsClaim, along: LineAlong, numbers: Numbers) -> Want:
    """The totals of full lines side by side differ by so much."""

    def worth(fold: Grid) -> int | None:
        full = fold.columns if along == "row" else fold.rows
        for line, after in pairwise(fold.lines(along)):
            if len(line) == len(after) == full:
                return sum(after) - sum(line)
        return None

    return _fixed_step(claim.difference, numbers, worth)


def table(claim: TableClaim, numbers: Numbers) -> Want:
    """The n-th count is n steps: the start is the step."""

    def starts(step: int, span: Span) -> Runs:
        return just([step] if span.has(step) else [])

    size = claim.step
    low, high = numbers.starts.low, numbers.starts.high
    steps = [numbers.steps.narrowed(low, high).members()] if size is None else _only(numbers.whole(size), numbers)
    return lambda fold: Narrowing(steps, starts)


def opposites(claim: OppositesClaim, numbers: Numbers) -> Want:
    """Two terms are opposites.

    Source: proof - v(n) + v(m) = 2 start + (n + m - 2) step is 0 only for start = -(n + m - 2) step / 2, whatever n
    and m are by themselves; so all pairs in view have one sum n + m.
    """
    pairs = claim.pairs

    def on(fold: Grid) -> Narrowing:
        sums = range(3, 2 * fold.terms) if not pairs else (sum(pairs[0]),)

        def starts(step: int, span: Span) -> Runs:
            twice = (-(pair_sum - 2) * step for pair_sum in sums)
            return just(number // 2 for number in twice if number % 2 == 0 and span.has(number // 2))

        # As n + m is 3 or more, the step is at most twice the start.
        furthest = 2 * max(abs(numbers.starts.low), abs(numbers.starts.high))
        return Narrowing([numbers.steps.narrowed(-furthest, furthest).members()], starts, cells=len(sums))

    return on


def _fixed_step(size: Fraction | None, numbers: Numbers, worth: Callable[[Grid], int | None]) -> Want:
    """Something worth so many steps, None where it cannot be seen, has the wanted size (None: any).

    Source: proof - going from one cell to another adds (terms between) x step, so the step is size / terms.
    """

    def on(fold: Grid) -> Narrowing:
        terms_between = worth(fold)
        if terms_between is None:
            return NEVER
        if size is None:
            return NO_MATTER
        whole = numbers.whole(size)
        if terms_between == 0 or whole % terms_between:
            return NEVER
        return Narrowing(_only(whole // terms_between, numbers))

    return on


def _only(step: int, numbers: Numbers) -> Runs:
    return just([step] if numbers.steps.has(step) else [])
