"""Giving a device in the classroom its place in one lesson: it shows a code, a teacher types or scans it."""

import io
from math import ceil
from uuid import UUID

from django.contrib import messages
from django.contrib.auth.decorators import login_not_required
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import Request, SignedInRequest
from routines.lessons.forms import PairForm
from routines.lessons.passes import (
    CodeRefused,
    begin_to_wait,
    give_cookie,
    has_place,
    open_to_passes,
    pass_of,
    place_of,
    tie_by_code,
)
from routines.lessons.roles import Role
from routines.lessons.taking_part import answer, page_for
from routines.models import Lesson, LessonPass
from routines.models.lesson_pass import TooManyWaiting

LESSONS_OFFERED = 20
DONE = {
    "board": gettext_lazy("The board is paired. It opens by itself."),
    "substitute": gettext_lazy("The substitute’s lectern is paired. It opens by itself."),
}


@open_to_passes
@login_not_required
@never_cache
@require_GET
def wait(request: Request) -> HttpResponse:
    """On the device that shall become a board or a substitute's lectern: its code, large, and the same as a QR.

    A device that has its place goes there, until that lesson is over; `?again` waits for another one.
    """
    held = pass_of(request)
    if held is not None and has_place(held) and "again" not in request.GET:
        return redirect(place_of(held))
    try:
        held, secret = begin_to_wait(request)
    except TooManyWaiting:
        return render(request, "lessons/waiting.html", {"held": None}, status=503)
    seconds = (held.code_until - timezone.now()).total_seconds()
    context = {"held": held, "code": f"{held.code[:3]} {held.code[3:]}", "minutes": max(1, ceil(seconds / 60))}
    response = render(request, "lessons/waiting.html", context)
    if secret:
        give_cookie(response, request, secret)
    return response


@open_to_passes
@login_not_required
@require_GET
def status(request: Request) -> HttpResponse:
    """Asked by the waiting device: "waiting", "over" (load the page for another code), "lost" (no cookie), or where to go."""
    held = pass_of(request)
    if held is None:
        return answer({"state": "lost"})
    if has_place(held):
        return answer({"state": "ready", "address": place_of(held)})
    if held.lesson_id is not None or held.code_is_over:
        return answer({"state": "over"})
    return answer({"state": "waiting"})


@open_to_passes
@login_not_required
@never_cache
@require_GET
def code_svg(request: Request) -> HttpResponse:
    """The waiting device's own code, to be scanned by a teacher who is signed in on the scanning phone."""
    held = pass_of(request)
    if held is None or not held.code:
        raise Http404
    import segno  # here, for few requests need it

    drawn = io.BytesIO()
    address = request.build_absolute_uri(reverse("lesson_pair_code", args=[held.code]))
    segno.make(address, micro=False).save(
        drawn, kind="svg", scale=8, border=4, dark="#000", light="#fff", title=_("Code to scan")
    )
    return HttpResponse(drawn.getvalue(), content_type="image/svg+xml")


@require_http_methods(["GET", "POST"])
def pair(request: SignedInRequest, key: UUID) -> HttpResponse:
    """Type the code of a waiting device, for one's own lesson."""
    found = page_for(request, key, Role.TEACHER, Role.CO_TEACHER, related=("class_group", "routine"))
    if isinstance(found, HttpResponse):
        return found
    lesson, _me = found
    form = PairForm(request.POST if request.method == "POST" else None)
    context = {"section": "lessons", "lesson": lesson, "form": form, "devices": LessonPass.objects.of(lesson)}
    page = "lessons/_devices.html" if wants_fragment(request) else "lessons/pair.html"
    if request.method == "GET":
        return render(request, page, context)
    wrong = _tie(form, lesson, request.user)
    if wrong:
        return render(request, page, context, status=wrong)
    done = DONE[form.cleaned_data["role"]]
    if wants_fragment(request):
        return render(request, page, {**context, "form": PairForm(), "done": done})
    messages.success(request, done)
    return redirect("lesson_lectern", key=lesson.key)


@require_POST
def disconnect(request: SignedInRequest, key: UUID, pk: int) -> HttpResponse:
    """The device has no place in the lesson any more; what it wrote stays. Disconnecting what is gone changes nothing."""
    found = page_for(request, key, Role.TEACHER, Role.CO_TEACHER)
    if isinstance(found, HttpResponse):
        return found
    lesson, _me = found
    LessonPass.objects.of(lesson).filter(pk=pk).delete()
    done = _("The device is disconnected.")
    if wants_fragment(request):
        context = {"lesson": lesson, "form": PairForm(), "devices": LessonPass.objects.of(lesson), "done": done}
        return render(request, "lessons/_devices.html", context)
    messages.success(request, done)
    return redirect("lesson_pair", key=lesson.key)


@require_http_methods(["GET", "POST"])
def pair_by_code(request: SignedInRequest, code: str) -> HttpResponse:
    """What the QR opens: choose which of one's lessons the device joins. Says nothing of whether any device shows this code."""
    lessons = Lesson.objects.on_now().taught_with(request.user).select_related("class_group", "routine")
    form = PairForm({**request.POST.dict(), "code": code} if request.method == "POST" else None, initial={"code": code})
    context = {
        "section": "lessons",
        "lessons": lessons[:LESSONS_OFFERED],
        "open_lessons": len(lessons),
        "form": form,
        "code": code,
    }
    if request.method == "GET":
        return render(request, "lessons/pair.html", context)
    lesson = next((one for one in lessons if str(one.key) == request.POST.get("lesson")), None)
    if lesson is None:
        raise Http404
    wrong = _tie(form, lesson, request.user)
    if wrong:
        return render(request, "lessons/pair.html", context, status=wrong)
    messages.success(request, DONE[form.cleaned_data["role"]])
    return redirect("lesson_lectern", key=lesson.key)


def _tie(form: PairForm, lesson: Lesson, by: User) -> int:
    """0 where the device is tied; else the status of the page that says why not."""
    if not form.is_valid():
        return 422
    if lesson.is_over():
        form.add_error("code", _("This lesson has ended. Open it again first."))
        return 422
    try:
        tie_by_code(code=form.cleaned_data["code"], lesson=lesson, role=form.cleaned_data["role"], by=by)
    except CodeRefused as refused:
        form.add_error("code", str(refused))
        return refused.status
    return 0
