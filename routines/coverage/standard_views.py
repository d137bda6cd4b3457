"""Coverage by standard, one grade at a time: the page, and what stands behind one standard."""

from django.core.paginator import Paginator
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_id
from grade_bands.models import Area, Grade, Standard
from routines.coverage import drawn
from routines.coverage.behind import Field, behind
from routines.coverage.by_standard import by_standard, gaps_by_standard
from routines.coverage.expectations import expectations
from routines.coverage.forms import Window, WindowForm
from routines.coverage.queries import grades_looked_at
from routines.coverage.views import grade_seen, window_context, window_form
from routines.coverage.ways import Ways

ROWS_ON_A_PAGE = 100


@require_GET
def standards_page(request: SignedInRequest) -> HttpResponse:
    return by_standard_shown(request, window_form(request))


def by_standard_shown(request: SignedInRequest, form: WindowForm | None) -> HttpResponse:
    """With a window that cannot be looked at (422) the year so far, and why at the field."""
    if form is None:
        return render(request, "coverage/standards.html", {"section": "coverage", "grades": []})
    window = form.window()
    grades = grades_of(request, window)
    chosen = grade_chosen(request, grades)
    rows = by_standard(request.user, window, [chosen]) if chosen else []
    asked = request.GET.get("grade", "")
    not_there = chosen and asked and asked != str(chosen.pk) and not window.band and not window.class_group
    empty = [
        drawn.Gap(gap.grade.name, gap.standard.code, gap.standard.summary, Ways.for_standard(gap.grade, gap.standard))
        for gap in gaps_by_standard(rows)
    ]
    context = window_context(request, form, window, grades, chosen) | {
        "looks": drawn.other_looks(form, window, by="standard", grade=chosen.pk if chosen else None),
        "grades": grades,
        "grade": chosen,
        "not_there": not_there,
        "page": Paginator(rows, ROWS_ON_A_PAGE).get_page(request.GET.get("page")),
        "expected": sum(row.expected for row in rows),
        "met": sum(row.expected and row.available > 0 for row in rows),
        "expectations": expectations([chosen] if chosen else []),
        "any_standards": bool(rows) or Standard.objects.exists(),
        "gaps": drawn.gaps(empty, request.user, by="standard") if empty else "",
    }
    return render(request, "coverage/standards.html", context, status=422 if form.errors else 200)


def grades_of(request: SignedInRequest, window: Window) -> list[Grade]:
    return grades_looked_at(request.user, window.year, band=window.band, class_group=window.class_group)


def grade_chosen(request: SignedInRequest, grades: list[Grade]) -> Grade | None:
    """The one that is asked for; the first where none is, or one that is not on offer; None where there is none."""
    asked = typed_id(request.GET.get("grade", ""))
    return next((grade for grade in grades if grade.pk == asked), next(iter(grades), None))


@require_GET
def standard_cell(request: SignedInRequest, grade: int, standard: int) -> HttpResponse:
    form = window_form(request)
    if form is None:
        raise Http404
    window = form.window()
    field = Field(grade_seen(request.user, window, grade), *_with_area(standard))
    return by_standard_shown(request, form) if form.errors else behind(request, field, form, window)


def _with_area(pk: int) -> tuple[Area, Standard]:
    standard = get_object_or_404(Standard, pk=pk)
    return Area(standard.area), standard
