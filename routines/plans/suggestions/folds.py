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
    wanted = list(chosen)
    lengths = sorted({*(length for length in LENGTHS if length <= grid.count.terms), grid.line_length})
    return [
        _mine(grid, wanted, audience) if n == grid.line_length else _tile(grid, n, wanted, audience) for n in lengths
    ]


def _mine(grid: Grid, wanted: list[Claim], audience: Audience) -> OtherFold:
    (report,) = compare_folds(grid.count, (grid.line_length,), (grid.fill,), audience)
    return OtherFold(grid, _lit(wanted, report), report.sentence, take_fold(grid), report.before)


def _tile(mine: Grid, length: int, wanted: list[Claim], audience: Audience) -> OtherFold:
    """Another line length, as if the plan's own were the fold before it."""
    _before, report = compare_folds(mine.count, (mine.line_length, length), (mine.fill,), audience)
    return OtherFold(report.grid, _lit(wanted, report), report.sentence, take_fold(report.grid), report.before)


def _lit(wanted: Iterable[Claim], report: SpokenFold) -> tuple[SpokenPattern, ...]:
    return tuple(pattern for claim in wanted if (pattern := _alike(claim, report.patterns)))


def _alike(claim: Claim, patterns: Iterable[SpokenPattern]) -> SpokenPattern | None:
    return next((pattern for pattern in patterns if same_subject(pattern.claim, claim)), None)
