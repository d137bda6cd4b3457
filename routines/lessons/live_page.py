"""What board and lectern have in common: the lesson, its title, and where their scripts ask."""

from typing import Any

from django.http import HttpRequest
from django.urls import reverse

from accounts.names_of_children import as_script
from routines.lessons.roles import Participant
from routines.lessons.shown_count import spoken_title
from routines.lessons.taking_part import after_the_end, person_mark
from routines.models import Lesson
from routines.models.shown_plan import ShownPlan


def live_page(request: HttpRequest, lesson: Lesson, me: Participant, shown: ShownPlan, *, count: str) -> dict[str, Any]:
    """Context of a live page. count: name of the address that tells its script the count."""
    return {
        "lesson": lesson,
        "person": person_mark(request),
        "title": spoken_title(shown),
        "language": shown.audience.language,
        "names": as_script(),
        "addresses": {
            "count": reverse(count, args=[lesson.key]),
            "events": reverse("lesson_events", args=[lesson.key]),
            "worker": reverse("lesson_worker"),
            "after": after_the_end(lesson, me),
        },
    }
