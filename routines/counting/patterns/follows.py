"""What follows from what: a claim that a broader one on the list already says is not listed again (EXACT 11).

The rules F1 to F7, and no others. b follows from a only if b does not hold longer than a.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Hashable, Iterable, Sequence
from fractions import Fraction

from ..claims import Claim
from ..grid import Grid
from .found import Found
from .lines import axis
from .neighbour import terms_apart

_REPEATING = ("digit", "digit-sum", "remainder")
_BY_THE_ONES = (2, 5, 10)


def implied(found: Sequence[Found], grid: Grid) -> set[int]:
    """The indexes of those that follow from another one."""
    broader = _Broader(found, grid)
    return {i for i, b in enumerate(found) if any(_no_longer(b, a) for a in broader.than(b.claim))}


def _no_longer(b: Found, a: Found) -> bool:
    return a.breaks_at is None or (b.breaks_at is not None and b.breaks_at <= a.breaks_at)


class _Broader:
    """The finds of one grid, by what narrower claims may follow from them."""

    def __init__(self, found: Sequence[Found], grid: Grid) -> None:
        self._grid = grid
        self._runs = {along: axis(grid, along)[0] == 1 for along in ("row", "column")}
        self._ones_tell = (
            grid.count.kind == "whole" and min(grid.count.scaled_start, grid.count.scaled(grid.terms)) >= 0
        )
        self._by_topic: dict[Hashable, list[Found]] = defaultdict(list)
        for a in found:
            for topic in _topics(a.claim):
                self._by_topic[topic].append(a)

    def than(self, b: Claim) -> Iterable[Found]:
        """Give the finds that b follows from, if they hold as long."""
        family, along = b.family, b.get("along")
        if family == "neighbour":  # F1
            return self._by_topic["step"] if abs(terms_apart(self._grid, b.get("direction"))) == 1 else ()
        if family == "landmarks":  # F6
            return _of_multiples(self._by_topic[_rhythm(b)], b, "multiple")
        if family == "digit-run":  # F7
            return self._by_topic[_read(b), None] if along != "count" and self._runs[along] else ()
        if family not in _REPEATING:
            return ()
        wider: list[Found] = []
        k = b.length
        if along != "count" and (k == 1 or self._runs[along]):  # F2, F3
            wider += self._by_topic[_read(b), k]
        if family == "remainder":  # F4, F5
            wider += _of_multiples(self._by_topic["remainder", along, k], b, "modulus")
            if self._ones_tell and b.get("modulus") in _BY_THE_ONES:
                wider += self._by_topic["ones", along, k]
        return wider


def _topics(a: Claim) -> Iterable[Hashable]:
    """Where narrower claims look for this one."""
    family, along = a.family, a.get("along")
    if family == "step":
        yield family
    elif family == "landmarks":
        yield _rhythm(a)
    elif family == "digit-run" and along == "count":
        yield _read(a), None
    elif family in _REPEATING:
        k = a.length
        if along == "count":
            yield _read(a), k
        if family == "remainder":
            yield family, along, k
        elif a.get("place") == 0:
            yield "ones", along, k


def _rhythm(claim: Claim) -> Hashable:
    return "landmarks", claim.get("every"), claim.get("first")


def _read(claim: Claim) -> Hashable:
    """What is read off the terms, along whatever lines."""
    modulus = claim.get("modulus")
    named = (modulus.numerator, modulus.denominator) if modulus else (claim.get("place"), claim.get("part"))
    return claim.family, *named


def _of_multiples(found: Iterable[Found], b: Claim, name: str) -> list[Found]:
    """Those that speak of a proper multiple of the number b speaks of."""
    number: Fraction = b.get(name)
    return [a for a in found if _divides(number, a.claim.get(name))]


def _divides(divisor: Fraction, number: Fraction) -> bool:
    """Whether a number is a proper multiple of a divisor, both above 0."""
    whole, over = number.numerator * divisor.denominator, number.denominator * divisor.numerator
    return over < whole and whole % over == 0
