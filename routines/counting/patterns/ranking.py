"""The order of a list of patterns: most noticeable first (EXACT 28), one key."""

from __future__ import annotations

from fractions import Fraction

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
    OppositesClaim,
    PlaceClaim,
    RemainderClaim,
    StepClaim,
    SumsClaim,
    TableClaim,
    stated,
)
from ..grid import ALONG, Fill, Grid

Key = tuple[int, int, Fraction | int, int, int]

_CLASSES: dict[type[Claim], int] = {
    StepClaim: 0,
    DigitRunClaim: 7,
    HowManyClaim: 8,
    DigitSumClaim: 9,
    TableClaim: 10,
    SumsClaim: 12,
    OppositesClaim: 13,
}
_AFTER_ALL_PLACES = 10


def rank(claim: Claim, grid: Grid) -> Key:
    """The sort key of a claim: its class, then the coarser place, then the larger multiple.

    Classes: step; the neighbour along the fill; the one across it; landmarks that lie in lines; constant blocks; blocks
    of two; longer blocks; digit run; how many; digit sum; table; other neighbours; sums; opposites; scattered landmarks.
    Parts come after places, what has neither after both; what is left to tell apart is told by the shorter block, then
    by its way: along the count before rows before columns, landmarks in one line before those in several.
    """
    length = claim.block_length or 0 if isinstance(claim, BlockClaim) else 0
    return _class(claim, grid), _place(claim), -_multiple(claim), length, _way(claim)


def _class(claim: Claim, grid: Grid) -> int:
    match claim:
        case NeighbourClaim():
            fill_direction = "down" if grid.fill is Fill.DOWN else "right"
            return 1 if claim.direction == fill_direction else 2 if claim.direction in ("right", "down") else 11
        case LandmarksClaim():
            return 14 if claim.lie == "scattered" else 3
        case DigitClaim() | RemainderClaim():
            return min(3 + (claim.block_length or 1), 6)
    return _CLASSES[type(claim)]


def _place(claim: Claim) -> int:
    """Coarser places first, then parts, then what has neither."""
    if not isinstance(claim, PlaceClaim):
        return _AFTER_ALL_PLACES + 1
    return _AFTER_ALL_PLACES if claim.place is None else -claim.place


def _multiple(claim: Claim) -> Fraction | int:
    match claim:
        case RemainderClaim():
            return stated(claim.modulus)
        case LandmarksClaim() | HowManyClaim():
            return stated(claim.multiple)
    return 0


def _way(claim: Claim) -> int:
    match claim:
        case LandmarksClaim():
            return LIES.index(stated(claim.lie))
        case DigitRunClaim() | BlockClaim() | SumsClaim():
            return ALONG.index(claim.along) if claim.along else 0
    return 0
