"""Who is asking, for one lesson: its teacher, a second teacher of the class, or a device with a pass."""

import uuid
from typing import Any

from django.contrib.auth.views import redirect_to_login
from django.http import Http404, HttpRequest, HttpResponse, JsonResponse
from django.urls import reverse
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from routines.lessons.passes import COOKIE, pass_of
from routines.lessons.roles import Participant, Role
from routines.models import Lesson

PERSONS = uuid.uuid5(uuid.NAMESPACE_URL, "countfold:persons")
SIGN_IN_AGAIN = gettext_lazy("Sign in again to send what is kept on this device.")
ROLE_OF_PASS = {"board": Role.BOARD, "substitute": Role.SUBSTITUTE}


def participant_in(request: HttpRequest, lesson: Lesson) -> Participant | None:
    """A guest takes part until the lesson has been quiet for long. None: for this reader there is no such lesson."""
    user = request.user if request.user.is_authenticated else None
    if user is not None and lesson.teacher_id == user.pk:
        return Participant(Role.TEACHER, user)
    if lesson.closed or lesson.is_quiet():
        return None
    if user is not None and lesson.class_group.teachers.filter(pk=user.pk).exists():
        return Participant(Role.CO_TEACHER, user)
    held = pass_of(request)
    if held is not None and held.lesson_id == lesson.pk:
        return Participant(ROLE_OF_PASS[held.role], user)
    return None


def find_lesson(key: Any, *related: str) -> Lesson | None:
    lessons = Lesson.objects.filter(key=key).order_by()
    # Without a name select_related would follow every key there is, on every question of every board.
    return (lessons.select_related(*related) if related else lessons).first()


def page_for(
    request: HttpRequest, key: Any, *roles: Role, related: tuple[str, ...] = ()
) -> tuple[Lesson, Participant] | HttpResponse:
    """The lesson and who is asking, for a page; the sign-in page for the signed-out. Raises: Http404 for all others."""
    lesson = find_lesson(key, *related)
    me = participant_in(request, lesson) if lesson is not None and lesson.deleted_at is None else None
    if lesson is not None and me is not None and me.role in roles:
        return lesson, me
    if request.user.is_authenticated or (me is not None) or COOKIE in request.COOKIES:
        raise Http404
    return redirect_to_login(request.get_full_path())


def after_the_end(lesson: Lesson, me: Participant) -> str:
    """Where a teacher goes on once the lesson has ended: its own to the log, a second teacher to the list."""
    return reverse("lesson", args=[lesson.key]) if me.role is Role.TEACHER else reverse("lessons")


def person_mark(request: HttpRequest) -> str:
    """Who is signed in, as pages and what they keep name them; "" for nobody.

    No number, which the board's source could be suspected of telling; and the same after any restore.
    """
    if not request.user.is_authenticated:
        return ""
    return str(uuid.uuid5(PERSONS, str(request.user.pk)))


def refuse_for_another(request: HttpRequest, person: object) -> JsonResponse | None:
    """The answer to a page that speaks for somebody else (`person`, a mark) than is signed in now; None where it may speak.

    What was written under one name is never sent under another's, nor refused for good because that other may do less.
    """
    if not isinstance(person, str) or not person or person == person_mark(request):
        return None
    if not request.user.is_authenticated:
        return answer({"reason": "signed-out", "words": SIGN_IN_AGAIN}, 401)
    return answer({"reason": "another-person", "words": _("Someone else has signed in here.")}, 409)


def answer(body: dict[str, Any], status: int = 200) -> JsonResponse:
    """JSON for a lesson's scripts, never to be kept by anything in between."""
    response = JsonResponse(body, status=status)
    response["Cache-Control"] = "private, no-store"
    return response


def refuse(request: HttpRequest) -> JsonResponse:
    """In answer to a script: 401 to a browser that has nothing to show, 404 to all others, with no word of what is there."""
    if not request.user.is_authenticated and COOKIE not in request.COOKIES:
        return answer({"reason": "signed-out", "words": SIGN_IN_AGAIN}, 401)
    if not request.user.is_authenticated:
        return answer({"reason": "not-paired", "words": _("This device is not in the lesson any more.")}, 404)
    return answer({"reason": "unknown", "words": _("There is no such lesson for whoever is signed in here.")}, 404)
