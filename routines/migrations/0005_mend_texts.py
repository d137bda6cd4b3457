"""Mend what was stored before there was a gate for text: unseen characters go, halves of characters are marked.

What is a text is settled in accounts.text, where words are kept in routines.models.people_words. A name that must be the only
one of its sort and is no longer so once it is mended gets a number behind it. There is no way back, and none is needed.
"""

from collections.abc import Iterator
from itertools import count
from typing import Any

from django.core.exceptions import FieldDoesNotExist
from django.db import IntegrityError, migrations, transaction
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps
from django.db.models import QuerySet

from accounts.text import REPLACEMENT, mended
from routines.models.people_words import ALL

AT_A_TIME = 100
MOST_OF_A_NAME = 100


def mended_text(text: str) -> str:
    """Never empty where there was something: a title of nothing but unseen characters stays a title."""
    found = mended(text)
    return found if found.strip() or not text.strip() else REPLACEMENT


def mended_value(value: Any) -> Any:
    if isinstance(value, str):
        return mended_text(value)
    if isinstance(value, dict):
        return {mended(name): mended_value(part) for name, part in value.items()}
    if isinstance(value, list):
        return [mended_value(part) for part in value]
    return value


def mend(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    fields_of: dict[Any, list[str]] = {}
    for column in ALL:
        try:
            model = column.model_in(apps)
            model._meta.get_field(column.field)
        except (LookupError, FieldDoesNotExist):  # it came later
            continue
        fields_of.setdefault(model, []).append(column.field)
    for model, fields in fields_of.items():
        for row in in_turn(model.objects.using(schema_editor.connection.alias), fields):
            found = {name: mended_value(getattr(row, name)) for name in fields}
            changed = {name: value for name, value in found.items() if value != getattr(row, name)}
            if changed:
                save(row, changed)


def in_turn(rows: QuerySet[Any], fields: list[str]) -> Iterator[Any]:
    """Every row, a few at a time: a school's whole history does not fit into memory."""
    last = None
    while True:
        asked = rows.only("pk", *fields).order_by("pk")
        batch = list((asked if last is None else asked.filter(pk__gt=last))[:AT_A_TIME])
        yield from batch
        if len(batch) < AT_A_TIME:
            return
        last = batch[-1].pk


def save(row: Any, changed: dict[str, Any]) -> None:
    for number in count(1):
        for name, value in changed.items():
            setattr(row, name, value if number == 1 else numbered(value, number, row._meta.get_field(name).max_length))
        try:
            with transaction.atomic(using=row._state.db):
                row.save(update_fields=list(changed))
            return
        except IntegrityError:
            if number == MOST_OF_A_NAME:
                raise


def numbered(value: Any, number: int, longest: int | None) -> Any:
    end = f" {number}"
    return value[: longest and longest - len(end)] + end if isinstance(value, str) else value


class Migration(migrations.Migration):
    dependencies = [
        ("accounts", "0001_people_and_school"),
        ("grade_bands", "0001_grades_classes_standards"),
        ("routines", "0004_jobs"),
    ]

    operations = [migrations.RunPython(mend, migrations.RunPython.noop)]
