"""What was noticed at lessons, for a list of them: the noticings in their events, and what was seen as written before."""

from collections import defaultdict
from collections.abc import Iterable
from typing import Any

from django.db.models import QuerySet

from accounts.compiled_once import compiled_once
from routines.lessons.state import reduce_events
from routines.models import Lesson, LessonEvent

OF_NOTICINGS = ("notice.add", "notice.edit", "undo")
"""The kinds that a lesson's noticings follow from."""


def noticed_at(lessons: Iterable[Lesson]) -> dict[int, list[str]]:
    """By the key of each lesson's row, in order. The lessons come with their reflections; who asks may read both.

    One query for all of them.
    """
    listed = list(lessons)
    events: dict[int, list[dict[str, Any]]] = defaultdict(list)
    for event in _noticings([lesson.pk for lesson in listed]):
        events[event.lesson_id].append(event.as_dict())
    found = {}
    for lesson in listed:
        written = getattr(lesson, "reflection", None)
        noticed = [notice["text"] for notice in reduce_events(events[lesson.pk]).notices]
        found[lesson.pk] = noticed + ([written.seen] if written and written.seen else [])
    return found


@compiled_once
def _noticings(lessons: list[int]) -> QuerySet[LessonEvent]:
    return LessonEvent.objects.filter(lesson__in=lessons, kind__in=OF_NOTICINGS).order_by("lesson", "seq")
