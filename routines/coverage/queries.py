"""What the bank holds and what lessons have touched, by grade and area, from kept totals: never by teacher."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from django.db.models import Count, QuerySet, Sum
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.translated import Translated
from grade_bands.models import Area, ClassGroup, Grade, GradeBand, SchoolYear
from routines.coverage.targets import (
    NOTHING_SAID,
    SAID,
    Audience,
    Place,
    TargetsSeen,
    audiences,
    own_besides,
    targets_of_class,
)
from routines.models import BankTotal, Lesson, TaughtInWeek, TaughtOn

FEW = 3

AMOUNTS = {"none": _("none"), "few": _("few"), "good": _("good")}


NOT_TO_BE_MADE = frozenset({Area.RATIOS})
"""Areas for which no count can be made yet, and so none is expected: a ratio takes two counts side by side."""


@dataclass(frozen=True, slots=True)
class CoverageCell:
    """One grade and area: how many routines the bank holds for it and how many lessons touched it.

    `weeks` are those lessons week by week, oldest first. Both are None where the reader may not see the number (a grade
    with one class, for an administrator). `targets` is what was said of target patterns in the logs that she may open.
    """

    grade: Grade
    area: str
    area_name: Translated
    expected: bool
    available: int
    taught: int | None
    weeks: tuple[int, ...] | None
    targets: TargetsSeen = NOTHING_SAID

    @property
    def amount(self) -> str:
        """none, few (1 to 3) or good (4 or more)."""
        return "none" if not self.available else "few" if self.available <= FEW else "good"

    @property
    def amount_in_words(self) -> str:
        return amount_in_words(self.amount)


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
        return weeks_in_words(self.weeks or ())


def amount_in_words(amount: str) -> str:
    return str(AMOUNTS[amount])


def weeks_in_words(weeks: Iterable[int]) -> str:
    return gettext("Lessons week by week: %(numbers)s") % {"numbers": ", ".join(map(str, weeks))}


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


def grades_looked_at(
    user: User, year: SchoolYear, *, band: GradeBand | None = None, class_group: ClassGroup | None = None
) -> list[Grade]:
    """Those of `grades_seen_by` that are of the band, where one is asked for; the class's own where a class is."""
    return [
        grade
        for grade in grades_seen_by(user, year)
        if (band is None or grade.band_id == band.pk) and (class_group is None or grade.pk == class_group.grade_id)
    ]


def coverage(
    *,
    user: User,
    year: SchoolYear,
    first: date,
    last: date,
    band: GradeBand | None = None,
    class_group: ClassGroup | None = None,
) -> list[CoverageRow]:
    """One row per grade that the user may see, for lessons from `first` to `last`, to the day.

    band: its grades alone. class_group: its grade and its lessons alone, for a class that the user may look at.
    """
    grades = grades_looked_at(user, year, band=band, class_group=class_group)
    hidden = grades_hidden_from(user, year)
    available: Mapping[tuple[int, str], int] = {
        (grade, area): counts for grade, area, counts in _available([grade.pk for grade in grades])
    }
    if class_group:
        weekly = _weekly_of_class(class_group, first, last)
        targets = targets_of_class(user, class_group, first, last)
    else:
        weekly, targets = _of_grades(user, grades, year, first, last)
    mondays = weeks_between(first, last)
    rows = []
    for seen in grades:
        shown = seen.pk not in hidden
        of_areas = {area: in_weeks(weekly.get((seen.pk, area.value)), mondays) for area in Area}
        cells = tuple(
            CoverageCell(
                grade=seen,
                area=area.value,
                area_name=area.label,
                expected=area.value in seen.areas and area not in NOT_TO_BE_MADE,
                available=available.get((seen.pk, area.value), 0),
                taught=sum(weeks) if shown else None,
                weeks=weeks if shown else None,
                targets=targets.get((seen.pk, area.value), NOTHING_SAID),
            )
            for area, weeks in of_areas.items()
        )
        weeks = tuple(map(sum, zip(*of_areas.values(), strict=True)))
        rows.append(CoverageRow(seen, cells, weeks if shown else None, sum(weeks) if shown else None))
    return rows


@compiled_once
def _available(grades: list[int]) -> QuerySet[BankTotal, tuple[int, str, int]]:
    return BankTotal.objects.filter(grade__in=grades).values_list("grade", "area", "counts")


Weekly = defaultdict[tuple[int, str], Counter[date]]
"""Lessons of a grade and area by the Monday of their week."""


def in_weeks(lessons: Counter[date] | None, mondays: Sequence[date]) -> tuple[int, ...]:
    return tuple(lessons[monday] for monday in mondays) if lessons else (0,) * len(mondays)


def _of_grades(
    user: User, grades: Sequence[Grade], year: SchoolYear, first: date, last: date
) -> tuple[Weekly, dict[Place, TargetsSeen]]:
    weekly: Weekly = defaultdict(Counter)
    targets: dict[Place, TargetsSeen] = {}

    def add(place: Place, said: Sequence[int]) -> None:
        if any(said):
            targets[place] = targets.get(place, NOTHING_SAID).with_more(*said)

    mondays = weeks_between(first, last)
    whole = [monday for monday in mondays if first <= monday and monday + timedelta(days=6) <= last]
    in_part = [monday for monday in mondays if monday not in whole]
    read = audiences(user, year, grades)
    for audience, keys in read.items():
        rows = _by_week(year, keys, whole[0], whole[-1], audience) if whole else []
        if in_part:
            rows += _days_by_week(year, keys, in_part, first, last, audience)
        for grade, area, week, lessons, *said in rows:
            weekly[grade, area][week] += lessons
            add((grade, area), said)
    if None not in read:
        for place, said in own_besides(user, year, first, last, read["team"]):
            add(place, said)
    return weekly, targets


@compiled_once
def _by_week(
    year: SchoolYear, grades: list[int], first: date, last: date, audience: Audience | None
) -> QuerySet[TaughtInWeek, Any]:
    """first, last: Mondays."""
    weeks = TaughtInWeek.objects.filter(year=year, grade__in=grades, monday__range=(first, last), lessons__gt=0)
    said = [f"{audience}_{name}" for name in SAID] if audience else []
    return weeks.order_by().values_list("grade", "area", "monday", "lessons", *said)


@compiled_once
def _days_by_week(
    year: SchoolYear, grades: list[int], mondays: list[date], first: date, last: date, audience: Audience | None
) -> QuerySet[TaughtOn, Any]:
    """The same of the days from `first` to `last` in weeks of which these are a part."""
    weeks = TaughtOn.objects.filter(year=year, grade__in=grades, monday__in=mondays)
    days = weeks.filter(day__range=(first, last), lessons__gt=0).order_by()
    sums = {name: Sum(f"{audience}_{name}") for name in SAID} if audience else {}
    return days.values_list("grade", "area", "monday").annotate(taught=Sum("lessons"), **sums)


def _weekly_of_class(class_group: ClassGroup, first: date, last: date) -> Weekly:
    """From the lessons themselves, of which one class has few."""
    weekly: Weekly = defaultdict(Counter)
    lessons = Lesson.objects.counted().filter(class_group=class_group, taught_on__range=(first, last)).order_by()
    for grade, area, day, times in lessons.values_list("grade", "area", "taught_on").annotate(times=Count("pk")):
        weekly[grade, area][day - timedelta(days=day.weekday())] += times
    return weekly


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
