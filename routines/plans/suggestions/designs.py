"""Ready grids that show a wanted pattern, as pictures to choose from."""

from dataclasses import dataclass
from fractions import Fraction

from routines.counting import Audience, Claim, Fill, Grid, Limits, design_grids
from routines.counting.claims import BlockClaim
from routines.models.facts import count_in_words
from routines.words import SpokenPattern, find_patterns

from .taking import take_count

MOST_SHOWN = 8


@dataclass(frozen=True, slots=True)
class Design:
    grid: Grid
    pattern: SpokenPattern | None
    take: str
    in_words: str

    @property
    def lit(self) -> tuple[SpokenPattern, ...]:
        return (self.pattern,) if self.pattern else ()


def designs_for(wanted: Claim, limits: Limits, audience: Audience) -> tuple[list[Design], bool]:
    """The best grids that differ in step or fold, and whether these are all. Raises CountError."""
    found = design_grids([wanted], limits)
    distinct: dict[tuple[Fraction, int, Fill], Grid] = {}
    for grid in found.grids:
        distinct.setdefault((grid.count.step, grid.line_length, grid.fill), grid)
    shown = list(distinct.values())[:MOST_SHOWN]
    designs = [
        Design(grid, _wanted_in(grid, wanted, audience), take_count(grid), count_in_words(grid)) for grid in shown
    ]
    return designs, found.complete and len(shown) == len(found.grids)


def _wanted_in(grid: Grid, wanted: Claim, audience: Audience) -> SpokenPattern | None:
    """The wanted pattern as this grid shows it, with what was left open filled in."""
    given = {name: value for name, value in wanted.parameters.items() if name != "length"}
    for pattern in find_patterns(grid, implied=True, audience=audience):
        claim = pattern.claim
        if claim.family == wanted.family and given.items() <= claim.parameters.items() and _as_long(claim, wanted):
            return pattern
    return None


def _as_long(claim: Claim, wanted: Claim) -> bool:
    """Whether the blocks of a claim are as long as is wanted, where that is said."""
    if not (isinstance(claim, BlockClaim) and isinstance(wanted, BlockClaim)):
        return True
    return wanted.length in (None, claim.block_length)
