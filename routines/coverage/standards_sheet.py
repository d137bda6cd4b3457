"""One grade's standards on paper, to take to a meeting. It speaks the language of the page."""

from collections.abc import Sequence
from datetime import date

from django.template.loader import render_to_string
from django.utils.safestring import mark_safe
from django.utils.translation import get_language
from django.utils.translation import gettext as _

from accounts.models import School
from accounts.templatetags.dates import day
from grade_bands.models import Grade
from routines.coverage.by_standard import StandardRow
from routines.coverage.expectations import expectations
from routines.coverage.forms import Window
from routines.coverage.sheet import COVERAGE_FIT
from routines.coverage.standards_csv import passed_on
from routines.paper.document import Document
from routines.paper.styles import logo_colours


def standards_document(
    *, rows: Sequence[StandardRow], grade: Grade, window: Window, school: School, today: date
) -> Document:
    """As many pages as the standards need, each with the names of its columns. Nobody's name stands on it."""
    title = _("Coverage by standard, grade %(grade)s, %(first)s to %(last)s") % {
        "grade": grade.name,
        "first": day(window.first),
        "last": day(window.last),
    }
    told = [(row, passed_on(row)) for row in rows]
    context = {
        "title": title,
        "grade": grade,
        "window": window,
        "today": day(today),
        "school": school,
        "rows": told,
        "any_said": any(said for _row, said in told),
        "expectations": expectations([grade]),
        "logo": logo_colours(),
    }
    sheet = mark_safe(render_to_string("coverage/_standards_sheet.html", context))  # noqa: S308 - our own template
    return Document(
        title=title,
        author=school.name,
        language=(get_language() or "en")[:2],
        paper=school.paper,
        sheets=[sheet],
        fit=COVERAGE_FIT,
    )
