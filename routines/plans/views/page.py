"""The plan page itself, and saving from it."""

from contextlib import suppress
from typing import Any
from uuid import UUID, uuid4

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import Http404, HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_safe

from accounts.models import SentForm
from accounts.requests import SignedInRequest
from routines.models import PlanDraft, Routine, RoutineVersion
from routines.models.facts import kind_of_area
from routines.models.plan_document import Plan
from routines.plans.actions import StaleSave, save_version, start_routine
from routines.plans.forms.plan import PlanForm
from routines.plans.suggestions.counted_before import counted_before, notes_to_self
from routines.words_erased.late_words import what_went

from .live import LivePlan, live_addresses, live_context
from .merging import merge_context
from .open_plan import OpenPlan, TooLong, open_plan, own_words_apart

# What a teacher may want to do with the plan right after saving it.
LEADS_TO = {"print": "plan_pdf", "teach": "lesson_taught", "week": "planned_new"}
PREFILLED = (
    "kind",
    "start",
    "step",
    "terms",
    "line_length",
    "fill",
    "lead",
    "grade",
    "area",
    "language",
    "title",
    "standards",
)
PREFILLED_LISTS = ("target",)


class SavedMeanwhile(Exception):
    """This new plan was saved by the same page while this request was on its way, as by a double click."""


@require_safe
def new(request: SignedInRequest) -> HttpResponse:
    """A fresh sheet with an address of its own, so that reload and Back find what was typed there."""
    address = reverse("plan_edit", kwargs={"key": uuid4()})
    asked = request.GET.urlencode()
    return redirect(f"{address}?{asked}" if asked else address)


@require_http_methods(["GET", "HEAD", "POST"])
def edit(request: SignedInRequest, pk: int | None = None, key: UUID | None = None) -> HttpResponse:
    try:
        opened = open_plan(request, pk, key)
    except (Http404, PermissionDenied) as refused:
        apart = own_words_apart(request.user, pk, request.POST) if pk is not None else None
        if apart is None:
            raise
        status = 403 if isinstance(refused, PermissionDenied) else 404
        return render(request, "plans/not_hers.html", {"section": "plans", "key": apart}, status=status)
    if request.method == "POST":
        return _save(request, opened)
    if key and opened.routine:
        return redirect(opened.url("plan_edit"))
    typed = opened.typed()
    if not opened.draft and not opened.routine:
        typed |= {name: [request.GET[name]] for name in PREFILLED if request.GET.get(name)}
        typed |= {name: request.GET.getlist(name) for name in PREFILLED_LISTS if name in request.GET}
        if "area" in typed and "kind" not in request.GET:
            typed["kind"] = [kind_of_area(typed["area"][0])]
    form = PlanForm(typed, grades=opened.grades)
    designing = "design" in request.GET and form.grid is None
    return render(request, "plans/plan.html", page_context(opened, form) | {"designing": designing})


def page_context(opened: OpenPlan, form: PlanForm) -> dict[str, Any]:
    routine = opened.routine
    return {
        "section": "plans",
        "routine": routine,
        "undo": opened.steps[-1]["said"] if opened.steps else "",
        "kept_at": opened.draft.kept_at if opened.draft else None,
        "opened_draft": opened.draft is not None,
        "minutes": form.reading.minutes() if form.reading else None,
        "edit_url": opened.url("plan_edit"),
        "drop_url": opened.url("plan_drop"),
        **live_addresses(**opened.kwargs),
        "counted_before": counted_before(form.grid.count, opened.user, timezone.localdate()) if form.grid else "",
        "notes_to_self": notes_to_self(opened.user, routine=routine, count=form.grid.count if form.grid else None),
        "may_share": routine is None or (routine.status == Routine.Status.DRAFT and routine.is_author(opened.user)),
        **live_context(form),
    }


def as_it_would_be_saved(form: PlanForm) -> Plan:
    """The plan of a form without mistakes, under the title that is proposed for it where none was typed."""
    has_title = form.about.cleaned_data["title"]
    return form.plan("" if has_title else LivePlan(form).proposed_title)


def _save(request: SignedInRequest, opened: OpenPlan) -> HttpResponse:
    typed = opened.read(request.POST)
    form = PlanForm(typed, grades=opened.grades, for_saving=True)
    if not form.is_valid() or request.words_removed:
        if request.words_removed:
            form.wrong_parts.append(what_went(request.words_removed))
        with suppress(TooLong):  # the form says so, and the page shows all of it
            opened.keep(typed)
        context = {**page_context(opened, form), "wrong": form.how_many_wrong(), "first_wrong": form.first_wrong()}
        return render(request, "plans/plan.html", context, status=422)
    plan = as_it_would_be_saved(form)
    try:
        routine = save_plan(opened, plan, opened.based_on(typed))
    except SavedMeanwhile:
        return _save(request, open_plan(request, None, opened.key))
    except StaleSave as stale:
        opened.keep(typed)
        return render(request, "plans/merge.html", merge_context(opened, plan, stale.theirs), status=409)
    asked = request.POST.get("do", "save")
    if asked == "share" and routine.status == Routine.Status.DRAFT and routine.is_author(request.user):
        routine.share()
        messages.success(
            request,
            _("“%(title)s” is in the bank. Every colleague can read, copy and teach it.") % {"title": routine.title},
        )
        return redirect("routine", pk=routine.pk)
    if asked in LEADS_TO:
        return redirect(LEADS_TO[asked], pk=routine.pk)
    number = routine.newest_save.number
    before = " " + _("Version %(earlier)s, which this page saved before, stands in its history.") % {
        "earlier": opened.saved_here
    }
    messages.success(
        request,
        _("Saved as version %(number)s.") % {"number": number} + (before if 0 < opened.saved_here < number else ""),
    )
    return redirect("plan_edit", pk=routine.pk)


@transaction.atomic
def save_plan(opened: OpenPlan, plan: Plan, based_on: RoutineVersion | None) -> Routine:
    """Save as the routine's next version, or as a new routine, once for each new plan. Raises StaleSave, SavedMeanwhile."""
    if opened.routine:
        version = save_version(routine=opened.routine, plan=plan, based_on=based_on, by=opened.user)
        opened.routine.refresh_from_db()
        opened.routine.current_version = version
        if opened.key:
            sent, _first = SentForm.objects.claim(person=opened.user, key=opened.key)
            sent.remember(routine=opened.routine.pk, version=version.number)
        return opened.routine
    if opened.key is None:
        raise ValueError("A new plan is known by the key of its page.")
    sent, first = SentForm.objects.claim(person=opened.user, key=opened.key)
    if not first and Routine.objects.filter(pk=sent.made.get("routine")).exists():
        raise SavedMeanwhile
    routine = start_routine(plan=plan, by=opened.user)
    sent.remember(routine=routine.pk, version=1)
    PlanDraft.objects.of(opened.user).filter(key=opened.key).delete()
    return routine
