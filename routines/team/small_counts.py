"""A count beside others: its grid, small, and its words, as far as the reader may open it."""

from collections.abc import Collection

from accounts.models import User
from routines import worked_out
from routines.models import Routine, UnreadablePlan


def small_counts(routines: Collection[int], reader: User) -> dict[int, worked_out.CardSays]:
    """By routine, what its card says. Left out are those the reader may not see and those whose plan cannot be read.

    Two queries, whatever the number.
    """
    saves = {}
    for routine in Routine.objects.visible_to(reader).filter(pk__in=set(routines)).as_cards().order_by():
        try:
            saves[routine.pk] = worked_out.shown_now(routine)
        except UnreadablePlan:
            continue
    said = zip(saves, worked_out.cards(list(saves.values())), strict=True)
    return {routine: says for routine, says in said if not isinstance(says, UnreadablePlan)}
