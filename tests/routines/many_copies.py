"""A large school in seconds: the counts that there are, many times over with all that hangs on them, copied by the database.

Copies keep their titles, owners, days and lessons; their keys lie `APART` for each copy, so nothing that is there may lie beyond.
"""

from django.db import connection
from django.db.models import F, Field, Max, Model

from routines.lessons.totals import NUMBERS_OF_A_DAY
from routines.models import (
    BankTotal,
    Lesson,
    Routine,
    RoutinePattern,
    RoutineVersion,
    SearchWord,
    TaughtInWeek,
    TaughtInYear,
    TaughtOn,
    TimesTaught,
)

APART = 1_000_000
COPIED = (RoutineVersion, Routine, RoutinePattern, SearchWord, Lesson, TimesTaught, TaughtInYear)
ADDED_UP = (
    *((model, number) for model in (TaughtOn, TaughtInWeek) for number in NUMBERS_OF_A_DAY),
    (BankTotal, "counts"),
)


def copy_all(times: int) -> None:
    """Each count so many times more."""
    for model in COPIED:
        _copy(model, times)
    for model, number in ADDED_UP:
        model.objects.update(**{number: F(number) * (times + 1)})


def _copy(model: type[Model], times: int) -> None:
    assert (model.objects.aggregate(last=Max("pk"))["last"] or 0) < APART
    columns = [field for field in model._meta.concrete_fields if not getattr(field, "generated", False)]
    names = ", ".join(f'"{field.column}"' for field in columns)
    values = ", ".join(map(_value, columns))
    table = model._meta.db_table
    with connection.cursor() as cursor:
        cursor.execute(
            f"WITH RECURSIVE copies(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM copies WHERE n < {times}) "
            f'INSERT INTO "{table}" ({names}) SELECT {values} FROM "{table}" CROSS JOIN copies'
        )


def _value(field: Field) -> str:
    """What a copy has in this column: a key of its own, and those of the copies beside it."""
    if field.primary_key or field.related_model in COPIED:
        return f'"{field.column}" + n * {APART}'
    if field.get_internal_type() == "UUIDField":
        return "gen_random_uuid()" if connection.vendor == "postgresql" else "lower(hex(randomblob(16)))"
    return f'"{field.column}"'
