"""Many rows at once, past Django's own ways, which take most of their time making SQL of one row after the other.

Rows are tuples of what the database stores: a JSON document is its text, a moment goes through `moment`.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime
from typing import Any

from django.core.management.color import no_style
from django.db import connection
from django.db.models import Model, QuerySet

# What PostgreSQL holds of a table besides its rows and its key, as how to drop it and how to make it again.
CONSTRAINTS = """
    SELECT format('ALTER TABLE %%s DROP CONSTRAINT %%I', conrelid::regclass, conname),
           format('ALTER TABLE %%s ADD CONSTRAINT %%I %%s', conrelid::regclass, conname, pg_get_constraintdef(oid))
    FROM pg_constraint WHERE conrelid = ANY(%s::regclass[]) AND contype IN ('f', 'u') ORDER BY contype"""
INDEXES = """
    SELECT format('DROP INDEX %%I', indexname), indexdef FROM pg_indexes
    WHERE tablename = ANY(%s) AND indexname NOT IN (SELECT conname FROM pg_constraint)"""
INDEXES_OF_SQLITE = """
    SELECT 'DROP INDEX "' || name || '"', sql FROM sqlite_master
    WHERE type = 'index' AND sql IS NOT NULL AND tbl_name IN (SELECT value FROM json_each(%s))"""


@contextmanager
def indexed_afterwards(*models: type[Model]) -> Iterator[None]:
    """Inside, these tables have none of the indexes and references that can be made again when all rows are there."""
    connection.check_constraints()  # else PostgreSQL still has those of earlier rows to look at
    tables = [model._meta.db_table for model in models]
    with connection.cursor() as cursor, _room_to_sort(cursor):
        found = []
        for query in (CONSTRAINTS, INDEXES) if connection.vendor == "postgresql" else (INDEXES_OF_SQLITE,):
            cursor.execute(query, [tables if connection.vendor == "postgresql" else json.dumps(tables)])
            found += cursor.fetchall()
        for drop, _ in found:
            cursor.execute(drop)
        yield
        for _, make_again in reversed(found):
            cursor.execute(make_again)
        for query in connection.ops.sequence_reset_sql(no_style(), models):
            cursor.execute(query)


@contextmanager
def _room_to_sort(cursor: Any) -> Iterator[None]:
    if connection.vendor == "postgresql":
        cursor.execute("SET LOCAL maintenance_work_mem = '256MB'")
        yield
        return
    usual = cursor.execute("PRAGMA cache_size").fetchone()[0]
    cursor.execute("PRAGMA cache_size = -500000")  # KiB
    yield
    cursor.execute(f"PRAGMA cache_size = {usual}")


def write(model: type[Model], names: Sequence[str], rows: Iterable[tuple[Any, ...]], **same: Any) -> None:
    """Rows of these fields; `same`: fields that are alike in all of them."""
    table, columns = _written(model, (*names, *same))
    rest = tuple(same.values())
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            with cursor.copy(f"COPY {table} ({columns}) FROM STDIN") as copy:
                for row in rows:
                    copy.write_row(row + rest)
        else:
            places = ", ".join(["%s"] * (len(names) + len(same)))
            cursor.executemany(f"INSERT INTO {table} ({columns}) VALUES ({places})", [row + rest for row in rows])  # noqa: S608


def write_found(model: type[Model], names: Sequence[str], found: QuerySet[Any, Any]) -> None:
    """What a query finds, as rows of these fields."""
    table, columns = _written(model, names)
    sql, params = found.query.sql_with_params()
    with connection.cursor() as cursor:
        cursor.execute(f"INSERT INTO {table} ({columns}) {sql}", params)


def moment(at: datetime) -> Any:
    return connection.ops.adapt_datetimefield_value(at)


def _written(model: type[Model], names: Sequence[str]) -> tuple[str, str]:
    quoted = connection.ops.quote_name
    column_of = {field.name: str(field.column) for field in model._meta.concrete_fields}
    return quoted(model._meta.db_table), ", ".join(quoted(column_of[name]) for name in names)
