"""Which planned counts have been taught: a lesson ticks the plan it was taught from."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, timedelta

from django.db.models import QuerySet

from accounts.compiled_once import compiled_once
from accounts.models import User
from routines.models import Lesson, Planned
from routines.team.school_days import DAYS, monday_of


def lessons_of(planned: Sequence[Planned], reader: User) -> dict[int, Lesson]:
    """By planned row, the lesson that ticks it, where the reader may know that it took place. The rows are of one week.

    A lesson of the count in that class on that day ticks it; else one on another day of the same week, the earliest
    first. Each lesson ticks one row. One query.
    """
    if not planned:
        return {}
    monday = monday_of(min(row.on for row in planned))
    found = _taught(
        reader,
        sorted({row.routine_id for row in planned}),
        sorted({row.class_group_id for row in planned}),
        monday,
        monday + timedelta(days=DAYS - 1),
    )
    lessons: dict[tuple[int, int], list[Lesson]] = defaultdict(list)
    for lesson in found:
        lessons[lesson.routine_id, lesson.class_group_id].append(lesson)
    ticked: dict[int, Lesson] = {}
    for on_the_day in (True, False):
        for row in sorted(planned, key=lambda row: (row.on, row.pk)):
            taught = lessons[row.routine_id, row.class_group_id]
            match = next((one for one in taught if one.taught_on == row.on or not on_the_day), None)
            if row.pk not in ticked and match:
                ticked[row.pk] = match
                taught.remove(match)
    return ticked


@compiled_once
def _taught(reader: User, routines: list[int], class_groups: list[int], first: date, last: date) -> QuerySet[Lesson]:
    found = Lesson.objects.known_to(reader).counted().filter(routine__in=routines, class_group__in=class_groups)
    return found.filter(taught_on__range=(first, last)).order_by("taught_on", "pk")
