"""Ready grids that show a wanted pattern, as pictures to choose from."""

from dataclasses import dataclass

from routines.counting import Audience, Claim, Grid, Limits, Pattern, design_grids, show_claim
from routines.facts import count_in_words

from .taking import take_count

MOST_SHOWN = 8


@dataclass(frozen=True, slots=True)
class Design:
    grid: Grid
    pattern: Pattern | None
    take: str
    in_words: str

    @property
    def lit(self) -> tuple[Pattern, ...]:
        return (self.pattern,) if self.pattern else ()


def designs_for(wanted: Claim, limits: Limits, audience: Audience) -> tuple[list[Design], bool]:
    """The best grids that differ in step or fold, and whether these are all. Raises CountError."""
    found = design_grids([wanted], limits)
    distinct: dict[tuple, Grid] = {}
    for grid in found.grids:
        distinct.setdefault((grid.count.step, grid.line_length, grid.fill), grid)
    shown = list(distinct.values())[:MOST_SHOWN]
    designs = [
        Design(grid, show_claim(wanted, grid, audience=audience), take_count(grid), count_in_words(grid))
        for grid in shown
    ]
    return designs, found.complete and len(shown) == len(found.grids)
