"""Coverage by standard to take along: all grades as a table (CSV), one grade on paper. Never by class or teacher."""

from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from accounts.spreadsheets import csv_download
from grade_bands.models import Grade
from routines.coverage.by_standard import StandardRow, by_standard
from routines.coverage.forms import Window, WindowForm
from routines.coverage.on_paper import pdf_answer
from routines.coverage.standard_views import by_standard_shown, grade_chosen, grades_of
from routines.coverage.standards_csv import standards_csv as csv_of
from routines.coverage.standards_sheet import standards_document
from routines.coverage.views import window_form
from routines.paper.document import Document


def _asked_for(request: SignedInRequest) -> tuple[WindowForm, Window, list[Grade]]:
    """Raises Http404 where there is no grade to show."""
    form = window_form(request)
    if form is None:
        raise Http404
    window = form.window().by_grade
    grades = grades_of(request, window)
    if not grades:
        raise Http404
    return form, window, grades


@require_GET
def standards_csv(request: SignedInRequest) -> HttpResponse:
    form, window, grades = _asked_for(request)
    if form.errors:
        return by_standard_shown(request, form)
    text = csv_of(by_standard(request.user, window, grades), window)
    return csv_download(text, f"{window.file_name}-by-standard.csv")


@require_GET
def standards_pdf(request: SignedInRequest) -> HttpResponse:
    form, window, grade, rows = _sheet_asked_for(request)
    if form.errors:
        return by_standard_shown(request, form)
    document = _document(request, window, grade, rows)
    return pdf_answer(request, document, window, f"{window.file_name}-by-standard", grade=grade)


@require_GET
def standards_print(request: SignedInRequest) -> HttpResponse:
    """The same sheet as a page that the browser prints."""
    form, window, grade, rows = _sheet_asked_for(request)
    if form.errors:
        return by_standard_shown(request, form)
    return HttpResponse(_document(request, window, grade, rows).html(for_browser=True))


def _sheet_asked_for(request: SignedInRequest) -> tuple[WindowForm, Window, Grade, list[StandardRow]]:
    """Raises Http404 where the grade has no standard to show, or is not one that the reader sees."""
    form, window, grades = _asked_for(request)
    grade = grade_chosen(request, grades)
    if grade is None or request.GET.get("grade", str(grade.pk)) != str(grade.pk):
        raise Http404  # of another grade than was asked for nobody wants a sheet
    rows = by_standard(request.user, window, [grade])
    if not rows and not form.errors:
        raise Http404
    return form, window, grade, rows


def _document(request: SignedInRequest, window: Window, grade: Grade, rows: list[StandardRow]) -> Document:
    return standards_document(rows=rows, grade=grade, window=window, school=request.school, today=timezone.localdate())
