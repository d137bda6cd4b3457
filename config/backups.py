"""Backups of the SQLite database, and putting one back.

A backup is one zip file: the database, copied by SQLite's own online backup while the school goes on working, and
`about.json` with what made it and two checksums. The plain one finds a damaged file. The keyed one, made with a key
drawn from this server's secret key, finds a file that someone changed or that another server made.
On PostgreSQL use pg_dump; DEVELOPERS.md says how.
"""

import errno
import json
import shutil
import sqlite3
import tempfile
import time
import uuid
import zipfile
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from django.apps import apps
from django.conf import settings
from django.contrib.contenttypes.models import ContentType
from django.contrib.sessions.models import Session
from django.core.management import call_command
from django.db import DEFAULT_DB_ALIAS, DatabaseError, connection, connections
from django.db.migrations.exceptions import InconsistentMigrationHistory
from django.db.migrations.loader import MigrationLoader

from accounts.models import School
from routines.erasing.doing import remember
from routines.erasing.taking_out import TakenOut, take_out
from routines.words_erased.list_of_erasures import ListDamaged
from routines.words_erased.list_of_erasures import read as read_erasures

from .filling import fill_again
from .full_disk import free_room, is_disk_full
from .one_at_a_time import nobody_holds, one_at_a_time
from .opening_backups import (
    ABOUT,
    DATABASE,
    FORMAT,
    MEGABYTE,
    About,
    BackupRefused,
    SealedAbout,
    file_checksum,
    keyed_checksum,
    known_migrations,
    open_backup,
    said_by,
    server_mark,
    whole_for_sqlite,
)

KEEP = 14
# Of the rest the last of each day: a machine that starts again all night leaves some of the days before.
NEWEST_OF_ANY_DAY = 7
OLD_AFTER_HOURS = 20
HOUR = 3600
# A write of a school takes milliseconds; one that holds the database for so long will not end by itself.
LONGEST_WAIT = 60
PAGES_AT_A_TIME = 8
IN_USE = "in-use"


def on_this_database() -> bool:
    return connection.vendor == "sqlite"


def folder() -> Path:
    """Raises: OSError where there is none and none can be made."""
    path = settings.DATA_DIR / "backups"
    try:
        path.mkdir(mode=0o700, parents=True, exist_ok=True)
    except FileExistsError:
        raise NotADirectoryError(errno.ENOTDIR, "It must be a folder, and is a file", str(path)) from None
    return path


@contextmanager
def workplace() -> Iterator[Path]:
    """A folder for what is being made, on the disk of the backups; what a killed process left there is known by its lock."""
    with tempfile.TemporaryDirectory(dir=folder()) as name:
        place = Path(name)
        with one_at_a_time(place / IN_USE, when_waiting=lambda: None):
            yield place


def name_of(made_at: datetime) -> str:
    """The names sort by time."""
    return f"countfold-{made_at:%Y-%m-%d-%H%M%S-%f}.zip"


def kept_backups() -> list[Path]:
    """Newest first. What bears a time that is still to come was written before the clock was put right, so it is older
    than whatever is written from now on."""
    now = name_of(datetime.now(UTC))
    return sorted(folder().glob("countfold-*.zip"), key=lambda path: (path.name <= now, path.name), reverse=True)


def surplus(newest_first: list[Path]) -> list[Path]:
    """All but KEEP of them: the newest, of the days before these the last of each, and of what is left the newest again."""
    kept, rest = newest_first[:NEWEST_OF_ANY_DAY], newest_first[NEWEST_OF_ANY_DAY:]
    days = {day_of(path) for path in kept}
    others: list[Path] = []
    for path in rest:
        (others if day_of(path) in days else kept).append(path)
        days.add(day_of(path))
    return [*kept[KEEP:], *others[max(KEEP - len(kept), 0) :]]


def day_of(path: Path) -> str:
    return path.name[: len("countfold-2026-01-01")]


def newest_that_fits() -> Path | None:
    """The newest one that this version can put back, by what the files say of themselves."""
    known = known_migrations()
    for path in kept_backups():
        with suppress(Exception):  # a damaged zip file makes its readers raise nearly anything
            if set(said_by(path)["migrations"]) <= known:
                return path
    return None


def newest_is_old() -> bool:
    try:
        newest = next(iter(kept_backups()), None)
        return newest is None or not 0 <= time.time() - newest.stat().st_mtime <= OLD_AFTER_HOURS * HOUR
    except OSError:
        return True  # whoever then tries to write one hears why it can't be


def of_another_key() -> int:
    """How many were not written with the secret key of this server, as far as they can be read."""
    others = 0
    for path in kept_backups():
        with suppress(Exception):  # what is wrong with a damaged one is said where it is put back
            others += said_by(path)["server"] != server_mark()
    return others


# Writing


