"""What a coach takes along from coverage: totals by grade, never by class or teacher."""

from dataclasses import replace

from django.http import Http404, HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from accounts.spreadsheets import csv_download
from routines.coverage.forms import Window, WindowForm
from routines.coverage.on_paper import pdf_answer
from routines.coverage.queries import CoverageRow
from routines.coverage.sheet import coverage_document
from routines.coverage.targets import NOTHING_SAID, classes_read
from routines.coverage.totals_csv import totals_csv
from routines.coverage.views import rows_of, shown, window_form
from routines.models.routine import CLASSES_TO_BE_TOLD
from routines.paper.document import Document


def _asked_for(request: SignedInRequest) -> tuple[WindowForm, Window, list[CoverageRow]]:
    """The table as the page has it, with what may be passed on. Raises Http404 where there is no grade to show."""
    form = window_form(request)
    if form is None:
        raise Http404
    window = form.window().by_grade
    rows = rows_of(request.user, window)
    if not rows:
        raise Http404
    return form, window, _passed_on(request, window, rows)


def _passed_on(request: SignedInRequest, window: Window, rows: list[CoverageRow]) -> list[CoverageRow]:
    """A file goes from hand to hand: what it says of target patterns was read from logs of two classes or more."""
    grades = [row.grade for row in rows]
    classes = classes_read(request.user, window.year, window.first, window.last, grades)
    return [
        replace(
            row,
            cells=tuple(
                cell
                if classes.get((cell.grade.pk, cell.area), 0) >= CLASSES_TO_BE_TOLD
                else replace(cell, targets=NOTHING_SAID)
                for cell in row.cells
            ),
        )
        for row in rows
    ]


@require_GET
def coverage_csv(request: SignedInRequest) -> HttpResponse:
    form, window, rows = _asked_for(request)
    if form.errors:
        return shown(request, form)
    return csv_download(totals_csv(rows, window), f"{window.file_name}.csv")


@require_GET
def coverage_pdf(request: SignedInRequest) -> HttpResponse:
    form, window, rows = _asked_for(request)
    if form.errors:
        return shown(request, form)
    return pdf_answer(request, _document(request, window, rows), window, window.file_name)


@require_GET
def coverage_print(request: SignedInRequest) -> HttpResponse:
    """The same sheet as a page that the browser prints."""
    form, window, rows = _asked_for(request)
    if form.errors:
        return shown(request, form)
    return HttpResponse(_document(request, window, rows).html(for_browser=True))


def _document(request: SignedInRequest, window: Window, rows: list[CoverageRow]) -> Document:
    return coverage_document(rows=rows, window=window, school=request.school, today=timezone.localdate())
