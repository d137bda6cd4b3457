"""What is kept beside counts and lessons, for a school that has both already: teaching numbers, what is shown, the search.

Some at a time, so that a large bank needs no large memory; everything at once as far as the database goes.
"""

from collections import defaultdict
from collections.abc import Iterator
from datetime import timedelta
from itertools import islice
from typing import Any

from django.db import connection, migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps
from django.db.models import Count

from routines.models.search_word import words_of
from routines.models.shown_families import shown_bits

COUNTS_AT_A_TIME = 500
ROWS_AT_A_TIME = 2000


def fill(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    empty(apps, schema_editor)
    Routine = apps.get_model("routines", "Routine")
    last = 0
    while part := list(
        Routine.objects.filter(pk__gt=last).order_by("pk").only("pk", "title", "search_text")[:COUNTS_AT_A_TIME]
    ):
        last = part[-1].pk
        fill_what_is_shown(apps, part)
        fill_words(apps, part)
        fill_times_taught(apps, part)
    fill_days(apps)


def fill_what_is_shown(apps: StateApps, part: list[Any]) -> None:
    RoutinePattern = apps.get_model("routines", "RoutinePattern")
    patterns = defaultdict(list)
    for pk, *pattern in RoutinePattern.objects.filter(routine__in=part).values_list("routine", "family", "holds", "lie"):
        patterns[pk].append(pattern)
    for routine in part:
        routine.shows = shown_bits(patterns[routine.pk])
    apps.get_model("routines", "Routine").objects.bulk_update(part, ["shows"])


def fill_words(apps: StateApps, part: list[Any]) -> None:
    """Of rows there are some sixty for each count, so they are written without being made first."""
    names = [connection.ops.quote_name(name) for name in ("routine_id", "word", "in_title")]
    table = connection.ops.quote_name(apps.get_model("routines", "SearchWord")._meta.db_table)
    with connection.cursor() as cursor:
        cursor.executemany(
            f"INSERT INTO {table} ({', '.join(names)}) VALUES (%s, %s, %s)",
            [
                (routine.pk, word, in_title)
                for routine in part
                for word, in_title in words_of(routine.title, routine.search_text).items()
            ],
        )


def fill_times_taught(apps: StateApps, part: list[Any]) -> None:
    TimesTaught, TaughtInYear = (apps.get_model("routines", name) for name in ("TimesTaught", "TaughtInYear"))
    by = ("routine_id", "year_id", "grade_id", "class_group_id", "teacher_id")
    rows = list(counted(apps).filter(routine__in=part).values(*by).annotate(lessons=Count("pk")))
    keep(TimesTaught, (TimesTaught(**row) for row in rows))
    years = defaultdict(list)
    for row in rows:
        years[row["routine_id"], row["year_id"]].append(row)
    keep(
        TaughtInYear,
        (
            TaughtInYear(
                routine_id=routine,
                year_id=year,
                lessons=sum(row["lessons"] for row in of_year),
                classes=len({row["class_group_id"] for row in of_year}),
            )
            for (routine, year), of_year in years.items()
        ),
    )


def fill_days(apps: StateApps) -> None:
    TaughtOn = apps.get_model("routines", "TaughtOn")
    days = counted(apps).values("year_id", "grade_id", "area", "taught_on").annotate(lessons=Count("pk"))
    keep(
        TaughtOn,
        (
            TaughtOn(monday=row["taught_on"] - timedelta(days=row["taught_on"].weekday()), day=row.pop("taught_on"), **row)
            for row in days.iterator()
        ),
    )


def counted(apps: StateApps) -> Any:
    lessons = apps.get_model("routines", "Lesson").objects
    return lessons.filter(practice=False, written_at__isnull=False, deleted_at__isnull=True).order_by()


def keep(model: Any, rows: Iterator[Any]) -> None:
    while part := list(islice(rows, ROWS_AT_A_TIME)):
        model.objects.bulk_create(part)


def empty(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    for name in ("SearchWord", "TimesTaught", "TaughtInYear", "TaughtOn"):
        apps.get_model("routines", name).objects.all().delete()


class Migration(migrations.Migration):
    dependencies = [("routines", "0013_kept_beside_lessons_and_search")]

    operations = [migrations.RunPython(fill, empty)]
