"""Coverage by standard as CSV: a line for each grade and standard, with its days, then a column for each week."""

from collections.abc import Iterable

from django.utils.translation import gettext as _

from accounts.spreadsheets import table_csv
from routines.coverage.by_standard import StandardRow
from routines.coverage.forms import Window
from routines.coverage.queries import weeks_between
from routines.coverage.targets import TargetsSeen
from routines.models.routine import CLASSES_TO_BE_TOLD


def standards_csv(rows: Iterable[StandardRow], window: Window) -> str:
    """What the rows hold, and nothing that they do not tell: `rows` are those that the reader may see.

    What was said of target patterns is given where logs of two classes or more were read: a file is passed on.
    """
    mondays = weeks_between(window.first, window.last)
    head = [
        _("grade"), _("standards"), _("code"), _("standard"), _("area"), _("expected"), _("in the bank today"),
        _("lessons taught"), _("target patterns seen"), _("not yet"), _("not recorded"), _("from"), _("to"),
    ]  # fmt: skip
    lines = [
        [
            row.grade.name,
            row.standard.framework,
            row.standard.code,
            row.standard.summary,
            row.standard.get_area_display(),
            _("yes") if row.expected else _("no"),
            row.available,
            _("under two classes: not shown") if row.taught is None else row.taught,
            *([told.seen, told.not_yet, told.not_recorded] if (told := passed_on(row)) else [None] * 3),
            window.first.isoformat(),
            window.last.isoformat(),
            *([None] * len(mondays) if row.weeks is None else row.weeks),
        ]
        for row in rows
    ]
    return table_csv([[*head, *(monday.isoformat() for monday in mondays)], *lines])


def passed_on(row: StandardRow) -> TargetsSeen | None:
    """What was said of target patterns; None where there were none, or too few classes' logs were read to be passed on."""
    return row.targets if row.targets and row.targets.classes >= CLASSES_TO_BE_TOLD else None
