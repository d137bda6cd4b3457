"""The number theory under backwards design: which whole numbers solve a congruence, and which of a span do."""

from __future__ import annotations

from dataclasses import dataclass
from math import gcd


@dataclass(frozen=True, slots=True)
class Residues:
    """All whole numbers that leave `residue` when divided by `modulus`.

    >>> Residues(3, 10).meet(Residues(1, 4))
    Residues(residue=13, modulus=20)
    """

    residue: int
    modulus: int

    def meet(self, other: Residues) -> Residues | None:
        """Give the numbers in both, or None where there are none.

        Source: the Chinese remainder theorem for moduli that may share factors - the two meet exactly when their
        residues differ by a multiple of g = gcd of the moduli, and then once in every least common multiple.
        """
        shared = gcd(self.modulus, other.modulus)
        apart = other.residue - self.residue
        if apart % shared:
            return None
        reduced = other.modulus // shared
        turns = apart // shared * pow(self.modulus // shared, -1, reduced) % reduced
        together = self.modulus * reduced
        return Residues((self.residue + turns * self.modulus) % together, together)


EVERY_NUMBER = Residues(0, 1)


def solve(factor: int, wanted: int, modulus: int) -> Residues | None:
    """Give every x with factor * x = wanted (mod modulus), or None where there is none.

    Source: proof - with g = gcd(factor, modulus) a solution needs g to divide `wanted`; dividing all three by g makes
    the factor invertible, so x is one residue modulo modulus / g.

    >>> solve(4, 8, 10)
    Residues(residue=2, modulus=5)
    >>> solve(4, 7, 10) is None
    True
    """
    shared = gcd(factor, modulus)
    if wanted % shared:
        return None
    reduced = modulus // shared
    return Residues(wanted // shared * pow(factor // shared, -1, reduced) % reduced, reduced)


@dataclass(frozen=True, slots=True)
class Span:
    """The multiples of `grain` from `low` to `high`, both included.

    >>> list(Span(4, 40, 3).members(Residues(1, 5)))
    [6, 21, 36]
    """

    low: int
    high: int
    grain: int

    def members(self, residues: Residues = EVERY_NUMBER) -> range:
        """Give those that lie in the residue class, smallest first."""
        both = residues.meet(Residues(0, self.grain))
        if both is None:
            return range(0)
        return range(self.low + (both.residue - self.low) % both.modulus, self.high + 1, both.modulus)

    def has(self, number: int) -> bool:
        """Say whether this very number is one of them."""
        return self.low <= number <= self.high and number % self.grain == 0

    def narrowed(self, low: int, high: int) -> Span:
        """Give the part of the span that also lies from `low` to `high`."""
        return Span(max(self.low, low), min(self.high, high), self.grain)
