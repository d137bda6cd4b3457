"""The first six patterns to put before a class, out of the list in its order. Common practice, no source.

The list itself is in the order of EXACT 28 and 29, which ranks by class of claim; here is chosen what of it to say first.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import chain
from typing import TypeVar

from ..audience import DEFAULT_LEVEL
from ..claims import (
    DigitClaim,
    DigitRunClaim,
    HowManyClaim,
    LandmarksClaim,
    OppositesClaim,
    RemainderClaim,
    TableClaim,
    stated,
)
from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..results import Pattern
from .friendly import LEARNED_WITH_THE_TABLES, is_read_by
from .ranking import FIRST_SIX, YOUNG, YOUNGEST, barred_places
from .said_again import are_kin, says_again

AnyPattern = TypeVar("AnyPattern", bound=Pattern)

MET_OFTEN_ENOUGH = 3
HELD_IN_MIND = 4
# Source: Common Core State Standards 6.NS.C.6.A.
OPPOSITES_FROM = 6
TWOS_AND_FIVES = frozenset(map(Fraction, (2, 5)))
READ_BY = frozenset(map(Fraction, (2, 5, 10, 100, 1000)))


def first_to_say(found: Sequence[AnyPattern], grid: Grid, level: int = DEFAULT_LEVEL) -> list[AnyPattern]:
    """The same patterns, six to say first and then the others, each in the order of the list.

    First comes what the board shows plainly, and what no pattern before it has said. Where these are fewer than six, what is
    said again fills up, the same multiples last, then what is not plain, and last what a class of this level is not to meet
    first. Of the six the last is how many there are in turns, 3, 2, 3; of whole numbers levels K and 1 hear of digits before even
    numbers and fives.
    """
    first: list[AnyPattern] = []
    for one in found:
        if len(first) == FIRST_SIX:
            break
        if not any(_put_off(one, grid, level)) and not any(says_again(one.claim, a.claim, grid.count) for a in first):
            first.append(one)
    others = _without(first, found)
    if len(first) < FIRST_SIX:
        first += sorted(others, key=lambda one: _left_over(one, grid, level))[: FIRST_SIX - len(first)]
    if level <= YOUNGEST and grid.count.kind == Kind.WHOLE:
        first = _digits_before_evens(first)
    # What is barred at this level stays behind all that is not.
    first.sort(key=lambda one: (barred_places(one.claim, grid, level), _in_steps(one)))
    return first + _without(first, others)


def _put_off(pattern: Pattern, grid: Grid, level: int) -> tuple[int, int]:
    """What keeps a pattern from the first six, as a sort key: (0, 0) for what may be there; what is left over comes last."""
    barred = barred_places(pattern.claim, grid, level)
    return barred, 0 if barred or _is_plain(pattern, grid, level) else 1


def _left_over(pattern: Pattern, grid: Grid, level: int) -> tuple[int, int, int]:
    """In which order what was passed over fills up: of what is plain but said already, numbers that were pointed to are the
    least new; of what is not plain, they can at least be pointed to, and remainders are the farthest from what is written."""
    barred, unclear = _put_off(pattern, grid, level)
    landmarks, remainder = isinstance(pattern.claim, LandmarksClaim), isinstance(pattern.claim, RemainderClaim)
    return barred, unclear, (1 + remainder - landmarks if unclear else landmarks)


def _without(chosen: Sequence[AnyPattern], found: Sequence[AnyPattern]) -> list[AnyPattern]:
    claims = {one.claim for one in chosen}
    return [one for one in found if one.claim not in claims]


def _is_plain(pattern: Pattern, grid: Grid, level: int) -> bool:
    """Whether the board shows a pattern plainly to a class of this level, and the count bears it out.

    What is over near the end of the view is offered as the idea that does not last. Multiples met once or twice are no
    pattern yet, but for those that a class reads by; only of these it matters how many counts they hold. Multiples that are
    learned with the tables are looked for where the jumps bring them to mind, and parts of a unit there or in a line. How many
    there are from one multiple to the next is read otherwise below zero, where a whole has two sides. A place is times the
    step for those who multiply, and opposites are for those who know of them.
    The nought before the point says nothing, nor do tops take turns with a whole that is written without one, nor are they
    anything by themselves over other bottoms: 5, 2, 1, 1, 1 of 5/6, 2/3, 1/2, 1/3, 1/6.
    """
    if ends_near_the_view(pattern, grid):
        # With another pair it is no less so.
        return isinstance(pattern.claim, OppositesClaim) and level >= OPPOSITES_FROM
    match pattern.claim:
        case OppositesClaim():
            return level >= OPPOSITES_FROM
        case TableClaim():
            return level >= YOUNG
        case DigitClaim(part="top", blocks=tuple() as blocks):
            whole = any(0 in block for block in blocks if len(block) > 1)  # a whole is written without one
            return not whole and _is_of_one_size(grid)
        case DigitClaim(place=int() as place):
            return Fraction(10) ** place <= max(abs(grid.count.value(1)), abs(grid.count.value(grid.terms)))
        case LandmarksClaim(multiple=multiple) as claim:
            often = len(pattern.cells) >= MET_OFTEN_ENOUGH or is_read_by(multiple, grid.count)
            return often and not _is_far_fetched(claim, grid.count)
        case HowManyClaim(multiple=multiple, block=block):
            held = len(stated(block)) <= HELD_IN_MIND and is_read_by(multiple, grid.count)
            return held and min(grid.count.value(1), grid.count.value(grid.terms)) >= 0
        case RemainderClaim() as claim:
            return _is_plainly_left_over(claim, grid, level)
    return True


def _digits_before_evens(first: Sequence[AnyPattern]) -> list[AnyPattern]:
    """How numbers are written is met in levels K and 1 (1.NBT.B.2), even and odd after that (2.OA.C.3)."""
    digits = [i for i, one in enumerate(first) if isinstance(one.claim, DigitClaim | DigitRunClaim)]
    until = digits[-1] + 1 if digits else 0
    return sorted(first[:until], key=_is_of_twos_or_fives) + list(first[until:])


def _is_of_twos_or_fives(one: Pattern) -> bool:
    match one.claim:
        case LandmarksClaim(multiple=size) | RemainderClaim(modulus=size):
            return size in TWOS_AND_FIVES
    return False


def _is_of_one_size(grid: Grid) -> bool:
    """Whether all fractions in view are written over the same bottom."""
    bottoms = {grid.count.parts(n).get("bottom") for n in range(1, grid.terms + 1)}
    return len(bottoms - {None}) <= 1


def _in_steps(one: Pattern) -> bool:
    """Whether it says 3, 2, 3 of how many there are, which is found last of all."""
    return isinstance(one.claim, HowManyClaim) and len(stated(one.claim.block)) > 1


def _is_far_fetched(claim: LandmarksClaim, count: Count) -> bool:
    """Whether a class counting so does not think of these multiples: of the eights counting by tens, of quarter hours here
    and there counting by 25 minutes."""
    multiple = stated(claim.multiple)
    if count.kind == Kind.WHOLE:
        thought_of = multiple not in LEARNED_WITH_THE_TABLES
    else:
        thought_of = bool(claim.lines) or is_read_by(multiple, count)
    return not thought_of and not are_kin(multiple, abs(count.step))


def ends_near_the_view(pattern: Pattern, grid: Grid) -> bool:
    """Whether it is over within one and a half times the terms (EXACT 29)."""
    return pattern.breaks_at is not None and 2 * pattern.breaks_at <= 3 * grid.terms


def _is_plainly_left_over(claim: RemainderClaim, grid: Grid, level: int) -> bool:
    """Whether a remainder is the part that children read, and held in mind.

    What is the same of every count is plain, and what they are read by; that all counts land on a multiple is so of every
    kind and level. Fractions are read as they are written, and so are measures before division. Below zero what is left over is
    not what is written, -4 is 1 past a multiple of 5, but on multiples and halfway between two.
    """
    count, modulus = grid.count, stated(claim.modulus)
    if (claim.block_length or 0) > HELD_IN_MIND:
        return False
    same = claim.along == "count" and claim.block_length == 1
    if count.kind == Kind.WHOLE:
        known = same or modulus in READ_BY
    else:
        read = count.kind != Kind.FRACTION and level >= YOUNG and (same or is_read_by(modulus, count))
        known = read or (same and not any(chain(*stated(claim.blocks))))
    if not known or count.wrap is not None or min(count.value(1), count.value(grid.terms)) >= 0:
        return known
    return all(2 * value % modulus == 0 for n in range(1, grid.terms + 1) if (value := count.value(n)) < 0)
