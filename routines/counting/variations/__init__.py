"""Variations of a count: what to count after a lesson, by how it went."""

from collections.abc import Iterable, Iterator
from typing import Any

from ..audience import Audience
from ..checking import judge
from ..claims import Claim
from ..errors import CountError
from ..grid import Grid
from ..locate.tongues import tongue
from ..round_number import round_number
from ..slips.foreseeing import for_level
from ..stops.choosing import claim_of
from ..texts import describe
from ..texts.page import page_of
from ..texts.words import capital, sentence
from . import as_planned, not_yet, ready_for_more
from .changes import Change, other_lengths
from .sentences import SENTENCES
from .variation import Variation

__all__ = ["OUTCOMES", "Variation", "next_counts"]

OUTCOMES = ("not-yet", "as-planned", "ready-for-more")
COUNTS_IN_SENTENCES = ("start", "last", "before", "hard", "landmark")
MOST = 3


def next_counts(
    grid: Grid,
    outcome: str,
    grade: int | None = None,
    *,
    slips: Iterable[Any] = (),
    unseen: Iterable[Any] = (),
    audience: Audience | None = None,
) -> list[Variation]:
    """Up to three counts to do next, each with one change chosen for what happened, most fitting first.

    outcome: not-yet, as-planned or ready-for-more. slips: where the class slipped, as term numbers or as anything with
    an `n` (slips, what `classify` gave). unseen: claims or patterns that were not seen.
    Raises: CountError on `outcome`.
    """
    if outcome not in OUTCOMES:
        raise CountError("outcome", f"Choose how it went from: {', '.join(OUTCOMES)}.")
    reader = for_level(grade, audience)
    missed = [claim for one in unseen if (claim := claim_of(one)) is not None]
    slipped = [one if isinstance(one, int) else int(one.n) for one in slips]
    found: list[Variation] = []
    for change in (*_changes(grid, outcome, slipped, missed, reader), *_another_fold(grid)):
        if len(found) < (MOST if change.name != "other fold" else 1) and change.grid not in [one.grid for one in found]:
            found.append(_told(change, outcome, reader))
    return found


def _changes(grid: Grid, outcome: str, slips: list[int], unseen: list[Claim], audience: Audience) -> Iterator[Change]:
    if outcome == "not-yet":
        return not_yet.changes(grid, slips, unseen, audience)
    if outcome == "as-planned":
        return as_planned.changes(grid, slips, unseen, audience.level)
    return ready_for_more.changes(grid, audience.level)


def _another_fold(grid: Grid) -> Iterator[Change]:
    """For the rare count that allows no other change."""
    for new in other_lengths(grid):
        yield Change("other fold", new, {"length": str(new.line_length)})


def _told(change: Change, outcome: str, audience: Audience) -> Variation:
    count, words = change.grid.count, tongue(audience.language)
    facts = {"landmark": page_of(change.grid, audience).mark(round_number(count)).one, **change.facts}
    for name in COUNTS_IN_SENTENCES:
        if name in change.facts:
            facts[name] = words.value(facts[name], clock=count.wrap is not None)
    if change.shows:
        claim, judged = judge(change.shows[0], change.grid)
        told = describe(claim, change.grid, judged.holds or "shown", judged.breaks_at, audience)
        facts["shows"] = sentence(told.statement.rstrip("."))
    what, why = SENTENCES[audience.language][change.name]
    return Variation(
        outcome, capital(what.format_map(facts)), capital(why.format_map(facts)), change.grid, change.shows
    )
