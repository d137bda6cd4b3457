"""What the pattern code answers with: patterns, verdicts and ideas.

Term numbers count from 1; rows and columns too. They are found in `patterns/`, `checking.py` and `ideas.py`.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

from .audience import Audience
from .claims import Claim
from .grid import Grid
from .texts import Words, describe


@dataclass(frozen=True)
class Pattern:
    """Something that can be seen in a view, with its claim as data and its words, made one by one as they are read.

    `cells` are the term numbers that show it; `groups` are the same cells as the threads to draw, each in counting
    order. `holds` is "always" (proved for ever) or "shown"; `breaks_at` is the first term with which the claim is
    false when the count goes on, None if never.
    """

    claim: Claim
    cells: tuple[int, ...]
    groups: tuple[tuple[int, ...], ...]
    holds: str
    breaks_at: int | None
    view: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def _words(self) -> Words:
        return describe(self.claim, self.view, self.holds, self.breaks_at, self.audience)

    @property
    def statement(self) -> str:
        """A line for the teacher."""
        return self._words.statement

    @property
    def student_words(self) -> str:
        """What a child may say."""
        return self._words.student_words

    @property
    def because(self) -> str:
        """The reason in numbers."""
        return self._words.because


@dataclass(frozen=True, slots=True)
class Verdict:
    """What is so about a claim on one grid.

    `true` speaks of the terms in view; `seen` is False where the view is too small to show it. `holds` is "always",
    "shown" or None (false). `breaks_at` is the first term with which the claim is false (inside the view when it is
    false there). `true_from` is the least k such that the claim is true of everything from term k on, for ever
    (1 for what always holds), None if there is no such k. `counterexample` names the terms that contradict the claim,
    the last one being the first that fails; it is () when nothing in view does.
    """

    true: bool
    seen: bool
    holds: str | None
    true_from: int | None
    breaks_at: int | None
    because: str
    counterexample: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Idea:
    """A claim with the term at which it can first be seen and the term at which it dies (None: it never does).

    `claim` is what is so when it is first seen, so its own `breaks_at` in the grid cut there is `dies_at`; `pattern`
    shows the idea in the fullest view in which it is alive (the whole view, or up to the term before it dies).
    """

    claim: Claim
    seen_at: int
    dies_at: int | None
    pattern: Pattern
