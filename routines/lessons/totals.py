"""The one way to the teaching numbers: counted anew from the lessons themselves, in the transaction that changes a lesson.

Nothing is added or taken off, so that doing it twice, or after a mistake, gives the same. On PostgreSQL two lessons of one
count may change at the same moment: the row of the total is held first and the lessons are read after that, so that
whoever comes second sees both. Totals are held in one order (counts, days, weeks), so that nobody waits in a
ring.
"""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from django.db import transaction
from django.db.models import Aggregate, Count, Q, Sum

from grade_bands.models import SchoolYear
from routines.models import Lesson, TaughtInWeek, TaughtInYear, TaughtOn, TimesTaught

OfYear = tuple[int, int]
"""Routine, year; as everywhere here by their keys."""
OfDay = tuple[int, int, str, date]
"""Year, grade, area, day."""
OfWeek = tuple[int, int, str, date]
"""Year, grade, area, Monday."""


SHARED_WITH = {
    "team": [Lesson.Sharing.TEAM, Lesson.Sharing.TEAM_AND_COACH],
    "coach": [Lesson.Sharing.TEAM_AND_COACH],
}
NUMBERS_OF_A_DAY: dict[str, Aggregate] = {"lessons": Count("pk")} | {
    f"{audience}_{said}": Sum(f"targets_{said}", filter=Q(sharing__in=sharing), default=0)
    for audience, sharing in SHARED_WITH.items()
    for said in ("seen", "not_yet", "not_recorded")
}
"""The columns of a day's total, by what they are of its lessons."""
NUMBERS_OF_A_WEEK = {name: Sum(name, default=0) for name in NUMBERS_OF_A_DAY}


@dataclass(frozen=True, slots=True)
class Counted:
    """Where a lesson is counted: what has to be counted anew when it changes."""

    routine: int
    year: int
    grade: int
    area: str
    taught_on: date

    @classmethod
    def of(cls, lesson: Lesson) -> "Counted":
        return cls(lesson.routine_id, lesson.year_id, lesson.grade_id, lesson.area, lesson.taught_on)

    @property
    def of_day(self) -> OfDay:
        return (self.year, self.grade, self.area, self.taught_on)


@transaction.atomic
def count_again(*places: Counted) -> None:
    """Bring the numbers of these places to what the lessons say, each place once."""
    count_years_again({(place.routine, place.year) for place in places})
    count_days_again({place.of_day for place in places})


@transaction.atomic
def count_years_again(wanted: Iterable[OfYear]) -> None:
    """How often it was taught, by class, grade and teacher and in all."""
    ordered = sorted(wanted)
    TaughtInYear.objects.bulk_create(
        [TaughtInYear(routine_id=routine, year_id=year) for routine, year in ordered], ignore_conflicts=True
    )
    for routine, year in ordered:
        total = TaughtInYear.objects.select_for_update().get(routine=routine, year=year)
        lessons = Lesson.objects.counted().filter(routine=routine, year=year).order_by()
        rows = [
            TimesTaught(routine_id=routine, year_id=year, **row)
            for row in lessons.values("grade_id", "class_group_id", "teacher_id").annotate(lessons=Count("pk"))
        ]
        TimesTaught.objects.filter(routine=routine, year=year).delete()
        TimesTaught.objects.bulk_create(rows)
        total.lessons = sum(row.lessons for row in rows)
        total.classes = len({row.class_group_id for row in rows})
        total.save(update_fields=["lessons", "classes"])


@transaction.atomic
def count_days_again(wanted: Iterable[OfDay]) -> None:
    """How many lessons there were, and what those that are shared say of target patterns; the same of their weeks."""
    ordered = sorted(wanted)
    TaughtOn.objects.bulk_create(
        [
            TaughtOn(year_id=year, grade_id=grade, area=area, day=day, monday=monday_of(day))
            for year, grade, area, day in ordered
        ],
        ignore_conflicts=True,
    )
    for year, grade, area, day in ordered:
        total = TaughtOn.objects.select_for_update().get(year=year, grade=grade, area=area, day=day)
        lessons = Lesson.objects.counted().filter(year=year, grade=grade, area=area, taught_on=day)
        for name, number in lessons.aggregate(**NUMBERS_OF_A_DAY).items():
            setattr(total, name, number)
        total.monday = monday_of(day)
        total.save(update_fields=[*NUMBERS_OF_A_DAY, "monday"])
    count_weeks_again({(year, grade, area, monday_of(day)) for year, grade, area, day in ordered})


