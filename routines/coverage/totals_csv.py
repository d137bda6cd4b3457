"""The totals as CSV: a line for each grade and area, with its days, so that several files can be put together; then a
column for each week, headed by its Monday.
"""

from collections.abc import Iterable

from django.utils.translation import gettext as _

from accounts.spreadsheets import table_csv
from routines.coverage.forms import Window
from routines.coverage.queries import CoverageRow, weeks_between


def totals_csv(rows: Iterable[CoverageRow], window: Window) -> str:
    """What the rows hold, and nothing that they do not tell: `rows` are those that the reader may see."""
    head = [
        _("grade"), _("area"), _("expected"), _("in the bank today"), _("lessons taught"),
        _("target patterns seen"), _("not yet"), _("not recorded"), _("from"), _("to"),
    ]  # fmt: skip
    mondays = weeks_between(window.first, window.last)
    lines = [
        [
            cell.grade.name,
            cell.area_name,
            _("yes") if cell.expected else _("no"),
            cell.available,
            _("under two classes: not shown") if cell.taught is None else cell.taught,
            *([cell.targets.seen, cell.targets.not_yet, cell.targets.not_recorded] if cell.targets else [None] * 3),
            window.first.isoformat(),
            window.last.isoformat(),
            *([None] * len(mondays) if cell.weeks is None else cell.weeks),
        ]
        for row in rows
        for cell in row.cells
    ]
    return table_csv([[*head, *(monday.isoformat() for monday in mondays)], *lines])
