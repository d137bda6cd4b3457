"""What a fold does to a count, next to a fold it is compared with: the names of what lines up, and one line."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property

from routines.counting.audience import Audience, band_of
from routines.counting.claims import Claim, DigitClaim, LandmarksClaim, RemainderClaim, stated
from routines.counting.count import Count
from routines.counting.folds import FoldReport, Sight
from routines.counting.folds import compare_folds as compared
from routines.counting.grid import Fill, Grid
from routines.counting.kinds.names import Kind

from .languages import LANGUAGES
from .page import Page, page_of
from .seen import SpokenPattern, find_patterns
from .sentences import sentence

# How many things a clause names, and how many clauses there are, by level band: K-1, 2-3, 4-5, 6 and up.
MOST_NAMES = (1, 2, 2, 3)
MOST_CLAUSES = (1, 2, 3, 3)


@dataclass(frozen=True, kw_only=True)
class SpokenSight(Sight):
    """Something that lines up or slides, with its name."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def name(self) -> str:
        """What it is called: "the tens", "the ones digits"."""
        return _name(self.of, page_of(self.grid, self.audience))


@dataclass(frozen=True, kw_only=True)
class SpokenFold(FoldReport):
    """A fold with its sentence for an audience."""

    lines_up: tuple[SpokenSight, ...]
    slides: tuple[SpokenSight, ...]
    vanishes: tuple[SpokenSight, ...]
    now_line_up: tuple[SpokenSight, ...]
    now_slide: tuple[SpokenSight, ...]
    within: tuple[SpokenSight, ...]
    audience: Audience = field(repr=False)

    @cached_property
    def patterns(self) -> tuple[SpokenPattern, ...]:
        """Everything that can be seen in the fold; worked out when it is first asked for."""
        return tuple(find_patterns(self.grid, audience=self.audience))

    @cached_property
    def sentence(self) -> str:
        """What this fold does that the one it is compared with does not, in one line."""
        folds = LANGUAGES[self.audience.language].folds
        lines = {"lines": folds.lines[self.grid.fill], "length": self.grid.line_length}
        here = self._clauses(("line up", "slide"), (self.lines_up, self.slides))
        if self.before is None:
            return sentence(f"{folds.clauses['here'].format(**lines)}, {'; '.join(here or [self._nothing()])}")
        news = self.now_line_up, self.now_slide, self.vanishes
        said = self._clauses(("now line up", "now slide", "no longer"), news)
        said = said or self._clauses(("stay", "slide on"), (self.lines_up, self.slides)) or [self._nothing()]
        return sentence(f"{folds.clauses['against'].format(before=self.before, **lines)} {'; '.join(said)}")

    def _nothing(self) -> str:
        """What is said where nothing lines up or slides: what stays along the fill, or what all counts share, or nothing."""
        folds = LANGUAGES[self.audience.language].folds
        rest = [sight for sight in self.within if not isinstance(sight.of, LandmarksClaim)]
        line = {"line": folds.line[self.grid.fill]}
        for key, sights in (
            ("within", rest),
            ("in one line", [sight for sight in self.within if sight not in rest]),
        ):
            said = self._clauses((key,), (sights,), **line)
            if said:
                return said[0]
        if self.shared:
            return folds.clauses["shared"]
        return folds.clauses["still nothing" if self.before is not None and self.nothing_before else "nothing"]

    def _clauses(self, keys: Sequence[str], groups: Sequence[Sequence[SpokenSight]], **words: str) -> list[str]:
        """A clause for each group: what a class would notice, and the rest only where there is nothing else in any."""
        band, language = band_of(self.audience.level), LANGUAGES[self.audience.language]
        plain = any(sight.plain for sights in groups for sight in sights)
        said = []
        for key, sights in zip(keys, groups, strict=True):
            names = [sight.name for sight in sights if sight.plain or not plain][: MOST_NAMES[band]]
            if names:
                said.append(language.folds.clauses[key].format(names=language.listing(names), **words))
        return said[: MOST_CLAUSES[band]]


def compare_folds(
    count: Count,
    line_lengths: Iterable[int] = range(2, 13),
    fills: Sequence[Fill] = (Fill.ACROSS, Fill.DOWN),
    audience: Audience | None = None,
    against: Grid | None = None,
) -> list[SpokenFold]:
    """The count in every fold with what each does in words: see `routines.counting.compare_folds`."""
    return [_spoken(report, audience or Audience()) for report in compared(count, line_lengths, fills, against)]


def _spoken(report: FoldReport, audience: Audience) -> SpokenFold:
    def named(sights: Iterable[Sight]) -> tuple[SpokenSight, ...]:
        return tuple(
            SpokenSight(sight.of, sight.way, sight.claim, sight.plain, grid=report.grid, audience=audience)
            for sight in sights
        )

    return SpokenFold(
        grid=report.grid,
        lines_up=named(report.lines_up),
        slides=named(report.slides),
        vanishes=named(report.vanishes),
        before=report.before,
        now_line_up=named(report.now_line_up),
        now_slide=named(report.now_slide),
        within=named(report.within),
        shared=report.shared,
        nothing_before=report.nothing_before,
        audience=audience,
    )


def _name(feature: Claim, page: Page) -> str:
    match feature:
        case LandmarksClaim():
            noun = page.mark(stated(feature.multiple))
        case DigitClaim(part=str(part)):
            noun = page.part(part).noun
        case DigitClaim():
            noun = page.digit(stated(feature.place)).noun
        case RemainderClaim() if page.count.kind == Kind.WHOLE and feature.modulus == 2:
            return page.language.folds.parity
        case RemainderClaim():
            multiple = stated(feature.modulus)
            noun = page.language.remainder(page.difference(multiple), page.named_mark(multiple)).noun
        case _:
            raise AssertionError(f"no fold lines up a claim of {feature.family}")
    return page.language.the_many(noun)
