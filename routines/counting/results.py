"""What the pattern code answers with: patterns, verdicts and ideas.

Term numbers count from 1; rows and columns too. Nothing here computes; see `patterns/`, `checking.py` and `ideas.py`.
"""

from __future__ import annotations

from dataclasses import dataclass

from .claims import Claim


@dataclass(frozen=True, slots=True)
class Pattern:
    """Something that can be seen in a grid, with its claim as data and its words.

    `cells` are the term numbers that show it; `groups` are the same cells as the threads to draw, each in counting
    order. `holds` is "always" (proved for ever) or "shown"; `breaks_at` is the first term with which the claim is
    false when the count goes on, None if never.
    """

    claim: Claim
    cells: tuple[int, ...]
    groups: tuple[tuple[int, ...], ...]
    statement: str
    student_words: str
    because: str
    holds: str
    breaks_at: int | None


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
