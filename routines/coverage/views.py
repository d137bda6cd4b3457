"""The coach's view: what each grade's counts have touched, by area; drill down to routines and lessons."""

from typing import Any

from django.core.paginator import Paginator
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from grade_bands.models import Area, Grade, SchoolYear
from routines.bank.cards import cards_of
from routines.coverage.forms import WindowForm
from routines.coverage.patterns import patterns_seen
from routines.coverage.queries import coverage, gaps, grades_seen_by
from routines.models import Lesson, Routine
from routines.models.routine import tell_times_taught

PAGE_SIZE = 60
CARDS_SHOWN = 12
GAPS_SHOWN = 6


def window_form(request: SignedInRequest) -> WindowForm | None:
    """The window as it was asked for; None where there is no school year yet."""
    years = SchoolYear.objects.newest_first()
    return WindowForm(request.GET, years=years, today=timezone.localdate()) if years else None


@require_GET
def coverage_page(request: SignedInRequest) -> HttpResponse:
    return shown(request, window_form(request))


def shown(request: SignedInRequest, form: WindowForm | None) -> HttpResponse:
    """The table; with a window that cannot be looked at (422) that of the year so far, and why at the field."""
    if form is None:
        return render(request, "coverage/coverage.html", {"section": "coverage", "rows": []})
    window = form.window()
    rows = coverage(user=request.user, year=window.year, first=window.first, last=window.last)
    empty = gaps(rows)
    context = {
        "section": "coverage",
        "form": form,
        "window": window,
        "offered": form.offered(),
        "areas": Area,
        "rows": rows,
        "gaps": empty[:GAPS_SHOWN],
        "further_gaps": max(0, len(empty) - GAPS_SHOWN),
    }
    return render(request, "coverage/coverage.html", context, status=422 if form.errors else 200)


@require_GET
def cell(request: SignedInRequest, grade: int, area: str) -> HttpResponse:
    """What stands behind one cell: the routines of the bank, and the lessons that took place (never what was written)."""
    form = window_form(request)
    if area not in Area.values or form is None:
        raise Http404
    window = form.window()
    found = get_object_or_404(
        Grade.objects.filter(pk__in=[seen.pk for seen in grades_seen_by(request.user, window.year)]), pk=grade
    )
    if form.errors:
        return shown(request, form)
    looked_at: dict[str, Any] = {
        "year": window.year,
        "grade": found,
        "area": area,
        "taught_on__range": (window.first, window.last),
    }
    lessons = (
        Lesson.objects.known_to(request.user)
        .counted()
        .filter(**looked_at)
        .with_titles_for(request.user)
        .select_related("class_group")
    )
    page = Paginator(lessons, PAGE_SIZE).get_page(request.GET.get("page"))
    logs = Lesson.objects.open_to(request.user).counted().filter(**looked_at)
    sees_lessons = not request.user.is_administrator
    patterns, read = patterns_seen(logs) if sees_lessons and page.paginator.count else ([], 0)
    routines = Routine.objects.in_bank().filter(grade=found, area=area)
    first_ones = list(routines.as_cards()[:CARDS_SHOWN])
    tell_times_taught(first_ones, request.user, form.this_year)
    context = {
        "section": "coverage",
        "grade": found,
        "area": Area(area),
        "window": window,
        "cards": cards_of(first_ones, reader=request.user, may_teach=request.user.class_groups.exists()),
        "more": max(0, routines.count() - CARDS_SHOWN),
        "page": page,
        "sees_lessons": sees_lessons,
        "patterns": patterns,
        "read": read,
        "not_shared": max(0, page.paginator.count - read),
    }
    return render(request, "coverage/cell.html", context)
