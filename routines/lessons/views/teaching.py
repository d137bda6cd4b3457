"""Opening a count for a class, the page of the board, and the lesson's end."""

from uuid import UUID

from django.contrib import messages
from django.contrib.auth.decorators import login_not_required
from django.contrib.staticfiles import finders
from django.http import FileResponse, Http404, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from accounts.requests import Request, SignedInRequest
from accounts.typed_numbers import typed_id
from routines.lessons.forms import TeachForm
from routines.lessons.live_page import live_page
from routines.lessons.passes import open_to_passes
from routines.lessons.recording import delete_lesson, end_lesson, open_on_the_board, reopen_lesson
from routines.lessons.roles import Role
from routines.lessons.shown_count import shown_of
from routines.lessons.taking_part import page_for
from routines.models import Lesson, Routine
from routines.models.facts import count_in_words
from routines.plans.suggestions.counted_before import counted_before, notes_to_self

AT_THE_BOARD = (Role.TEACHER, Role.CO_TEACHER, Role.SUBSTITUTE, Role.BOARD)
TEACHERS = (Role.TEACHER, Role.CO_TEACHER)
SHOWN = ("version", "grade", "class_group")


@require_http_methods(["GET", "POST"])
def teach(request: SignedInRequest, pk: int) -> HttpResponse:
    """Choose the class and where to begin; a lesson that is open and still empty is gone on with, not opened twice."""
    routine = get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)
    today = timezone.localdate()
    form = TeachForm(
        request.POST if request.method == "POST" else None,
        user=request.user,
        routine=routine,
        today=today,
        asked_for=typed_id(request.GET.get("class", "")),
    )
    if request.method == "POST" and form.is_valid():
        lesson = open_on_the_board(
            version=routine.newest_save,
            class_group=form.cleaned_data["class_group"],
            teacher=request.user,
            taught_on=today,
            practice=form.cleaned_data["practice"],
        )
        return redirect(_first_page(lesson, form.cleaned_data["begin"]))
    grid = routine.plan.grid()
    context = {
        "section": "bank",
        "routine": routine,
        "count": count_in_words(grid),
        "counted_before": counted_before(grid.count, request.user, today),
        "notes_to_self": notes_to_self(request.user, routine=routine, count=grid.count),
        "form": form,
        "open_lessons": Lesson.objects.on_now()
        .taught_by(request.user)
        .filter(routine=routine)
        .select_related("class_group"),
    }
    return render(request, "lessons/teach.html", context, status=422 if form.errors else 200)


def _first_page(lesson: Lesson, begin: str) -> str:
    if begin == "lectern":
        return reverse("lesson_lectern", args=[lesson.key])
    address = reverse("lesson_board", args=[lesson.key])
    return f"{address}?alone=1" if begin == "alone" else address


@open_to_passes
@login_not_required
@never_cache
@require_GET
def board(request: Request, key: UUID) -> HttpResponse:
    """The page the class sees: an empty grid, and where its scripts ask for the rest."""
    found = page_for(request, key, *AT_THE_BOARD, related=SHOWN)
    if isinstance(found, HttpResponse):
        return found
    lesson, me = found
    alone, shown = request.GET.get("alone") == "1", shown_of(lesson)
    context = live_page(request, lesson, me, shown, count="lesson_board_json") | {
        "may_end": me.may_end,
        "lectern": "" if me.is_board or alone else reverse("lesson_lectern", args=[lesson.key]),
    }
    return render(request, "lessons/board.html", context)


@login_not_required
@open_to_passes
@require_GET
def worker(request: Request) -> FileResponse:
    """The service worker of the lesson's pages: here, not with the other scripts, because it serves only what lies beside it."""
    path = finders.find("js/lesson/worker.js")
    if path is None:
        raise Http404
    response = FileResponse(open(path, "rb"), content_type="text/javascript")  # noqa: SIM115 - the response closes it
    response["Cache-Control"] = "no-cache"
    return response


def _own(request: SignedInRequest, key: UUID, *roles: Role) -> Lesson:
    """The lesson for one of its teachers, who is signed in. Raises: Http404."""
    found = page_for(request, key, *roles, related=("version", "teacher", "class_group"))
    if isinstance(found, HttpResponse):
        raise Http404
    return found[0]


@require_POST
def end(request: SignedInRequest, key: UUID) -> HttpResponse:
    lesson = _own(request, key, *TEACHERS)
    end_lesson(lesson=lesson)
    if lesson.teacher_id != request.user.pk:
        messages.success(request, _("The lesson has ended."))
        return redirect("lessons")
    return redirect("lesson", key=lesson.key)


@require_POST
def reopen(request: SignedInRequest, key: UUID) -> HttpResponse:
    lesson = _own(request, key, Role.TEACHER)
    reopen_lesson(lesson=lesson)
    return redirect("lesson_lectern", key=lesson.key)


@require_http_methods(["GET", "POST"])
def delete(request: SignedInRequest, key: UUID) -> HttpResponse:
    """Asks first: what is deleted does not come back."""
    lesson = _own(request, key, Role.TEACHER)
    if request.method == "POST":
        delete_lesson(lesson=lesson)
        messages.success(request, _("The lesson was removed. Coverage does not count it any more."))
        return redirect("lessons")
    return render(request, "lessons/delete.html", {"section": "lessons", "lesson": lesson})
