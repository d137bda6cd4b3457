"""Patterns, ideas and verdicts with their words, each made when it is first read."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cached_property

from routines.counting.audience import Audience, level_of
from routines.counting.checking import judge
from routines.counting.claims import Claim
from routines.counting.ended import ended_runs as ended_in
from routines.counting.explaining import explain_cells as explained
from routines.counting.grid import Grid
from routines.counting.ideas import ideas as ideas_of
from routines.counting.patterns import find_patterns as found_in
from routines.counting.patterns.first_to_say import first_to_say
from routines.counting.results import Idea, Pattern, Verdict
from routines.counting.showing import shown_in

from .claims import Words
from .describing import describe, verdict_because


@dataclass(frozen=True)
class SpokenPattern(Pattern):
    """A pattern of a view with its words for an audience."""

    view: Grid = field(repr=False)
    audience: Audience = field(repr=False)
    printed: Grid = field(repr=False, compare=False)

    @classmethod
    def saying(cls, pattern: Pattern, view: Grid, audience: Audience | None, printed: Grid) -> SpokenPattern:
        """The pattern with its words; printed: the whole grid of which the view shows the first counts."""
        facts = (pattern.claim, pattern.groups, pattern.breaks_at, pattern.holds)
        return cls(*facts, view, audience or Audience(), printed)

    @cached_property
    def _words(self) -> Words:
        return describe(self.claim, self.view, self.holds, self.breaks_at, self.audience, self.printed)

    @property
    def statement(self) -> str:
        """A line for the teacher."""
        return self._words.statement

    @property
    def student_words(self) -> str:
        """What a child may say."""
        return self._words.student_words

    @property
    def ways_to_say_it(self) -> tuple[str, ...]:
        """The ways in which a child may say it, the best first."""
        return self._words.ways_to_say_it

    @property
    def because(self) -> str:
        """The reason in numbers."""
        return self._words.because


@dataclass(frozen=True)
class SpokenIdea(Idea):
    """An idea whose pattern has words."""

    pattern: SpokenPattern


@dataclass(frozen=True, kw_only=True)
class SpokenVerdict(Verdict):
    """A verdict with its reason for an audience; `claim` is the claim as it was understood, with nothing left out."""

    claim: Claim
    view: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def because(self) -> str:
        """Why it is so, or what is there instead."""
        return verdict_because(self.claim, self, self.view, self.audience)


def find_patterns(
    grid: Grid, upto: int | None = None, implied: bool = False, audience: Audience | None = None
) -> list[SpokenPattern]:
    """Everything that can be seen in a grid with its words: see `routines.counting.find_patterns`."""
    view = grid if upto is None else grid.cut(upto)
    return [
        SpokenPattern.saying(pattern, view, audience, grid)
        for pattern in found_in(view, implied=implied, audience=audience)
    ]


def patterns_to_say(grid: Grid, audience: Audience | None = None) -> list[SpokenPattern]:
    """Everything that can be seen in a grid with its words, the six to put before a class first."""
    return [
        SpokenPattern.saying(pattern, grid, audience, grid)
        for pattern in first_to_say(found_in(grid, audience=audience), grid, level_of(audience))
    ]


def ideas(grid: Grid, audience: Audience | None = None) -> list[SpokenIdea]:
    """Every idea with the words of its pattern in its fullest view: see `routines.counting.ideas`."""
    return [_saying_idea(idea, grid, audience) for idea in ideas_of(grid, audience=audience)]


def ended_runs(grid: Grid, audience: Audience | None = None) -> list[SpokenIdea]:
    """The digit runs that are over, with their words: see `routines.counting.ended_runs`."""
    return [_saying_idea(idea, grid, audience) for idea in ended_in(grid)]


def _saying_idea(idea: Idea, grid: Grid, audience: Audience | None) -> SpokenIdea:
    pattern = SpokenPattern.saying(idea.pattern, grid.cut(idea.lasts), audience, grid)
    return SpokenIdea(idea.claim, idea.seen_at, idea.dies_at, idea.lasts, pattern)


def explain_cells(grid: Grid, cells: Iterable[int], audience: Audience | None = None) -> list[SpokenPattern]:
    """What tapped cells have in common, with its words: see `routines.counting.explain_cells`."""
    return [
        SpokenPattern.saying(pattern, grid, audience, grid) for pattern in explained(grid, cells, audience=audience)
    ]


def show_claim(claim: Claim, grid: Grid, audience: Audience | None = None) -> SpokenPattern | None:
    """The pattern of a claim with its words: see `routines.counting.show_claim`."""
    shown = shown_in(claim, grid)
    return SpokenPattern.saying(shown[1], shown[0], audience, grid) if shown else None


def check(claim: Claim, grid: Grid, audience: Audience | None = None) -> SpokenVerdict:
    """The verdict on a claim with its reason: see `routines.counting.check`."""
    whole, verdict = judge(claim, grid)
    return SpokenVerdict(
        verdict.true,
        verdict.seen,
        verdict.holds,
        verdict.true_from,
        verdict.breaks_at,
        verdict.counterexample,
        claim=whole,
        view=grid,
        audience=audience or Audience(),
    )
