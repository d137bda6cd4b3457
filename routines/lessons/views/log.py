"""The log of a lesson: kept after one taught on paper, prefilled after one on the board, read by those it is shared with."""

from collections.abc import Iterable, Sequence
from typing import Any
from uuid import UUID

from django.contrib import messages
from django.db import transaction
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from accounts.fragments import wants_fragment
from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.sent_once import SentBefore, keep_once
from grade_bands.models import ClassGroup, SchoolYear
from routines.lessons.drawn import cells_as_said, cells_of_log, voices_of, written_terms
from routines.lessons.log import Log, differing, log_of
from routines.lessons.log_form import HOW, LogForm
from routines.lessons.next_count import NextGrid, choices, next_grids, start_next
from routines.lessons.recording import change_log, move_lesson, record_paper_lesson, save_reflection, state_of
from routines.lessons.shown_count import shown_of, target_sentences
from routines.lessons.slips_said import said_otherwise
from routines.lessons.state import LessonState
from routines.models import Lesson, Planned, Routine, TargetOutcome
from routines.models.facts import count_in_words
from routines.models.shown_plan import ShownPlan
from routines.words_erased.late_words import what_went


@require_http_methods(["GET", "POST"])
def taught(request: SignedInRequest, pk: int) -> HttpResponse:
    """Record a lesson taught on paper: the same event list that a lesson on the board makes."""
    routine = get_object_or_404(Routine.objects.visible_to(request.user).for_cards(), pk=pk)
    shown = ShownPlan(routine.plan, routine.grade.level)
    terms, offered = shown.grid.terms, next_grids(shown)
    form = LogForm(
        request.POST if request.method == "POST" else None,
        user=request.user,
        shown=shown,
        standing=Log(),
        last=terms,
        next_choices=choices(offered),
        initial={"taught_on": timezone.localdate(), "class_group": _own_class(request.user, routine)},
    )
    if request.method == "POST" and wants_fragment(request):
        return _drawn(request, form, shown, range(1, terms + 1))

    @transaction.atomic
    def make() -> str:
        kept, log = form.cleaned_data, form.wanted()
        lesson = record_paper_lesson(
            version=routine.newest_save,
            class_group=kept["class_group"],
            teacher=request.user,
            taught_on=kept["taught_on"],
            practice=kept["practice"],
            heard={n: cell.said for n, cell in log.cells.items() if cell.said},
            left_out=[n for n, cell in log.cells.items() if cell.left_out],
            again=[n for n, cell in log.cells.items() if cell.again],
            voices=[{"from": first, "to": last, "how": how} for first, last, how in log.voices],
            noticed=log.noticed,
            targets=log.targets,
        )
        return _keep(request, form, lesson, log, offered)

    if request.words_removed:
        form.add_error(None, what_went(request.words_removed))
    if request.method == "POST" and form.is_valid():
        try:
            return keep_once(request, make)
        except SentBefore as before:
            form.add_error(None, before.sentence)
    context = _form_context(form, shown, range(1, terms + 1), offered) | {
        "routine": routine,
        "title": routine.title,
        "has_classes": ClassGroup.objects.filter(teachers=request.user).exists(),
    }
    return render(request, "lessons/log.html", context, status=422 if form.errors else 200)


def _own_class(user: User, routine: Routine) -> int | None:
    """The class that it was planned for of late, else the first of its grade, else the first."""
    today = timezone.localdate()
    mine = ClassGroup.objects.taught_by(user).in_grade_order()
    classes = list(mine.in_year(SchoolYear.objects.on(today))) or list(mine)
    planned = Planned.objects.filter(routine=routine, on__lte=today, class_group__in=classes)
    latest = planned.order_by("-on").values_list("class_group", flat=True).first()
    of_its_grade = [group for group in classes if group.grade_id == routine.grade_id]
    return latest or next((group.pk for group in of_its_grade or classes), None)


def _keep(request: SignedInRequest, form: LogForm, lesson: Lesson, log: Log, offered: Sequence[NextGrid]) -> str:
    """Events, reflection and next count; hands back where to go on."""
    change_log(lesson=lesson, wanted=log, chosen=_chosen(request, lesson))
    save_reflection(lesson=lesson, **form.reflection())
    taken = form.cleaned_data["next"]
    if not taken:
        messages.success(request, _("Kept. The lesson is in your list, and in the coverage of its grade."))
        return lesson.get_absolute_url()
    following = start_next(version=lesson.version, taken=offered[int(taken)], by=request.user)
    messages.success(request, _("The lesson is kept. This is a draft of the next count, yours alone for now."))
    return reverse("plan_edit", args=[following.pk])


def _chosen(request: SignedInRequest, lesson: Lesson) -> dict[int, str]:
    """Where two devices differed: the entry that the teacher says holds."""
    asked = differing(state_of(lesson))
    sent = {n: request.POST.get(f"differ-{n}", "") for n in asked}
    return {n: event for n, event in sent.items() if event in {entry.event for entry in asked[n]}}


