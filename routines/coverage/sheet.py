"""The table on paper, to take to a meeting. It speaks the language of the page, as the table on the screen does."""

from collections.abc import Sequence
from datetime import date
from itertools import groupby

from django.template.loader import render_to_string
from django.utils.safestring import mark_safe
from django.utils.translation import get_language
from django.utils.translation import gettext as _

from accounts.models import School
from accounts.templatetags.dates import day
from grade_bands.models import Area
from routines.coverage.forms import Window
from routines.coverage.queries import CoverageRow, gaps
from routines.paper.document import Document
from routines.paper.fitting import Fit
from routines.paper.styles import logo_colours

# Measured on one to sixteen grades, with few gaps and with many.
COVERAGE_FIT = Fit.alike(first=0, least=1.07, most=1.24)


def coverage_document(*, rows: Sequence[CoverageRow], window: Window, school: School, today: date) -> Document:
    """One sheet with all grades of `rows`, which are those that the reader may see. Nobody's name stands on it."""
    days = {"first": day(window.first), "last": day(window.last)}
    title = _("Coverage, %(first)s to %(last)s") % days
    context = {
        "title": title,
        "window": window,
        "today": day(today),
        "school": school,
        "areas": Area,
        "rows": rows,
        "any_said": any(cell.targets for row in rows for cell in row.cells),
        "gaps": [
            (grade, ", ".join(str(cell.area_name) for cell in cells))
            for grade, cells in groupby(gaps(rows), key=lambda cell: cell.grade)
        ],
        "logo": logo_colours(),
    }
    sheet = mark_safe(render_to_string("coverage/_sheet.html", context))  # noqa: S308 - our own template
    language = (get_language() or "en")[:2]  # as the pages say of themselves
    return Document(
        title=title, author=school.name, language=language, paper=school.paper, sheets=[sheet], fit=COVERAGE_FIT
    )
