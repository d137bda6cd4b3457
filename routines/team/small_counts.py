"""A count beside others: its grid, small, and its words, as far as the reader may open it."""

from collections.abc import Collection, Iterable

from django.db.models import QuerySet

from accounts.compiled_once import compiled_once
from accounts.models import User
from routines import worked_out
from routines.models import Routine, UnreadablePlan


def small_counts(routines: Collection[int], reader: User) -> dict[int, worked_out.CardSays]:
    """By routine, what its card says. Left out are those the reader may not see and those whose plan cannot be read.

    Two queries, whatever the number.
    """
    return cards_said(_to_draw(reader, sorted(set(routines))))


def cards_said(routines: Iterable[Routine]) -> dict[int, worked_out.CardSays]:
    """As above, of counts that come `as_cards` and that the reader may open."""
    saves = {}
    for routine in routines:
        try:
            saves[routine.pk] = worked_out.shown_now(routine)
        except UnreadablePlan:
            continue
    said = zip(saves, worked_out.cards(list(saves.values())), strict=True)
    return {routine: says for routine, says in said if not isinstance(says, UnreadablePlan)}


@compiled_once
def _to_draw(reader: User, routines: list[int]) -> QuerySet[Routine]:
    return Routine.objects.visible_to(reader).filter(pk__in=routines).as_cards().order_by()