class DamagedDatabase(sqlite3.DatabaseError):
    """What SQLite can open and does not find whole."""

    def __str__(self) -> str:
        return "the database is damaged. Put the newest backup back: python3 run.py restore FILE"


def write_backup(*, spare: Path | None = None) -> Path:
    """Write one into the data folder's `backups`, keep KEEP (and `spare`), and hand back its path.

    Raises: DamagedDatabase, and then none is written: it could not be put back, and would push out one that can.
    """
    made_at = datetime.now(UTC)
    target = folder() / name_of(made_at)
    with workplace() as place:
        copy = place / DATABASE
        connection.ensure_connection()
        with closing(sqlite3.connect(copy)) as destination:
            connection.connection.backup(destination)
            destination.execute("PRAGMA journal_mode=DELETE")  # one file, without a write-ahead log beside it
            if not whole_for_sqlite(destination):
                raise DamagedDatabase
        pack(copy, target, made_at=made_at.isoformat(timespec="seconds"), migrations=applied_migrations())
    for path in surplus(kept_backups()):
        if path != target and (spare is None or path.resolve() != spare.resolve()):
            path.unlink()
    return target


def applied_migrations() -> list[str]:
    return sorted(f"{app}.{name}" for app, name in MigrationLoader(connection).applied_migrations)


def pack(copy: Path, target: Path, *, made_at: str, migrations: list[str]) -> None:
    """Make a backup of a database that nobody uses. A crash leaves no half-written one under a backup's name."""
    about = About(format=FORMAT, made_at=made_at, server=server_mark(), migrations=migrations)
    plain = file_checksum(copy)
    sealed = SealedAbout(**about, plain=plain, keyed=keyed_checksum(plain, about))
    unfinished = copy.with_name("unfinished.zip")
    with zipfile.ZipFile(unfinished, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.write(copy, DATABASE)
        archive.writestr(ABOUT, json.dumps(sealed, indent=1))
    unfinished.chmod(0o600)
    unfinished.replace(target)


def try_to_write_backup() -> str:
    """Write one if it can be written, else say why not, here and on the administrators' pages."""
    try:
        remove_left_workplaces()
        write_backup()
        forget_failures()
    except (OSError, DatabaseError, sqlite3.Error) as error:
        full = is_disk_full(error)
        with suppress(OSError):
            forget_failures()
            mark = no_room_mark() if full else other_failure_mark()
            mark.touch()  # it has no content: where nothing else finds room, a name mostly does
        if full:
            return f"The disk is too full for a backup: {free_room() // MEGABYTE} MB are free."
        return f"The backup could not be written: {why(error)}."
    return ""


def why(error: Exception) -> str:
    return f"{error.filename}: {error.strerror}" if isinstance(error, OSError) and error.filename else str(error)


def forget_failures() -> None:
    no_room_mark().unlink(missing_ok=True)
    other_failure_mark().unlink(missing_ok=True)


def no_room_mark() -> Path:
    return folder() / "last-failed-for-want-of-room"


def other_failure_mark() -> Path:
    return folder() / "last-failed"


@dataclass(frozen=True, slots=True)
class Kept:
    """When the newest backup was written, and when the last one failed, if it did. `folder_fails`: none can be."""

    newest_at: datetime | None = None
    failed_at: datetime | None = None
    for_want_of_room: bool = False
    folder_fails: bool = False


def newest_and_failure() -> Kept:
    try:
        newest = next(iter(kept_backups()), None)
        mark = next((mark for mark in (no_room_mark(), other_failure_mark()) if mark.exists()), None)
    except OSError:
        return Kept(folder_fails=True)
    return Kept(
        newest_at=when_written(newest) if newest else None,
        failed_at=when_written(mark) if mark else None,
        for_want_of_room=mark == no_room_mark(),
    )


def when_written(path: Path) -> datetime:
    return datetime.fromtimestamp(path.stat().st_mtime, tz=UTC)


def remove_left_workplaces() -> None:
    """What a killed backup or restore left behind takes room, and holds words that are removed meanwhile."""
    for left in folder().glob("tmp*"):
        if left.is_dir() and (nobody_holds(left / IN_USE) or time.time() - left.stat().st_mtime > HOUR):
            shutil.rmtree(left, ignore_errors=True)


# Putting back


@dataclass(frozen=True, slots=True)
class Restored:
    """What became of what was there before: kept as a backup, set aside because it was damaged, or nothing was there."""

    kept: Path | None = None
    damaged: Path | None = None


def restore(path: Path, *, from_another_server: bool = False) -> Restored:
    """Put a backup back, in one step as seen by whoever is reading, after keeping what is there now.

    Everyone signs in again, and open boards send what they still hold. A running server may go on running: what it
    reads is the old state or the new one, and what it saved is in the backup that is kept.

    Raises: BackupRefused, and then nothing was changed.
    """
    try:
        with workplace() as place:
            copy = open_backup(path, place, from_another_server=from_another_server)
            # All that could still fail comes before the database is touched, and once more changes nothing.
            remember(bring_up_to_date(copy, name=path.name, unknown=from_another_server), count=False)
            fill_again()
            damaged = set_aside_if_damaged()
            try:
                kept = put_in_place(copy, spare=path)
            except Exception:
                if damaged:
                    put_back(damaged)
                raise
    except (OSError, DatabaseError, sqlite3.Error) as error:
        if is_disk_full(error):
            raise BackupRefused("The disk is full. Nothing was changed; make some room, then restore again.") from error
        raise BackupRefused(f"Restoring failed, and nothing was changed: {why(error)}.") from error
    return Restored(kept=kept, damaged=damaged)


def bring_up_to_date(copy: Path, *, name: str, unknown: bool) -> TakenOut:
    """Everything that is to be done to a restored database is done before anyone sees it: words that were removed since
    are taken out again. One that is `unknown`, as no server of ours vouches for it, is read through first."""
    try:
        with instead_of_ours(copy):
            call_command("migrate", verbosity=0, interactive=False)
            if unknown:
                read_every_row()
            erased = take_out(read_erasures())
            School.objects.update(epoch=uuid.uuid4())
            Session.objects.all().delete()
            forget_deleted_pages(copy)
    except (DatabaseError, InconsistentMigrationHistory, ValueError, TypeError) as error:
        if is_disk_full(error):
            raise
        raise BackupRefused(f"{name} can't be brought up to date: {error}. Try an older one.") from error
    except ListDamaged as error:
        raise BackupRefused(str(error)) from error
    return erased


def read_every_row() -> None:
    """Raises: DatabaseError, ValueError or TypeError for a table, a column or a value that is not what pages expect."""
    for model in apps.get_models():
        for _row in model._base_manager.iterator():
            pass


def forget_deleted_pages(copy: Path) -> None:
    """Write the file anew, so that nothing which was deleted stays in it. No write-ahead log is left beside it."""
    connection.close()
    with closing(sqlite3.connect(copy)) as database:
        database.execute("PRAGMA journal_mode=DELETE")
        database.execute("VACUUM")


@contextmanager
def instead_of_ours(path: Path) -> Iterator[None]:
    """Everything that this thread does meanwhile is done to the database at `path`; others go on with ours."""
    ours = connections[DEFAULT_DB_ALIAS]
    other = ours.copy()
    other.settings_dict["NAME"] = path
    connections[DEFAULT_DB_ALIAS] = other
    try:
        yield
    finally:
        other.close()
        connections[DEFAULT_DB_ALIAS] = ours
        ContentType.objects.clear_cache()


def set_aside_if_damaged() -> Path | None:
    """A database that SQLite can't read can't be written over either, nor kept as a backup: keep its files, and begin with
    none."""
    try:
        connection.ensure_connection()
        MigrationLoader(connection)
        if whole_for_sqlite(connection.connection):
            return None
    except DatabaseError as error:
        code = getattr(error.__cause__, "sqlite_errorcode", 0) & 0xFF
        if code not in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB):
            raise
    connection.close()
    aside = folder() / f"damaged-{datetime.now(UTC):%Y-%m-%d-%H%M%S-%f}"
    aside.mkdir(mode=0o700)
    for part in database_files():
        part.replace(aside / part.name)
    return aside


