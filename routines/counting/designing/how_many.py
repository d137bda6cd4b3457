"""How many counts fall in each ten, each foot, each dollar."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from functools import cache

from ..claims import Claim
from ..count import Count
from ..grid import Grid
from ..patterns.how_many import Intervals
from ..patterns.multiples import Scaled
from .congruences import Residues, Span
from .numbers import Numbers
from .wants import Narrowing, Want


def how_many(claim: Claim, multiple: int, numbers: Numbers) -> Want:
    """The numbers of terms between multiples repeat in a block.

    Source: proof - r intervals of m hold floor or ceil of r*m / step terms; a block of r intervals with B terms in all,
    seen twice, so needs |2 r m / step - 2 B| < 1. And moving the start by m moves every term into the next interval: the
    numbers of terms depend on the start mod m alone.
    """
    block = claim.get("block")

    @cache
    def remainders(step: int, terms: int) -> tuple[int, ...]:
        grain = numbers.starts.grain
        every = range(0, multiple * grain, grain)
        return tuple({start % multiple for start in every[:multiple] if _seen(start % multiple, step, terms)})

    def _seen(start: int, step: int, terms: int) -> bool:
        ones = Grid(Count("whole", Fraction(start), Fraction(step), terms), 1)
        intervals = Intervals(ones, Scaled.of(ones.count, Fraction(multiple)))
        if block is None:
            return intervals.complete >= 2
        return intervals.complete >= 2 * len(block) and all(
            intervals.terms_in(i) == block[i % len(block)] for i in range(intervals.complete)
        )

    def on(fold: Grid) -> Narrowing:
        def starts(step: int, span: Span) -> Iterable[int]:
            for remainder in remainders(step, fold.terms):
                yield from span.members(Residues(remainder, multiple))

        steps = None
        if block is not None:
            steps = [step for step in numbers.steps.members() if _fits(len(block), sum(block), multiple, abs(step))]
        return Narrowing(steps, starts)

    return on


def _fits(intervals: int, terms: int, multiple: int, step: int) -> bool:
    return abs(2 * intervals * multiple - 2 * terms * step) < step
