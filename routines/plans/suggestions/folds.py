"""The same count in other line lengths, with what is lit here lit there too, and one sentence each."""

from collections.abc import Iterable
from dataclasses import dataclass

from routines.counting import Audience, Claim, Grid
from routines.models.shown_ideas import same_subject
from routines.words import SpokenPattern, compare_folds

from .taking import take_fold

LENGTHS = range(2, 13)


@dataclass(frozen=True, slots=True)
class OtherFold:
    """`lit`: the chosen patterns as they look in this fold; empty where they are not to be seen."""

    grid: Grid
    lit: tuple[SpokenPattern, ...]
    sentence: str
    take: str


def other_folds(grid: Grid, chosen: Iterable[Claim], audience: Audience) -> list[OtherFold]:
    """Every line length from 2 to 12 but this one, filled as this one is."""
    lengths = [length for length in LENGTHS if length <= grid.count.terms]
    reports = compare_folds(grid.count, line_lengths=lengths, fills=(grid.fill,), audience=audience)
    wanted = list(chosen)
    return [
        OtherFold(
            report.grid,
            tuple(pattern for claim in wanted if (pattern := _alike(claim, report.patterns))),
            report.sentence,
            take_fold(report.grid),
        )
        for report in reports
        if report.line_length != grid.line_length
    ]


def _alike(claim: Claim, patterns: Iterable[SpokenPattern]) -> SpokenPattern | None:
    return next((pattern for pattern in patterns if same_subject(pattern.claim, claim)), None)
