"""The picture of a claim that somebody chose: its cells in the fullest view in which it can be seen."""

from __future__ import annotations

from .checking import judge
from .claims import Claim
from .grid import Grid
from .patterns import find_patterns
from .results import Pattern


def show_claim(claim: Claim, grid: Grid) -> Pattern | None:
    """The pattern of a claim, listed or not; of one that dies in view, up to the term before it dies. None if never seen.

    Raises: CountError on the parameter that makes no sense for this count.

    >>> from .claims import DigitSumClaim
    >>> from .count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="9", step="9", terms=15), line_length=5)
    >>> pattern = show_claim(DigitSumClaim(along="count", blocks=((9,),)), grid)
    >>> len(pattern.cells), pattern.breaks_at
    (10, 11)
    """
    shown = shown_in(claim, grid)
    return shown[1] if shown else None


def shown_in(claim: Claim, grid: Grid) -> tuple[Grid, Pattern] | None:
    """The same with the view in which it is shown."""
    for shown in range(grid.terms, 1, -1):
        view = grid if shown == grid.terms else grid.cut(shown)
        whole, judged = judge(claim, view)
        if judged.true and judged.seen:
            found = (one for one in find_patterns(view, implied=True) if one.claim == whole)
            pattern = next(found, None)
            return (view, pattern) if pattern else None
    return None
