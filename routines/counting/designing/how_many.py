"""How many counts fall in each ten, each foot, each dollar."""

from __future__ import annotations

from functools import cache
from itertools import chain

from ..claims import Claim
from ..grid import Grid
from ..patterns.how_many import Intervals
from ..patterns.multiples import Scaled
from .congruences import Residues, Span
from .numbers import Numbers
from .wants import Narrowing, Want


def how_many(claim: Claim, multiple: int, numbers: Numbers) -> Want:
    """The numbers of terms between multiples repeat in a block.

    Source: proof - r intervals of m hold floor or ceil of r*m / step terms; a block of r intervals with B terms in all,
    seen twice, so needs |2 r m / step - 2 B| < 1; and the terms must reach over 2 r m. Moving the start by m moves every
    term into the next interval: the numbers of terms depend on the start mod m alone.
    """
    block = claim.get("block")
    intervals_seen = 2 * len(block or (1,))

    @cache
    def remainders(step: int, terms: int) -> tuple[int, ...]:
        grain = numbers.starts.grain
        every = range(0, multiple * grain, grain)
        return tuple({start % multiple for start in every[:multiple] if seen(start % multiple, step, terms)})

    def seen(start: int, step: int, terms: int) -> bool:
        intervals = Intervals(Scaled.of_whole(multiple, start, step), terms)
        return intervals.complete >= intervals_seen and (
            block is None or all(intervals.terms_in(i) == block[i % len(block)] for i in range(intervals.complete))
        )

    @cache
    def starts_of(step: int, terms: int, span: Span) -> tuple[int, ...]:
        every = span.members()
        if len(every) <= multiple:
            return tuple([start for start in every if seen(start % multiple, step, terms)])
        return tuple(chain.from_iterable(span.members(Residues(r, multiple)) for r in remainders(step, terms)))

    def on(fold: Grid) -> Narrowing:
        steps = [step for step in numbers.steps.members() if (fold.terms - 1) * abs(step) >= intervals_seen * multiple]
        if block is not None:
            steps = [step for step in steps if _fits(len(block), sum(block), multiple, abs(step))]
        return Narrowing(steps, lambda step, span: starts_of(step, fold.terms, span))

    return on


def _fits(intervals: int, terms: int, multiple: int, step: int) -> bool:
    return abs(2 * intervals * multiple - 2 * terms * step) < step
