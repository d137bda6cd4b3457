"""What follows from what: a claim that a broader one on the list already says is not listed again (EXACT 11).

The rules F1 to F7, and no others. b follows from a only if b does not hold longer than a.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Hashable, Iterable, Sequence
from fractions import Fraction

from ..claims import (
    LINES_ALONG,
    BlockClaim,
    Claim,
    DigitClaim,
    DigitRunClaim,
    LandmarksClaim,
    NeighbourClaim,
    PlaceClaim,
    RemainderClaim,
    StepClaim,
    stated,
)
from ..grid import Grid
from ..kinds.names import Kind
from ..results import Pattern
from .friendly import friendliness_to_the_kind, never_hidden
from .lines import axis
from .neighbour import terms_apart

_BY_THE_ONES = frozenset(map(Fraction, (2, 5, 10)))


def implied(found: Sequence[Pattern], grid: Grid) -> set[int]:
    """The indexes of those that follow from another one."""
    broader = _Broader(found, grid)
    return {i for i, b in enumerate(found) if any(_no_longer(b, a) for a in broader.than(b.claim))}


def _no_longer(b: Pattern, a: Pattern) -> bool:
    return a.breaks_at is None or (b.breaks_at is not None and b.breaks_at <= a.breaks_at)


class _Broader:
    """The finds of one grid, by what narrower claims may follow from them."""

    def __init__(self, found: Sequence[Pattern], grid: Grid) -> None:
        self._grid = grid
        self._never_hidden = never_hidden(grid.count)
        self._run = {along for along in LINES_ALONG if axis(grid, along)[0] == 1}
        self._ones_tell = (
            grid.count.kind == Kind.WHOLE and min(grid.count.scaled_start, grid.count.scaled(grid.terms)) >= 0
        )
        self._by_topic: dict[Hashable, list[Pattern]] = defaultdict(list)
        for a in found:
            for topic in _topics(a.claim):
                self._by_topic[topic].append(a)

    def than(self, b: Claim) -> Iterable[Pattern]:
        """Give the finds that b follows from, if they hold as long."""
        if isinstance(b, NeighbourClaim):  # F1
            return self._by_topic["step"] if abs(terms_apart(self._grid, stated(b.direction))) == 1 else ()
        if isinstance(b, LandmarksClaim):  # F6
            return self._of_no_friendlier(self._by_topic[_rhythm(b)], stated(b.multiple))
        if isinstance(b, DigitRunClaim):  # F7
            return self._by_topic[_read(b), None] if b.along in self._run else ()
        if not isinstance(b, BlockClaim):
            return ()
        wider: list[Pattern] = []
        along, k = b.along, b.block_length
        if along != "count" and (k == 1 or along in self._run):  # F2, F3
            wider += self._by_topic[_read(b), k]
        if isinstance(b, RemainderClaim) and b.modulus != self._never_hidden:  # F4, F5
            wider += _of_multiples(self._by_topic["remainder", along, k], stated(b.modulus))
            if self._ones_tell and b.modulus in _BY_THE_ONES:
                wider += self._by_topic["ones", along, k]
        return wider

    def _of_no_friendlier(self, found: Iterable[Pattern], multiple: Fraction) -> list[Pattern]:
        """Those that speak of a multiple of this one, unless this one is what a class says before that."""
        if multiple == self._never_hidden:
            return []
        count, wider = self._grid.count, _of_multiples(found, multiple)
        own = friendliness_to_the_kind(multiple, count)
        return [a for a in wider if friendliness_to_the_kind(_number(a.claim), count) < own]


def _topics(a: Claim) -> Iterable[Hashable]:
    """Where narrower claims look for this one."""
    if isinstance(a, StepClaim):
        yield "step"
    elif isinstance(a, LandmarksClaim):
        yield _rhythm(a)
    elif isinstance(a, DigitRunClaim):
        if a.along == "count":
            yield _read(a), None
    elif isinstance(a, BlockClaim):
        k = a.block_length
        if a.along == "count":
            yield _read(a), k
        if isinstance(a, RemainderClaim):
            yield "remainder", a.along, k
        elif isinstance(a, DigitClaim) and a.place == 0:
            yield "ones", a.along, k


def _rhythm(claim: LandmarksClaim) -> Hashable:
    return "landmarks", claim.every, claim.first


def _read(claim: BlockClaim | DigitRunClaim) -> Hashable:
    """What is read off the terms, along whatever lines."""
    if isinstance(claim, RemainderClaim):
        modulus = stated(claim.modulus)
        return claim.family, modulus.numerator, modulus.denominator
    return (claim.family, claim.place, claim.part) if isinstance(claim, PlaceClaim) else (claim.family,)


def _of_multiples(found: Iterable[Pattern], number: Fraction) -> list[Pattern]:
    """Those that speak of a proper multiple of a number."""
    return [a for a in found if _divides(number, _number(a.claim))]


def _number(claim: Claim) -> Fraction:
    """The number of which the landmarks, or the remainders, of a claim are."""
    if isinstance(claim, RemainderClaim):
        return stated(claim.modulus)
    assert isinstance(claim, LandmarksClaim)
    return stated(claim.multiple)


def _divides(divisor: Fraction, number: Fraction) -> bool:
    """Whether a number is a proper multiple of a divisor, both above 0."""
    whole, over = number.numerator * divisor.denominator, number.denominator * divisor.numerator
    return over < whole and whole % over == 0
