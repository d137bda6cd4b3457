"""Which wants a claim is: one, or a choice of several where parameters are left out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from ..claims import (
    DIRECTIONS,
    LINES_ALONG,
    SUMS,
    Claim,
    DigitClaim,
    DigitRunClaim,
    DigitSumClaim,
    HowManyClaim,
    LandmarksClaim,
    NeighbourClaim,
    OppositesClaim,
    RemainderClaim,
    StepClaim,
    SumName,
    SumsClaim,
    TableClaim,
)
from ..grid import Along, Grid
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
        match claim:
            case StepClaim() | NeighbourClaim() | SumsClaim():
                found.append(claim.difference or 0)
            case TableClaim():
                found.append(claim.step or 0)
            case RemainderClaim():
                found += [rest for block in claim.blocks or () for rest in block] + _multiples(claim.modulus, limits)
            case LandmarksClaim() | HowManyClaim():
                found += _multiples(claim.multiple, limits)
            case DigitClaim() | DigitRunClaim():
                found += [part.unit for part in parts_meant(claim, limits) if part is not None]
    return found


def _wants(claim: Claim, limits: Limits, numbers: Numbers, work: Work) -> Iterator[Want]:
    match claim:
        case StepClaim():
            yield step(claim, numbers)
        case NeighbourClaim():
            for direction in DIRECTIONS if claim.direction is None else (claim.direction,):
                yield neighbour(claim, direction, numbers)
        case RemainderClaim():
            for modulus in _multiples(claim.modulus, limits):
                for along in everywhere(claim):
                    yield remainder(claim, along, numbers.whole(modulus), numbers)
        case DigitSumClaim():
            for along in everywhere(claim):
                yield digit_sum(claim, along, numbers)
        case DigitClaim() | DigitRunClaim():
            yield from _digit_wants(claim, limits, numbers, work)
        case LandmarksClaim():
            for multiple in _multiples(claim.multiple, limits):
                yield landmarks(claim, numbers.whole(multiple), numbers, work)
        case HowManyClaim():
            for multiple in _multiples(claim.multiple, limits):
                yield how_many(claim, numbers.whole(multiple), numbers, work)
        case SumsClaim():
            for which in SUMS if claim.which is None else (claim.which,):
                yield from _sum_wants(claim, which, numbers)
        case TableClaim():
            yield table(claim, numbers)
        case OppositesClaim():
            yield opposites(claim, numbers)
        case _:
            # What nothing narrows is looked for in every grid: each that is offered is judged.
            yield lambda fold: NO_MATTER


def _digit_wants(claim: DigitClaim | DigitRunClaim, limits: Limits, numbers: Numbers, work: Work) -> Iterator[Want]:
    for part in parts_meant(claim, limits):
        for along in everywhere(claim):
            if part is None:
                yield _long_enough(claim, along)
                continue
            wheel = part.wheel(numbers.scale, int(limits.reach * numbers.scale))
            if isinstance(claim, DigitClaim):
                yield digit(claim, along, wheel, numbers, work)
            else:
                yield digit_run(claim, along, wheel, numbers, work)


def _long_enough(claim: DigitClaim | DigitRunClaim, along: Along) -> Want:
    """A claim about a part that is no wheel: only the lines must be long enough to show it."""
    if isinstance(claim, DigitRunClaim):
        return lambda fold: NEVER if max(map(len, fold.lines(along))) < 2 else NO_MATTER
    return lambda fold: NEVER if lines_for(claim, along, fold) is None else NO_MATTER


def _sum_wants(claim: SumsClaim, which: SumName, numbers: Numbers) -> Iterator[Want]:
    if which == "line-totals":
        for along in LINES_ALONG if claim.along is None else (claim.along,):
            yield line_totals(claim, along, numbers)
    else:
        # These hold in every count; the fold alone decides whether they can be seen.
        yield lambda fold: NO_MATTER if _large_enough(which, fold) else NEVER


def _large_enough(which: SumName, fold: Grid) -> bool:
    if which == "ends":
        return fold.terms >= 4
    size = 2 if which == "block-corners" else 3
    return any(
        fold.at(row + size - 1, column + size - 1) and fold.at(row, column) and fold.at(row, column + size - 1)
        for row in range(1, fold.rows - size + 2)
        for column in range(1, fold.columns - size + 2)
    )


def _multiples(chosen: Fraction | None, limits: Limits) -> list[Fraction]:
    """Give the modulus or multiple of a claim, or all friendly ones where it is left out."""
    if chosen is not None:
        return [chosen]
    return list(number_kind(limits.kind, limits.style, Fraction(limits.grain)).friendly_multiples())
