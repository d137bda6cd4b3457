"""A routine as a card: the grid itself, small, with its count in words and the patterns that are lit in it.

A plan that cannot be read is a card of its own, so that one damaged row never takes a list down with it.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from routines.models import Routine, UnreadablePlan
from routines.models.facts import count_in_words
from routines.models.shown_plan import ShownPlan
from routines.words import SpokenPattern


@dataclass(frozen=True, slots=True)
class UnreadableCard:
    """A routine of which only the title is left, and why."""

    routine: Routine
    unreadable: str


@dataclass(frozen=True, slots=True)
class Card:
    """`patterns` are those that light up by themselves, two at most."""

    routine: Routine
    shown: ShownPlan
    count: str
    patterns: tuple[SpokenPattern, ...]


def card_of(routine: Routine) -> Card:
    shown = ShownPlan(routine.plan, routine.grade.level)
    lit = tuple(item.pattern for item in shown.lit)
    return Card(routine, shown, count_in_words(shown.grid), lit)


def cards_of(routines: Iterable[Routine]) -> list[Card | UnreadableCard]:
    return [card_or_title(routine) for routine in routines]


def card_or_title(routine: Routine) -> Card | UnreadableCard:
    try:
        return card_of(routine)
    except UnreadablePlan as error:
        return UnreadableCard(routine, str(error))
