"""The starts and steps of the limits as whole numbers over one common denominator."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor, lcm

from ..count import LARGEST_VALUE
from ..kinds.registry import kind_named
from .congruences import Span
from .limits import Limits, Number


@dataclass(frozen=True, slots=True)
class Numbers:
    """The limits' starts and steps in units of 1/scale, and whether a value below zero can occur at all."""

    scale: int
    starts: Span
    steps: Span
    largest: int
    goes_below_zero: bool

    @classmethod
    def of(cls, limits: Limits, numbers: Iterable[Number]) -> Numbers:
        """Choose the scale so that the grain and the given numbers, those of the claims, are whole."""
        scale = lcm(*(Fraction(number).denominator for number in (limits.grain, *numbers)))
        grain = int(limits.grain * scale)

        largest = floor(min(limits.largest, LARGEST_VALUE) * scale)

        def span(pair: tuple[Number, Number]) -> Span:
            return Span(ceil(pair[0] * scale), floor(pair[1] * scale), grain)

        return cls(
            scale,
            span(limits.starts),
            span(limits.steps).narrowed(-2 * largest, 2 * largest),
            largest,
            kind_named(limits.kind).goes_below_zero,
        )

    def whole(self, number: Number) -> int:
        """Give a number of a claim in units of 1/scale."""
        scaled = number * self.scale
        assert scaled == int(scaled), "the scale makes every claim's numbers whole"
        return int(scaled)

    def starts_for(self, step: int, terms: int) -> Span:
        """Give the starts with which all the terms keep within the largest value (and above zero, where they must)."""
        low, high = (-self.largest, self.largest) if self.goes_below_zero else (0, self.largest)
        way = (terms - 1) * step
        return self.starts.narrowed(low - min(way, 0), high - max(way, 0))

    @property
    def all_above_zero(self) -> bool:
        """Whether no value in any grid within the limits is below zero."""
        return not self.goes_below_zero or (self.starts.low >= 0 and self.steps.low >= 0)