def put_back(aside: Path) -> None:
    connection.close()
    for part in database_files():
        part.unlink()
    for part in aside.iterdir():
        part.replace(settings.DATA_DIR / part.name)
    aside.rmdir()


def database_files() -> list[Path]:
    """The database and what SQLite keeps beside it."""
    database = Path(connection.settings_dict["NAME"])
    return [part for end in ("", "-wal", "-shm") if (part := database.with_name(database.name + end)).exists()]


def put_in_place(copy: Path, *, spare: Path) -> Path | None:
    """Write every page of `copy` over the open database, in one transaction.

    With the first pages SQLite takes the lock on writing. Only then what is there is kept, so that no save which was
    answered is left out of it; readers go on with the old state until the last page is written.
    """
    something_is_there = bool(MigrationLoader(connection).applied_migrations)
    kept = None
    began = time.monotonic()

    def between_pages(status: int, remaining: int, total: int) -> None:
        nonlocal kept
        if status != sqlite3.SQLITE_OK:
            if time.monotonic() - began > LONGEST_WAIT:
                raise BackupRefused("Someone has been writing for a minute. Nothing was changed; restore again later.")
        elif kept is None and something_is_there:
            kept = write_backup(spare=spare)

    place = connection.copy()
    place.ensure_connection()
    try:
        with closing(sqlite3.connect(copy)) as source:
            source.backup(place.connection, pages=PAGES_AT_A_TIME, progress=between_pages, sleep=0.05)
    finally:
        place.close()
        connection.close()
    return kept
