"""What the bank holds and what lessons have touched, by grade and area, from daily totals: never by teacher."""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from django.db.models import Count, QuerySet, Sum
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.translated import Translated
from grade_bands.models import Area, ClassGroup, Grade, SchoolYear
from routines.models import Routine, TaughtOn

FEW = 3

AMOUNTS = {"none": _("none"), "few": _("few"), "good": _("good")}


NOT_TO_BE_MADE = frozenset({Area.RATIOS})
"""Areas for which no count can be made yet, and so none is expected: a ratio takes two counts side by side."""


@dataclass(frozen=True, slots=True)
class CoverageCell:
    """One grade and area: how many routines the bank holds for it and how many lessons touched it.

    `taught` is None where the reader may not see the number (a grade with one class, for an administrator).
    """

    grade: Grade
    area: str
    area_name: Translated
    expected: bool
    available: int
    taught: int | None

    @property
    def amount(self) -> str:
        """none, few (1 to 3) or good (4 or more)."""
        return "none" if not self.available else "few" if self.available <= FEW else "good"

    @property
    def amount_in_words(self) -> str:
        return str(AMOUNTS[self.amount])


@dataclass(frozen=True, slots=True)
class CoverageRow:
    """One grade: its cells in the order of Area, lessons by week (oldest first) and in all; None where not shown."""

    grade: Grade
    cells: tuple[CoverageCell, ...]
    weeks: tuple[int, ...] | None
    lessons: int | None

    @property
    def weeks_in_words(self) -> str:
        """For who hears the bars instead of seeing them."""
        numbers = ", ".join(map(str, self.weeks or ()))
        return gettext("Lessons week by week: %(numbers)s") % {"numbers": numbers}


def weeks_between(first: date, last: date) -> list[date]:
    """The Mondays of the weeks from `first` to `last`, both included."""
    monday = first - timedelta(days=first.weekday())
    return [monday + timedelta(weeks=i) for i in range((last - monday).days // 7 + 1)]


@compiled_once
def grades_seen_by(user: User, year: SchoolYear) -> QuerySet[Grade]:
    """The year's own grades for a teacher, all for coach and administrator. In the order of the school."""
    grades = Grade.objects.select_related("band").order_by("order")
    if user.is_coach or user.is_administrator:
        return grades
    return grades.filter(pk__in=ClassGroup.objects.filter(teachers=user, year=year).values("grade"))


def coverage(*, user: User, year: SchoolYear, first: date, last: date) -> list[CoverageRow]:
    """One row per grade that the user may see, for lessons from `first` to `last`, to the day."""
    grades = grades_seen_by(user, year)
    hidden = grades_hidden_from(user, year)
    available: Mapping[tuple[int, str], int] = {(row["grade"], row["area"]): row["routines"] for row in _available()}
    taught: Counter[tuple[int, str]] = Counter()
    weekly: Counter[tuple[int, date]] = Counter()
    for grade, area, monday, lessons in _weekly(year, [grade.pk for grade in grades], first, last):
        taught[grade, area] += lessons
        weekly[grade, monday] += lessons
    mondays = weeks_between(first, last)
    rows = []
    for seen in grades:
        shown = seen.pk not in hidden
        cells = tuple(
            CoverageCell(
                grade=seen,
                area=area.value,
                area_name=area.label,
                expected=area.value in seen.areas and area not in NOT_TO_BE_MADE,
                available=available.get((seen.pk, area.value), 0),
                taught=taught[seen.pk, area.value] if shown else None,
            )
            for area in Area
        )
        weeks = tuple(weekly[seen.pk, monday] for monday in mondays)
        rows.append(CoverageRow(seen, cells, weeks if shown else None, sum(weeks) if shown else None))
    return rows


@compiled_once
def _available() -> QuerySet[Any, Any]:
    return Routine.objects.in_bank().order_by().values("grade", "area").annotate(routines=Count("pk"))


@compiled_once
def _weekly(
    year: SchoolYear, grades: list[int], first: date, last: date
) -> QuerySet[TaughtOn, tuple[int, str, date, int]]:
    """How many lessons each grade had in each area in each week."""
    days = TaughtOn.objects.filter(year=year, grade__in=grades, day__range=(first, last), lessons__gt=0).order_by()
    return days.values_list("grade", "area", "monday").annotate(taught=Sum("lessons"))


def gaps(rows: Iterable[CoverageRow]) -> list[CoverageCell]:
    """Cells that are expected and for which the bank holds nothing."""
    return [cell for row in rows for cell in row.cells if cell.expected and not cell.available]


def grades_hidden_from(user: User, year: SchoolYear) -> set[int]:
    """Grades of which an administrator is told no number of lessons: with one class it would give itself away."""
    if not user.is_administrator:
        return set()
    classes = ClassGroup.objects.filter(year=year).order_by().values("grade").annotate(classes=Count("pk"))
    many = {row["grade"] for row in classes if row["classes"] > 1}
    return set(Grade.objects.exclude(pk__in=many).values_list("pk", flat=True))
