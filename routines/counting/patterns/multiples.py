"""A count and a friendly number on one whole-number scale: what remainders, landmarks and "how many" reckon with."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from math import gcd, lcm
from typing import NamedTuple

from ..count import Count


class Scaled(NamedTuple):
    """A multiple of some number, a count's start and its step, all times `scale`.

    every: after how many terms of the count the remainders by the multiple first come again.
    Source: proof - terms a gap apart leave the same remainder exactly when the gap's worth is a multiple of `turn`; the
    shortest such gap is turn/gcd(turn, step).
    """

    multiple: Fraction
    scale: int
    turn: int
    start: int
    step: int
    every: int

    @classmethod
    def of(cls, count: Count, multiple: Fraction) -> Scaled:
        """Give the scale on which all three are whole."""
        scale = lcm(count.scale, multiple.denominator)
        turn, times = multiple.numerator * (scale // multiple.denominator), scale // count.scale
        step = count.scaled_step * times
        return cls(multiple, scale, turn, count.scaled_start * times, step, turn // gcd(turn, step))

    @classmethod
    def of_whole(cls, multiple: int, start: int, step: int) -> Scaled:
        """Take numbers that are whole already."""
        return cls(Fraction(multiple), 1, multiple, start, step, multiple // gcd(multiple, step))

    @property
    def first(self) -> int | None:
        """The first term on a multiple, None if no term ever is: a linear congruence."""
        shared = self.turn // self.every
        if self.start % shared:
            return None
        if self.every == 1:
            return 1
        return -(self.start // shared) * pow(self.step // shared, -1, self.every) % self.every + 1


@lru_cache(maxsize=64)
def friendly_ones(count: Count) -> tuple[Scaled, ...]:
    """Every friendly multiple of a count, kept while its patterns are found family by family, fold by fold."""
    return tuple([Scaled.of(count, multiple) for multiple in count.friendly_multiples()])
