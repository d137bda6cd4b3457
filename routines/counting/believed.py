"""Which idea that does not last is one that a class would believe (EXACT 29). Common practice, no source."""

from __future__ import annotations

from .claims import DigitClaim, DigitRunClaim, LandmarksClaim
from .count import Count
from .grid import Fill, Grid
from .kinds.names import Kind
from .patterns.first_to_say import ends_near_the_view
from .patterns.friendly import LEARNED_WITH_THE_TABLES
from .patterns.ranking import COUNTED_BY_THE_YOUNGEST, YOUNGEST, barred_places
from .results import Pattern
from .slips.integers import BELOW_ZERO_FROM


def worth_believing(pattern: Pattern, grid: Grid, level: int) -> bool:
    """Whether a pattern of this grid is over near the end of the view, and looks to the class as if it went on.

    Digits, runs of digits and landmarks in line, that a class of this level may meet first, with an end within one and a
    half times the terms, after as many counts as a line holds, and not below zero where the class does not know of that.

    >>> from .count import Count
    >>> from .patterns import find_patterns
    >>> grid = Grid(Count.parse(kind="whole", start="34", step="11", terms=6), line_length=3)
    >>> [one.breaks_at for one in find_patterns(grid) if worth_believing(one, grid, 3)]
    [7, 7]
    """
    claim, end = pattern.claim, pattern.breaks_at
    if (
        end is None
        or end <= grid.line_length
        or not ends_near_the_view(pattern, grid)
        or barred_places(claim, grid, level)
    ):
        return False
    if not isinstance(claim, DigitClaim | DigitRunClaim | LandmarksClaim):
        return False
    if grid.count.kind == Kind.FRACTION and getattr(claim, "part", None) in ("top", "bottom"):
        return False  # only how we write it comes to an end: 7/4 is followed by 8/4, written 2
    count = grid.count
    # Of two in the line that is just being filled nobody thinks that they all lie there.
    unseen = ("scattered", "column" if grid.fill is Fill.DOWN else "row")
    if isinstance(claim, LandmarksClaim) and not (claim.lie not in unseen and _are_known(claim, count, level)):
        return False
    knows = level >= BELOW_ZERO_FROM or count.wrap is not None or min(count.value(1), count.value(grid.terms)) < 0
    return knows or count.value(end) >= 0


def _are_known(claim: LandmarksClaim, count: Count, level: int) -> bool:
    """Whether a class looks for these landmarks by itself: of whole numbers what it counts by, at any level."""
    if count.kind != Kind.WHOLE:
        return True
    if level <= YOUNGEST:
        return claim.multiple in COUNTED_BY_THE_YOUNGEST
    return claim.multiple not in LEARNED_WITH_THE_TABLES or claim.multiple == abs(count.step)
