"""A count beside others: its grid, small, and its words, as far as the reader may open it."""

from collections.abc import Callable, Collection, Iterable
from functools import partial
from typing import TypeVar

from django.db.models import QuerySet
from django.utils.safestring import SafeString

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.written_once import Later, written_once
from routines import worked_out
from routines.models import Routine, UnreadablePlan

Told = TypeVar("Told")


def small_counts(routines: Collection[int], reader: User) -> dict[int, worked_out.CardSays]:
    """By routine, what its card says. Left out are those the reader may not see and those whose plan cannot be read.

    Two queries, whatever the number.
    """
    return _of_each(_to_draw(reader, sorted(set(routines))), lambda says: says())


def small_pictures(routines: Collection[int], reader: User) -> dict[int, Later[SafeString]]:
    """By routine, its small grid as SVG, "" where its plan cannot be read. Left out are those the reader may not see."""
    return pictures_of(_to_draw(reader, sorted(set(routines))))


def pictures_of(routines: Iterable[Routine]) -> dict[int, Later[SafeString]]:
    """As above, of counts that come `as_cards` and that the reader may open."""
    return _of_each(routines, lambda says: Later(says.mark, partial(_picture, says)))


def _picture(says: Later[worked_out.CardSays]) -> SafeString:
    try:
        return written_once("bank/_card_picture.html", says=says)
    except UnreadablePlan:
        return SafeString()


def _of_each(routines: Iterable[Routine], tell: Callable[[Later[worked_out.CardSays]], Told]) -> dict[int, Told]:
    saves = {}
    for routine in routines:
        try:
            saves[routine.pk] = worked_out.shown_now(routine)
        except UnreadablePlan:
            continue
    told = {}
    for pk, says in zip(saves, worked_out.cards(list(saves.values())), strict=True):
        try:
            told[pk] = tell(says)
        except UnreadablePlan:
            continue
    return told


@compiled_once
def _to_draw(reader: User, routines: list[int]) -> QuerySet[Routine]:
    return Routine.objects.visible_to(reader).filter(pk__in=routines).as_cards().order_by()
