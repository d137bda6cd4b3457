"""Ready grids that show a wanted pattern, as pictures to choose from."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import islice

from routines.counting import Audience, Claim, Grid, Limits, design_grids
from routines.counting.claims import BlockClaim
from routines.models.facts import count_in_words
from routines.words import SpokenPattern, find_patterns

from .taking import take_count

MOST_SHOWN = 6


@dataclass(frozen=True, slots=True)
class Design:
    grid: Grid
    pattern: SpokenPattern
    take: str
    in_words: str

    @property
    def lit(self) -> tuple[SpokenPattern, ...]:
        return (self.pattern,)


def designs_for(wanted: Claim, limits: Limits, audience: Audience) -> tuple[list[Design], bool]:
    """The best grids that differ to the eye, in which the pattern can be lit, and whether these are all. Raises CountError."""
    found = design_grids([wanted], limits)
    pictured = ((grid, _wanted_in(grid, wanted, audience)) for grid in that_differ(found.grids))
    shown = list(islice(((grid, pattern) for grid, pattern in pictured if pattern), MOST_SHOWN))
    designs = [Design(grid, pattern, take_count(grid), count_in_words(grid)) for grid, pattern in shown]
    return designs, found.complete and len(shown) == len(found.grids)


def that_differ(grids: Sequence[Grid]) -> list[Grid]:
    """Of grids, best first, those that go by other steps or have other lines: first one of each step, then other lines.

    What differs in the start alone, in how far it goes or in which way it is filled is left out.
    """
    of_step: dict[Fraction, Grid] = {}
    of_fold: dict[tuple[Fraction, int], Grid] = {}
    for grid in grids:
        of_step.setdefault(grid.count.step, grid)
        of_fold.setdefault((grid.count.step, grid.line_length), grid)
    return list(dict.fromkeys([*of_step.values(), *of_fold.values()]))


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
