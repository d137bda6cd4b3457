"""A routine as a card: the grid itself, small, with its count in words and the patterns that are lit in it.

A plan that cannot be read is a card of its own, so that one damaged row never takes a list down with it.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from django.utils.safestring import SafeString, mark_safe

from accounts.models import User
from accounts.written_once import Later, OnPage, this_page, write, written_once
from routines import worked_out
from routines.models import Routine, UnreadablePlan
from routines.templatetags.countfold import times_taught


@dataclass(frozen=True, slots=True)
class Face:
    """What stands on a card beside what its plan says. may_teach: with a way to teach it."""

    pk: int
    title: str
    grade: str
    taught: str
    may_teach: bool


@dataclass(frozen=True, slots=True)
class Card:
    """says: None where a damaged row names no save."""

    routine: Routine
    face: Face
    says: Later[worked_out.CardSays] | None
    unreadable: str = ""

    def html(self, on: OnPage | None = None) -> SafeString:
        """Cards on which the same stands are the same to the letter, whoever looks at them. on: `this_page()`, if known."""
        if self.says is None:
            return write("bank/_card.html", card=self.face, unreadable=self.unreadable)
        try:
            return written_once("bank/_card.html", on, card=self.face, says=self.says)
        except UnreadablePlan as error:
            return write("bank/_card.html", card=self.face, unreadable=str(error))


def cards_of(routines: Sequence[Routine], *, reader: User, may_teach: bool = False) -> list[Card]:
    """What they say is read in one query. The routines come `as_cards`, and how often they were taught has been told."""
    saves, damaged = {}, {}
    for routine in routines:
        try:
            saves[routine.pk] = worked_out.shown_now(routine)
        except UnreadablePlan as error:
            damaged[routine.pk] = str(error)
    said = dict(zip(saves, worked_out.cards(list(saves.values())), strict=True))
    return [
        Card(routine, _face(routine, reader, may_teach), said.get(routine.pk), damaged.get(routine.pk, ""))
        for routine in routines
    ]


def as_items(cards: Iterable[Card]) -> SafeString:
    """The cards as items of a list, put together here: a template's loop takes as long as all else that a page of them asks."""
    page = this_page()
    return mark_safe("".join(f"<li>{card.html(page)}</li>" for card in cards))  # noqa: S308 - pieces that templates wrote


def _face(routine: Routine, reader: User, may_teach: bool) -> Face:
    taught = times_taught(routine.times_taught, reader)
    return Face(routine.pk, routine.title, routine.grade.name, taught, may_teach)
