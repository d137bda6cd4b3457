"""Which wants a claim is: one, or a choice of several where parameters are left out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from ..claims import DIRECTIONS, SUMS, Claim
from ..grid import Grid
from ..kinds.registry import number_kind
from .blocks import digit_sum, everywhere, lines_for, remainder
from .digits import digit, digit_run
from .how_many import how_many
from .landmarks import landmarks
from .limits import Limits, Number
from .linear import line_totals, neighbour, opposites, step, table
from .numbers import Numbers
from .wants import NEVER, NO_MATTER, Want
from .wheels import parts_meant
from .work import Work


def wants_of(wanted: Sequence[Claim], limits: Limits, numbers: Numbers, work: Work) -> list[list[Want]]:
    """Give for each claim the wants of which any one is enough."""
    return [list(_wants(claim, limits, numbers, work)) for claim in wanted]


def numbers_in(wanted: Iterable[Claim], limits: Limits) -> list[Number]:
    """Give the numbers that must be whole in the scale that the search counts in."""
    found: list[Number] = []
    for claim in wanted:
        for name in ("difference", "step"):
            found.append(claim.get(name) or 0)
        if claim.family == "remainder":
            found += [rest for block in claim.get("blocks") or () for rest in block] + _moduli(claim, "modulus", limits)
        elif claim.family in ("landmarks", "how-many"):
            found += _moduli(claim, "multiple", limits)
        elif claim.family in ("digit", "digit-run"):
            found += [part.unit for part in parts_meant(claim, limits) if part is not None]
    return found


def _wants(claim: Claim, limits: Limits, numbers: Numbers, work: Work) -> Iterator[Want]:
    match claim.family:
        case "step":
            yield step(claim, numbers)
        case "neighbour":
            direction = claim.get("direction")
            for way in DIRECTIONS if direction is None else (direction,):
                yield neighbour(claim, way, numbers)
        case "remainder":
            for modulus in _moduli(claim, "modulus", limits):
                for along in everywhere(claim):
                    yield remainder(claim, along, numbers.whole(modulus), numbers)
        case "digit-sum":
            for along in everywhere(claim):
                yield digit_sum(claim, along, numbers)
        case "digit" | "digit-run":
            yield from _digit_wants(claim, limits, numbers, work)
        case "landmarks":
            for multiple in _moduli(claim, "multiple", limits):
                yield landmarks(claim, numbers.whole(multiple), numbers, work)
        case "how-many":
            for multiple in _moduli(claim, "multiple", limits):
                yield how_many(claim, numbers.whole(multiple), numbers, work)
        case "sums":
            for which in SUMS if claim.get("which") is None else (claim.get("which"),):
                yield from _sum_wants(claim, which, numbers)
        case "table":
            yield table(claim, numbers)
        case "opposites":
            yield opposites(claim, numbers)


def _digit_wants(claim: Claim, limits: Limits, numbers: Numbers, work: Work) -> Iterator[Want]:
    make = digit if claim.family == "digit" else digit_run
    for part in parts_meant(claim, limits):
        for along in everywhere(claim):
            if part is None:
                yield _long_enough(claim, along)
            else:
                yield make(claim, along, part.wheel(numbers.scale, int(limits.reach * numbers.scale)), numbers, work)


def _long_enough(claim: Claim, along: str) -> Want:
    """A claim about a part that is no wheel: only the lines must be long enough to show it."""
    return lambda fold: NEVER if lines_for(claim, along, fold) is None else NO_MATTER


def _sum_wants(claim: Claim, which: str, numbers: Numbers) -> Iterator[Want]:
    if which == "line-totals":
        along = claim.get("along")
        for way in ("row", "column") if along is None else (along,):
            yield line_totals(claim, way, numbers)
    else:
        # These hold in every count; the fold alone decides whether they can be seen.
        yield lambda fold: NO_MATTER if _large_enough(which, fold) else NEVER


def _large_enough(which: str, fold: Grid) -> bool:
    if which == "ends":
        return fold.terms >= 4
    size = 2 if which == "block-corners" else 3
    return any(
        fold.at(row + size - 1, column + size - 1) and fold.at(row, column) and fold.at(row, column + size - 1)
        for row in range(1, fold.rows - size + 2)
        for column in range(1, fold.columns - size + 2)
    )


def _moduli(claim: Claim, name: str, limits: Limits) -> list[Fraction]:
    """Give the modulus or multiple of a claim, or all friendly ones where it is left out."""
    chosen = claim.get(name)
    if chosen is not None:
        return [chosen]
    return list(number_kind(limits.kind, limits.style, Fraction(limits.grain)).friendly_multiples())
