"""How many counts fall in each ten, each foot, each dollar."""

from __future__ import annotations

from functools import cache
from math import gcd

from ..claims import HowManyClaim
from ..grid import Grid
from ..patterns.how_many import Intervals
from ..patterns.multiples import Scaled
from .congruences import Residues, Span
from .numbers import Numbers
from .runs import Runs, how_many_in, just
from .wants import Narrowing, Want
from .work import Work


def how_many(claim: HowManyClaim, multiple: int, numbers: Numbers, work: Work) -> Want:
    """The numbers of terms between multiples repeat in a block.

    Source: proof - r intervals of m hold floor or ceil of r*m / step terms; a block of r intervals with B terms in all,
    seen twice, so needs |2 r m / step - 2 B| < 1; and the terms must reach over 2 r m. Moving the start by m moves every
    term into the next interval: the numbers of terms depend on the start mod m alone.
    """
    block = claim.block
    intervals_seen = 2 * len(block or (1,))

    @cache
    def remainders(step: int, terms: int) -> tuple[int, ...]:
        apart = gcd(multiple, numbers.starts.grain)
        work.will_take(multiple // apart, "start", "step")
        return tuple([start for start in range(0, multiple, apart) if seen(start, step, terms)])

    def seen(start: int, step: int, terms: int) -> bool:
        intervals = Intervals(Scaled.of_whole(multiple, start, step), terms)
        return intervals.complete >= intervals_seen and (
            block is None or all(intervals.terms_in(i) == block[i % len(block)] for i in range(intervals.complete))
        )

    @cache
    def starts_of(step: int, terms: int, span: Span) -> Runs:
        every = span.members()
        if how_many_in([every]) <= multiple:
            work.will_take(how_many_in([every]), "start", "step")
            return just(start for start in every if seen(start % multiple, step, terms))
        return [span.members(Residues(r, multiple)) for r in remainders(step, terms)]

    def on(fold: Grid) -> Narrowing:
        low, high = _sizes(block, multiple, fold.terms)
        high = max(abs(numbers.steps.low), abs(numbers.steps.high)) if high is None else high
        both = [numbers.steps.narrowed(low, high), numbers.steps.narrowed(-high, -low)]
        return Narrowing([steps.members() for steps in both], lambda step, span: starts_of(step, fold.terms, span))

    return on


def _sizes(block: tuple[int, ...] | None, multiple: int, terms: int) -> tuple[int, int | None]:
    """Give the smallest and the largest |step| that the two inequalities of the proof leave; None for no largest."""
    least = max(1, -(-2 * len(block or (1,)) * multiple // (terms - 1)))
    if block is None:
        return least, None
    twice, inside = 2 * len(block) * multiple, 2 * sum(block)
    least = max(least, twice // (inside + 1) + 1)
    return least, -(-twice // (inside - 1)) - 1 if inside else None
