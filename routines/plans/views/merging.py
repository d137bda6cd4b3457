"""Two people saved the same plan: both texts stand side by side, and the one who saves second chooses."""

from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_POST

from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from routines.models import RoutineVersion
from routines.models.plan_differences import PARTS, changes_between
from routines.models.plan_document import Plan
from routines.models.plan_reading import PlanError, read_document
from routines.plans.actions import StaleSave, save_version
from routines.plans.forms.draft import fields_of
from routines.plans.forms.plan import PlanForm

from .history import plan_or_none
from .open_plan import HIGHEST_VERSION, OpenPlan, open_plan


def merge_context(opened: OpenPlan, mine: Plan, theirs: RoutineVersion) -> dict[str, Any]:
    """Each part that differs, with the side that alone was changed chosen beforehand, mine where both were."""
    routine, other = opened.saved, theirs.read_plan()
    base_version = opened.draft.based_on if opened.draft else None
    base = (plan_or_none(base_version) if base_version else None) or other
    untouched = set(PARTS) - {change.part for change in changes_between(base, mine)}
    rows = [
        {"change": change, "chosen": "theirs" if change.part in untouched else "mine"}
        for change in changes_between(other, mine, routine.grade.level)
    ]
    return {
        "section": "plans",
        "routine": routine,
        "theirs": theirs,
        "saved_by_me": theirs.by_id == opened.user.pk,
        "rows": rows,
        "merge_url": opened.url("plan_merge"),
        "edit_url": opened.url("plan_edit"),
    }


@require_POST
def merge(request: SignedInRequest, pk: int) -> HttpResponse:
    """Save the parts chosen. Mine is the kept draft, theirs the version shown beside it."""
    opened = open_plan(request, pk, None)
    form = PlanForm(opened.kept_typed, grades=opened.grades, for_saving=True)
    if opened.draft is None or not form.is_valid():
        return redirect(opened.url("plan_edit"))
    number = typed_whole(request.POST.get("theirs", ""), 1, HIGHEST_VERSION)
    theirs = get_object_or_404(RoutineVersion, routine=opened.saved, number=number)
    plan = merged(form.plan(), theirs.read_plan(), {part for part in PARTS if request.POST.get(part) == "theirs"})
    try:
        read_document(plan.as_dict())
        saved = save_version(routine=opened.saved, plan=plan, based_on=theirs, by=request.user)
    except PlanError as error:
        opened.keep({**fields_of(plan), "based_on": [str(number)]})
        messages.warning(request, _("The parts you chose don’t fit together yet. %(error)s") % {"error": error})
        return redirect(opened.url("plan_edit"))
    except StaleSave as stale:
        return render(request, "plans/merge.html", merge_context(opened, form.plan(), stale.theirs), status=409)
    messages.success(request, _("Saved as version %(number)s.") % {"number": saved.number})
    return redirect("plan_edit", pk=pk)


def merged(mine: Plan, theirs: Plan, from_theirs: set[str]) -> Plan:
    """My plan with these parts replaced by theirs; count and fold go together."""
    changes = {part: getattr(theirs, part) for part in from_theirs}
    if "count" in from_theirs:
        changes["fold"] = theirs.fold
    return mine.changed(**changes)
