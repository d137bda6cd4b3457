"""Opening a backup file: what is unpacked is bounded, what is read is checked, and what is wrong is said in a sentence."""

import errno
import hashlib
import hmac
import json
import re
import shutil
import sqlite3
import zipfile
from contextlib import closing
from pathlib import Path
from typing import TypedDict

from django.db.migrations.loader import MigrationLoader
from django.utils.crypto import salted_hmac

FORMAT = 1
DATABASE, ABOUT = "countfold.sqlite3", "about.json"

MEGABYTE = 1024 * 1024
MOST_ABOUT = MEGABYTE
# A database that packs better than this is no database; below the size it may be as empty as it likes.
MOST_UNPACKED_TO_PACKED, ALWAYS_UNPACKED = 500, 100 * MEGABYTE
# Bits of a zip member's flags that mean it is encrypted, patched, or hides its names (APPNOTE 4.4.4).
LOCKED = 0x1 | 0x20 | 0x40 | 0x2000


class About(TypedDict):
    """What a backup says about itself. made_at: ISO 8601; migrations: "app.name"."""

    format: int
    made_at: str
    server: str
    migrations: list[str]


class SealedAbout(About):
    """The same with the checksum of the database, plain and keyed: what stands in the file."""

    plain: str
    keyed: str


SAID = SealedAbout.__required_keys__


class BackupRefused(ValueError):
    """A backup file that is not put back; the message says why and what to do."""


def server_mark() -> str:
    """Tells this server's backups from another's, without giving the key away."""
    return salted_hmac("config.backups.mark", "server", algorithm="sha256").hexdigest()[:16]


def keyed_checksum(plain: str, about: About) -> str:
    """Over the database's own checksum and everything else `about` says, so that neither can be changed alone."""
    said = json.dumps({**about, "plain": plain}, sort_keys=True)
    return salted_hmac("config.backups", said, algorithm="sha256").hexdigest()


