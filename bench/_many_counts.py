"""A bank of as many counts as one likes, no two alike, and the lessons that a school has held on them.

Rows are written as the app's own actions would leave them (`manage.py check_kept` finds nothing), but in bulk: each count is
one of a thousand that the engine has read, under a title, a story, an owner and a day of its own. A quarter of them were taught,
twenty times each, over this year and the one before. The same numbers give the same bank.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from dataclasses import asdict, dataclass, replace
from datetime import date, datetime, timedelta
from importlib import import_module
from itertools import islice, product
from typing import Any, TypeVar
from uuid import uuid4

from django.apps import apps
from django.db import connection, transaction
from django.db.models import Count, Model, Sum
from django.utils import timezone

from accounts.models import School, User
from bench._rows import indexed_afterwards, moment, write, write_found
from grade_bands.actions import lay_grades
from grade_bands.models import ClassGroup, Grade, SchoolYear
from routines.counting import CountError, Fill
from routines.models import Lesson, Routine, RoutinePattern, RoutineVersion, SearchWord, TaughtInYear, TimesTaught
from routines.models.facts import area_of, facts_of
from routines.models.plan_document import CountSection, Fold, Plan, Story
from routines.models.searched_words import words_in
from routines.models.shown_families import shown_bits
from routines.plans.actions import pattern_rows

LESSONS_EACH = 20
ONE_IN = 4
COUNTS_AT_A_TIME = 2000
ROWS_AT_A_TIME = 40_000
FIRST_DAY = date(2026, 8, 17)
BY_NUMBERS = [
    ("whole", ("4", "7", "10", "18", "25", "38", "64", "120", "375", "600"),
     ("2", "3", "4", "5", "6", "7", "9", "10", "25", "-4", "-10")),
    ("decimal", ("0.2", "1.5", "2.75", "4.25", "10.8"), ("0.1", "0.25", "0.4", "0.5", "1.1", "-0.2")),
    ("fraction", ("1/4", "2/3", "3/8", "5"), ("1/8", "1/4", "1/3", "2/5", "3/4")),
    ("length", ("2 ft", "9 in", "4 ft 3 in"), ("3 in", "9 in", "1 ft 6 in")),
    ("money", ("$0.35", "$2.00", "$4.60"), ("$0.05", "$0.15", "$0.25", "$1.10")),
    ("clock", ("9:10", "1:50", "11:35"), ("5 min", "10 min", "25 min")),
]  # fmt: skip
FOLDS = ((Fill.ACROSS, 4), (Fill.ACROSS, 6), (Fill.DOWN, 5))
PLACES = ("orchard", "harbor", "library", "kitchen", "meadow", "bakery", "garden", "station", "workshop", "river",
          "attic", "market", "quarry", "island", "tower", "stable", "bridge", "valley", "mill", "dock")  # fmt: skip
THINGS = ("marbles", "ladders", "lanterns", "buttons", "pebbles", "kites", "jars", "ribbons", "tickets", "acorns",
          "bricks", "candles", "feathers", "maps", "oars", "shells", "spools", "tiles", "wheels", "beads")  # fmt: skip
TIMES = ("early", "quiet", "windy", "long", "bright", "rainy", "slow", "golden", "late", "frosty")

M = TypeVar("M", bound=Model)


@dataclass(frozen=True, slots=True)
class ReadCount:
    """What follows from one count, whatever it is called: columns of its routine, its patterns as rows, its words."""

    plan: Plan
    document: dict[str, Any]
    columns: dict[str, Any]
    patterns: list[tuple[Any, ...]]
    words: frozenset[str]

    @classmethod
    def of(cls, plan: Plan) -> ReadCount:
        facts = facts_of(plan, 3)
        rows = pattern_rows(Routine(), facts.patterns)
        return cls(
            plan,
            plan.as_dict(),
            {**facts.columns, "shows": shown_bits((row.family, row.holds, row.lie) for row in rows)},
            [(row.position, row.family, row.holds, row.lie, json.dumps(row.claim)) for row in rows],
            frozenset(words_in(facts.columns["search_text"])),
        )


def fill(
    counts: int, *, people: int, kinds_of_count: int = 1000, told: Callable[[str], object] = lambda line: None
) -> None:
    """A school of so many counts in an empty database. `kinds_of_count` bounds how many the engine reads."""
    with connection.constraint_checks_disabled(), transaction.atomic():
        School.objects.get_or_create(pk=1, defaults={"name": "Larkfield School", "time_zone": "America/Chicago"})
        lay_grades()
        grades = list(Grade.objects.select_related("band"))
        staff = _people(people)
        classes = _classes(grades, staff)
        read = list(islice(_read_counts(), kinds_of_count))
        told(f"{len(read)} counts read by the engine")
        with indexed_afterwards(Routine, RoutineVersion, RoutinePattern, SearchWord, Lesson, TimesTaught, TaughtInYear):
            _counts(counts, read, grades, staff, told)
            _lessons(classes, told)
            _times_taught()
        told("indexes")
        import_module("routines.migrations.0014_fill_kept_numbers_and_search").fill_days(apps)
        import_module("routines.migrations.0016_bank_totals").fill(apps, None)
        import_module("routines.migrations.0023_bank_owner").fill(apps, None)
        import_module("routines.migrations.0022_taught_in_week").fill(apps, None)
        told("totals")


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


def _read_counts() -> Iterator[ReadCount]:
    every = [
        (kind, start, step, fold, terms)
        for kind, starts, steps in BY_NUMBERS
        for start, step, fold, terms in product(starts, steps, FOLDS, (16, 20, 24))
    ]
    for kind, start, step, (fill, length), terms in sorted(every, key=lambda one: hash_of(str(one))):
        plan = Plan(
            title="", grade="3", area="whole", count=CountSection(kind, start, step, terms), fold=Fold(length, fill)
        )
        try:
            yield ReadCount.of(replace(plan, area=area_of(plan.grid().count)))
        except CountError:  # below zero, where such numbers have no place
            continue


def _counts(
    number: int, read: list[ReadCount], grades: list[Grade], staff: list[User], told: Callable[[str], object]
) -> None:
    first = timezone.make_aware(datetime(2021, 9, 1, 8))
    by_area = {one.plan.area: [other for other in read if other.plan.area == one.plan.area] for one in read}
    areas = sorted(by_area)
    facts = tuple(read[0].columns)
    names = (
        "id",
        "current_version",
        "title",
        "story",
        "band",
        "grade",
        "area",
        "owner",
        "created_at",
        "shared_at",
        *facts,
    )
    empty = {"status": Routine.Status.SHARED, "copied_from": None, "copied_from_version": None}
    for start in range(0, number, COUNTS_AT_A_TIME):
        routines, versions, patterns, words = [], [], [], []
        for i in range(start, min(start + COUNTS_AT_A_TIME, number)):
            key = i + 1
            count = _of(by_area[_of(areas, hash_of(f"area {i}"))], hash_of(f"count {i}"))
            numbers = count.plan.count
            grade = _of(grades, hash_of(f"grade {i}"))
            owner = _of(staff, hash_of(f"owner {i}")).pk
            place, thing, time = (
                _of(words, hash_of(f"{i} {len(words)} {words[0]}")) for words in (PLACES, THINGS, TIMES)
            )
            title = f"{numbers.step} from {numbers.start}: {time} {thing} {i}"
            story = f"In the {place} somebody sets out {thing}, {numbers.step} at a time."
            document = count.document | {"title": title, "grade": grade.name, "story": asdict(Story(story, thing, ""))}
            columns = count.columns | {"search_text": f"{title}\n{story}\n{count.columns['search_text']}".casefold()}
            at = moment(first + timedelta(minutes=23 * i))
            routines.append(
                (key, key, title, story, grade.band_id, grade.pk, count.plan.area, owner, at, at, *columns.values())
            )
            versions.append((key, key, owner, json.dumps(document), at))
            patterns += [(key, *row) for row in count.patterns]
            titled = words_in(title)
            words += [(key, word, word in titled) for word in sorted(titled | words_in(story) | count.words)]
        write(Routine, names, routines, **empty)
        write(RoutineVersion, ("id", "routine", "by", "plan", "at"), versions, number=1)
        write(RoutinePattern, ("routine", "position", "family", "holds", "lie", "claim"), patterns)
        write(SearchWord, ("routine", "word", "in_title"), words)
        told(f"{key} counts")


def _lessons(classes: list[ClassGroup], told: Callable[[str], object]) -> None:
    """Each count that was taught met classes here and there: one in ten alone in one class, the others in many."""
    versions = RoutineVersion.objects.order_by("pk").values_list("pk", "routine", "routine__area")
    teacher = dict(ClassGroup.teachers.through.objects.values_list("classgroup_id", "user_id"))

    def lessons() -> Iterator[tuple[Any, ...]]:
        for at, (version, routine, area) in enumerate(versions.iterator()):
            if at % ONE_IN:
                continue
            many = 1 if at % (10 * ONE_IN) == 0 else LESSONS_EACH
            for lesson in range(LESSONS_EACH):
                group = classes[(hash_of(f"class {at}") + 7 * (lesson % many)) % len(classes)]
                day = group.year.starts_on + timedelta(days=hash_of(f"day {at} {lesson}") % 280)
                now = moment(timezone.make_aware(datetime(day.year, day.month, day.day, 9, 15)))
                yield (
                    uuid4().hex, routine, version, group.pk, teacher[group.pk], day, group.year_id, group.grade_id, area,
                    now, now, now,
                )  # fmt: skip

    names = (
        "key", "routine", "version", "class_group", "teacher", "taught_on", "year", "grade", "area",
        "created_at", "written_at", "last_event_at",
    )  # fmt: skip
    same = {
        "surface": Lesson.Surface.PAPER, "practice": False, "ended": True, "sharing": Lesson.Sharing.ONLY_ME,
        "last_seq": 0, "closed": False, "deleted_at": None,
        "targets_seen": 0, "targets_not_yet": 0, "targets_not_recorded": 0,
    }  # fmt: skip
    made = lessons()
    while part := list(islice(made, ROWS_AT_A_TIME)):
        write(Lesson, names, part, **same)
    told(f"{Lesson.objects.count()} lessons")


def _times_taught() -> None:
    """What `routines.lessons.totals` keeps of each count."""
    by = ("routine", "year", "grade", "class_group", "teacher")
    lessons = Lesson.objects.counted().order_by(*by).values_list(*by)
    write_found(TimesTaught, (*by, "lessons"), lessons.annotate(lessons=Count("pk")))
    times = TimesTaught.objects.order_by(*by[:2]).values_list(*by[:2])
    totals = times.annotate(in_all=Sum("lessons"), of_classes=Count("class_group", distinct=True))
    write_found(TaughtInYear, (*by[:2], "lessons", "classes"), totals)


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
