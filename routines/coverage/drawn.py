"""Parts of the coverage's page, drawn once for all to whom they say the same."""

from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple, Self

from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.translation import get_language

from grade_bands.models import Area, ClassGroup, GradeBand
from routines.coverage.forms import DaysForm, Window, WindowForm
from routines.coverage.queries import CoverageRow, amount_in_words

TABLES_REMEMBERED = 50  # of about 20 KB each in a school of nine grades
PICKERS_REMEMBERED = 100  # of about 2 KB each


class Cell(NamedTuple):
    """As a CoverageCell: an area of one grade."""

    area: Area
    expected: bool
    available: int
    taught: int | None
    amount: str

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
        cells = (Cell(Area(one.area), one.expected, one.available, one.taught, one.amount) for one in row.cells)
        return cls(row.grade.pk, row.grade.name, tuple(cells), row.weeks, row.lessons)


def table(rows: Iterable[CoverageRow], window: Window) -> SafeString:
    """The table with its key, and the ways to take it along."""
    lines = tuple(map(Line.of, rows))
    return drawn_table(lines, window.query, window.by_grade.query, bool(window.class_group), get_language())


@lru_cache(maxsize=TABLES_REMEMBERED)
def drawn_table(
    lines: tuple[Line, ...], query: str, query_by_grade: str, of_one_class: bool, language: str | None
) -> SafeString:
    context = {"lines": lines, "query": query, "query_by_grade": query_by_grade, "of_one_class": of_one_class}
    return render_to_string("coverage/_table.html", context | {"areas": Area})


class Offer(NamedTuple):
    """Another window: its name, what it is, how an address asks for it, and whether it is the one looked at."""

    name: str
    words: str
    query: str
    is_this: bool


def other_looks(form: WindowForm, window: Window) -> SafeString:
    """The ways to the other table and to the windows that are offered."""
    offers = (Offer(name, words, one.query, one.is_same_as(window)) for name, words, one in form.offered())
    return drawn_looks(window.query, tuple(offers), get_language())


@lru_cache(maxsize=PICKERS_REMEMBERED)
def drawn_looks(query: str, offers: tuple[Offer, ...], language: str | None) -> SafeString:
    return render_to_string("coverage/_looks.html", {"query": query, "offers": offers, "by": "area"})


class Choice(NamedTuple):
    pk: int
    name: str
    chosen: bool


Choices = tuple[Choice, ...]


def picker(
    form: WindowForm,
    window: Window,
    bands: Iterable[GradeBand],
    classes: Iterable[ClassGroup],
    grade: int | None = None,
) -> SafeString:
    """The fields that ask for another window. grade: one that stays chosen."""
    offered = (
        tuple(Choice(band.pk, band.name, band == window.band) for band in bands),
        tuple(Choice(group.pk, group.name, group == window.class_group) for group in classes),
    )
    if form.errors:  # with what was typed, whatever that is
        return _picker(form, *offered, grade)
    return drawn_picker(form["first"].value() or "", form["last"].value() or "", *offered, grade, get_language())


@lru_cache(maxsize=PICKERS_REMEMBERED)
def drawn_picker(
    first: str, last: str, bands: Choices, classes: Choices, grade: int | None, language: str | None
) -> SafeString:
    """first, last: as typed, and a day each or nothing."""
    typed = {name: day for name, day in (("first", first), ("last", last)) if day}
    return _picker(DaysForm(typed), bands, classes, grade)


def _picker(form: DaysForm, bands: Choices, classes: Choices, grade: int | None) -> SafeString:
    return render_to_string(
        "coverage/_window.html", {"form": form, "bands": bands, "classes": classes, "kept_grade": grade}
    )
