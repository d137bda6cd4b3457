"""What a coach takes along from coverage: totals by grade, never by class or teacher."""

from django.http import Http404, HttpResponse
from django.views.decorators.http import require_GET

from accounts.requests import SignedInRequest
from accounts.spreadsheets import csv_download
from routines.coverage.forms import Window, WindowForm
from routines.coverage.queries import CoverageRow, coverage
from routines.coverage.totals_csv import totals_csv
from routines.coverage.views import shown, window_form


def _asked_for(request: SignedInRequest) -> tuple[WindowForm, Window, list[CoverageRow]]:
    """The table as the page has it. Raises Http404 where there is no grade to show."""
    form = window_form(request)
    if form is None:
        raise Http404
    window = form.window()
    rows = coverage(user=request.user, year=window.year, first=window.first, last=window.last)
    if not rows:
        raise Http404
    return form, window, rows


@require_GET
def coverage_csv(request: SignedInRequest) -> HttpResponse:
    form, window, rows = _asked_for(request)
    if form.errors:
        return shown(request, form)
    return csv_download(totals_csv(rows, window), f"{window.file_name}.csv")
