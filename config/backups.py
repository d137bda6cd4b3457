"""Backups of the SQLite database, and putting one back.

A backup is one zip file: the database, copied by SQLite's own online backup while the school goes on working, and
`about.json` with what made it and two checksums. The plain one finds a damaged file. The keyed one, made with a key
drawn from this server's secret key, finds a file that someone changed or that another server made.
On PostgreSQL use pg_dump; DEVELOPERS.md says how.
"""

import hashlib
import hmac
import json
import shutil
import sqlite3
import tempfile
import time
import uuid
import zipfile
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

from django.conf import settings
from django.contrib.sessions.models import Session
from django.core.management import call_command
from django.db import connection
from django.db.migrations.loader import MigrationLoader
from django.utils.crypto import salted_hmac

from accounts.models import School

KEEP = 14
OLD_AFTER_HOURS = 20
FORMAT = 1
DATABASE, ABOUT = "countfold.sqlite3", "about.json"


class BackupRefused(ValueError):
    """A backup file that is not put back; the message says why and what to do."""


def on_this_database() -> bool:
    return connection.vendor == "sqlite"


def folder() -> Path:
    path = settings.DATA_DIR / "backups"
    path.mkdir(mode=0o700, parents=True, exist_ok=True)
    return path


def kept_backups() -> list[Path]:
    """Newest first; the names sort by time."""
    return sorted(folder().glob("countfold-*.zip"), reverse=True)


def newest_is_old() -> bool:
    newest = next(iter(kept_backups()), None)
    return newest is None or time.time() - newest.stat().st_mtime > OLD_AFTER_HOURS * 3600


def server_mark() -> str:
    """Tells this server's backups from another's, without giving the key away."""
    return salted_hmac("config.backups.mark", "server", algorithm="sha256").hexdigest()[:16]


def keyed_checksum(plain: str, about: dict) -> str:
    """Over the database's own checksum and everything else `about` says, so that neither can be changed alone."""
    said = json.dumps({**about, "plain": plain}, sort_keys=True)
    return salted_hmac("config.backups", said, algorithm="sha256").hexdigest()


def file_checksum(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def write_backup() -> Path:
    """Write one into the data folder's `backups`, keep the newest KEEP, and hand back its path."""
    made_at = datetime.now(UTC)
    target = folder() / f"countfold-{made_at:%Y-%m-%d-%H%M%S-%f}.zip"
    with tempfile.TemporaryDirectory(dir=folder()) as workplace:
        copy = Path(workplace) / DATABASE
        connection.ensure_connection()
        with closing(sqlite3.connect(copy)) as destination:
            connection.connection.backup(destination)
            destination.execute("PRAGMA journal_mode=DELETE")  # one file, without a write-ahead log beside it
        about = {
            "format": FORMAT,
            "made_at": made_at.isoformat(timespec="seconds"),
            "server": server_mark(),
            "migrations": sorted(f"{app}.{name}" for app, name in MigrationLoader(connection).applied_migrations),
        }
        plain = file_checksum(copy)
        about = {**about, "plain": plain, "keyed": keyed_checksum(plain, about)}
        unfinished = Path(workplace) / "unfinished.zip"
        with zipfile.ZipFile(unfinished, "w", zipfile.ZIP_DEFLATED) as archive:
            archive.write(copy, DATABASE)
            archive.writestr(ABOUT, json.dumps(about, indent=1))
        unfinished.chmod(0o600)
        unfinished.replace(target)  # a crash leaves no half-written backup under a backup's name
    for surplus in kept_backups()[KEEP:]:
        surplus.unlink()
    return target


def open_backup(path: Path, workplace: Path, *, from_another_server: bool = False) -> Path:
    """Unpack the database of a backup into `workplace` and prove it sound.

    Raises: BackupRefused for a file that is broken, changed, another server's, or newer than this program.
    """
    copy = workplace / DATABASE
    try:
        with zipfile.ZipFile(path) as archive:
            about = json.loads(archive.read(ABOUT))
            with archive.open(DATABASE) as packed, copy.open("wb") as unpacked:
                shutil.copyfileobj(packed, unpacked)
        plain, keyed = about.pop("plain"), about.pop("keyed")
        migrations, mark, made_with = set(about["migrations"]), about["server"], about["format"]
    except (
        zipfile.BadZipFile,
        zipfile.LargeZipFile,
        KeyError,
        ValueError,
        TypeError,
        AttributeError,
        EOFError,
    ) as error:
        raise BackupRefused(f"{path.name} is no backup of Countfold, or is damaged. Try an older one.") from error
    if made_with != FORMAT or migrations - known_migrations():
        raise BackupRefused(f"{path.name} was made by a newer Countfold. Upgrade this one first, then restore.")
    if not hmac.compare_digest(plain, file_checksum(copy)):
        raise BackupRefused(f"{path.name} is damaged: its checksum does not fit. Try an older one.")
    if mark != server_mark():
        if not from_another_server:
            raise BackupRefused(
                f"{path.name} was made by another server. If you know where it comes from, add --from-another-server."
            )
    elif not hmac.compare_digest(keyed, keyed_checksum(plain, about)):
        raise BackupRefused(f"{path.name} was changed after it was made. Try an older one.")
    with closing(sqlite3.connect(copy)) as database:
        try:
            sound = database.execute("PRAGMA integrity_check").fetchone() == ("ok",)
            sound = sound and not database.execute("PRAGMA foreign_key_check").fetchall()
        except sqlite3.DatabaseError:
            sound = False
    if not sound:
        raise BackupRefused(f"{path.name} holds a damaged database. Try an older one.")
    return copy


def known_migrations() -> set[str]:
    return {f"{app}.{name}" for app, name in MigrationLoader(None).disk_migrations}


def restore(path: Path, *, from_another_server: bool = False) -> Path | None:
    """Put a backup back, in one step as seen by whoever is reading, after keeping what is there now.

    Everyone signs in again, and open boards send what they still hold. Hands back the backup of what was there
    before, or None where there was nothing.
    """
    with tempfile.TemporaryDirectory(dir=folder()) as workplace:
        copy = open_backup(path, Path(workplace), from_another_server=from_another_server)
        before = write_backup() if MigrationLoader(connection).applied_migrations else None
        connection.ensure_connection()
        with closing(sqlite3.connect(copy)) as source:
            source.backup(connection.connection)
    connection.close()
    call_command("migrate", verbosity=0, interactive=False)
    School.objects.update(epoch=uuid.uuid4())
    Session.objects.all().delete()
    return before
