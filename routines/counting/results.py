"""What the pattern code answers with: patterns, verdicts and ideas. Facts; `routines.words` says them.

Term numbers count from 1; rows and columns too. Nothing here computes; see `patterns/`, `checking.py` and `ideas.py`.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Self

from .claims import Claim


@dataclass(frozen=True, slots=True)
class Pattern:
    """Something that is true of the view and can be seen in it.

    `groups` are the term numbers that show it as the threads to draw, each in counting order. `breaks_at` is the first
    term with which the claim is false when the count goes on, None if never. `holds` is "always" (proved for ever) or
    "shown".
    """

    claim: Claim
    groups: tuple[tuple[int, ...], ...]
    breaks_at: int | None
    holds: str

    @classmethod
    def of(cls, claim: Claim, groups: tuple[tuple[int, ...], ...], breaks_at: int | None = None) -> Pattern:
        """A find that always holds unless it breaks."""
        return Pattern(claim, groups, breaks_at, "always" if breaks_at is None else "shown")

    @property
    def cells(self) -> tuple[int, ...]:
        """The term numbers that show it, in counting order."""
        if len(self.groups) == 1:  # each group is in counting order already
            return self.groups[0]
        return tuple(sorted({n for group in self.groups for n in group}))


@dataclass(frozen=True, slots=True)
class Verdict:
    """What is so about a claim on one grid.

    `true` speaks of the terms in view; `seen` is False where the view is too small to show it. `holds` is "always",
    "shown" or None (false). `true_from` is the least k such that the claim is true of everything from term k on, for
    ever (1 for what always holds), None if there is no such k. `breaks_at` is the first term with which the claim is
    false (inside the view when it is false there). `counterexample` names the terms that contradict the claim,
    the last one being the first that fails; it is () when nothing in view does.
    """

    true: bool
    seen: bool
    holds: str | None
    true_from: int | None
    breaks_at: int | None
    counterexample: tuple[int, ...] = ()

    @classmethod
    def so(cls, seen: bool, breaks_at: int | None = None, true_from: int | None = None) -> Self:
        """True of the view; always, unless it breaks."""
        if breaks_at is None:
            return cls(True, seen, "always", 1, None)
        return cls(True, seen, "shown", true_from, breaks_at)

    @classmethod
    def not_so(cls, counterexample: tuple[int, ...] = (), true_from: int | None = None) -> Self:
        """False of the view, contradicted by the last of these terms."""
        return cls(False, False, None, true_from, counterexample[-1] if counterexample else None, counterexample)


@dataclass(frozen=True, slots=True)
class Idea:
    """A claim with the term at which it can first be seen and the term at which it dies (None: it never does).

    `claim` is what is so when it is first seen, so its own `breaks_at` in the grid cut there is `dies_at`; `pattern`
    shows the idea in the fullest view in which it is alive: the grid cut at `lasts`, the whole view or up to the term
    before it dies.
    """

    claim: Claim
    seen_at: int
    dies_at: int | None
    lasts: int
    pattern: Pattern
