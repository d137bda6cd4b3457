"""Making a lesson again that an older backup does not hold, from the event that opened it."""

import uuid
from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

from django.db import transaction
from django.utils import timezone

from accounts.models import User
from grade_bands.models import ClassGroup
from routines.lessons.events import read_event
from routines.lessons.kinds import Bounds, EventRefused
from routines.lessons.recording import plan_mark, start_lesson
from routines.models import Lesson, Routine, RoutineVersion
from routines.words_erased.list_of_erasures import known, plan_key

LONG_AGO = timedelta(days=370)
ANY_COUNT = Bounds(last_term=250)


@transaction.atomic
def make_again(*, key: uuid.UUID, batch: Sequence[Any], by: User) -> Lesson | None:
    """The lesson, its events still to come; None where the batch does not open one that `by` may teach.

    Raises: IntegrityError where another device made it at the same moment.
    """
    opening = _opening(batch)
    if opening is None:
        return None
    group = ClassGroup.objects.filter(pk=opening["class_group"], teachers=by).select_related("grade", "year").first()
    version = RoutineVersion.objects.filter(pk=opening["version"]).select_related("routine").first()
    if group is None or version is None or not _is_of(version, opening["plan"]):
        return None
    teacher = group.teachers.filter(pk=opening["teacher"]).first()
    taught_on, today = date.fromisoformat(opening["taught_on"]), timezone.localdate()
    if teacher is None or not today - LONG_AGO <= taught_on <= today + timedelta(days=1):
        return None
    if not Routine.objects.visible_to(by).filter(pk=version.routine_id).exists():
        return None
    return start_lesson(
        version=version,
        class_group=group,
        teacher=teacher,
        taught_on=taught_on,
        surface=opening["surface"],
        practice=opening["practice"],
        key=key,
        opening=opening,
    )


def _is_of(version: RoutineVersion, mark: str) -> bool:
    """Whether this is the plan that was taught, or what is left of it after words were removed."""
    return plan_mark(version) == mark or plan_key(version.pk, mark) in known().plans


def _opening(batch: Sequence[Any]) -> dict[str, Any] | None:
    for raw in batch:
        if isinstance(raw, dict) and raw.get("kind") == "lesson.open":
            try:
                said: dict[str, Any] = read_event(raw, ANY_COUNT)["data"]
            except EventRefused:
                return None
            return said
    return None
