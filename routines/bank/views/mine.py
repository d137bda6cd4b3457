"""One's own plans: unfinished ones, drafts, those in the bank, those taken out of it."""

from typing import Any

from django.core.paginator import Paginator
from django.http import HttpResponse
from django.shortcuts import render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from grade_bands.models import SchoolYear
from routines.bank.cards import cards_of
from routines.models import PlanDraft, Routine
from routines.models.routine import tell_times_taught
from routines.plans.forms.draft import only, read_draft

SHOWN_AT_MOST = 60


@require_GET
def my_plans(request: SignedInRequest) -> HttpResponse:
    year = SchoolYear.objects.on(timezone.localdate())
    page = Paginator(Routine.objects.of(request.user).as_cards(), SHOWN_AT_MOST).get_page(request.GET.get("page"))
    own = list(page.object_list)
    tell_times_taught(own, request.user, year)
    cards = cards_of(own, reader=request.user)
    groups = [
        (_("Drafts"), _("Only you and your co-authors see these."), Routine.Status.DRAFT),
        (_("In the bank"), _("Every colleague can read, copy and teach these."), Routine.Status.SHARED),
        (_("Out of the bank"), _("Their lessons and copies stay."), Routine.Status.RETIRED),
    ]
    drafts = PlanDraft.objects.of(request.user).with_titles_for(request.user)
    unfinished = drafts[:SHOWN_AT_MOST]
    context = {
        "section": "plans",
        "unfinished": [unfinished_row(draft) for draft in unfinished],
        "groups": [
            (title, hint, [card for card in cards if card.routine.status == status]) for title, hint, status in groups
        ],
        "older_unfinished": max(0, drafts.count() - SHOWN_AT_MOST),
        "page": page,
        "empty": not cards and not unfinished,
    }
    return render(request, "bank/my_plans.html", context)


def unfinished_row(draft: PlanDraft) -> dict[str, Any]:
    """How an unfinished plan is named in the list: its title as typed, else its count."""
    typed, _steps = read_draft(draft.fields)
    start, step = only(typed, "start"), only(typed, "step")
    count = _("By %(step)s from %(start)s") % {"step": step, "start": start} if start and step else ""
    title = only(typed, "title").strip() or draft.routine_title or count or _("A plan just begun")
    kwargs = {"pk": draft.routine_id} if draft.routine_id else {"key": draft.key}
    return {"title": title, "count": count, "kept_at": draft.kept_at, "kwargs": kwargs, "saved": bool(draft.routine_id)}
