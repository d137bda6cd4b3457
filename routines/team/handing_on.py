"""A leaver's counts get another owner. Their history, lessons and copies stay as they are."""

from dataclasses import dataclass

from django.db import transaction

from accounts.models import User
from routines.models import Routine
from routines.models.bank_total import look_for_owners_again

Status = Routine.Status


@dataclass(frozen=True, slots=True)
class Left:
    """How many counts somebody owns: those that were shared once, and drafts, whose titles stay the author's affair."""

    shared: int
    drafts: int


def left_by(person: User) -> Left:
    own = Routine.objects.filter(owner=person)
    return Left(own.exclude(status=Status.DRAFT).count(), own.filter(status=Status.DRAFT).count())


@transaction.atomic
def hand_on(*, leaver: User, to: User, with_drafts: bool) -> int:
    """Returns how many counts are now `to`'s. Whoever wrote with the leaver goes on doing so."""
    own = Routine.objects.select_for_update().filter(owner=leaver)
    keys = list((own if with_drafts else own.exclude(status=Status.DRAFT)).values_list("pk", flat=True))
    Routine.co_authors.through.objects.filter(user_id=to.pk, routine_id__in=keys).delete()
    handed = Routine.objects.filter(pk__in=keys).update(owner=to)
    look_for_owners_again({leaver.pk, to.pk})
    return handed
