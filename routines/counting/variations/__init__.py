"""Variations of a count: what to count after a lesson, by how it went."""

from collections.abc import Iterable, Iterator
from typing import Any

from ..audience import Audience
from ..claims import Claim
from ..errors import CountError
from ..grid import Grid
from ..outcome import Outcome
from ..slips.checked import in_order, reader_of
from ..stops.choosing import claim_of
from . import as_planned, not_yet, ready_for_more
from .changes import Change, other_lengths, shown
from .reach import within_reach
from .variation import Variation

__all__ = ["Variation", "next_counts"]

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
        raise CountError("outcome", "unknown-outcome", choices=tuple(Outcome))
    reader = reader_of(grid, grade, audience)
    missed = [claim_of(one, "unseen") for one in in_order(unseen, "unseen")]
    slipped = [not_yet.slipped_at(one) for one in in_order(slips, "slips")]
    found: list[Variation] = []
    changes = (*_changes(grid, outcome, slipped, missed, reader), *_another_fold(grid))
    for change in (kept for change in changes if (kept := within_reach(change, grid, reader.level)) is not None):
        # On a clock two starts may be written alike, a turn apart.
        is_new = all(
            change.grid != one.grid and (change.name, change.written) != (one.change, one.written) for one in found
        )
        if len(found) < (MOST if change.name != "other fold" else 1) and is_new:
            shows = shown(change.grid, *change.shows)
            found.append(Variation(outcome, change.name, change.grid, shows, change.written))
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
