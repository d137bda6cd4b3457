"""Writes to the planned week: put in, move, take out, and putting back what was moved or taken out."""

from dataclasses import dataclass
from datetime import date

from django.core import signing
from django.db import transaction

from accounts.models import User
from grade_bands.models import ClassGroup
from routines.models import Planned, Routine

SALT = "routines.team.planning"
# So long the way back is offered; the page that offers it is long gone then.
KEPT_FOR = 24 * 3600


def put_in_the_week(*, routine: Routine, class_group: ClassGroup, on: date, by: User) -> tuple[Planned, bool]:
    """The planned row, and whether it is new: the same count is planned once for a class and day."""
    return Planned.objects.get_or_create(routine=routine, class_group=class_group, on=on, defaults={"by": by})


@transaction.atomic
def move_in_the_week(*, planned: Planned, class_group: ClassGroup, on: date) -> Planned:
    """Another class or day. Where the count stands there already, the two become one."""
    held = Planned.objects.select_for_update().get(pk=planned.pk)
    there = Planned.objects.filter(routine=held.routine_id, class_group=class_group, on=on).exclude(pk=held.pk).first()
    if there:
        held.delete()
        return there
    held.class_group, held.on = class_group, on
    held.save(update_fields=["class_group", "on"])
    return held


@dataclass(frozen=True, slots=True)
class WayBack:
    """Where a planned count stood before it was moved or taken out. pk: the row that was moved, 0 where it is gone."""

    pk: int
    routine: int
    class_group: int
    on: date


def way_back(planned: Planned, by: User, *, moved_to: int = 0) -> str:
    """A token that puts it back where it stands now: signed, for this person alone."""
    place = [by.pk, moved_to, planned.routine_id, planned.class_group_id, planned.on.isoformat()]
    return signing.dumps(place, salt=SALT, compress=True)


def read_way_back(token: str, by: User) -> WayBack | None:
    """What the token says; None where it is none, too old, or another's."""
    try:
        person, moved_to, routine, class_group, on = signing.loads(token, salt=SALT, max_age=KEPT_FOR)
    except (signing.BadSignature, ValueError, TypeError):
        return None
    return WayBack(moved_to, routine, class_group, date.fromisoformat(on)) if person == by.pk else None


@transaction.atomic
def put_back(*, place: WayBack, by: User) -> Planned | None:
    """Undo a move or a removal. None where the count or the class is gone meanwhile."""
    group = ClassGroup.objects.filter(pk=place.class_group).first()
    routine = Routine.objects.filter(pk=place.routine).first()
    if group is None or routine is None:
        return None
    moved = Planned.objects.filter(pk=place.pk, routine=routine).first() if place.pk else None
    if moved:
        return move_in_the_week(planned=moved, class_group=group, on=place.on)
    return put_in_the_week(routine=routine, class_group=group, on=place.on, by=by)[0]
