"""How many: the number of terms in each interval [j*m, (j+1)*m) that lies wholly within the terms in view.

Source: proof - the number of terms in the i-th interval is floor((y + m)/d) - floor(y/d) with y = y0 + i*m and d the
step's size: floor(m/d), and one more exactly where y mod d >= d - (m mod d). So the i-th and all intervals a whole number
of blocks later break the claim where a progression meets a window of remainders.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from ..claims import HowManyClaim, stated
from ..errors import CountError
from ..grid import Grid
from ..results import Pattern, Verdict
from .multiples import Scaled, friendly_ones
from .windows import first_in_window

MOST_INTERVALS = 200
"""A block that a claim leaves open is looked for among no more intervals than a count may have terms."""


class Intervals:
    """The intervals between multiples, numbered from 0 in counting order; all numbers scaled to whole ones."""

    def __init__(self, scaled: Scaled, terms: int) -> None:
        self.width, self.step = scaled.turn, abs(scaled.step)
        start, end = scaled.start, scaled.start + (terms - 1) * scaled.step
        if scaled.step > 0:  # from the first multiple at or above the start, upwards
            self._before = -start % self.width
            self._offset = self._before + self.step - 1
            self.complete = max(0, (end - start - self._before) // self.width)
        else:  # from the first multiple at or below the start, downwards
            self._before = start % self.width
            self._offset = self._before
            self.complete = max(0, (start - self._before - end) // self.width)
        self._first_beyond = 1 if scaled.step > 0 else 2  # a term on a multiple is above it, never below

    def first_in(self, i: int) -> int:
        """The first term in the i-th interval or, where it is empty, beyond it."""
        return (self._offset + i * self.width) // self.step + self._first_beyond

    def terms_in(self, i: int) -> int:
        return self.first_in(i + 1) - self.first_in(i)

    def members(self, i: int) -> tuple[int, ...]:
        """The terms in the i-th interval."""
        return tuple(range(self.first_in(i), self.first_in(i + 1)))

    def counts(self) -> list[int]:
        """How many terms are in each complete interval."""
        return [there - here for here, there in pairwise(self._firsts())]

    def groups(self) -> tuple[tuple[int, ...], ...]:
        """The terms of the complete intervals that have any."""
        return tuple([tuple(range(here, there)) for here, there in pairwise(self._firsts()) if here < there])

    def _firsts(self) -> list[int]:
        end = self._offset + (self.complete + 1) * self.width
        return [y // self.step + self._first_beyond for y in range(self._offset, end, self.width)]

    def completed_by(self, i: int) -> int:
        """The first term with which the i-th interval lies wholly within the terms in view."""
        return -(-(self._before + (i + 1) * self.width) // self.step) + 1

    def first_unlike(self, block: tuple[int, ...]) -> int | None:
        """The first interval, in view or not, that does not hold as many terms as the repeating block says."""
        fewer, rest = divmod(self.width, self.step)
        turn = len(block) * self.width
        found = []
        for i, said in enumerate(block):
            y = self._offset + i * self.width
            if said == fewer:
                j = first_in_window(y, turn, self.step, self.step - rest, self.step - 1) if rest else None
            elif said == fewer + 1:
                j = first_in_window(y, turn, self.step, 0, self.step - rest - 1)
            else:
                j = 0
            if j is not None:
                found.append(i + j * len(block))
        return min(found, default=None)


def find(grid: Grid) -> Iterator[Pattern]:
    if grid.count.wrap is not None:
        return
    for scaled in friendly_ones(grid.count):
        if scaled.turn < abs(scaled.step):
            continue  # most intervals would hold nothing
        intervals = Intervals(scaled, grid.terms)
        block = _shortest_block(intervals)
        if block:
            unlike = intervals.first_unlike(block)
            claim = HowManyClaim(scaled.multiple, block)
            yield Pattern.of(claim, intervals.groups(), None if unlike is None else intervals.completed_by(unlike))


def _shortest_block(intervals: Intervals) -> tuple[int, ...]:
    """The shortest block of which two full turns are in view; () if there is none."""
    counts = intervals.counts()
    for k in range(1, intervals.complete // 2 + 1):
        if counts[k:] == counts[:-k]:
            return tuple(counts[:k])
    return ()


def completed(claim: HowManyClaim, grid: Grid) -> Iterator[HowManyClaim]:
    _refuse_clocks(grid)
    for chosen in grid.count.friendly_multiples() if claim.multiple is None else (claim.multiple,):
        block = claim.block
        if block is None:
            intervals = Intervals(Scaled.of(grid.count, chosen), grid.terms)
            fits = intervals.complete <= MOST_INTERVALS
            block = (_shortest_block(intervals) if fits else ()) or (intervals.terms_in(0),)
        yield HowManyClaim(chosen, block)


def judge(claim: HowManyClaim, grid: Grid) -> Verdict:
    _refuse_clocks(grid)
    multiple, block = stated(claim.multiple), stated(claim.block)
    intervals = Intervals(Scaled.of(grid.count, multiple), grid.terms)
    unlike = intervals.first_unlike(block)
    if unlike is None:
        return Verdict.so(seen=intervals.complete >= 2 * len(block))
    by = intervals.completed_by(unlike)
    if unlike < intervals.complete:
        return Verdict.not_so((*(n for n in intervals.members(unlike) if n != by), by))
    return Verdict.so(intervals.complete >= 2 * len(block), by)


def _refuse_clocks(grid: Grid) -> None:
    if grid.count.wrap is not None:
        raise CountError("family", "how-many-on-a-clock")
