"""Autosave: what is typed is kept as the person's draft, readable or not."""

from typing import Any
from uuid import UUID

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.utils.html import escape
from django.utils.translation import gettext as _
from django.views.decorators.http import require_POST
from django.views.decorators.vary import vary_on_headers

from accounts.fragments import wants_fragment
from accounts.requests import SignedInRequest
from routines.models import PlanDraft
from routines.models.plan_differences import PARTS, PartChange, changes_between, lines_of
from routines.models.plan_document import Plan
from routines.plans.forms.draft import DraftFields, lit_was_chosen, only
from routines.plans.forms.plan import PlanForm
from routines.words_erased.late_words import what_went

from .open_plan import OpenPlan, TooLong, became, open_plan
from .page import as_it_would_be_saved, page_context

WORDS = ("title", "start", "step", "story_text", "notes")  # what a plan without a count may still hold of words


@require_POST
@vary_on_headers("HX-Request")
def draft(request: SignedInRequest, pk: int | None = None, key: UUID | None = None) -> HttpResponse:
    """Keep the draft. By itself this shows the plan page again, so the grid can be seen without scripts too."""
    opened = open_plan(request, pk, key)
    typed = opened.read(request.POST)
    # Without scripts the page is shown from what is kept, and so are the patterns that somebody lit.
    if is_as_saved(opened, typed) and (wants_fragment(request) or not lit_was_chosen(typed)):
        PlanDraft.objects.of(request.user).filter(routine=opened.routine).delete()
    else:
        try:
            opened.keep(typed)
        except TooLong as error:
            return not_kept(request, opened, typed, str(error))
        if key is not None and opened.routine is None and became(key, request.user)[0]:
            # Saved while this was under way: what it holds is a change to that count now, if it says anything else.
            return draft(request, key=key)
    if request.words_removed:  # what is kept is without them; the page still shows them
        return not_kept(request, opened, typed, what_went(request.words_removed))
    if wants_fragment(request):
        return render(request, "plans/_kept.html", {"kept_at": timezone.now()})
    return redirect(opened.url("plan_edit"))


def not_kept(request: SignedInRequest, opened: OpenPlan, typed: DraftFields, sentence: str) -> HttpResponse:
    """Says why a draft was not kept; what was typed stays on the page, without scripts on the page that answers."""
    if wants_fragment(request):
        return HttpResponse(escape(_("Not kept. %(sentence)s") % {"sentence": sentence}), status=422)
    form = PlanForm(typed, grades=opened.grades)
    form.wrong_parts = [sentence]
    context = {**page_context(opened, form), "wrong": 1, "first_wrong": form.first_wrong()}
    return render(request, "plans/plan.html", context, status=422)


def is_as_saved(opened: OpenPlan, typed: DraftFields) -> bool:
    """True when the text says just what the current version says: then there is nothing to keep."""
    if opened.routine is None:
        return False
    form = PlanForm(typed, grades=opened.grades, for_saving=True)
    return form.is_valid() and as_it_would_be_saved(form).as_dict() == opened.routine.newest_save.plan


@require_POST
def drop_draft(request: SignedInRequest, pk: int | None = None, key: UUID | None = None) -> HttpResponse:
    """Let go of what is typed: back to the saved plan, or, for a plan never saved, to one's plans.

    Asked first, with what is lost; who stays finds all that was typed until then.
    """
    opened = open_plan(request, pk, key)
    if "sure" not in request.POST:
        typed = opened.read(request.POST)
        if "start" in typed:  # asked for on the plan page, which may hold more than was kept
            try:
                opened.keep(typed)
            except TooLong as error:
                return not_kept(request, opened, typed, str(error))
        return render(request, "plans/drop.html", drop_context(opened))
    if opened.draft:
        opened.draft.delete()
    if opened.routine:
        messages.success(request, _("This is the saved plan again."))
        return redirect(opened.url("plan_edit"))
    messages.success(request, _("The unfinished plan is gone."))
    return redirect("my_plans")


def drop_context(opened: OpenPlan) -> dict[str, Any]:
    """What would be lost: all of a new plan, or what differs from the saved one."""
    form = PlanForm(opened.kept_typed, grades=opened.grades)
    fields = opened.kept_typed
    plan = form.reading
    changes: list[PartChange] = []
    if plan and opened.routine:
        changes = changes_between(opened.routine.newest_save.read_plan(), plan, form.level)
    return {
        "section": "plans",
        "routine": opened.routine,
        "kept_at": opened.draft.kept_at if opened.draft else None,
        "title": only(fields, "title").strip() or form.plain_title or _("A plan just begun"),
        "lost": plan_lines(plan, form.level) if plan and not opened.routine else [(c.label, c.after) for c in changes],
        "unread": unread_lines(fields) if plan is None else [],
        "drop_url": opened.url("plan_drop"),
        "edit_url": opened.url("plan_edit"),
    }


def plan_lines(plan: Plan, level: int) -> list[tuple[str, tuple[str, ...]]]:
    """Every part of a plan that has something in it, with its lines; where it belongs is no part of what was written."""
    parts = ((part, label) for part, label in PARTS.items() if part not in ("title", "grade", "area", "language"))
    return [(str(label), lines) for part, label in parts if (lines := lines_of(plan, part, level))]


def unread_lines(fields: DraftFields) -> list[str]:
    """What was typed of a plan whose count cannot be read: its words as they stand."""
    named = [
        name for name in fields if name in WORDS or name.endswith(("-words", "-reply", "-question", "-answer", "-why"))
    ]
    return [text for name in named for text in fields[name] if text.strip()]
