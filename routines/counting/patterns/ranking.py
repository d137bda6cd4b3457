"""The order of a list of patterns: most noticeable first (EXACT 28), one key."""

from __future__ import annotations

from fractions import Fraction

from ..claims import ALONG, Claim
from ..grid import Grid

Key = tuple[int, int, Fraction | int, int, int]

_LIES = ("row", "column", "rows", "columns", "down-right", "down-left")
_CLASSES = {"step": 0, "digit-run": 7, "how-many": 8, "digit-sum": 9, "table": 10, "sums": 12, "opposites": 13}
_AFTER_ALL_PLACES = 10


def rank(claim: Claim, grid: Grid) -> Key:
    """The sort key of a claim: its class, then the coarser place, then the larger multiple.

    Classes: step; the neighbour along the fill; the one across it; landmarks that lie in lines; constant blocks; blocks
    of two; longer blocks; digit run; how many; digit sum; table; other neighbours; sums; opposites; scattered landmarks.
    Parts come after places, what has neither after both; what is left to tell apart is told by the shorter block, then
    by its way: along the count before rows before columns, landmarks in one line before those in several.
    """
    multiple = claim.get("modulus") or claim.get("multiple") or 0
    return _class(claim, grid), _place(claim), -multiple, claim.length or 0, _way(claim)


def _class(claim: Claim, grid: Grid) -> int:
    family = claim.family
    if family == "neighbour":
        fill_direction = "down" if grid.fill == "down" else "right"
        straight = "-" not in claim.get("direction")
        return 1 if claim.get("direction") == fill_direction else 2 if straight else 11
    if family == "landmarks":
        return 14 if claim.get("lie") == "scattered" else 3
    if family in ("digit", "remainder"):
        return min(3 + (claim.length or 1), 6)
    return _CLASSES[family]


def _place(claim: Claim) -> int:
    """Coarser places first, then parts, then what has neither."""
    if claim.get("place") is not None:
        return -int(claim.get("place"))
    return _AFTER_ALL_PLACES + (claim.get("part") is None)


def _way(claim: Claim) -> int:
    if claim.family == "landmarks":
        return _LIES.index(claim.get("lie")) if claim.get("lie") in _LIES else len(_LIES)
    return ALONG.index(claim.get("along")) if claim.get("along") else 0
