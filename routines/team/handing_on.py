"""A leaver's counts get another owner, and the classes of now another teacher. History, lessons and copies stay as they are."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from django.db import transaction

from accounts.models import User
from grade_bands.models import ClassGroup
from routines.models import Routine
from routines.models.bank_total import look_for_owners_again

Status = Routine.Status


@dataclass(frozen=True, slots=True)
class Left:
    """How many counts somebody owns: those that were shared once, and drafts, whose titles stay the author's affair.

    classes: of years that are not over.
    """

    shared: int
    drafts: int
    classes: Sequence[ClassGroup]

    def __bool__(self) -> bool:
        return bool(self.shared or self.drafts or self.classes)


def left_by(person: User, today: date) -> Left:
    own = Routine.objects.filter(owner=person)
    return Left(
        own.exclude(status=Status.DRAFT).count(),
        own.filter(status=Status.DRAFT).count(),
        list(ClassGroup.objects.taught_by(person).filter(year__ends_on__gte=today).in_grade_order()),
    )


@transaction.atomic
def hand_on(*, leaver: User, to: User, with_drafts: bool, classes: Sequence[ClassGroup] = ()) -> int:
    """Returns how many counts are now `to`'s. Whoever wrote or teaches with the leaver goes on doing so.

    What is planned for a class goes with it: who teaches it moves and removes it.
    """
    own = Routine.objects.select_for_update().filter(owner=leaver)
    keys = list((own if with_drafts else own.exclude(status=Status.DRAFT)).values_list("pk", flat=True))
    Routine.co_authors.through.objects.filter(user_id=to.pk, routine_id__in=keys).delete()
    handed = Routine.objects.filter(pk__in=keys).update(owner=to)
    look_for_owners_again({leaver.pk, to.pk})
    for group in classes:
        group.teachers.remove(leaver)
        group.teachers.add(to)
    return handed
