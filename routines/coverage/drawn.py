"""Parts of the coverage's page, written once for all to whom they say the same."""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from datetime import date, timedelta
from typing import NamedTuple, Self

from django.utils.safestring import SafeString

from accounts.models import User
from accounts.written_once import Later, long, write, written_once
from grade_bands.models import Area, GradeBand
from routines.coverage.forms import DaysForm, Window, WindowForm
from routines.coverage.queries import CoverageRow, amount_in_words, weeks_between
from routines.coverage.targets import TargetsSeen
from routines.coverage.ways import Ways

GAPS_SHOWN = 6
GAPS_LISTED = 90


class Cell(NamedTuple):
    """As a CoverageCell: an area of one grade."""

    area: Area
    expected: bool
    available: int
    taught: int | None
    amount: str
    targets: TargetsSeen

    @property
    def amount_in_words(self) -> str:
        return amount_in_words(self.amount)


class Line(NamedTuple):
    """As a CoverageRow: all that the table says of one grade."""

    grade: int
    name: str
    cells: tuple[Cell, ...]
    weeks: tuple[int, ...] | None
    lessons: int | None

    @classmethod
    def of(cls, row: CoverageRow) -> Self:
        cells = (
            Cell(Area(one.area), one.expected, one.available, one.taught, one.amount, one.targets) for one in row.cells
        )
        return cls(row.grade.pk, row.grade.name, tuple(cells), row.weeks, row.lessons)


def table(rows: Iterable[CoverageRow], window: Window) -> SafeString:
    """The table with its key, and the ways to take it along."""
    lines = tuple(map(Line.of, rows))
    return _piece(window)(
        "coverage/_table.html",
        lines=long(lines),
        any_said=any(cell.targets for line in lines for cell in line.cells),
        query=window.query,
        query_by_grade=window.by_grade.query,
        of_one_class=bool(window.class_group),
    )


class Week(NamedTuple):
    """One week of the table in numbers: its days that are looked at, and the lessons of each grade; None where not shown."""

    first: date
    last: date
    query: str
    lessons: tuple[int | None, ...]


def weeks(rows: Sequence[CoverageRow], window: Window) -> SafeString:
    """The bars in numbers, a line a week, each of which leads to that week alone."""
    found = []
    for at, monday in enumerate(weeks_between(window.first, window.last)):
        days = replace(
            window, first=max(monday, window.first), last=min(monday + timedelta(days=6), window.last), chosen=True
        )
        lessons = tuple(None if row.weeks is None else row.weeks[at] for row in rows)
        found.append(Week(days.first, days.last, days.query, lessons))
    return _piece(window)(
        "coverage/_weeks.html", weeks=long(tuple(found)), grades=tuple(row.grade.name for row in rows)
    )


class Gap(NamedTuple):
    """A field that is expected and holds nothing: its grade, its area or code, what that asks, and where it leads."""

    grade: str
    name: str
    summary: str
    ways: Ways


def gaps(found: Sequence[Gap], user: User, *, by: str) -> SafeString:
    """The first as empty pages, all others as lines, so that what can be done about each stands here. by: area or standard."""
    return written_once(
        "coverage/_gaps.html",
        by=by,
        pages=long(tuple(found[:GAPS_SHOWN])),
        lines=long(tuple(found[GAPS_SHOWN : GAPS_SHOWN + GAPS_LISTED])),
        further=max(0, len(found) - GAPS_SHOWN - GAPS_LISTED),
        may_suggest=not user.is_administrator,
        may_plan=user.role == User.Role.TEACHER,
    )


def _piece(window: Window) -> Callable[..., SafeString]:
    """Of all the days that somebody may choose nobody asks for the same again."""
    return write if window.chosen else written_once


class Offer(NamedTuple):
    """Another window: its name, what it is, how an address asks for it, and whether it is the one looked at."""

    name: str
    words: str
    query: str
    is_this: bool


def other_looks(form: WindowForm, window: Window, *, by: str = "area", grade: int | None = None) -> SafeString:
    """The ways to the windows that are offered. by: area or standard, whose grade stays chosen."""
    offers = (Offer(name, words, one.query, one.is_same_as(window)) for name, words, one in form.offered())
    return _piece(window)("coverage/_looks.html", by=by, kept_grade=grade, offers=tuple(offers))


class Choice(NamedTuple):
    pk: int
    name: str
    chosen: bool


NO_DAYS = Later("no days", DaysForm)


def picker(
    form: WindowForm,
    window: Window,
    bands: Iterable[GradeBand],
    classes: Later[tuple[tuple[int, str], ...]],
    grade: int | None = None,
) -> SafeString:
    """The fields that ask for another window. classes: of each its key and its name. grade: one that stays chosen."""
    chosen = window.class_group.pk if window.class_group else None
    offered = {
        "bands": tuple(Choice(band.pk, band.name, band == window.band) for band in bands),
        # Written once for all days that somebody may type, which are not remembered.
        "classes": Later(
            (classes.mark, chosen), lambda: written_once("coverage/_class_options.html", classes=classes, chosen=chosen)
        ),
        "kept_grade": grade,
    }
    if any(form[name].value() for name in form.fields):
        return write("coverage/_window.html", form=form, **offered)
    return written_once("coverage/_window.html", form=NO_DAYS, **offered)
