"""The teacher's own page beside the board, and its two questions: will it appear, and is this claim true."""

from typing import Any
from uuid import UUID

from django.contrib.auth.decorators import login_not_required
from django.http import HttpResponse, QueryDict
from django.shortcuts import render
from django.urls import reverse
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_POST

from accounts.fragments import wants_fragment
from accounts.requests import Request
from routines.counting import CountError
from routines.errors import say
from routines.lessons.forms import PairForm
from routines.lessons.live_page import live_page
from routines.lessons.passes import open_to_passes
from routines.lessons.roles import Role
from routines.lessons.shown_count import PROBES, shown_of
from routines.lessons.taking_part import page_for
from routines.models import LessonPass
from routines.models.shown_plan import ShownPlan
from routines.plans.forms.claim import ClaimForm
from routines.plans.suggestions.appearing import look_for
from routines.words import check, probes

AT_THE_LECTERN = (Role.TEACHER, Role.CO_TEACHER, Role.SUBSTITUTE)
SHOWN = ("version", "grade", "class_group", "routine")
LONGEST_VALUE = 40


@open_to_passes
@login_not_required
@never_cache
@require_GET
def lectern(request: Request, key: UUID) -> HttpResponse:
    """The page; what it shows of plan and lesson is drawn by its scripts, so that it works without network."""
    found = page_for(request, key, *AT_THE_LECTERN, related=SHOWN)
    if isinstance(found, HttpResponse):
        return found
    lesson, me = found
    shown = shown_of(lesson)
    context = live_page(request, lesson, me, shown, count="lesson_lectern_json") | {
        "me": me,
        "is_teacher": me.role is Role.TEACHER,
        "plan": shown.plan,
        "board": reverse("lesson_board", args=[lesson.key]),
        **appearing(shown, QueryDict()),
        **claimed(shown, QueryDict()),
    }
    if me.may_pair:
        context |= {"form": PairForm(), "devices": LessonPass.objects.of(lesson)}
    return render(request, "lessons/lectern.html", context)


@open_to_passes
@login_not_required
@never_cache
@require_POST
def ask(request: Request, key: UUID) -> HttpResponse:
    """Answers on the lectern alone; nothing of it reaches the board or is kept."""
    found = page_for(request, key, *AT_THE_LECTERN, related=SHOWN)
    if isinstance(found, HttpResponse):
        return render(request, "lessons/_ask_signed_out.html", status=401) if wants_fragment(request) else found
    lesson, _me = found
    shown = shown_of(lesson)
    if "claim-saying" in request.POST:
        return render(request, "lessons/_ask_claim.html", {"lesson": lesson, **claimed(shown, request.POST)})
    return render(request, "lessons/_ask_appear.html", {"lesson": lesson, **appearing(shown, request.POST)})


def appearing(shown: ShownPlan, posted: QueryDict) -> dict[str, Any]:
    typed = (posted.get("probe") or posted.get("value", "")).strip()[:LONGEST_VALUE]
    answer: dict[str, Any] = {"typed": typed, "probes": probes(shown.grid, audience=shown.audience)[:PROBES]}
    if typed:
        try:
            answer["found"] = look_for(shown.grid, typed, shown.audience)
        except CountError as error:
            answer["wrong"] = say(error)
    return answer


def claimed(shown: ShownPlan, posted: QueryDict) -> dict[str, Any]:
    """Judged once it is asked for; until then another kind of claim only changes the fields."""
    asked = "check" in posted
    form = ClaimForm(posted, shown.grid, is_asked=asked)
    answer: dict[str, Any] = {"claim_form": form}
    if asked and form.is_valid():
        try:
            answer["verdict"] = check(form.claim, shown.grid, audience=shown.audience)
        except CountError as error:
            form.refuse(error)
    return answer
