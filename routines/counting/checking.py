"""Judging a claim that a teacher, a child or an import states: any claim, listed or not."""

from __future__ import annotations

from .claims import Claim, PlaceClaim
from .errors import CountError
from .grid import Grid
from .patterns import MODULES
from .results import Verdict


def check(claim: Claim, grid: Grid) -> Verdict:
    """Say whether a claim is true of the terms in view, whether it can be seen, and for how long it holds.

    A parameter that is left out means any value; of the ways in which the claim may be meant, the verdict is on the one
    that does best: true and seen, then true, then the longest lived.
    Raises: CountError on the parameter that makes no sense for this count.

    >>> from .claims import DigitClaim
    >>> from .count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="14", step="-6", terms=20), line_length=5)
    >>> verdict = check(DigitClaim(place=0, along="column", length=1), grid)
    >>> verdict.true, verdict.breaks_at, verdict.true_from
    (False, 6, 4)
    """
    return judge(claim, grid)[1]


def judge(claim: Claim, grid: Grid) -> tuple[Claim, Verdict]:
    """Judge a claim, and give it back as it was understood, with nothing left out."""
    if not isinstance(claim, Claim):
        raise CountError("family", "no-claim")
    family = MODULES[type(claim)]
    ways = [(whole, family.judge(whole, grid)) for whole in family.completed(claim, grid)]
    if not ways:
        raise _nothing_meant(claim)
    return max(ways, key=lambda way: _merit(way[1]))


def _merit(judged: Verdict) -> tuple[bool, bool, bool, int]:
    return (
        judged.true and judged.seen,
        judged.true,
        judged.breaks_at is None,
        judged.breaks_at or 0,
    )


def _nothing_meant(claim: Claim) -> CountError:
    if isinstance(claim, PlaceClaim):
        return CountError("place", "no-place-meant")
    return CountError("family", "nothing-meant")
