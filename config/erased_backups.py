"""Taking words out of every backup that this server keeps: each is unpacked, changed, written anew and checked anew."""

import os
import sqlite3
from collections.abc import Callable, Sequence
from pathlib import Path

from django.core.management import call_command
from django.db import DatabaseError

from routines.erasing.taking_out import TakenOut, take_out
from routines.words_erased.list_of_erasures import Erasure

from .backups import (
    applied_migrations,
    folder,
    forget_deleted_pages,
    instead_of_ours,
    kept_backups,
    pack,
    remove_left_workplaces,
    workplace,
)
from .opening_backups import BackupRefused, known_migrations, open_backup, said_by


def erase_in_backups(
    erasures: Sequence[Erasure], on_each: Callable[[int, int], None] = lambda done, total: None
) -> tuple[int, list[str], TakenOut]:
    """How many were rewritten, the names of those that could not be, and what has to be remembered.

    One that is being written meanwhile has its turn at the end. What was set aside as damaged can't be read by anyone,
    so it counts among those that could not be rewritten.
    """
    remove_left_workplaces()
    done: set[Path] = set()
    failed: list[str] = []
    found = TakenOut()
    while todo := [path for path in kept_backups() if path not in done]:
        for path in todo:
            on_each(len(done), len(done) + len(todo))
            done.add(path)
            try:
                found.add(rewrite(path, erasures))
            except FileNotFoundError:  # it was the oldest, and a newer one took its place
                continue
            except (BackupRefused, OSError, DatabaseError, sqlite3.Error):
                failed.append(path.name)
    failed += sorted(path.name for path in folder().glob("damaged-*"))
    return len(done) - len(failed), failed, found


def rewrite(path: Path, erasures: Sequence[Erasure]) -> TakenOut:
    """Raises: BackupRefused for a file that can't be opened here; it stays as it is."""
    before = path.stat()
    with workplace() as place:
        copy = open_backup(path, place)
        about = said_by(path)
        with instead_of_ours(copy):
            if set(about["migrations"]) != known_migrations():
                call_command("migrate", verbosity=0, interactive=False)
            found = take_out(erasures)
            migrations = applied_migrations()
            forget_deleted_pages(copy)
        if not path.exists():
            raise FileNotFoundError(path)
        pack(copy, path, made_at=about["made_at"], migrations=migrations)
    os.utime(path, ns=(before.st_atime_ns, before.st_mtime_ns))  # it is no newer than it was
    return found