def file_checksum(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def known_migrations() -> set[str]:
    return {f"{app}.{name}" for app, name in MigrationLoader(None).disk_migrations}


def open_backup(path: Path, workplace: Path, *, from_another_server: bool = False) -> Path:
    """Unpack the database of a backup into `workplace` and prove it sound.

    Raises: BackupRefused for a file that is broken, changed, another server's, or newer than this program.
    """
    copy = workplace / DATABASE
    sealed = unpack(path, copy)
    plain, keyed = sealed["plain"], sealed["keyed"]
    about = About(
        format=sealed["format"],
        made_at=sealed["made_at"],
        server=sealed["server"],
        migrations=sealed["migrations"],
    )
    if about["format"] != FORMAT or set(about["migrations"]) - known_migrations():
        raise BackupRefused(f"{path.name} was made by a newer Countfold. Upgrade this one first, then restore.")
    if not hmac.compare_digest(plain, file_checksum(copy)):
        raise BackupRefused(f"{path.name} is damaged: its checksum does not fit. Try an older one.")
    if about["server"] != server_mark():
        if not from_another_server:
            raise BackupRefused(
                f"{path.name} was made by another server. If you know where it comes from, add --from-another-server."
            )
    elif not hmac.compare_digest(keyed, keyed_checksum(plain, about)):
        raise BackupRefused(f"{path.name} was changed after it was made. Try an older one.")
    if not is_sound(copy, migrations=set(about["migrations"])):
        raise BackupRefused(f"{path.name} holds a damaged database. Try an older one.")
    return copy


def unpack(path: Path, copy: Path) -> SealedAbout:
    """Write the database inside to `copy`, and hand back what the file says about itself."""
    try:
        with zipfile.ZipFile(path) as archive:
            members = {member.filename: member for member in archive.infolist()}
            if len(archive.infolist()) != 2 or set(members) != {DATABASE, ABOUT}:
                raise ValueError("other members than a backup has")
            refuse_what_is_not_read(path, members, room=shutil.disk_usage(copy.parent).free)
            with archive.open(members[ABOUT]) as packed:
                about = read_about(packed.read(MOST_ABOUT))
            with archive.open(members[DATABASE]) as packed, copy.open("wb") as unpacked:
                shutil.copyfileobj(packed, unpacked)
    except BackupRefused:
        raise
    except OSError as error:
        if error.errno == errno.ENOSPC:
            raise BackupRefused(f"There is no room to unpack {path.name}. Make some, then restore again.") from error
        if error.errno in (errno.EACCES, errno.ENOENT, errno.EISDIR, errno.EIO):
            raise BackupRefused(f"{path.name} can't be read ({error.strerror}).") from error
        raise damaged(path) from error
    except Exception as error:  # a damaged zip file makes its readers raise nearly anything
        raise damaged(path) from error
    return about


def said_by(path: Path) -> SealedAbout:
    """What a backup that was opened before says about itself."""
    with zipfile.ZipFile(path) as archive, archive.open(ABOUT) as packed:
        return read_about(packed.read(MOST_ABOUT))


def damaged(path: Path) -> BackupRefused:
    return BackupRefused(f"{path.name} is no backup of Countfold, or is damaged. Try an older one.")


def refuse_what_is_not_read(path: Path, members: dict[str, zipfile.ZipInfo], *, room: int) -> None:
    """Before anything is unpacked: by what the file claims of itself. Nothing beyond the claim is unpacked later."""
    for member in members.values():
        if member.flag_bits & LOCKED:
            raise BackupRefused(f"{path.name} is locked with a passphrase; a backup of Countfold is not.")
        if member.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
            raise BackupRefused(f"{path.name} is packed in another way than a backup of Countfold, or is damaged.")
    unpacked, packed = members[DATABASE].file_size, members[DATABASE].compress_size
    if members[ABOUT].file_size > MOST_ABOUT or packed > path.stat().st_size:
        raise damaged(path)
    if unpacked > ALWAYS_UNPACKED and unpacked > MOST_UNPACKED_TO_PACKED * packed:
        raise BackupRefused(f"{path.name} would unpack to {unpacked // MEGABYTE} MB, more than a database could.")
    if unpacked > room:
        raise BackupRefused(
            f"{path.name} unpacks to {unpacked // MEGABYTE + 1} MB, and {room // MEGABYTE} MB are free. "
            "Make some room, then restore again."
        )


def read_about(raw: bytes) -> SealedAbout:
    """Raises: ValueError for anything but what a backup says about itself, and what deep nesting makes json raise."""
    about: SealedAbout = json.loads(raw.decode("utf-8"))  # as far as it is one
    if not isinstance(about, dict) or set(about) != SAID:
        raise ValueError("other fields than a backup has")
    if type(about["format"]) is not int or not all(isinstance(about[name], str) for name in ("made_at", "server")):
        raise ValueError("a field of another kind")
    if not isinstance(about["migrations"], list) or not all(isinstance(name, str) for name in about["migrations"]):
        raise ValueError("migrations that are no names")
    if not all(
        isinstance(about[name], str) and re.fullmatch("[0-9a-f]{64}", about[name]) for name in ("plain", "keyed")
    ):
        raise ValueError("a checksum that is none")
    return about


def whole_for_sqlite(database: sqlite3.Connection) -> bool:
    """No page, index or reference of it is damaged."""
    try:
        if database.execute("PRAGMA integrity_check(1)").fetchone() != ("ok",):
            return False
        return database.execute("PRAGMA foreign_key_check").fetchone() is None
    except (sqlite3.DatabaseError, ValueError) as error:
        code = (getattr(error, "sqlite_errorcode", None) or sqlite3.SQLITE_CORRUPT) & 0xFF
        if code not in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB):
            raise
        return False


def is_sound(copy: Path, *, migrations: set[str]) -> bool:
    """Whole for SQLite, without what this program never makes, and with the migrations that the backup names."""
    with closing(sqlite3.connect(copy)) as database:
        try:
            if not whole_for_sqlite(database):
                return False
            if database.execute("SELECT 1 FROM sqlite_master WHERE type IN ('trigger', 'view')").fetchone():
                return False
            applied = {f"{app}.{name}" for app, name in database.execute("SELECT app, name FROM django_migrations")}
        except (sqlite3.Error, ValueError):
            return False
    return applied == migrations
