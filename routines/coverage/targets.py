"""What was said of target patterns in the fields of a coverage, from lessons whose log the reader may open alone.

Of what is shared the totals of each day hold it already, for a team and for a coach; the reader's own lessons come to it.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, Literal

from django.db.models import Count, QuerySet, Sum
from django.utils.translation import gettext

from accounts.compiled_once import compiled_once
from accounts.models import User
from grade_bands.models import ClassGroup, Grade, SchoolYear, classes_of
from routines.models import Lesson

Audience = Literal["team", "coach"]
"""Whose totals are read: of all that is shared, or of what is shared with a coach."""
Place = tuple[int, str]
"""The key of a grade, and an area."""

SAID = ("seen", "not_yet", "not_recorded")
OF_LESSONS = {name: Sum(f"targets_{name}") for name in SAID}


@dataclass(frozen=True, slots=True)
class TargetsSeen:
    """Target patterns of the lessons whose log the reader may open, by what was said of them.

    classes: how many different ones had those lessons; 0 where nobody asked for it.
    """

    seen: int = 0
    not_yet: int = 0
    not_recorded: int = 0
    classes: int = 0

    def __bool__(self) -> bool:
        return bool(self.seen or self.not_yet or self.not_recorded)

    def with_more(self, seen: int, not_yet: int, not_recorded: int) -> "TargetsSeen":
        return TargetsSeen(self.seen + seen, self.not_yet + not_yet, self.not_recorded + not_recorded, self.classes)

    @property
    def in_words(self) -> str:
        words = gettext("seen %(seen)s, not yet %(not_yet)s, not recorded %(rest)s")
        return words % {"seen": self.seen, "not_yet": self.not_yet, "rest": self.not_recorded}


NOTHING_SAID = TargetsSeen()


def audiences(user: User, year: SchoolYear, grades: Iterable[Grade]) -> dict[Audience | None, list[int]]:
    """The keys of the grades by whose totals the user may read there; None: no single log is open to her.

    `grades` are those of which she may see the coverage: a teacher's are all of her own team.
    """
    keys = [grade.pk for grade in grades]
    if user.is_administrator:
        return {None: keys}
    if not user.is_coach:
        return {"team": keys}
    taught = sorted({group.grade_id for group in classes_of(user) if group.year_id == year.pk})
    bands = set(_bands_of(taught))
    team = [grade.pk for grade in grades if grade.band_id in bands]
    return {"team": team, "coach": [key for key in keys if key not in team]}


@compiled_once
def _bands_of(grades: list[int]) -> QuerySet[Grade, int]:
    return Grade.objects.filter(pk__in=grades).order_by().values_list("band", flat=True)


def own_besides(
    user: User, year: SchoolYear, first: date, last: date, team: Sequence[int]
) -> list[tuple[Place, tuple[int, int, int]]]:
    """What was said in the user's own lessons that the totals do not hold which she reads: her team's in the grades `team`."""
    shared = {Lesson.Sharing.TEAM, Lesson.Sharing.TEAM_AND_COACH}
    return [
        ((grade, area), (seen, not_yet, not_recorded))
        for grade, area, sharing, seen, not_yet, not_recorded in _own(user, year, first, last)
        if sharing not in (shared if grade in team else {Lesson.Sharing.TEAM_AND_COACH})
    ]


@compiled_once
def _own(
    user: User, year: SchoolYear, first: date, last: date
) -> QuerySet[Lesson, tuple[int, str, str, int, int, int]]:
    lessons = Lesson.objects.counted().filter(teacher=user, year=year, taught_on__range=(first, last)).order_by()
    return lessons.values_list("grade", "area", "sharing").annotate(**OF_LESSONS)


def targets_of_class(user: User, class_group: ClassGroup, first: date, last: date) -> dict[Place, TargetsSeen]:
    """From the lessons themselves, of which one class has few."""
    if user.is_administrator:
        return {}
    lessons = Lesson.objects.counted().filter(class_group=class_group, taught_on__range=(first, last))
    rows = lessons.open_to(user).order_by().values_list("grade", "area").annotate(**OF_LESSONS)
    return {(grade, area): TargetsSeen(*said) for grade, area, *said in rows}


def classes_read(user: User, year: SchoolYear, first: date, last: date, grades: Iterable[Grade]) -> Mapping[Place, int]:
    """How many classes had the lessons whose log the user may open; nothing where she may open none of others."""
    if user.is_administrator:
        return {}
    lessons = Lesson.objects.counted().filter(year=year, grade__in=grades, taught_on__range=(first, last))
    rows: Any = lessons.open_to(user).order_by().values_list("grade", "area")
    return {(grade, area): many for grade, area, many in rows.annotate(many=Count("class_group", distinct=True))}