@require_http_methods(["GET", "POST"])
def lesson(request: SignedInRequest, key: UUID) -> HttpResponse:
    """One lesson. Its teacher may change everything that she kept; others read it where it is shared."""
    found = get_object_or_404(
        Lesson.objects.open_to(request.user)
        .with_titles_for(request.user)
        .select_related("routine", "version", "class_group", "teacher", "grade", "reflection"),
        key=key,
    )
    own = found.teacher_id == request.user.pk
    if request.method == "POST" and not own:
        raise Http404
    shown, state = shown_of(found), state_of(found)
    return _own_log(request, found, shown, state) if own else _read_log(request, found, shown, state)


def _own_log(request: SignedInRequest, found: Lesson, shown: ShownPlan, state: LessonState) -> HttpResponse:
    written, offered = getattr(found, "reflection", None), next_grids(shown)
    terms = written_terms(state)
    form = LogForm(
        request.POST if request.method == "POST" else None,
        user=request.user,
        shown=shown,
        standing=_standing(found, state, shown),
        last=max(state.next - 1, 1),
        next_choices=choices(offered),
        initial={
            "class_group": found.class_group_id,
            "taught_on": found.taught_on,
            "practice": found.practice,
            "sharing": found.sharing,
            **({name: getattr(written, name) for name in WRITTEN} if written else {}),
        },
    )
    if request.method == "POST" and wants_fragment(request):
        return _drawn(request, form, shown, terms)

    @transaction.atomic
    def make() -> str:
        kept = form.cleaned_data
        move_lesson(
            lesson=found, class_group=kept["class_group"], taught_on=kept["taught_on"], practice=kept["practice"]
        )
        return _keep(request, form, found, form.wanted(), offered)

    if request.words_removed:
        form.add_error(None, what_went(request.words_removed))
    if request.method == "POST" and form.is_valid():
        try:
            return keep_once(request, make)
        except SentBefore as before:
            form.add_error(None, before.sentence)
    foreseen = [notice for notice in state.notices if notice["expected"] is not None]
    context = _form_context(form, shown, terms, offered) | {
        "lesson": found,
        "title": found.title,
        "routine": found.routine,
        "has_classes": True,
        "is_over": found.is_over(),
        "kept_before": written is not None,
        "differing": differing(state),
        "said": said_otherwise(state, shown.grid, shown.audience),
        "stop_times": _stop_times(state, shown),
        "foreseen": len(foreseen),
        "noticed": len(state.notices),
    }
    return render(request, "lessons/log.html", context, status=422 if form.errors else 200)


WRITTEN = ("outcome", "seen", "stuck", "next_step", "to_next_year")


def _standing(found: Lesson, state: LessonState, shown: ShownPlan) -> Log:
    """The log as its events have it; targets kept before targets were events count too."""
    log = log_of(state, shown.grid.count)
    rows = {row.position: row.seen for row in found.target_outcomes.all()}
    return Log(log.cells, log.voices, log.noticed, {**rows, **log.targets})


def _stop_times(state: LessonState, shown: ShownPlan) -> list[tuple[int, str, str]]:
    """For each stop at which the class was: the count, how long it took and how long was planned."""
    return [
        (stop.after, _minutes(state.stops[i] // 1000), _minutes(stop.think + stop.partner + stop.share))
        for i, stop in enumerate(shown.plan.stops)
        if i in state.stops
    ]


def _minutes(seconds: int) -> str:
    return f"{seconds // 60}:{seconds % 60:02}"


def _drawn(request: SignedInRequest, form: LogForm, shown: ShownPlan, written: Iterable[int]) -> HttpResponse:
    """The grid as the form stands; nothing is kept."""
    return render(request, "lessons/_log_grid.html", _grid_context(form, shown, written))


def _grid_context(form: LogForm, shown: ShownPlan, written: Iterable[int]) -> dict[str, Any]:
    return {
        "shown": shown,
        "count": count_in_words(shown.grid),
        "entries": cells_of_log(form.log, written, shown.grid.count),
        "voices": [list(voice) for voice in form.log.voices],
        "wide": shown.grid.columns > 7,
    }


def _form_context(
    form: LogForm, shown: ShownPlan, written: Iterable[int], offered: Sequence[NextGrid]
) -> dict[str, Any]:
    return {
        "section": "lessons",
        "plan": shown.plan,
        "form": form,
        "offered": list(zip(list(form["next"])[1:], offered, strict=True)),
        **_grid_context(form, shown, written),
    }


def _read_log(request: SignedInRequest, found: Lesson, shown: ShownPlan, state: LessonState) -> HttpResponse:
    """What a colleague reads: never the note to next year's self, nor what was foreseen."""
    targets = _standing(found, state, shown).targets
    names = dict(TargetOutcome.Seen.choices)
    count = shown.grid.count
    context = {
        "section": "lessons",
        "lesson": found,
        "plan": shown.plan,
        "count": count_in_words(shown.grid),
        "state": state,
        "said": said_otherwise(state, shown.grid, shown.audience),
        "targets": [
            (statement, names.get(targets.get(i, ""), _("not recorded")))
            for i, statement in enumerate(target_sentences(shown))
        ],
        "shown": shown,
        "entries": cells_as_said(state, shown.grid.count),
        "stop_times": _stop_times(state, shown),
        "voices": voices_of(state),
        "voice_words": [
            (count.text(voice["from"]), count.text(voice["to"]), HOW[voice["how"]]) for voice in state.voices
        ],
    }
    return render(request, "lessons/lesson.html", context)
