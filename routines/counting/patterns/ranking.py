"""The order of a list of patterns: most noticeable first (EXACT 28), one key."""

from __future__ import annotations

from fractions import Fraction

from ..claims import ALONG, Claim
from ..grid import Grid

Key = tuple[int, int, int, Fraction | int, int]

_LIES = ("row", "column", "rows", "columns", "down-right", "down-left")
_AFTER_ALL_PLACES = 10


def rank(claim: Claim, grid: Grid) -> Key:
    """The sort key of a claim: its class, then the coarser place, then the larger multiple, then along the count first.

    Classes: step; the neighbour along the fill; the one across it; landmarks that lie in lines; constant blocks; blocks
    of two; longer blocks (shorter ones first); digit run; how many; digit sum; table; other neighbours; sums; opposites;
    scattered landmarks. Parts come after places, remainders after digits.
    """
    family = claim.family
    if family == "neighbour":
        fill_direction = "down" if grid.fill == "down" else "right"
        straight = "-" not in claim.get("direction")
        return (1 if claim.get("direction") == fill_direction else 2 if straight else 11), 0, 0, 0, 0
    if family == "landmarks":
        lie = claim.get("lie")
        if lie == "scattered":
            return 14, 0, 0, -claim.get("multiple"), 0
        return 3, _LIES.index(lie), 0, -claim.get("multiple"), 0
    if family in ("digit", "remainder"):
        k = claim.length or 1
        return min(3 + k, 6), k, _place(claim), -claim.get("modulus", 0), ALONG.index(claim.get("along"))
    if family in ("digit-run", "digit-sum"):
        return (7 if family == "digit-run" else 9), claim.length or 0, _place(claim), 0, ALONG.index(claim.get("along"))
    if family == "how-many":
        return 8, 0, 0, -claim.get("multiple"), 0
    return {"step": 0, "table": 10, "sums": 12, "opposites": 13}[family], 0, 0, 0, 0


def _place(claim: Claim) -> int:
    """Coarser places first, then parts, then what has neither."""
    if claim.get("place") is not None:
        return -int(claim.get("place"))
    return _AFTER_ALL_PLACES + (claim.get("part") is None)
