"""A bank of as many counts as one likes, no two alike, and the lessons that a school has held on them.

Rows are written in bulk, as the app's own actions would leave them: each count is one that the engine has read, under a title,
a story, an owner and a day of its own. A quarter of them were taught, twenty times each, over this year and the one before.
The same numbers give the same bank.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date, datetime, timedelta
from importlib import import_module
from itertools import islice, product
from typing import Any, TypeVar

from django.apps import apps
from django.db import connection, transaction
from django.db.models import Model
from django.utils import timezone

from accounts.models import School, User
from grade_bands.actions import lay_grades
from grade_bands.models import ClassGroup, Grade, SchoolYear
from routines.counting import CountError, Fill
from routines.models import Lesson, Routine, RoutineVersion
from routines.models.facts import Facts, area_of, facts_of
from routines.models.plan_document import CountSection, Fold, Plan, Story
from routines.plans.actions import pattern_rows

LESSONS_EACH = 20
ONE_IN = 4
ROWS_AT_A_TIME = 5000
FIRST_DAY = date(2026, 8, 17)
BY_NUMBERS = [
    ("whole", ("4", "7", "10", "25", "38", "120", "600"), ("2", "3", "5", "7", "9", "10", "25", "-4")),
    ("decimal", ("0.2", "1.5", "4.25"), ("0.1", "0.25", "0.5", "1.1")),
    ("fraction", ("1/4", "2/3", "5"), ("1/4", "1/3", "3/4")),
    ("length", ("2 ft", "9 in"), ("3 in", "9 in", "1 ft 6 in")),
    ("money", ("$0.35", "$2.00"), ("$0.05", "$0.25", "$1.10")),
    ("clock", ("9:10", "1:50"), ("10 min", "25 min")),
]
FOLDS = ((Fill.ACROSS, 4), (Fill.ACROSS, 6), (Fill.DOWN, 5))
PLACES = ("orchard", "harbor", "library", "kitchen", "meadow", "bakery", "garden", "station", "workshop", "river",
          "attic", "market", "quarry", "island", "tower", "stable", "bridge", "valley", "mill", "dock")  # fmt: skip
THINGS = ("marbles", "ladders", "lanterns", "buttons", "pebbles", "kites", "jars", "ribbons", "tickets", "acorns",
          "bricks", "candles", "feathers", "maps", "oars", "shells", "spools", "tiles", "wheels", "beads")  # fmt: skip
TIMES = ("early", "quiet", "windy", "long", "bright", "rainy", "slow", "golden", "late", "frosty")

M = TypeVar("M", bound=Model)


@transaction.atomic
def fill(
    counts: int, *, people: int, kinds_of_count: int = 200, told: Callable[[str], object] = lambda line: None
) -> None:
    """A school of so many counts in an empty database. `kinds_of_count` bounds how many the engine reads."""
    School.objects.get_or_create(pk=1, defaults={"name": "Larkfield School", "time_zone": "America/Chicago"})
    lay_grades()
    grades = list(Grade.objects.select_related("band"))
    staff = _people(people)
    classes = _classes(grades, staff)
    facts = list(islice(_read_counts(), kinds_of_count))
    told(f"{len(facts)} counts read by the engine")
    _counts(counts, facts, grades, staff, told)
    _lessons(classes, told)
    # What is kept beside them, as for a school that had them before.
    for name in (
        "0014_fill_kept_numbers_and_search",
        "0016_bank_totals",
        "0020_fill_what_was_said_of_targets",
    ):
        import_module(f"routines.migrations.{name}").fill(apps, None)
    told("numbers and search")


def settle() -> None:
    """Let the database look at what it holds, as one that has run for a while has done."""
    with connection.cursor() as cursor:
        cursor.execute("VACUUM ANALYZE" if connection.vendor == "postgresql" else "PRAGMA wal_checkpoint(TRUNCATE)")


def _people(number: int) -> list[User]:
    _keep(User(sign_in_name=f"person{i}", display_name=f"{_of(PLACES, i).title()} {_of(THINGS, i // 7).title()} {i}",
               role=User.Role.TEACHER) for i in range(number))  # fmt: skip
    return list(User.objects.filter(sign_in_name__startswith="person").order_by("pk"))


def _classes(grades: list[Grade], staff: list[User]) -> list[ClassGroup]:
    """Each of the staff has one class in each of two years."""
    years = [
        SchoolYear.objects.create(name=f"{day.year}", starts_on=day, ends_on=day + timedelta(days=300))
        for day in (FIRST_DAY.replace(year=FIRST_DAY.year - 1), FIRST_DAY)
    ]
    _keep(
        ClassGroup(
            name=f"{grades[at % len(grades)].name} {_of(PLACES, at)} {at}", grade=grades[at % len(grades)], year=year
        )
        for year in years
        for at in range(len(staff))
    )
    made = list(ClassGroup.objects.select_related("grade", "year").order_by("year__starts_on", "pk"))
    teaching = ClassGroup.teachers.through
    _keep(teaching(classgroup_id=group.pk, user_id=staff[at % len(staff)].pk) for at, group in enumerate(made))
    return made


def _read_counts() -> Iterator[tuple[Plan, Facts]]:
    every = [
        (kind, start, step, fold, terms)
        for kind, starts, steps in BY_NUMBERS
        for start, step, fold, terms in product(starts, steps, FOLDS, (16, 24))
    ]
    for kind, start, step, (fill, length), terms in sorted(every, key=lambda one: hash_of(str(one))):
        plan = Plan(
            title="", grade="3", area="whole", count=CountSection(kind, start, step, terms), fold=Fold(length, fill)
        )
        try:
            plan = replace(plan, area=area_of(plan.grid().count))
            yield plan, facts_of(plan, 3)
        except CountError:  # below zero, where such numbers have no place
            continue


def _counts(
    number: int,
    read: list[tuple[Plan, Facts]],
    grades: list[Grade],
    staff: list[User],
    told: Callable[[str], object],
) -> None:
    first = timezone.make_aware(datetime(2021, 9, 1, 8))
    by_area = {plan.area: [i for i, (other, _) in enumerate(read) if other.area == plan.area] for plan, _ in read}
    areas = sorted(by_area)

    def counts() -> Iterator[tuple[Routine, Plan, Facts]]:
        for i in range(number):
            area = areas[hash_of(f"area {i}") % len(areas)]
            plan, facts = read[_of(by_area[area], hash_of(f"count {i}"))]
            grade = _of(grades, hash_of(f"grade {i}"))
            place, thing, time = (
                _of(words, hash_of(f"{i} {len(words)} {words[0]}")) for words in (PLACES, THINGS, TIMES)
            )
            title = f"{plan.count.step} from {plan.count.start}: {time} {thing} {i}"
            story = f"In the {place} somebody sets out {thing}, {plan.count.step} at a time."
            plan = plan.changed(title=title, story=Story(story, thing, ""), grade=grade.name)
            columns = facts.columns | {"search_text": f"{title}\n{story}\n{facts.columns['search_text']}".casefold()}
            moment = first + timedelta(minutes=23 * i)
            yield (
                Routine(title=title, story=story, band=grade.band, grade=grade, area=plan.area, status=Routine.Status.SHARED,
                        owner=_of(staff, hash_of(f"owner {i}")), created_at=moment, shared_at=moment, **columns),
                plan,
                facts,
            )  # fmt: skip

    made = counts()
    while part := list(islice(made, ROWS_AT_A_TIME)):
        kept = Routine.objects.bulk_create([routine for routine, _, _ in part])
        saves = RoutineVersion.objects.bulk_create(
            RoutineVersion(
                routine=routine, number=1, by_id=routine.owner_id, plan=plan.as_dict(), at=routine.created_at
            )
            for routine, (_, plan, _) in zip(kept, part, strict=True)
        )
        for routine, save in zip(kept, saves, strict=True):
            routine.current_version = save
        Routine.objects.bulk_update(kept, ["current_version"], batch_size=500)
        _keep(row for routine, _, facts in part for row in pattern_rows(routine, facts.patterns))
        told(f"{kept[-1].pk} counts")


def _lessons(classes: list[ClassGroup], told: Callable[[str], object]) -> None:
    """Each count that was taught met classes here and there: one in ten alone in one class, the others in many."""
    versions = RoutineVersion.objects.order_by("pk").values_list("pk", "routine", "routine__area")

    def lessons() -> Iterator[Lesson]:
        for at, (version, routine, area) in enumerate(versions.iterator()):
            if at % ONE_IN:
                continue
            many = 1 if at % (10 * ONE_IN) == 0 else LESSONS_EACH
            for lesson in range(LESSONS_EACH):
                group = classes[(hash_of(f"class {at}") + 7 * (lesson % many)) % len(classes)]
                day = group.year.starts_on + timedelta(days=hash_of(f"day {at} {lesson}") % 280)
                moment = timezone.make_aware(datetime(day.year, day.month, day.day, 9, 15))
                yield Lesson(
                    routine_id=routine, version_id=version, class_group=group, teacher_id=teacher[group.pk], taught_on=day,
                    surface=Lesson.Surface.PAPER, year=group.year, grade=group.grade, area=area, ended=True,
                    created_at=moment, written_at=moment, last_event_at=moment,
                )  # fmt: skip

    rows = ClassGroup.teachers.through.objects.values_list("classgroup_id", "user_id")
    teacher = dict(rows)
    _keep(lessons())
    told(f"{Lesson.objects.count()} lessons")


def hash_of(text: str) -> int:
    """A number that looks like luck and is always the same."""
    found = 2166136261
    for byte in text.encode():
        found = (found ^ byte) * 16777619 & 0xFFFFFFFF
    return found >> 3


def _of(listed: Any, number: int) -> Any:
    return listed[number % len(listed)]


def _keep(rows: Iterator[M]) -> None:
    while part := list(islice(rows, ROWS_AT_A_TIME)):
        type(part[0])._default_manager.bulk_create(part)
