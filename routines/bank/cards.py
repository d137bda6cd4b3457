"""A routine as a card: the grid itself, small, with its count in words and the patterns that are lit in it.

A plan that cannot be read is a card of its own, so that one damaged row never takes a list down with it.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from routines import worked_out
from routines.models import Routine, UnreadablePlan


@dataclass(frozen=True, slots=True)
class UnreadableCard:
    """A routine of which only the title is left, and why."""

    routine: Routine
    unreadable: str


@dataclass(frozen=True, slots=True)
class Card:
    routine: Routine
    says: worked_out.CardSays


def cards_of(routines: Iterable[Routine]) -> list[Card | UnreadableCard]:
    """What they say is read in one query. The routines come with `for_cards`."""
    listed = list(routines)
    said: dict[int, worked_out.CardSays | UnreadablePlan] = {}
    saves = {}
    for routine in listed:
        try:
            saves[routine.pk] = worked_out.Save(routine.newest_save, routine.grade.level)
        except UnreadablePlan as error:
            said[routine.pk] = error
    said |= zip(saves, worked_out.cards(list(saves.values())), strict=True)
    return [_card(routine, said[routine.pk]) for routine in listed]


def _card(routine: Routine, says: worked_out.CardSays | UnreadablePlan) -> Card | UnreadableCard:
    return UnreadableCard(routine, str(says)) if isinstance(says, UnreadablePlan) else Card(routine, says)
