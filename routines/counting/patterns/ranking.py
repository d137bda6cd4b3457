"""The order of a list of patterns: most noticeable first (EXACT 28), for those who listen (EXACT 29)."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from functools import lru_cache

from ..audience import DEFAULT_LEVEL
from ..claims import (
    LIES,
    BlockClaim,
    Claim,
    DigitClaim,
    DigitRunClaim,
    DigitSumClaim,
    HowManyClaim,
    LandmarksClaim,
    NeighbourClaim,
    PlaceClaim,
    RemainderClaim,
    StepClaim,
    SumsClaim,
    stated,
)
from ..count import Count
from ..grid import ALONG, Fill, Grid
from ..kinds.names import Kind
from ..results import Pattern
from ..written_units import written_units
from .friendly import LEARNED_WITH_THE_TABLES, Friendliness, friendliness, never_hidden
from .readings import written_parts

Key = tuple[int, int, int, Friendliness, int, int]

_PARTS = 10
_NO_PLACE = _PARTS + 1
_NO_MULTIPLE = (0, Fraction(0))

# What levels may meet first. Common practice, no source, but for the grades in which even and odd (2.OA.C.3), the tables
# (3.OA.C.7), multiples and remainders (4.OA.B.4, 4.NBT.B.6) are learned: Common Core State Standards, 2010.
YOUNGEST, YOUNG = 1, 3
COUNTED_BY_THE_YOUNGEST = frozenset(map(Fraction, (2, 5, 10, 100)))
LEFT_OVER_AT_LEVELS_2_AND_3 = frozenset(map(Fraction, (2, 5, 10)))
FIRST_SIX, FIRST_EIGHT, FIRST_TWELVE = 6, 8, 12


def rank(claim: Claim, grid: Grid, level: int = DEFAULT_LEVEL) -> Key:
    """The sort key of a claim: its class, then the coarser place, then the friendlier multiple.

    Classes: step; the neighbour along the fill; the one across it; landmarks that lie in lines; constant blocks; blocks
    of two; longer blocks; digit run; how many; digit sum; table; other neighbours; sums; opposites; landmarks that are
    scattered or said without how they lie.
    Parts come after places, what has neither after both; the remainder by the whole of a kind ranks as a part. What is
    left to tell apart is told by the shorter block, then by its way: along the count before rows before columns,
    landmarks in one line before those in several. For levels 0 and 1, whole numbers, all that speaks of other multiples
    than 2, 5, 10 and 100, of sums or of pairs comes after the rest.
    """
    length = claim.block_length or 0 if isinstance(claim, BlockClaim) else 0
    late = level <= YOUNGEST and grid.count.kind == Kind.WHOLE and not _is_met_by_the_youngest(claim)
    return late, _class(claim, grid), _place(claim, grid.count), _multiple(claim, grid.count), length, _way(claim)


def in_order(found: Iterable[Pattern], grid: Grid, level: int = DEFAULT_LEVEL) -> list[Pattern]:
    """Patterns by rank, but what a level is not to meet first as far down as it has to be.

    Where too few others are left, what is barred from the fewest places follows.
    """
    waiting = sorted(found, key=lambda one: rank(one.claim, grid, level))
    barred = [barred_places(one.claim, grid, level) for one in waiting]
    listed: list[Pattern] = []
    while waiting:
        at = next((i for i, places in enumerate(barred) if places <= len(listed)), None)
        if at is None:
            at = barred.index(min(barred))
        listed.append(waiting.pop(at))
        barred.pop(at)
    return listed


def barred_places(claim: Claim, grid: Grid, level: int = DEFAULT_LEVEL) -> int:
    """From how many of the first places of a list a claim is barred: 0 for what may come first (EXACT 29)."""
    match claim:
        case SumsClaim():
            if level <= YOUNGEST:
                return FIRST_TWELVE
            return FIRST_EIGHT if level <= YOUNG and claim.which == "line-totals" else FIRST_SIX
        case DigitSumClaim():
            return FIRST_TWELVE if level <= YOUNGEST else 0
        case DigitClaim() | DigitRunClaim():
            unwritten = _unwritten(grid.count, grid.terms, claim.place, claim.part)
            return FIRST_SIX if 2 * unwritten >= grid.terms else 0
        case RemainderClaim() if goes_without_saying(claim, grid.count):
            return FIRST_TWELVE
    return _barred_for_its_multiple(claim, grid.count, level) if grid.count.kind == Kind.WHOLE else 0


def goes_without_saying(claim: RemainderClaim, count: Count) -> bool:
    """Whether a claim says that all are whole centimeters, or tenths, where nothing finer is written."""
    units = written_units(count)
    if units is None:
        finest = Fraction(1, 10 ** count.form.places_written(count.start)) if count.kind == Kind.DECIMAL else None
    else:
        finest = units.small.size / count.form.counted_parts()
    return finest is not None and claim.along == "count" and stated(claim.modulus) <= finest


def _barred_for_its_multiple(claim: Claim, count: Count, level: int) -> int:
    if level > YOUNG:
        return 0
    match claim:
        case RemainderClaim():
            if level <= YOUNGEST:
                return 0 if claim.modulus == 2 else FIRST_TWELVE
            return 0 if claim.modulus in LEFT_OVER_AT_LEVELS_2_AND_3 else FIRST_EIGHT
        case HowManyClaim() if level <= YOUNGEST:
            return 0 if claim.multiple == 10 else FIRST_TWELVE
        case LandmarksClaim() | HowManyClaim():
            own = claim.multiple == abs(count.step)
            return FIRST_SIX if claim.multiple in LEARNED_WITH_THE_TABLES and not own else 0
    return 0


@lru_cache(maxsize=256)
def _unwritten(count: Count, terms: int, place: int | None, part: str | None) -> int:
    """How many of the counts in view do not write a digit or a part."""
    if count.kind == Kind.WHOLE and part is None:
        bound, scaled, step = 10 ** (place or 0), count.scaled_start, count.scaled_step
        return 0 if not place else sum([abs(scaled + n * step) < bound for n in range(terms)])
    if count.kind == Kind.FRACTION and part is not None and count.style.wholes != "both":
        written = written_parts(count)  # read already; a fraction's parts are all that it writes, but for "3/3 = 1"
        return sum([part not in written.of(n) for n in range(1, terms + 1)])
    return sum([count.span(n, place=place, part=part) is None for n in range(1, terms + 1)])


def _is_met_by_the_youngest(claim: Claim) -> bool:
    match claim:
        case StepClaim() | NeighbourClaim() | DigitClaim() | DigitRunClaim():
            return True
        case RemainderClaim():
            return claim.modulus in COUNTED_BY_THE_YOUNGEST
        case LandmarksClaim() | HowManyClaim():
            return claim.multiple in COUNTED_BY_THE_YOUNGEST
    return False


def _class(claim: Claim, grid: Grid) -> int:
    match claim:
        case NeighbourClaim():
            fill_direction = "down" if grid.fill is Fill.DOWN else "right"
            return 1 if claim.direction == fill_direction else 2 if claim.direction in ("right", "down") else 11
        case LandmarksClaim():
            return 14 if claim.lie in (None, "scattered") else 3
        case DigitClaim() | RemainderClaim():
            return min(3 + (claim.block_length or 1), 6)
    return claim.noticed


def _place(claim: Claim, count: Count) -> int:
    """Coarser places first, then parts, then what has neither."""
    match claim:
        case PlaceClaim():
            return _PARTS if claim.place is None else -claim.place
        case RemainderClaim() if count.kind != Kind.WHOLE and claim.modulus == never_hidden(count):
            return _PARTS
    return _NO_PLACE


def _multiple(claim: Claim, count: Count) -> Friendliness:
    match claim:
        case RemainderClaim():
            return friendliness(stated(claim.modulus), count)
        case LandmarksClaim() | HowManyClaim():
            return friendliness(stated(claim.multiple), count)
    return _NO_MULTIPLE


def _way(claim: Claim) -> int:
    match claim:
        case LandmarksClaim():
            return LIES.index(claim.lie or "scattered")
        case DigitRunClaim() | BlockClaim() | SumsClaim():
            return ALONG.index(claim.along) if claim.along else 0
    return 0