@transaction.atomic
def count_weeks_again(wanted: Iterable[OfWeek]) -> None:
    """What their days come to, as these are kept by now."""
    ordered = sorted(wanted)
    TaughtInWeek.objects.bulk_create(
        [TaughtInWeek(year_id=year, grade_id=grade, area=area, monday=monday) for year, grade, area, monday in ordered],
        ignore_conflicts=True,
    )
    for year, grade, area, monday in ordered:
        of_week = {"year": year, "grade": grade, "area": area, "monday": monday}
        total = TaughtInWeek.objects.select_for_update().get(**of_week)
        for name, number in TaughtOn.objects.filter(**of_week).aggregate(**NUMBERS_OF_A_WEEK).items():
            setattr(total, name, number)
        total.save(update_fields=list(NUMBERS_OF_A_WEEK))


def monday_of(day: date) -> date:
    return day - timedelta(days=day.weekday())


def wrong_years(routines: Iterable[int]) -> set[OfYear]:
    """Of these routines, the (routine, year) whose numbers are not what the lessons come to."""
    listed = list(routines)
    by = ("routine", "year", "grade", "class_group", "teacher")
    lessons = Lesson.objects.counted().filter(routine__in=listed).order_by()
    right = _by_year(lessons.values_list(*by).annotate(lessons=Count("pk")))
    kept = _by_year(TimesTaught.objects.filter(routine__in=listed).values_list(*by, "lessons"))
    totals = {
        (routine, year): (lessons, classes)
        for routine, year, lessons, classes in TaughtInYear.objects.filter(routine__in=listed).values_list(
            "routine", "year", "lessons", "classes"
        )
    }
    return {
        of
        for of in {*right, *kept, *totals}
        if right.get(of) != kept.get(of) or _in_all(right.get(of, set())) != totals.get(of, (0, 0))
    }


def _by_year(rows: Iterable[tuple[int, ...]]) -> dict[OfYear, set[tuple[int, ...]]]:
    """The rows (grade, class, teacher, lessons) of each."""
    found: dict[OfYear, set[tuple[int, ...]]] = defaultdict(set)
    for routine, year, *rest in rows:
        found[routine, year].add(tuple(rest))
    return dict(found)


def _in_all(rows: Iterable[tuple[int, ...]]) -> tuple[int, int]:
    """Lessons and classes."""
    listed = list(rows)
    return sum(lessons for *_, lessons in listed), len({group for _, group, *_ in listed})


def wrong_days(year: SchoolYear) -> set[OfDay]:
    """The (year, grade, area, day) whose numbers are not what its lessons come to."""
    right = {(grade, area, day, monday_of(day), *numbers) for grade, area, day, *numbers in _days_of(year)}
    rows = TaughtOn.objects.filter(year=year, lessons__gt=0)
    kept = set(rows.values_list("grade", "area", "day", "monday", *NUMBERS_OF_A_DAY))
    return {(year.pk, grade, area, day) for grade, area, day, *_ in right ^ kept}


def wrong_weeks(year: SchoolYear) -> set[OfWeek]:
    """The (year, grade, area, Monday) whose numbers are not what its lessons come to."""
    sums: dict[tuple[int, str, date], list[int]] = {}
    for grade, area, day, *numbers in _days_of(year):
        so_far = sums.setdefault((grade, area, monday_of(day)), [0] * len(numbers))
        so_far[:] = map(sum, zip(so_far, numbers, strict=True))
    right: set[tuple[Any, ...]] = {(*of, *numbers) for of, numbers in sums.items()}
    rows = TaughtInWeek.objects.filter(year=year, lessons__gt=0)
    kept: set[tuple[Any, ...]] = set(rows.values_list("grade", "area", "monday", *NUMBERS_OF_A_WEEK))
    return {(year.pk, grade, area, monday) for grade, area, monday, *_ in right ^ kept}


def _days_of(year: SchoolYear) -> Iterable[tuple[Any, ...]]:
    """Grade, area, day and its numbers, counted from the lessons."""
    lessons = Lesson.objects.counted().filter(year=year).order_by()
    return lessons.values_list("grade", "area", "taught_on").annotate(**NUMBERS_OF_A_DAY)
