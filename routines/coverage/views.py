"""The coach's view: what each grade's counts have touched, by area; drill down to routines and lessons."""

from collections.abc import Iterable

from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.models import User
from accounts.models.list_marks import known_by_mark
from accounts.requests import SignedInRequest
from accounts.written_once import Later
from grade_bands.models import Area, Grade, SchoolYear
from routines.coverage import drawn
from routines.coverage.behind import Field, behind
from routines.coverage.expectations import expectations
from routines.coverage.forms import Window, WindowForm, bands_looked_at, bands_of, classes_looked_at
from routines.coverage.queries import CoverageRow, coverage, gaps, grades_seen_by
from routines.coverage.ways import Ways


def window_form(request: SignedInRequest) -> WindowForm | None:
    """The window as it was asked for; None where there is no school year yet."""
    years = SchoolYear.objects.newest_first()
    return WindowForm(request.GET, years=years, today=timezone.localdate(), user=request.user) if years else None


def window_context(
    request: SignedInRequest, form: WindowForm, window: Window, grades: Iterable[Grade], grade: Grade | None = None
) -> dict[str, object]:
    """What both tables need to offer another window. grades: those that are looked at. grade: one that stays chosen."""
    looks_at_some = window.band or window.class_group
    bands = bands_looked_at(request.user, window.year) if looks_at_some else bands_of(grades)
    return {
        "section": "coverage",
        "form": form,
        "window": window,
        "left_out": form.left_out(window),
        "picker": drawn.picker(form, window, bands, _classes(request, window.year), grade.pk if grade else None),
    }


def _classes(request: SignedInRequest, year: SchoolYear) -> Later[tuple[tuple[int, str], ...]]:
    """Those that may be chosen. A coach chooses among all of the year, which are not read while none has changed."""

    def read() -> list[tuple[int, str]]:
        return [(group.pk, group.name) for group in classes_looked_at(request.user, year)]

    if request.user.is_coach:
        return known_by_mark(request.school, "classes", read, year.pk)
    own = tuple(read())
    return Later(own, lambda: own)


def rows_of(user: User, window: Window) -> list[CoverageRow]:
    return coverage(
        user=user,
        year=window.year,
        first=window.first,
        last=window.last,
        band=window.band,
        class_group=window.class_group,
    )


@require_GET
def coverage_page(request: SignedInRequest) -> HttpResponse:
    return shown(request, window_form(request))


def shown(request: SignedInRequest, form: WindowForm | None) -> HttpResponse:
    """The table; with a window that cannot be looked at (422) that of the year so far, and why at the field."""
    if form is None:
        return render(request, "coverage/coverage.html", {"section": "coverage", "rows": []})
    window = form.window()
    rows = rows_of(request.user, window)
    empty = [
        drawn.Gap(gap.grade.name, str(gap.area_name), "", Ways.for_area(gap.grade, gap.area)) for gap in gaps(rows)
    ]
    context = window_context(request, form, window, [row.grade for row in rows]) | {
        "looks": drawn.other_looks(form, window),
        "rows": rows,
        "table": drawn.table(rows, window) if rows else "",
        "weeks": drawn.weeks(rows, window) if rows else "",
        "expectations": expectations([row.grade for row in rows]),
        "gaps": drawn.gaps(empty, request.user, by="area") if empty else "",
    }
    return render(request, "coverage/coverage.html", context, status=422 if form.errors else 200)


@require_GET
def cell(request: SignedInRequest, grade: int, area: str) -> HttpResponse:
    form = window_form(request)
    if area not in Area.values or form is None:
        raise Http404
    window = form.window()
    found = grade_seen(request.user, window, grade)
    return shown(request, form) if form.errors else behind(request, Field(found, Area(area)), form, window)


def grade_seen(user: User, window: Window, grade: int) -> Grade:
    """Raises Http404 where the user does not see the coverage of this grade."""
    found: Grade = get_object_or_404(grades_seen_by.queryset(user, window.year), pk=grade)
    return found
