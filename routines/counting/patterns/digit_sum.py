"""Digit sum: the digits of each whole number add to numbers that repeat in blocks.

Never always along the count or across the fill (EXACT 7): the break is searched for (`DigitSum`, with the proof that it ends).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from ..claims import DigitSumClaim
from ..errors import CountError
from ..grid import ALONG, Grid
from ..kinds.names import Kind
from ..results import Pattern, Verdict
from . import blocks
from .lines import Progression
from .readings import Reading

DIGIT_SUM_REACH = 200_000


class BeyondReach(CountError):
    """Digit sums that stay the same for longer than they are followed."""


class DigitSum(Reading):
    """The sum of the digits of |value|, for whole numbers.

    Source: proof that the search ends - where the digit sum is the same after a gap worth e, adding e carries s(e)/9
    times, s(e) being its digit sum; that is at most as often as e has digits, E. Going past a multiple of 10^M carries
    at least M - E times, so beyond M = 2E such a passing breaks the claim. Only lines that always begin just at these
    multiples could escape. Then a line's worth divides a power of ten, the lower digits come again after so many lines,
    and the higher ones change inside no line: if eleven such turns show no break (one of them would, were a multiple
    of ten turns passed inside a line), none comes.
    """

    def at(self, n: int) -> int:
        return sum(map(int, str(abs(self.count.scaled(n)))))

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        turn = self._turn(terms.by)
        reach = DIGIT_SUM_REACH if turn is None else min(DIGIT_SUM_REACH, 11 * turn)
        total = None if terms.end is None else max(0, -(-(terms.end - terms.first) // terms.by))
        most = reach if total is None else min(reach, total)
        for n in range(terms.first, terms.first + most * terms.by, terms.by):
            if self.differs(n, gap, change):
                return n
        if most == total or (turn is not None and reach == 11 * turn):
            return None
        raise BeyondReach("family", "digit-sums-beyond-reach")

    def _turn(self, by: int) -> int | None:
        """After how many lines of `by` terms the lower digits come again, if a line is worth part of a power of ten."""
        worth = abs(self.count.scaled_step) * by
        power = next((10**m for m in range(1, 40) if 10**m % worth == 0), None)
        return None if power is None or by == 1 else power // worth


def find(grid: Grid) -> Iterator[Pattern]:
    if grid.count.kind != Kind.WHOLE:
        return
    reading = DigitSum(grid.count)
    values = reading.upto(grid.terms)
    for along in ALONG:
        try:
            found = blocks.find(DigitSumClaim, reading, grid, along, values)
        except BeyondReach:  # said nothing of rather than said without its end
            continue
        if found:
            yield found


def completed(claim: DigitSumClaim, grid: Grid) -> Iterator[DigitSumClaim]:
    _refuse_other_kinds(grid)
    for along in blocks.ways_meant(claim):
        length = blocks.length_meant(claim, DigitSum(grid.count), grid, along)
        yield replace(claim, along=along, length=length)


def judge(claim: DigitSumClaim, grid: Grid) -> Verdict:
    _refuse_other_kinds(grid)
    return blocks.judge(claim, DigitSum(grid.count), grid)


def _refuse_other_kinds(grid: Grid) -> None:
    if grid.count.kind != Kind.WHOLE:
        raise CountError("family", "digits-of-no-whole-numbers")
