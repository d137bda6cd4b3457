"""Remainder: what is left over a friendly multiple repeats in blocks: even and odd, the eighths, the inches.

Always. Source: proof - terms a gap apart leave the same remainder exactly when the gap's worth is a multiple of the
modulus; the shortest such gap along a line is modulus/gcd(modulus, the line's step) terms of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from math import gcd

from ..claims import RemainderClaim, stated
from ..count import Count
from ..errors import CountError
from ..grid import ALONG, Grid
from ..results import Pattern, Verdict
from . import blocks
from .lines import Progression, lines_of
from .multiples import Scaled, friendly_ones
from .readings import Reading, within


class Remainder(Reading):
    """The remainder v - m*floor(v/m), below zero too.

    Source: proof - two terms a gap apart leave the same remainder exactly when the gap's worth is a multiple of m,
    whatever the terms: one pair decides for all.
    """

    reads_sign = True

    def __init__(self, count: Count, modulus: Fraction) -> None:
        super().__init__(count)
        self.modulus = modulus
        if count.wrap is not None and (count.wrap / modulus).denominator != 1:
            raise CountError("modulus", "minutes-do-not-divide", hours=count.wrap // 60)
        self._scaled = Scaled.of(count, modulus)
        self.turn = self._scaled.turn
        self._shown: dict[int, Fraction] = {}

    def at(self, n: int) -> int:
        return (self._scaled.start + (n - 1) * self._scaled.step) % self.turn

    def upto(self, terms: int) -> list[int | None]:
        start, step, turn = self._scaled.start, self._scaled.step, self.turn
        return [None, *[v % turn for v in range(start, start + terms * step, step)]]

    def shown(self, value: int) -> Fraction:
        found = self._shown.get(value)
        if found is None:
            found = self._shown[value] = Fraction(value, self._scaled.scale)
        return found

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        return within(terms, 0) if self.differs(terms.first, gap, change) else None

    def settled(self, zero: int | None) -> int:
        return 1


def find(grid: Grid) -> Iterator[Pattern]:
    lines_along = [(along, lines_of(grid, along)) for along in ALONG]
    most = [lines.longest // 2 for _, lines in lines_along]
    for scaled in friendly_ones(grid.count):
        reading: Remainder | None = None
        for (along, lines), longest in zip(lines_along, most, strict=True):
            k = scaled.every // gcd(scaled.every, lines.stride)
            if k > longest:
                continue
            if reading is None:
                reading = Remainder(grid.count, scaled.multiple)
                values = reading.upto(grid.terms)
            rests = blocks.blocks_in(reading, values, lines, k)
            yield Pattern.of(RemainderClaim(scaled.multiple, along, rests), lines.in_view)


def completed(claim: RemainderClaim, grid: Grid) -> Iterator[RemainderClaim]:
    largest = max((rest for block in claim.blocks or () for rest in block), default=-1)
    for modulus in grid.count.friendly_multiples() if claim.modulus is None else (claim.modulus,):
        if largest >= modulus:
            continue
        for along in blocks.ways_meant(claim):
            length = blocks.length_meant(claim, Remainder(grid.count, modulus), grid, along)
            yield replace(claim, modulus=modulus, along=along, length=length)


def judge(claim: RemainderClaim, grid: Grid) -> Verdict:
    return blocks.judge(claim, Remainder(grid.count, stated(claim.modulus)), grid)
