"""One's own plans: unfinished ones, drafts, those in the bank, those taken out of it."""

from typing import Any

from django.db.models import QuerySet
from django.http import HttpResponse
from django.shortcuts import render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_GET

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.requests import SignedInRequest
from grade_bands.models import SchoolYear
from routines.bank.cards import cards_of
from routines.bank.forms.filters import LONGEST_LOOKED_FOR, left_out, words_looked_for
from routines.bank.orders import best_found_first, newest_first
from routines.bank.paging import Order, Recipe, read_page, read_rows
from routines.models import PlanDraft, Routine
from routines.models.routine import RoutineQuerySet, routines_written_with, tell_times_taught
from routines.plans.forms.draft import only, read_draft

SHOWN_AT_MOST = 60


@require_GET
def my_plans(request: SignedInRequest) -> HttpResponse:
    year = SchoolYear.objects.on(timezone.localdate())
    looked_for = request.GET.get("q", "").strip()
    page = read_page(own_plans(request.user, looked_for), request.GET, reader=request.user, size=SHOWN_AT_MOST)
    own = read_rows(page)
    tell_times_taught(own, request.user, year)
    cards = cards_of(own, reader=request.user)
    groups = [
        (_("Drafts"), _("Only you and your co-authors see these."), Routine.Status.DRAFT),
        (_("In the bank"), _("Every colleague can read, copy and teach these."), Routine.Status.SHARED),
        (_("Out of the bank"), _("Their lessons and copies stay."), Routine.Status.RETIRED),
    ]
    unfinished = [] if looked_for or page.earlier else _unfinished(request.user, at_most=SHOWN_AT_MOST + 1)
    older = PlanDraft.objects.of(request.user).count() - SHOWN_AT_MOST if len(unfinished) > SHOWN_AT_MOST else 0
    context = {
        "section": "plans",
        "this_year": year,
        "unfinished": [unfinished_row(draft) for draft in unfinished[:SHOWN_AT_MOST]],
        "groups": [
            (title, hint, [card for card in cards if card.routine.status == status]) for title, hint, status in groups
        ],
        "older_unfinished": older,
        "page": page,
        "looked_for": looked_for[:LONGEST_LOOKED_FOR],
        "left_out": left_out(looked_for),
        "empty": not cards and not unfinished and not looked_for,
    }
    return render(request, "bank/my_plans.html", context)


@compiled_once
def _unfinished(person: User, *, at_most: int) -> QuerySet[PlanDraft]:
    return PlanDraft.objects.of(person).with_titles_for(person)[:at_most]


def _own(user: User, joined: list[int]) -> RoutineQuerySet:
    return Routine.objects.owned_or_among(user, joined)


def own_plans(user: User, looked_for: str) -> Order:
    """One's own plans, the newest first; with words to look for the best found first."""
    words = words_looked_for(looked_for)
    if words:
        return best_found_first(Routine.objects.of(user), words, few=True)
    return newest_first(Recipe(_own, (user, routines_written_with(user))), "created_at")


def unfinished_row(draft: PlanDraft) -> dict[str, Any]:
    """How an unfinished plan is named in the list: its title as typed, else its count."""
    typed, _steps = read_draft(draft.fields)
    start, step = only(typed, "start"), only(typed, "step")
    count = _("By %(step)s from %(start)s") % {"step": step, "start": start} if start and step else ""
    title = only(typed, "title").strip() or draft.routine_title or count or _("A plan just begun")
    kwargs = {"pk": draft.routine_id} if draft.routine_id else {"key": draft.key}
    return {"title": title, "count": count, "kept_at": draft.kept_at, "kwargs": kwargs, "saved": bool(draft.routine_id)}
