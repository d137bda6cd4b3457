"""The picture of a claim that somebody chose: its cells and words in the fullest view in which it can be seen."""

from __future__ import annotations

from .audience import Audience
from .checking import judge
from .claims import Claim
from .grid import Grid
from .patterns import facts, pattern_of
from .results import Pattern


def show_claim(claim: Claim, grid: Grid, audience: Audience | None = None) -> Pattern | None:
    """The pattern of a claim, listed or not; of one that dies in view, up to the term before it dies. None if never seen.

    Raises: CountError on the parameter that makes no sense for this count.

    >>> from .claims import DigitSumClaim
    >>> from .count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="9", step="9", terms=15), line_length=5)
    >>> pattern = show_claim(DigitSumClaim(along="count", blocks=((9,),)), grid)
    >>> len(pattern.cells), pattern.breaks_at
    (10, 11)
    """
    for shown in range(grid.terms, 1, -1):
        view = grid if shown == grid.terms else grid.cut(shown)
        whole, judged = judge(claim, view)
        if judged.true and judged.seen:
            found = (one for one in facts(view, implied=True) if one.claim == whole)
            return next((pattern_of(one, view, audience) for one in found), None)
    return None
