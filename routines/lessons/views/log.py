"""Lessons: recording one that was taught, reading how it went, changing the reflection."""

from django.contrib import messages
from django.core.paginator import Paginator
from django.db import transaction
from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import timezone
from django.views.decorators.http import require_GET, require_http_methods

from accounts.sent_once import SentBefore, keep_once
from routines.drawing import Entry
from routines.facts import count_in_words
from routines.lessons.actions import append_events, paper_events, save_reflection, start_lesson
from routines.lessons.forms import ReflectionForm, TaughtForm
from routines.lessons.state import Entry as Written
from routines.lessons.state import reduce_events
from routines.models import Lesson, Routine
from routines.plan_document import Plan
from routines.shown_plan import ShownPlan

PAGE_SIZE = 30


@require_GET
def lessons(request: HttpRequest) -> HttpResponse:
    """My own lessons, newest first, and what colleagues shared with me."""
    own = Lesson.objects.taught_by(request.user).select_related("routine", "class_group", "reflection")
    shared = (
        Lesson.objects.open_to(request.user)
        .exclude(teacher=request.user)
        .exclude(reflection=None)
        .select_related("routine", "class_group", "reflection", "teacher")
    )
    context = {
        "section": "lessons",
        "page": Paginator(own, PAGE_SIZE).get_page(request.GET.get("page")),
        "shared": shared[:12],
    }
    return render(request, "lessons/lessons.html", context)


def _statements(shown: ShownPlan) -> list[str]:
    """One line for each target of the plan, in the plan's order."""
    said = {item.pattern.claim: item.pattern.statement for item in shown.patterns if item.target}
    return [
        target.words or said.get(claim) or f"Target {position + 1}"
        for position, (target, claim) in enumerate(zip(shown.plan.targets, shown.target_claims, strict=True))
    ]


@require_http_methods(["GET", "POST"])
def taught(request: HttpRequest, pk: int) -> HttpResponse:
    """Record a lesson taught on paper: the same event list that a lesson on the board makes."""
    routine = get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)
    shown = ShownPlan(routine.plan, routine.grade.level)
    form = TaughtForm(
        request.POST if request.method == "POST" else None,
        user=request.user,
        plan=shown.plan,
        statements=_statements(shown),
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
    lesson = start_lesson(
        version=routine.current_version,
        class_group=kept["class_group"],
        teacher=user,
        taught_on=kept["taught_on"],
        surface=Lesson.Surface.PAPER,
        practice=kept["practice"],
    )
    count = plan.count.count()
    events = paper_events(
        correct={n: count.text(n) for n in range(1, count.terms + 1)},
        slips=kept["slips"],
        voices=[{"from": 1, "to": count.terms, "how": kept["voice"]}] if kept["voice"] else [],
        noticed=[line.strip() for line in kept["noticed"].splitlines() if line.strip()],
        at=timezone.now(),
    )
    for first in range(0, len(events), 100):
        append_events(lesson=lesson, events=events[first : first + 100], user=user)
    _keep_reflection(form, lesson)
    return lesson


def _keep_reflection(form: ReflectionForm, lesson: Lesson) -> None:
    names = ("outcome", "seen", "stuck", "next_step", "to_next_year", "sharing")
    save_reflection(lesson=lesson, targets=form.targets(), **{name: form.cleaned_data[name] for name in names})


def _drawn(written: Written) -> Entry:
    """How a cell is drawn: what was said stands struck beside its correction."""
    if written.struck:
        return Entry("corrected", written.text, written.struck[-1])
    return Entry("written", written.text)


@require_http_methods(["GET", "POST"])
def lesson(request: HttpRequest, key) -> HttpResponse:
    """One lesson: the grid as it was said, the reflection; its teacher may change what she wrote."""
    found = get_object_or_404(
        Lesson.objects.open_to(request.user).select_related(
            "routine", "version", "class_group", "teacher", "grade", "reflection"
        ),
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
            statements=_statements(shown),
            initial=initial,
        )
        if request.method == "POST" and form.is_valid():
            with transaction.atomic():
                _keep_reflection(form, found)
            messages.success(request, "Kept.")
            return redirect("lesson", key=found.key)
    state = reduce_events(event.as_dict() for event in found.events.all())
    entries = {n: _drawn(written[-1]) for n, written in state.entries.items()}
    context = {
        "section": "lessons",
        "lesson": found,
        "own": own,
        "plan": shown.plan,
        "count": count_in_words(shown.grid),
        "state": state,
        "slips": [(n, said, shown.grid.count.text(n)) for n, said in state.slips()],
        "targets": [
            (statement, outcomes[i].get_seen_display() if i in outcomes else "not recorded")
            for i, statement in enumerate(_statements(shown))
        ],
        "shown": shown,
        "entries": entries,
        "form": form,
    }
    return render(request, "lessons/lesson.html", context, status=422 if form is not None and form.errors else 200)
