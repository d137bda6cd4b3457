"""The first page, by what a person does at the school."""

from datetime import date, datetime
from typing import Any, NamedTuple
from uuid import UUID

from django.http import HttpResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.models import OneTimeLink
from accounts.requests import SignedInRequest
from accounts.templatetags.dates import moment
from accounts.written_once import written_once
from grade_bands.models import classes_in_year
from routines.bank.views.mine import unfinished_row
from routines.coverage.ways import Ways
from routines.team import first_page
from routines.team.planned_week import Week, own_week, year_of
from routines.team.school_days import monday_now
from routines.team.suggesting import waiting_for

WAITING = 5
INVITATIONS = 6


@require_GET
def home(request: SignedInRequest) -> HttpResponse:
    """The bank stood here once: an address with its filters still leads to what was found by it."""
    if request.GET:
        return redirect(f"{reverse('bank')}?{request.GET.urlencode()}")
    user, today = request.user, timezone.localdate()
    monday = monday_now(today)
    year = year_of(monday)
    classes = classes_in_year(user, year)
    context: dict[str, Any] = {
        "section": "home",
        "today": today,
        "teaches": bool(classes),
        "waiting": waiting_for(user, WAITING),
        "new_counts": first_page.with_grids(first_page.new_in_the_bank(user)),
    }
    if classes or not (user.is_coach or user.is_administrator):
        context |= _of_a_teacher(request, own_week(user, monday, classes))
    if user.is_coach:
        gaps = first_page.first_gaps(user, today)
        context |= {
            "gaps": [(gap, Ways.for_area(gap.grade, gap.area)) for gap in gaps],
            "sent": first_page.sent_by(user),
        }
    if user.is_administrator:
        invitations = list(OneTimeLink.objects.open_invitations()[: INVITATIONS + 1])
        context |= {
            "invitations": invitations[:INVITATIONS],
            "more_invitations": len(invitations) > INVITATIONS,
            "to_do": first_page.to_do(today),
        }
    return render(request, "team/home.html", context)


def _of_a_teacher(request: SignedInRequest, week: Week) -> dict[str, Any]:
    user = request.user
    days = [(day, [count for count in week.planned if count.planned.on == day]) for day in week.days]
    planned = [count.planned.routine_id for count in week.planned]
    own = _own(request)
    return {
        "week": week,
        "days": days,
        "unfinished": own["unfinished"],
        "drafts": own["drafts"],
        "own": written_once("team/_home_own.html", **own),
        "noted": first_page.noted_for_now(user, planned, timezone.localdate()),
    }


class Unfinished(NamedTuple):
    """kept_at: in words. pk: of the routine whose plan it changes, else `key` of the draft."""

    title: str
    kept_at: str
    pk: int | None
    key: UUID | None


class Draft(NamedTuple):
    pk: int
    title: str
    grade: str


class Shared(NamedTuple):
    key: UUID
    title: str
    class_name: str
    taught_on: date
    outcome: str


class Noted(NamedTuple):
    routine: int
    title: str
    by: str
    at: datetime
    text: str


def _own(request: SignedInRequest) -> dict[str, Any]:
    """What is hers and what colleagues said of it, as values of a piece."""
    user = request.user
    rows = [unfinished_row(draft) for draft in first_page.unfinished(user)]
    return {
        "unfinished": tuple(
            Unfinished(
                row["title"],
                moment(row["kept_at"], request.school),
                row["kwargs"].get("pk"),
                row["kwargs"].get("key"),
            )
            for row in rows
        ),
        "drafts": tuple(Draft(draft.pk, draft.title, draft.grade.name) for draft in first_page.own_drafts(user)),
        "lessons": tuple(
            Shared(
                lesson.key,
                lesson.title,
                lesson.class_group.name,
                lesson.taught_on,
                lesson.reflection.get_outcome_display(),
            )
            for lesson in first_page.shared_lessons(user)
        ),
        "notes": tuple(
            Noted(note.routine_id, note.routine.title, note.by.display_name, note.at, note.text)
            for note in first_page.notes_on_own_counts(user)
        ),
    }
