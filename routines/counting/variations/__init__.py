"""Variations of a count: what to count after a lesson, by how it went."""

from collections.abc import Iterable, Iterator, Sequence, Set
from fractions import Fraction
from functools import lru_cache
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
from .reach import lowest_allowed, within_reach
from .variation import Variation

__all__ = ["Variation", "next_counts"]

MOST = 3
KEPT = 64
Numbers = tuple[str, Fraction, int]
# What was missed is practised again after a lesson as planned too: the same count for the same reason.
PRACTISED = ("hard place", "hard to write", "fold")
# Of every other change one is enough.
MORE_THAN_ONE = ("hard place", "hard to write", "smaller place", "smaller place reached", "by tens")


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
    missed = tuple(claim_of(one, "unseen") for one in in_order(unseen, "unseen"))
    slipped = tuple(not_yet.slipped_at(one) for one in in_order(slips, "slips"))
    return list(_offered(grid, Outcome(outcome), slipped, missed, reader))


@lru_cache(maxsize=KEPT)
def _offered(
    grid: Grid, outcome: Outcome, slipped: tuple[not_yet.SlippedAt, ...], missed: tuple[Claim, ...], reader: Audience
) -> tuple[Variation, ...]:
    """The counts of one outcome, none of which an outcome before it offers for another reason."""
    before = tuple(Outcome)[: tuple(Outcome).index(outcome)]
    taken = {_numbers(one.grid, grid) for other in before for one in _offered(grid, other, slipped, missed, reader)}
    found: list[Variation] = []
    changes = _changes(grid, outcome, slipped, missed, reader)
    lowest = lowest_allowed(grid, outcome, reader.level)
    for change in (
        kept for change in changes if (kept := within_reach(change, grid, reader.level, lowest)) is not None
    ):
        if _numbers(change.grid, grid) in taken and not (outcome == Outcome.AS_PLANNED and change.name in PRACTISED):
            continue
        if change.name not in MORE_THAN_ONE and any(change.name == one.change for one in found):
            continue
        is_new = all(change.grid != one.grid and _looks(change.grid) != _looks(one.grid) for one in found)
        if len(found) < MOST and is_new:
            shows = shown(change.grid, *change.shows)
            found.append(Variation(outcome, change.name, change.grid, shows, change.written | _told(change, grid)))
    return tuple(found) or tuple(_another_fold(grid, outcome, taken))


def _numbers(new: Grid, old: Grid) -> Numbers:
    """What makes two counts the same for a class, however far they go: start and jump; of the old count's, the fold."""
    start, step = new.count.text(1), new.count.step
    is_old = (start, step) == (old.count.text(1), old.count.step)
    return start, step, new.line_length if is_old else 0


def _looks(grid: Grid) -> tuple[str, Fraction, int, int]:
    """What tells two grids apart for a class: on a clock two starts may be written alike, a turn apart."""
    return grid.count.text(1), grid.count.step, grid.terms, grid.line_length


def _changes(
    grid: Grid, outcome: str, slips: Sequence[not_yet.SlippedAt], unseen: Sequence[Claim], audience: Audience
) -> Iterator[Change]:
    if outcome == Outcome.NOT_YET:
        return not_yet.changes(grid, slips, unseen, audience)
    if outcome == Outcome.AS_PLANNED:
        return as_planned.changes(grid, slips, unseen, audience.level)
    return ready_for_more.changes(grid, audience.level)


def _another_fold(grid: Grid, outcome: Outcome, taken: Set[Numbers]) -> list[Variation]:
    """For the rare count that allows no other change; one offered already only where it has no other fold."""
    folds = sorted(other_lengths(grid), key=lambda new: _numbers(new, grid) in taken)
    offered = [Change("other fold", new, {"length": str(new.line_length)}) for new in folds[:1]]
    return [Variation(outcome, one.name, one.grid, (), one.written | _told(one, grid)) for one in offered]


def _told(change: Change, old: Grid) -> dict[str, str]:
    """What else differs from the old board and its own sentence does not say: where it stops, its lines, its empty cells."""
    new, written = change.grid, change.written
    told: dict[str, str] = {}
    if new.terms < old.terms and not {"terms", "last", "cut"} & written.keys():
        told |= {"cut": str(new.terms), "until": new.count.text(new.terms)}
    if new.line_length != old.line_length and "length" not in written:
        told["in a line"] = str(new.line_length)
    if new.lead != old.lead:
        told["empty"] = str(new.lead)
    return told
