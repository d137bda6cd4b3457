"""The same count in other line lengths beside the plan's own fold, with what is lit here lit there too, one sentence each."""

from collections.abc import Iterable
from dataclasses import dataclass

from routines.counting import Audience, Claim, Grid
from routines.models.shown_ideas import same_subject
from routines.words import SpokenFold, SpokenPattern, compare_folds

from .taking import take_fold

LENGTHS = range(2, 13)


@dataclass(frozen=True, slots=True)
class OtherFold:
    """A tile of the strip. `lit`: the chosen patterns as they look in this fold; empty where they are not to be seen.

    `against`: the line length that the sentence compares with, the plan's own; None in the plan's own fold.
    """

    grid: Grid
    lit: tuple[SpokenPattern, ...]
    sentence: str
    take: str
    against: int | None

    @property
    def is_mine(self) -> bool:
        return self.against is None


def other_folds(grid: Grid, chosen: Iterable[Claim], audience: Audience) -> list[OtherFold]:
    """Every line length from 2 to 12 and the plan's own, filled as this one is, each against the plan's own."""
    wanted, fills = list(chosen), (grid.fill,)
    others = [length for length in LENGTHS if length != grid.line_length]
    (mine,) = compare_folds(grid.count, (grid.line_length,), fills, audience)
    found = [_tile(grid, mine, wanted)]
    found += [_tile(one.grid, one, wanted) for one in compare_folds(grid.count, others, fills, audience, against=grid)]
    return sorted(found, key=lambda tile: tile.grid.line_length)


def _tile(grid: Grid, report: SpokenFold, wanted: list[Claim]) -> OtherFold:
    lit = tuple(pattern for claim in wanted if (pattern := _alike(claim, report.patterns)))
    return OtherFold(grid, lit, report.sentence, take_fold(grid), report.before)


def _alike(claim: Claim, patterns: Iterable[SpokenPattern]) -> SpokenPattern | None:
    return next((pattern for pattern in patterns if same_subject(pattern.claim, claim)), None)
