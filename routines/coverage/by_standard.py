"""Coverage by standard: what the bank holds for each standard of a grade, what was taught, and what classes saw.

A standard stands in its own grade, and where a count that names it is planned for, or was taught in, another grade, there
too. A lesson counts for the standards that its count names today: a count that is given one later counts from then on for
its earlier lessons as well. All of it is counted for the grades that are asked for, so the work is that of their lessons.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache

from django.db.models import Count, Q
from django.db.models.fields.json import KeyTransform
from django.db.models.functions import TruncWeek

from accounts.models import User
from grade_bands.models import Grade, Standard
from grade_bands.standards import COMMON_CORE
from routines.counting import CountError, Kind
from routines.counting.standards import Features, read_features
from routines.coverage.forms import Window
from routines.coverage.queries import AMOUNTS, FEW, NOT_TO_BE_MADE, grades_hidden_from, weeks_between, weeks_in_words
from routines.coverage.targets import TargetsSeen
from routines.lessons.targets_seen import families_of_targets
from routines.models import Lesson, Routine, RoutineVersion, TargetOutcome
from routines.models.facts import kind_of_area
from routines.models.lesson import LessonQuerySet

Place = tuple[int, int]
"""The keys of a grade and a standard."""


@dataclass(frozen=True, slots=True)
class StandardRow:
    """One standard in one grade. `taught` and `weeks` are None where the reader may not see them, `targets` where there
    is no log that she may open.
    """

    grade: Grade
    standard: Standard
    expected: bool
    available: int
    taught: int | None
    weeks: tuple[int, ...] | None
    targets: TargetsSeen | None

    @property
    def amount(self) -> str:
        """none, few (1 to 3) or good (4 or more)."""
        return "none" if not self.available else "few" if self.available <= FEW else "good"

    @property
    def amount_in_words(self) -> str:
        return str(AMOUNTS[self.amount])

    @property
    def weeks_in_words(self) -> str:
        """For who hears the bars instead of seeing them."""
        return weeks_in_words(self.weeks or ())


def by_standard(user: User, window: Window, grades: Sequence[Grade]) -> list[StandardRow]:
    """Rows in the order of the grades, in each the school's own standards first. `grades`: those that the user may see."""
    available = _available(grades)
    lessons = Lesson.objects.counted().filter(
        year=window.year, grade__in=grades, taught_on__range=(window.first, window.last)
    )
    if window.class_group:
        lessons = lessons.filter(class_group=window.class_group)
    weekly = _weekly(lessons)
    # An administrator is told of no single lesson, so of no log either.
    targets = {} if user.is_administrator else _targets(lessons.open_to(user))
    hidden = grades_hidden_from(user, window.year)
    touched = available.keys() | weekly.keys()
    mondays = weeks_between(window.first, window.last)
    named = Q(grade__in=grades) | Q(pk__in={standard for _grade, standard in touched})
    standards = sorted(
        Standard.objects.filter(named).select_related("grade").in_reading_order(),
        key=lambda one: one.framework == COMMON_CORE,
    )
    rows = []
    for grade in grades:
        shown = grade.pk not in hidden
        for standard in standards:
            place = (grade.pk, standard.pk)
            if standard.grade_id == grade.pk or place in touched:
                weeks = tuple(weekly[place][monday] for monday in mondays) if place in weekly else (0,) * len(mondays)
                rows.append(
                    StandardRow(
                        grade=grade,
                        standard=standard,
                        expected=is_expected(standard, grade),
                        available=available[place],
                        taught=sum(weeks) if shown else None,
                        weeks=weeks if shown else None,
                        targets=targets.get(place),
                    )
                )
    return rows


def gaps_by_standard(rows: Iterable[StandardRow]) -> list[StandardRow]:
    """Standards that are expected in their grade and for which the bank holds nothing for it."""
    return [row for row in rows if row.expected and not row.available]


def is_expected(standard: Standard, grade: Grade) -> bool:
    """Whether a count is to be looked for: in its own grade, in an area that the grade expects, and not where it takes two."""
    if standard.grade_id != grade.pk or standard.area in NOT_TO_BE_MADE or not grade.expects(standard.area):
        return False
    features = _features(standard.count_features)
    return features is None or not features.with_key("pair")


def kind_for(standard: Standard) -> str:
    """The kind of number that the standard asks for, else that of its area."""
    features = _features(standard.count_features)
    asked = features.with_key("kind")[0].value.split("|") if features and features.with_key("kind") else []
    return next((kind for kind in asked if kind in tuple(Kind)), kind_of_area(standard.area))


@lru_cache(maxsize=2_048)
def _features(text: str) -> Features | None:
    """None where there are none, or where what was stored before features were checked cannot be read."""
    try:
        return read_features(text) if text.strip() else None
    except CountError:
        return None


def _available(grades: Sequence[Grade]) -> Counter[Place]:
    named = Routine.standards.through.objects.filter(
        routine__status=Routine.Status.SHARED, routine__grade__in=grades
    ).order_by()
    rows = named.values_list("routine__grade", "standard").annotate(routines=Count("pk"))
    return Counter({(grade, standard): routines for grade, standard, routines in rows})


def _weekly(lessons: LessonQuerySet) -> dict[Place, Counter[date]]:
    weekly: defaultdict[Place, Counter[date]] = defaultdict(Counter)
    rows = (
        lessons.filter(routine__standards__isnull=False)
        .order_by()
        .values_list("grade", "routine__standards", TruncWeek("taught_on"))
        .annotate(times=Count("pk"))
    )
    for grade, standard, monday, times in rows:
        weekly[grade, standard][monday] += times
    return dict(weekly)


def _targets(logs: LessonQuerySet) -> dict[Place, TargetsSeen]:
    """`logs`: lessons whose log the reader may open."""
    logs = logs.filter(routine__standards__isnull=False).order_by()
    keys = ("grade", "routine__standards")
    meant: Counter[Place] = Counter()
    targets = {
        version: len(families_of_targets({"targets": listed}))
        for version, listed in RoutineVersion.objects.filter(pk__in=logs.values("version"))
        .order_by()
        .annotate(targets=KeyTransform("targets", "plan"))
        .values_list("pk", "targets")
    }
    for grade, standard, version, times in logs.values_list(*keys, "version").annotate(times=Count("pk")):
        meant[grade, standard] += times * targets.get(version, 0)
    said: dict[tuple[int, int, str], int] = {
        (grade, standard, seen): times
        for grade, standard, seen, times in TargetOutcome.objects.filter(
            lesson__in=logs.values("pk"), lesson__routine__standards__isnull=False
        )
        .order_by()
        .values_list("lesson__grade", "lesson__routine__standards", "seen")
        .annotate(times=Count("pk"))
    }
    found = {}
    for grade, standard, classes in logs.values_list(*keys).annotate(classes=Count("class_group", distinct=True)):
        seen = said.get((grade, standard, TargetOutcome.Seen.SEEN), 0)
        not_yet = said.get((grade, standard, TargetOutcome.Seen.NOT_YET), 0)
        rest = max(0, meant[grade, standard] - seen - not_yet)
        found[grade, standard] = TargetsSeen(seen, not_yet, rest, classes)
    return found
