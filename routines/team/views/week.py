"""The planned week: one's own classes, a team's, all for a coach."""

from datetime import date

from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpResponse, QueryDict
from django.shortcuts import render
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_id
from grade_bands.models import ClassGroup, classes_in_year
from routines.team.planned_week import own_week, team_week, teams_of, year_of
from routines.team.planning import read_way_back
from routines.team.school_days import day_asked_for, monday_now, monday_of


@require_GET
def week(request: SignedInRequest) -> HttpResponse:
    """`day` is any day of the week; `team` the band whose week it is, "all" a coach's; without it, one's own classes."""
    user, today = request.user, timezone.localdate()
    day = day_asked_for(request.GET.get("day", ""), today)
    monday = monday_of(day) if day else monday_now(today)
    year = year_of(monday)
    teams = teams_of(user, year)
    asked = request.GET.get("team", "")
    has_classes = ClassGroup.objects.taught_by(user).in_year(year).exists()
    if user.is_administrator and (asked or not has_classes):
        raise PermissionDenied
    if not asked and not has_classes and user.is_coach:
        asked = "all"
    band = next((team for team in teams if team.pk == typed_id(asked)), None)
    if asked and band is None and not (asked == "all" and user.is_coach):
        raise Http404
    shown = team_week(user, monday, year, band) if asked else own_week(user, monday, classes_in_year(user, year))
    token = request.GET.get("undo", "")
    context = {
        "section": "week",
        "week": shown,
        "team": asked,
        "band": band,
        "teams": teams,
        "has_classes": has_classes,
        "this_week": monday_now(today),
        "today": today,
        "earlier": _query(asked, shown.before),
        "later": _query(asked, shown.after),
        "outside": year if year and (monday > year.ends_on or shown.friday < year.starts_on) else None,
        "undo": token if token and read_way_back(token, user) else "",
    }
    return render(request, "team/week.html", context)


def _query(team: str, day: date) -> str:
    query = QueryDict(mutable=True)
    query["day"] = day.isoformat()
    if team:
        query["team"] = team
    return query.urlencode()
