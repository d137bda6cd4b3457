"""Lessons: recording one that was taught, reading how it went, changing the reflection."""

from django.contrib import messages
from django.core.paginator import Paginator
from django.db import transaction
from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.http import require_GET, require_http_methods

from accounts.sent_once import SentBefore, keep_once
from routines.facts import count_in_words
from routines.lessons.drawn import cells_as_said
from routines.lessons.forms import ReflectionForm, TaughtForm
from routines.lessons.recording import record_paper_lesson, save_reflection, state_of
from routines.lessons.shown_count import target_sentences
from routines.lessons.state import slips_heard
from routines.models import Lesson, Routine
from routines.plan_document import Plan
from routines.shown_plan import ShownPlan

PAGE_SIZE = 30


@require_GET
def lessons(request: HttpRequest) -> HttpResponse:
    """My own lessons, newest first, and what colleagues shared with me."""
    titled = Lesson.objects.with_titles_for(request.user).select_related("class_group", "reflection")
    own = titled.taught_by(request.user)
    shared = (
        titled.open_to(request.user).exclude(teacher=request.user).exclude(reflection=None).select_related("teacher")
    )
    context = {
        "section": "lessons",
        "page": Paginator(own, PAGE_SIZE).get_page(request.GET.get("page")),
        "shared": shared[:12],
    }
    return render(request, "lessons/lessons.html", context)


@require_http_methods(["GET", "POST"])
def taught(request: HttpRequest, pk: int) -> HttpResponse:
    """Record a lesson taught on paper: the same event list that a lesson on the board makes."""
    routine = get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)
    shown = ShownPlan(routine.plan, routine.grade.level)
    form = TaughtForm(
        request.POST if request.method == "POST" else None,
        user=request.user,
        plan=shown.plan,
        statements=target_sentences(shown),
        initial={"taught_on": timezone.localdate(), "outcome": "as-planned"},
    )

    def make() -> str:
        lesson = _record(form, routine, shown.plan, request.user)
        messages.success(request, "Kept. The lesson is in your list, and in the coverage of its grade.")
        return lesson.get_absolute_url()

    if request.method == "POST" and form.is_valid():
        try:
            return keep_once(request, make)
        except SentBefore as before:
            form.add_error(None, before.sentence)
    context = {
        "section": "lessons",
        "routine": routine,
        "plan": shown.plan,
        "shown": shown,
        "count": count_in_words(shown.grid),
        "form": form,
        "has_classes": form.fields["class_group"].queryset.exists(),
    }
    return render(request, "lessons/taught.html", context, status=422 if form.errors else 200)


@transaction.atomic
def _record(form: TaughtForm, routine: Routine, plan: Plan, user) -> Lesson:
    kept = form.cleaned_data
    terms = plan.count.terms
    lesson = record_paper_lesson(
        version=routine.current_version,
        class_group=kept["class_group"],
        teacher=user,
        taught_on=kept["taught_on"],
        practice=kept["practice"],
        heard={n: [said] for n, said in kept["slips"].items()},
        voices=[{"from": 1, "to": terms, "how": kept["voice"]}] if kept["voice"] else [],
        noticed=[(line, None) for line in kept["noticed"].splitlines()],
    )
    _keep_reflection(form, lesson)
    return lesson


def _keep_reflection(form: ReflectionForm, lesson: Lesson) -> None:
    names = ("outcome", "seen", "stuck", "next_step", "to_next_year", "sharing")
    save_reflection(lesson=lesson, targets=form.targets(), **{name: form.cleaned_data[name] for name in names})


@require_http_methods(["GET", "POST"])
def lesson(request: HttpRequest, key) -> HttpResponse:
    """One lesson: the grid as it was said, the reflection; its teacher may change what she wrote."""
    found = get_object_or_404(
        Lesson.objects.open_to(request.user)
        .with_titles_for(request.user)
        .select_related("version", "class_group", "teacher", "grade", "reflection"),
        key=key,
    )
    own = found.teacher_id == request.user.pk
    if request.method == "POST" and not own:
        raise Http404
    shown = ShownPlan(found.version.read_plan(), found.grade.level)
    outcomes = {row.position: row for row in found.target_outcomes.all()}
    form = None
    if own:
        written = getattr(found, "reflection", None)
        initial = {"sharing": found.sharing, **{f"target-{i}": row.seen for i, row in outcomes.items()}}
        if written is not None:
            initial |= {
                name: getattr(written, name) for name in ("outcome", "seen", "stuck", "next_step", "to_next_year")
            }
        form = ReflectionForm(
            request.POST if request.method == "POST" else None,
            plan=shown.plan,
            statements=target_sentences(shown),
            initial=initial,
        )
        if request.method == "POST" and form.is_valid():
            with transaction.atomic():
                _keep_reflection(form, found)
            messages.success(request, "Kept.")
            return redirect("lesson", key=found.key)
    state = state_of(found)
    context = {
        "section": "lessons",
        "lesson": found,
        "own": own,
        "is_over": found.is_over(),
        "plan": shown.plan,
        "count": count_in_words(shown.grid),
        "state": state,
        "slips": [(n, said, shown.grid.count.text(n)) for n, said in slips_heard(state)],
        "targets": [
            (statement, outcomes[i].get_seen_display() if i in outcomes else "not recorded")
            for i, statement in enumerate(target_sentences(shown))
        ],
        "shown": shown,
        "entries": cells_as_said(state, shown.grid.count),
        "form": form,
    }
    return render(request, "lessons/lesson.html", context, status=422 if form is not None and form.errors else 200)
