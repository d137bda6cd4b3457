"""A week of planned counts: one line a class, one column a day."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

from django.db.models import QuerySet
from django.utils.safestring import SafeString

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.written_once import Later
from grade_bands.models import ClassGroup, GradeBand, SchoolYear, classes_of
from routines.models import Lesson, Planned
from routines.models.planned import PlannedQuerySet
from routines.team.school_days import DAYS, SCHOOL_DAYS
from routines.team.small_counts import small_pictures
from routines.team.taught_as_planned import lessons_of

# A page stays readable, whatever somebody planned into one week.
MOST_SHOWN = 200
# A school has fewer classes than this in one team; more are a school that reads its plans by team.
MOST_CLASSES = 60


@dataclass(frozen=True, slots=True)
class PlannedCount:
    """One planned count as its reader sees it. picture: its grid as SVG, None where she may not open it.

    lesson: the one that ticks it, None before it was taught or where she is not told.
    """

    planned: Planned
    picture: Later[SafeString] | None
    lesson: Lesson | None
    may_change: bool
    may_teach: bool


@dataclass(frozen=True, slots=True)
class WeekRow:
    """One class. days: what is planned, by the days of the week that are shown."""

    class_group: ClassGroup
    days: list[tuple[date, list[PlannedCount]]]


@dataclass(frozen=True, slots=True)
class Week:
    """days: Monday to Friday, and the days of the weekend on which something is planned."""

    monday: date
    days: list[date]
    rows: list[WeekRow]
    left_out: int = 0
    planned: list[PlannedCount] = field(default_factory=list)

    @property
    def friday(self) -> date:
        return self.monday + timedelta(days=SCHOOL_DAYS - 1)

    @property
    def before(self) -> date:
        return self.monday - timedelta(days=DAYS)

    @property
    def after(self) -> date:
        return self.monday + timedelta(days=DAYS)


def year_of(monday: date) -> SchoolYear | None:
    """The school year to which a week belongs: that of its Friday."""
    return SchoolYear.objects.on(monday + timedelta(days=SCHOOL_DAYS - 1))


def teams_of(user: User, year: SchoolYear | None) -> list[GradeBand]:
    """The teams whose planned week she may read: all for a coach, else those in which she teaches this year."""
    if user.is_administrator:
        return []
    bands = GradeBand.objects.order_by("order")
    if user.is_coach:
        return list(bands)
    return list(bands.filter(grades__class_groups__teachers=user, grades__class_groups__year=year).distinct())


def own_week(user: User, monday: date, classes: Sequence[ClassGroup]) -> Week:
    """Her own classes in the year of that week, and what she planned for another."""
    sunday = monday + timedelta(days=DAYS - 1)
    rows = _own_rows(user, monday, sunday)
    left_out = _own(user, monday, sunday).count() - MOST_SHOWN if len(rows) > MOST_SHOWN else 0
    return _week(user, monday, rows[:MOST_SHOWN], left_out, classes)


def _own(user: User, first: date, last: date) -> PlannedQuerySet:
    return Planned.objects.visible_to(user).changeable_by(user).between(first, last)


@compiled_once
def _own_rows(user: User, first: date, last: date) -> QuerySet[Planned]:
    return _to_show(_own(user, first, last), user)


def _to_show(planned: PlannedQuerySet, user: User) -> QuerySet[Planned]:
    """As they stand in a week, and one more than are shown."""
    shown = planned.with_titles_for(user).select_related("class_group__grade").order_by("on", "pk")
    return shown[: MOST_SHOWN + 1]


def team_week(user: User, monday: date, year: SchoolYear | None, band: GradeBand | None) -> Week:
    """All classes of a team; of all teams (None) those for which something is planned."""
    planned = Planned.objects.visible_to(user).between(monday, monday + timedelta(days=DAYS - 1))
    classes: list[ClassGroup] = []
    if band is not None:
        planned = planned.filter(class_group__grade__band=band)
        theirs = ClassGroup.objects.filter(grade__band=band).in_year(year).select_related("grade").in_grade_order()
        classes = list(theirs[:MOST_CLASSES])
    rows = list(_to_show(planned, user))
    left_out = planned.count() - MOST_SHOWN if len(rows) > MOST_SHOWN else 0
    return _week(user, monday, rows[:MOST_SHOWN], left_out, classes)


def _week(user: User, monday: date, rows: Sequence[Planned], left_out: int, classes: Sequence[ClassGroup]) -> Week:
    shown = planned_counts(rows, user)
    days = [monday + timedelta(days=n) for n in range(DAYS)]
    kept = {count.planned.on for count in shown}
    days = [day for day in days if day.weekday() < SCHOOL_DAYS or day in kept]
    groups = {group.pk: group for group in classes}
    further = sorted(
        {count.planned.class_group for count in shown if count.planned.class_group_id not in groups},
        key=lambda group: (group.grade.order, group.name),
    )
    by_cell: dict[tuple[int, date], list[PlannedCount]] = {}
    for count in shown:
        by_cell.setdefault((count.planned.class_group_id, count.planned.on), []).append(count)
    lines = [
        WeekRow(group, [(day, by_cell.get((group.pk, day), [])) for day in days]) for group in (*classes, *further)
    ]
    return Week(monday, days, lines, left_out, shown)


def planned_counts(rows: Sequence[Planned], reader: User) -> list[PlannedCount]:
    """Rows of one week, read with their titles, as the reader sees them. Four queries, whatever the number."""
    pictures = small_pictures([row.routine_id for row in rows], reader)
    taught = lessons_of(rows, reader)
    classes = {group.pk for group in classes_of(reader)}
    return [
        PlannedCount(
            row,
            pictures.get(row.routine_id),
            taught.get(row.pk),
            may_change=row.by_id == reader.pk or row.class_group_id in classes,
            may_teach=row.routine_open and row.class_group_id in classes,
        )
        for row in rows
    ]
