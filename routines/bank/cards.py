"""A routine as a card: the grid itself, small, with its count in words and the patterns that are lit in it.

A plan that cannot be read is a card of its own, so that one damaged row never takes a list down with it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.translation import get_language

from accounts.models import User
from routines import worked_out
from routines.models import Routine, UnreadablePlan
from routines.templatetags.countfold import times_taught

CARDS_REMEMBERED = 500  # of about 5 KB each


@dataclass(frozen=True, slots=True)
class UnreadableCard:
    """A routine of which only the title is left, and why."""

    routine: Routine
    unreadable: str

    @property
    def html(self) -> SafeString:
        return render_to_string("bank/_card.html", {"card": self})


@dataclass(frozen=True, slots=True)
class Face:
    """All that stands on a card. may_teach: with a way to teach it."""

    pk: int
    title: str
    grade: str
    taught: str
    may_teach: bool
    language: str | None
    says: worked_out.CardSays


@dataclass(frozen=True, slots=True)
class Card:
    routine: Routine
    face: Face

    @property
    def html(self) -> SafeString:
        return drawn_card(self.face)


@lru_cache(maxsize=CARDS_REMEMBERED)
def drawn_card(face: Face) -> SafeString:
    """Cards on which the same stands are the same to the letter, whoever looks at them."""
    return render_to_string("bank/_card.html", {"card": face})


def cards_of(routines: Sequence[Routine], *, reader: User, may_teach: bool = False) -> list[Card | UnreadableCard]:
    """What they say is read in one query. The routines come `as_cards`, and how often they were taught has been told."""
    said: dict[int, worked_out.CardSays | UnreadablePlan] = {}
    saves = {}
    for routine in routines:
        try:
            saves[routine.pk] = worked_out.shown_now(routine)
        except UnreadablePlan as error:
            said[routine.pk] = error
    said |= zip(saves, worked_out.cards(list(saves.values())), strict=True)
    return [_card(routine, said[routine.pk], reader, may_teach) for routine in routines]


def _card(
    routine: Routine, says: worked_out.CardSays | UnreadablePlan, reader: User, may_teach: bool
) -> Card | UnreadableCard:
    if isinstance(says, UnreadablePlan):
        return UnreadableCard(routine, str(says))
    taught = times_taught(routine.times_taught, reader)
    face = Face(routine.pk, routine.title, routine.grade.name, taught, may_teach, get_language(), says)
    return Card(routine, face)
