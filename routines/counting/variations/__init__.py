"""Variations of a count: what to count after a lesson, by how it went."""

from collections.abc import Iterable, Iterator
from typing import Any

from ..audience import Audience
from ..checking import judge
from ..claims import Claim
from ..errors import CountError
from ..grid import Grid
from ..locate.tongues import tongue
from ..locate.wording import filled
from ..outcome import Outcome
from ..round_number import round_number
from ..slips.asking import in_order, reader_of
from ..slips.jump import Jump
from ..slips.replies import jump_phrase
from ..stops.choosing import claim_of
from ..texts import describe
from ..texts.page import page_of
from ..texts.words import band_of, capital, sentence
from . import as_planned, not_yet, ready_for_more
from .changes import Change, other_lengths, shown
from .questions import question
from .reach import within_reach
from .sentences import SENTENCES
from .variation import Variation

__all__ = ["Variation", "next_counts"]

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

    slips: where the class slipped, as term numbers,
    slips, or what `classify` gave. unseen: claims or patterns that were not seen.
    Raises: CountError on `outcome`, `slips`, `unseen`, `grid`, `level` or `audience`.
    """
    if outcome not in tuple(Outcome):
        raise CountError("outcome", f"Choose how it went from: {', '.join(Outcome)}.")
    reader = reader_of(grid, grade, audience)
    missed = [claim_of(one, "unseen") for one in in_order(unseen, "unseen")]
    slipped = [not_yet.slipped_at(one) for one in in_order(slips, "slips")]
    found: list[Variation] = []
    changes = (*_changes(grid, outcome, slipped, missed, reader), *_another_fold(grid))
    for change in (kept for change in changes if (kept := within_reach(change, grid, reader.level)) is not None):
        if len(found) < (MOST if change.name != "other fold" else 1) and change.grid not in [one.grid for one in found]:
            found.append(_told(change, outcome, reader))
    return found


def _changes(
    grid: Grid, outcome: str, slips: list[not_yet.SlippedAt], unseen: list[Claim], audience: Audience
) -> Iterator[Change]:
    if outcome == Outcome.NOT_YET:
        return not_yet.changes(grid, slips, unseen, audience)
    if outcome == Outcome.AS_PLANNED:
        return as_planned.changes(grid, slips, unseen, audience.level)
    return ready_for_more.changes(grid, audience.level)


def _another_fold(grid: Grid) -> Iterator[Change]:
    """For the rare count that allows no other change."""
    for new in other_lengths(grid):
        yield Change("other fold", new, {"length": str(new.line_length)})


def _told(change: Change, outcome: str, audience: Audience) -> Variation:
    language = audience.language
    facts = _facts(change, audience)
    what, reason = (capital(filled(text, facts)) for text in SENTENCES[language][change.name])
    ask = capital(filled(question(change.name, language, band_of(audience.level)), facts))
    why = f"{reason} Pregunta: «{ask}»" if language == "es" else f"{reason} Ask: “{ask}”"
    return Variation(outcome, what, reason, ask, why, change.grid, shown(change.grid, *change.shows))


def _facts(change: Change, audience: Audience) -> dict[str, str]:
    """What stands between the braces of the sentences; the change's own facts before those of its grid."""
    count, words = change.grid.count, tongue(audience.language)
    page = page_of(change.grid, audience)
    mark = page.mark(round_number(count))
    facts = {
        "landmark": mark.one,
        "a_mark": page.tongue.a(mark),
        "jump": jump_phrase(Jump(change.grid, 2), audience.language),
        "size": count.difference_text(count.step),
        "start": count.text(1),
        "length": str(change.grid.line_length),
        **change.facts,
    }
    for name in COUNTS_IN_SENTENCES:
        if name in change.facts or name == "start":
            facts[name] = words.value(facts[name], clock=count.wrap is not None)
    if change.shows:
        claim, judged = judge(change.shows[0], change.grid)
        told = describe(claim, change.grid, judged.holds or "shown", judged.breaks_at, audience)
        facts["shows"] = sentence(told.statement.rstrip("."))
    return facts
