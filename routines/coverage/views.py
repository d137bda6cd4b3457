"""The coach's view: what each grade's counts have touched, by area; drill down to routines and lessons."""

from django.core.paginator import Paginator
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from grade_bands.models import Area, Grade, SchoolYear
from routines.bank.cards import cards_of
from routines.coverage.forms import WindowForm
from routines.coverage.queries import coverage, gaps, grades_seen_by, weeks_between
from routines.models import Lesson, Routine
from routines.models.routine import tell_times_taught

PAGE_SIZE = 60
CARDS_SHOWN = 12
GAPS_SHOWN = 6


@require_GET
def coverage_page(request: SignedInRequest) -> HttpResponse:
    today = timezone.localdate()
    year = SchoolYear.objects.on(today)
    if year is None:
        return render(request, "coverage/coverage.html", {"section": "coverage", "rows": []})
    form = WindowForm(request.GET)
    first, last = form.window(year, today)
    rows = coverage(user=request.user, year=year, first=first, last=last)
    empty = gaps(rows)
    context = {
        "section": "coverage",
        "year": year,
        "form": form,
        "first": first,
        "last": last,
        "weeks": len(weeks_between(first, last)),
        "areas": Area,
        "rows": rows,
        "gaps": empty[:GAPS_SHOWN],
        "further_gaps": max(0, len(empty) - GAPS_SHOWN),
        "query": request.GET.urlencode(),
    }
    return render(request, "coverage/coverage.html", context, status=422 if form.errors else 200)


@require_GET
def cell(request: SignedInRequest, grade: int, area: str) -> HttpResponse:
    """What stands behind one cell: the routines of the bank, and the lessons that took place (never what was written)."""
    today = timezone.localdate()
    year = SchoolYear.objects.on(today)
    if area not in Area.values or year is None:
        raise Http404
    found = get_object_or_404(
        Grade.objects.filter(pk__in=[seen.pk for seen in grades_seen_by(request.user, year)]), pk=grade
    )
    form = WindowForm(request.GET)
    first, last = form.window(year, today)
    lessons = (
        Lesson.objects.known_to(request.user)
        .counted()
        .filter(year=year, grade=found, area=area, taught_on__range=(first, last))
        .with_titles_for(request.user)
        .select_related("class_group")
    )
    routines = Routine.objects.in_bank().filter(grade=found, area=area)
    shown = list(routines.as_cards()[:CARDS_SHOWN])
    tell_times_taught(shown, request.user, year)
    context = {
        "section": "coverage",
        "grade": found,
        "area": Area(area),
        "first": first,
        "last": last,
        "cards": cards_of(shown, reader=request.user, may_teach=request.user.class_groups.exists()),
        "more": max(0, routines.count() - CARDS_SHOWN),
        "page": Paginator(lessons, PAGE_SIZE).get_page(request.GET.get("page")),
        "sees_lessons": not request.user.is_administrator,
    }
    return render(request, "coverage/cell.html", context)
