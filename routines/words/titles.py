"""What a count is called where nobody has called it anything: by what it goes, and the first thing that a class would say.

Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable

from routines.counting.claims import BlockClaim, Claim, DigitRunClaim, LandmarksClaim, RemainderClaim
from routines.counting.count import Count
from routines.counting.grid import Grid
from routines.counting.patterns.ranking import goes_without_saying

from .languages import LANGUAGES
from .seen import SpokenPattern
from .sentences import capital

LONGEST = 72


def title_of_count(grid: Grid, language: str) -> str:
    """By what the count goes, and from where: nothing that would give a pattern away."""
    count = grid.count
    said = LANGUAGES[language].paper["by" if count.step > 0 else "back_by"]
    return capital(said.format(step=count.difference_text(abs(count.step)), start=count.text(1)))


def title_of(grid: Grid, patterns: Iterable[SpokenPattern], language: str) -> str:
    """The count with the first of the patterns that a class would say and that fits into a line; else the count alone.

    patterns: the chosen ones first, then in the order in which a class notices them, in the language of the title.
    What the jumps are is said by the count; a title lists no numbers and promises nothing that does not last.
    """
    count = title_of_count(grid, language)
    for pattern in patterns:
        if pattern.holds == "always" and _is_said(pattern.claim, grid.count):
            seen = pattern.statement.partition(":")[0]
            title = f"{count}: {seen[:1].lower()}{seen[1:]}"
            if len(title) <= LONGEST:
                return title
    return count


def _is_said(claim: Claim, count: Count) -> bool:
    """Landmarks in line, what stays or takes turns, digits that go up: not what comes again after more counts than that.

    That tenths are tenths is no title either.
    """
    match claim:
        case RemainderClaim() if goes_without_saying(claim, count):
            return False
        case LandmarksClaim():
            return claim.lie != "scattered"
        case BlockClaim():
            return (claim.block_length or 0) <= (2 if claim.along == "count" else 1)
    return isinstance(claim, DigitRunClaim)
