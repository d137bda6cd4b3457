"""The saves of a plan, what each changed, and going back to one."""

from dataclasses import replace
from itertools import pairwise
from typing import Any

from django.contrib import messages
from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET, require_POST

from accounts.models import User
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from routines.models import Routine, RoutineVersion, UnreadablePlan
from routines.models.plan_differences import PartChange, changes_between
from routines.models.plan_document import Plan
from routines.models.routine import NOT_IN_BANK
from routines.plans.actions import restore_version

from .open_plan import HIGHEST_VERSION, open_plan

SHOWN_AT_MOST = 30


@require_GET
def history(request: SignedInRequest, pk: int) -> HttpResponse:
    """Newest first; each save with the parts in which it differs from the one before."""
    opened = open_plan(request, pk, None)
    routine = opened.saved
    found = routine.versions.select_related("by").newest_first()
    page = Paginator(found, SHOWN_AT_MOST).get_page(request.GET.get("page"))
    versions = list(found[max(0, page.start_index() - 1) : page.end_index() + 1])  # and the one before them, to compare
    level = routine.grade.level
    plans = {version.pk: plan_or_none(version) for version in versions}
    saves = [
        {"version": later, **what_changed(plans[earlier.pk], plans[later.pk], level)}
        for later, earlier in pairwise(versions)
    ]
    if versions and not page.has_next():
        saves.append({"version": versions[-1], "unreadable": plans[versions[-1].pk] is None, "changes": []})
    if hidden := title_not_to_be_read(routine, request.user):
        for save in saves:
            save["changes"] = [without_title(change, hidden) for change in save["changes"]]
    context = {
        "section": "plans",
        "routine": routine,
        "saves": saves,
        "page": page,
        "newest": routine.current_version_id,
        "has_draft": opened.draft is not None,
        "edit_url": opened.url("plan_edit"),
        "restore_url": opened.url("plan_restore"),
    }
    return render(request, "plans/history.html", context)


def title_not_to_be_read(routine: Routine, user: User) -> str:
    """The title under which a copy began, where it is that of a count which the reader may not see; "" where it is not.

    Its authors read all of their own plan: they copied the count while they could see it.
    """
    if routine.copied_from_id is None or routine.is_author(user):
        return ""
    if Routine.objects.visible_to(user).filter(pk=routine.copied_from_id).exists():
        return ""
    began = routine.copied_from_version or routine.versions.order_by("number").first()
    title = began.plan.get("title", "") if began else ""
    return str(title) if title != routine.title else ""


def without_title(change: PartChange, title: str) -> PartChange:
    if change.part != "title":
        return change
    before, after = (
        tuple(NOT_IN_BANK if line == title else line for line in lines) for lines in (change.before, change.after)
    )
    return replace(change, before=before, after=after)


def plan_or_none(version: RoutineVersion) -> Plan | None:
    try:
        return version.read_plan()
    except UnreadablePlan:
        return None


def what_changed(before: Plan | None, after: Plan | None, level: int) -> dict[str, Any]:
    """What a save changed; after a save that cannot be read nobody can tell."""
    if before is None or after is None:
        return {"unreadable": after is None, "follows_unreadable": before is None, "changes": []}
    return {"changes": changes_between(before, after, level)}


@require_POST
def restore(request: SignedInRequest, pk: int) -> HttpResponse:
    """Make an older save the newest again. Unsaved changes are never thrown away by it."""
    opened = open_plan(request, pk, None)
    number = typed_whole(request.POST.get("number", ""), 1, HIGHEST_VERSION)
    version = get_object_or_404(
        RoutineVersion.objects.select_related("routine__current_version"), routine_id=pk, number=number
    )
    if opened.draft is not None:
        messages.warning(request, _("You have changes that are not saved. Save them or let go of them first."))
        return redirect(opened.url("plan_history"))
    saved = restore_version(version=version, by=request.user)
    words = _("Version %(number)s is the plan again, as version %(saved)s.")
    messages.success(request, words % {"number": number, "saved": saved.number})
    return redirect(opened.url("plan_edit"))
