"""What follows from what: a claim that a broader one on the list already says is not listed again (EXACT 11).

The rules F1 to F7, and no others. b follows from a only if b does not hold longer than a.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from fractions import Fraction

from ..claims import Claim
from ..grid import Grid
from .found import Found
from .lines import axis
from .neighbour import terms_apart


def implied(found: Sequence[Found], grid: Grid) -> set[int]:
    """The indexes of those that follow from another one."""
    broader: dict[Hashable, list[Found]] = {}
    for a in found:
        for topic in _says_about(a.claim):
            broader.setdefault(topic, []).append(a)
    return {
        i
        for i, b in enumerate(found)
        if any(
            a is not b and _no_longer(b, a) and _follows(b.claim, a.claim, grid)
            for topic in _may_follow_about(b.claim)
            for a in broader.get(topic, ())
        )
    }


def _says_about(a: Claim) -> Iterator[Hashable]:
    """Under which topics narrower claims look for this one; only such pairs are compared."""
    family, along = a.family, a.get("along")
    if family == "step":
        yield family
    elif family == "landmarks":
        yield family, a.get("every"), a.get("first")
    elif family in ("digit", "digit-run", "digit-sum", "remainder"):
        if along == "count":
            yield family, a.get("place"), a.get("part"), _plain(a.get("modulus"))
        if family == "remainder" or (family == "digit" and a.get("place") == 0):
            yield "remainders", along, a.length


def _may_follow_about(b: Claim) -> Iterator[Hashable]:
    if b.family == "neighbour":
        yield "step"
    elif b.family == "landmarks":
        yield b.family, b.get("every"), b.get("first")
    elif b.family in ("digit", "digit-run", "digit-sum", "remainder"):
        yield b.family, b.get("place"), b.get("part"), _plain(b.get("modulus"))
        if b.family == "remainder":
            yield "remainders", b.get("along"), b.length


def _plain(modulus: Fraction | None) -> tuple[int, int] | None:
    return None if modulus is None else (modulus.numerator, modulus.denominator)


def _no_longer(b: Found, a: Found) -> bool:
    return a.breaks_at is None or (b.breaks_at is not None and b.breaks_at <= a.breaks_at)


def _follows(b: Claim, a: Claim, grid: Grid) -> bool:
    if b.family != a.family:
        return _from_another_family(b, a, grid)
    if b.family in ("digit", "digit-sum"):
        return _same_reading(b, a) and _from_the_count(b, a, grid)
    if b.family == "remainder":
        return _from_a_multiple(b, a) or (b.get("modulus") == a.get("modulus") and _from_the_count(b, a, grid))
    if b.family == "digit-run":  # F7
        return _same_reading(b, a) and a.get("along") == "count" != b.get("along") and _are_runs(grid, b.get("along"))
    if b.family == "landmarks":  # F6
        same = b.get("every") == a.get("every") and b.get("first") == a.get("first")
        return same and b.get("multiple") != a.get("multiple") and _divides(b.get("multiple"), a.get("multiple"))
    return False


def _from_another_family(b: Claim, a: Claim, grid: Grid) -> bool:
    if a.family == "step" and b.family == "neighbour":  # F1
        return abs(terms_apart(grid, b.get("direction"))) == 1
    if a.family == "digit" and b.family == "remainder":  # F5
        return (
            a.get("place") == 0
            and b.get("modulus") in (10, 5, 2)
            and a.get("along") == b.get("along")
            and a.length == b.length
            and grid.count.kind == "whole"
            and min(grid.count.scaled_start, grid.count.scaled(grid.terms)) >= 0
        )
    return False


def _same_reading(b: Claim, a: Claim) -> bool:
    return bool(b.get("place") == a.get("place") and b.get("part") == a.get("part"))


def _from_the_count(b: Claim, a: Claim, grid: Grid) -> bool:
    """F2 and F3: along lines what already holds along the count."""
    if a.get("along") != "count" or b.get("along") == "count" or a.length != b.length:
        return False
    return a.length == 1 or _are_runs(grid, b.get("along"))


def _from_a_multiple(b: Claim, a: Claim) -> bool:
    """F4: remainders by a divisor of the modulus."""
    return (
        b.get("modulus") != a.get("modulus")
        and a.get("along") == b.get("along")
        and a.length == b.length
        and _divides(b.get("modulus"), a.get("modulus"))
    )


def _are_runs(grid: Grid, along: str) -> bool:
    return axis(grid, along)[0] == 1


def _divides(divisor: Fraction, number: Fraction) -> bool:
    over = number.denominator * divisor.numerator
    return number.numerator * divisor.denominator % over == 0
