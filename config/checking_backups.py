"""Whether the newest backup opens, found out by opening it: what restoring would look at, and what stands in it."""

import sqlite3
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime

from django.db.models import Model

from accounts.models import User
from routines.models import Lesson, Routine

from .backups import kept_backups, when_written, workplace
from .opening_backups import open_backup

COUNTED: tuple[type[Model], ...] = (User, Routine, Lesson)


@dataclass(frozen=True, slots=True)
class Opened:
    written_at: datetime
    people: int
    counts: int
    lessons: int


def open_newest() -> Opened | None:
    """None where there is none yet. Raises BackupRefused, and OSError where the disk has no room to unpack it."""
    newest = next(iter(kept_backups()), None)
    if newest is None:
        return None
    with workplace() as place:
        copy = open_backup(newest, place)
        with closing(sqlite3.connect(copy)) as database:
            people, counts, lessons = (rows_in(database, model) for model in COUNTED)
    return Opened(written_at=when_written(newest), people=people, counts=counts, lessons=lessons)


def rows_in(database: sqlite3.Connection, model: type[Model]) -> int:
    (number,) = database.execute(f"SELECT count(*) FROM {model._meta.db_table}").fetchone()  # noqa: S608 - our own name
    return int(number)
