"""A claim in words: what it says, what a child may say, and why it is so or not."""

from __future__ import annotations

from routines.counting.audience import Audience
from routines.counting.claims import Claim
from routines.counting.grid import Grid
from routines.counting.results import Verdict
from routines.counting.slips.integers import BELOW_ZERO_FROM

from .claims import Words, because, until
from .families import PHRASES, Life
from .page import Page, page_of
from .sentences import sentence


def describe(
    claim: Claim,
    grid: Grid,
    holds: str | None,
    breaks_at: int | None,
    audience: Audience | None = None,
    printed: Grid | None = None,
) -> Words:
    """Say a claim in words as they are read: the teacher's line, what a child may say, the reason in numbers.

    printed: the whole grid, where `grid` is only its first counts; rows are named as it shows them.

    >>> from fractions import Fraction
    >>> from routines.counting.claims import LandmarksClaim
    >>> from routines.counting.count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="10", step="6", terms=25), line_length=5)
    >>> claim = LandmarksClaim(Fraction(10), every=5, first=1, lie="column", lines=(1,))
    >>> describe(claim, grid, "always", None).because
    '5 in a row: 5 jumps of 6 make 30, which is 3 tens.'
    """
    page = page_of(grid, audience or Audience(), printed)
    return Words(PHRASES[type(claim)](page, claim, Life(holds, _end_in_sight(page, breaks_at))))


def _end_in_sight(page: Page, breaks_at: int | None) -> int | None:
    """Where a claim ends, if that can be shown: no class counts on to -4 inches, nor below zero before it learns of that."""
    count = page.count
    if breaks_at is None or page.on_clock or count.scaled(breaks_at) >= 0:
        return breaks_at
    been_there = min(count.scaled_start, count.scaled(page.printed.terms)) < 0
    knows = count.form.goes_below_zero and (page.level >= BELOW_ZERO_FROM or been_there)
    return breaks_at if knows else None


def verdict_because(claim: Claim, verdict: Verdict, grid: Grid, audience: Audience | None = None) -> str:
    """Answer a claim from the floor: why it is so, or what is there instead."""
    page = page_of(grid, audience or Audience())
    breaks_at = _end_in_sight(page, verdict.breaks_at)
    life = Life(verdict.holds, breaks_at) if verdict.true else Life()
    phrases = PHRASES[type(claim)](page, claim, life)
    if not verdict.true:
        true_from = verdict.true_from or 1
        refutation = phrases.refutation(verdict.counterexample)
        return sentence(
            phrases.say("no.from" if true_from > 1 else "no", refutation=refutation, nth=page.language.nth(true_from))
        )
    if not verdict.seen:
        key = "open" if breaks_at is None else "open.until"
        return sentence(phrases.say(key, until=page.value(breaks_at or 1)))
    reason = because(phrases)
    key = "yes.until" if until(phrases) else "yes"
    return sentence(phrases.say(key, until=page.value(breaks_at or 1), because=reason))
