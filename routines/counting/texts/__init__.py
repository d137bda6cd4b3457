"""Sentences about counts: numbers come in exact, words go out for a level and a language."""

from __future__ import annotations

from collections.abc import Sequence

from ..audience import Audience
from ..claims import Claim
from ..grid import Grid
from .families import TELLINGS, Life
from .numbers import listing, ordinal, series
from .page import page_of
from .wording import Words, because, until
from .words import sentence

__all__ = ["Words", "describe", "jumps", "listing", "ordinal", "series", "unless_breaks", "verdict_because"]


def describe(
    claim: Claim, grid: Grid, holds: str | None, breaks_at: int | None, audience: Audience | None = None
) -> Words:
    """Say a claim in words as they are read: the teacher's line, what a child may say, the reason in numbers.

    >>> from fractions import Fraction
    >>> from ..claims import LandmarksClaim
    >>> from ..count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="10", step="6", terms=25), line_length=5)
    >>> claim = LandmarksClaim(Fraction(10), every=5, first=1, lie="column", lines=(1,))
    >>> describe(claim, grid, "always", None).because
    '5 jumps of 6 make 30, which is 3 tens.'
    """
    page = page_of(grid, audience or Audience())
    return Words(TELLINGS[type(claim)](page, claim, Life(holds, _end_in_sight(grid, breaks_at))))


def _end_in_sight(grid: Grid, breaks_at: int | None) -> int | None:
    """Where a claim ends, if that can be shown: no class counts on to -4 inches."""
    if breaks_at is None or grid.count.form.goes_below_zero or grid.count.scaled(breaks_at) >= 0:
        return breaks_at
    return None


def verdict_because(
    claim: Claim,
    grid: Grid,
    *,
    true: bool,
    seen: bool = True,
    holds: str | None = None,
    true_from: int | None = None,
    breaks_at: int | None = None,
    counterexample: Sequence[int] = (),
    audience: Audience | None = None,
) -> str:
    """Answer a claim from the floor: why it is so, or what is there instead."""
    page = page_of(grid, audience or Audience())
    breaks_at = _end_in_sight(grid, breaks_at)
    telling = TELLINGS[type(claim)](page, claim, Life(holds if true else None, breaks_at if true else None))
    if not true:
        refutation = telling.refutation(counterexample)
        key = "no.from" if true_from is not None and true_from > 1 else "no"
        return sentence(telling.say(key, refutation=refutation, nth=page.tongue.nth(true_from or 1)))
    if not seen:
        key = "open" if breaks_at is None else "open.until"
        return sentence(telling.say(key, until=page.value(breaks_at or 1)))
    reason = because(telling)
    key = "yes.until" if until(telling) else "yes"
    return sentence(telling.say(key, until=page.value(breaks_at or 1), because=reason))


def jumps(k: int, grid: Grid, audience: Audience | None = None) -> str:
    """Write what `k` jumps of the step make.

    >>> from ..count import Count
    >>> jumps(5, Grid(Count.parse(kind="whole", start="10", step="6", terms=25), line_length=5))
    '5 jumps of 6 make 30'
    """
    return page_of(grid, audience or Audience()).jumps(k)


def unless_breaks(grid: Grid, breaks_at: int | None, audience: Audience | None = None) -> str:
    """Write where something ends: ", until 100" for the term that reads 100; empty for None."""
    if breaks_at is None:
        return ""
    page = page_of(grid, audience or Audience())
    return page.tongue.sentences["until"][0].format(until=page.value(breaks_at))
