"""Teaching numbers, kept beside the lessons so that no page counts these: how often each count was taught, and
what each grade had on each day and in each week.

All of it follows from the lessons that coverage counts. `routines.lessons.totals` writes it, in the transaction that
changes a lesson; `manage.py check_kept` proves it.
"""

from collections import defaultdict
from typing import Self

from django.conf import settings
from django.db import models
from django.db.models import Q

from accounts.models import User
from grade_bands.models import Area, SchoolYear


class TimesTaughtQuerySet(models.QuerySet["TimesTaught"]):
    def known_to(self, user: User) -> Self:
        """Of lessons of which she knows without being told: her own, and a teacher's in the grades that she teaches."""
        return self.filter(known(user))

    def not_known_to(self, user: User) -> Self:
        return self.exclude(known(user))

    def in_year(self, year: SchoolYear | None) -> Self:
        return self.filter(year=year)


def known(user: User) -> Q:
    found = Q(teacher=user)
    if not user.is_administrator:
        # Named one by one, for she has few; asked for within the query they would be looked up for each of its rows.
        grades: dict[int, set[int]] = defaultdict(set)
        for group in user.class_groups.all():
            grades[group.year_id].add(group.grade_id)
        for year, hers in sorted(grades.items()):
            found |= Q(year=year, grade__in=sorted(hers))
    return found


class TimesTaught(models.Model):
    """How often one class had one count, by each teacher who taught it, in the grade and year that the lessons carry."""

    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="times", db_index=False)
    year = models.ForeignKey("grade_bands.SchoolYear", on_delete=models.CASCADE, related_name="+", db_index=False)
    grade = models.ForeignKey("grade_bands.Grade", on_delete=models.CASCADE, related_name="+", db_index=False)
    class_group = models.ForeignKey("grade_bands.ClassGroup", on_delete=models.CASCADE, related_name="+")
    teacher = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+", db_index=False)
    lessons = models.PositiveIntegerField()

    objects = TimesTaughtQuerySet.as_manager()

    class Meta:
        indexes = [
            models.Index(fields=["year", "grade", "routine"], name="timestaught_of_grade"),
            models.Index(fields=["teacher", "year", "routine"], name="timestaught_of_teacher"),
        ]
        constraints = [
            models.UniqueConstraint(
                fields=["routine", "year", "grade", "class_group", "teacher"], name="timestaught_once"
            ),
        ]

    def __str__(self) -> str:
        return f"{self.lessons} of {self.routine_id} for {self.class_group_id}"


class TaughtInYear(models.Model):
    """How often one count was taught in one year, and to how many classes. Its row is the turn of who writes the rows above."""

    routine = models.ForeignKey(
        "routines.Routine", on_delete=models.CASCADE, related_name="years_taught", db_index=False
    )
    year = models.ForeignKey("grade_bands.SchoolYear", on_delete=models.CASCADE, related_name="+", db_index=False)
    lessons = models.PositiveIntegerField(default=0)
    classes = models.PositiveIntegerField(default=0)

    class Meta:
        indexes = [models.Index(fields=["year", "-lessons", "-routine"], name="taughtinyear_most")]
        constraints = [models.UniqueConstraint(fields=["routine", "year"], name="taughtinyear_once")]

    def __str__(self) -> str:
        return f"{self.routine_id} {self.lessons} times in {self.year_id}"


class Taught(models.Model):
    """How many lessons one grade had in one area for some time, and what was said of target patterns in those that are shared.

    `team_...`: of lessons that their teachers share, `coach_...`: of those among them that a coach may open too.
    """

    year = models.ForeignKey("grade_bands.SchoolYear", on_delete=models.CASCADE, related_name="+", db_index=False)
    grade = models.ForeignKey("grade_bands.Grade", on_delete=models.CASCADE, related_name="+", db_index=False)
    area = models.CharField(max_length=12, choices=Area.choices)
    monday = models.DateField()
    lessons = models.PositiveIntegerField(default=0)
    team_seen = models.PositiveIntegerField(default=0)
    team_not_yet = models.PositiveIntegerField(default=0)
    team_not_recorded = models.PositiveIntegerField(default=0)
    coach_seen = models.PositiveIntegerField(default=0)
    coach_not_yet = models.PositiveIntegerField(default=0)
    coach_not_recorded = models.PositiveIntegerField(default=0)

    class Meta:
        abstract = True


NUMBERS = ["lessons", *(f"{of}_{said}" for of in ("team", "coach") for said in ("seen", "not_yet", "not_recorded"))]


class TaughtOn(Taught):
    """On one day; `monday` is that of its week."""

    day = models.DateField()

    class Meta:
        # What coverage adds up of a week that it shows a part of, from the index alone.
        indexes = [models.Index(fields=["year", "grade", "monday", "area", "day", *NUMBERS], name="taughton_by_week")]
        constraints = [models.UniqueConstraint(fields=["year", "grade", "area", "day"], name="taughton_once")]

    def __str__(self) -> str:
        return f"{self.lessons} on {self.day}"


class TaughtInWeek(Taught):
    """In the week of `monday`: what its days come to."""

    class Meta:
        # What coverage reads, from the index alone.
        indexes = [models.Index(fields=["year", "grade", "monday", "area", *NUMBERS], name="taughtinweek_of_grade")]
        constraints = [models.UniqueConstraint(fields=["year", "grade", "area", "monday"], name="taughtinweek_once")]

    def __str__(self) -> str:
        return f"{self.lessons} in the week of {self.monday}"
