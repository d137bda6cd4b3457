"""One erasure from its entry in the list to its end: the database, the pages of its file, every backup; as a job.

Whatever ends early is gone on with from the list: everything here may be done again.
"""

import time
from collections.abc import Sequence
from dataclasses import replace
from typing import Protocol

from django.conf import settings
from django.db import connection, models
from django.utils.module_loading import import_string
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from routines.erasing.taking_out import TakenOut, rows_to_read, take_out, whose_texts
from routines.jobs.claim import Claim, Refused
from routines.jobs.queue import ask, drop_files_of_words
from routines.models import Job
from routines.words_erased import list_of_erasures
from routines.words_erased.list_of_erasures import Erasure, ListDamaged

LONGEST_WAIT = 20.0
# Between two parts of the rows: in a server's process a page that somebody waits for gets its turn.
PAUSE = 0.005


class Part(models.TextChoices):
    """What a job of erasing is at."""

    TEXTS = "texts", _("Going through what is written")
    AGAIN = "again", _("Going through it once more, for what was saved meanwhile")
    FILE = "file", _("Writing the database’s file anew")
    BACKUPS = "backups", _("Writing the backups anew")


class Told(Protocol):
    """Who is told how far it is; a `Claim` is one. What it raises stops the work."""

    def begin_part(self, part: str, total: int) -> None: ...
    def progress(self, done: int) -> None: ...


class Nobody:
    def begin_part(self, part: str, total: int) -> None: ...
    def progress(self, done: int) -> None: ...


def begin(length: int, mark: str, *, by: User, places: Sequence[str], whose: int | None) -> Erasure:
    """Write it down: from now on nothing that is sent brings these words back, and `finish` takes them out.

    Raises: ListDamaged, and then nothing was changed.
    """
    entry = list_of_erasures.add(
        Erasure(length, mark, tuple(places), whose, by.pk, begun_at=list_of_erasures.now_said())
    )
    drop_files_of_words()
    return entry


def remember(taken: TakenOut, *, count: bool = True) -> None:
    """Write down which events became stubs, and which plans changed."""
    if not taken:
        return
    list_of_erasures.change(
        lambda entries: [
            replace(
                list_of_erasures.remember(
                    entry, events=taken.events.get(entry.id, ()), plans=taken.plans.get(entry.id, ())
                ),
                taken_out=entry.taken_out + (taken.texts_of.get(entry.id, 0) if count and not entry.finished_at else 0),
            )
            for entry in entries
        ]
    )


def unfinished() -> list[Erasure]:
    return [entry for entry in list_of_erasures.read() if not entry.finished_at]


def ask_to_finish(by: User) -> Job:
    """Raises: QueueFull."""
    return ask(Job.Kind.ERASING, owner=by, title="", total=0)


def finish(told: Told | None = None, *, again: bool = False) -> list[str]:
    """Whatever is begun is brought to its end: rows, pages of the database's file, backups.

    again: take out also what was finished before, as after a database was put back by other means than ours.

    Names the backups that could not be rewritten. Raises: ListDamaged, StillRead, and whatever `told` raises.
    """
    told = told or Nobody()
    entries = unfinished()
    if not (entries or again):
        return []
    # What is finished stays as it is: who wrote such a word again since then means it.
    meant = list_of_erasures.read() if again else entries
    for part in (Part.TEXTS, Part.AGAIN):
        _go_through(part, meant, told)
    drop_files_of_words()
    told.begin_part(Part.FILE, 0)
    rewrite_pages()
    rewritten = 0
    failed: list[str] = []
    if connection.vendor == "sqlite":
        rewritten, failed = _rewrite_backups(told)
    list_of_erasures.update(
        [entry.id for entry in entries],
        lambda entry: replace(
            entry,
            finished_at=list_of_erasures.now_said(),
            backups=rewritten,
            not_rewritten=tuple(failed),
        ),
    )
    return failed


def _go_through(part: Part, erasures: Sequence[Erasure], told: Told) -> None:
    told.begin_part(part, rows_to_read(whose=whose_texts(erasures)))
    done = 0

    def on_rows(rows: int) -> None:
        nonlocal done
        done += rows
        told.progress(done)
        time.sleep(PAUSE)

    take_out(erasures, on_rows=on_rows, remember=remember)


def _rewrite_backups(told: Told) -> tuple[int, list[str]]:
    begun_of = 0

    def on_each(done: int, total: int) -> None:
        nonlocal begun_of
        if total != begun_of:
            begun_of = total
            told.begin_part(Part.BACKUPS, total)
        told.progress(done)

    rewritten, failed, in_backups = import_string(settings.ERASE_IN_BACKUPS)(list_of_erasures.read(), on_each)
    remember(in_backups, count=False)
    rewrite_pages()
    return rewritten, failed


class StillRead(Exception):
    """Somebody went on reading an old state of the database, so that it is still on the disk."""


def rewrite_pages() -> None:
    """Nothing that was deleted stays in the file: SQLite writes it anew, then empties the log beside it.

    Source: sqlite.org/lang_vacuum.html, sqlite.org/pragma.html#pragma_wal_checkpoint. PostgreSQL keeps old rows until
    VACUUM has gone through, which gives their room away to be written over.
    """
    with connection.cursor() as cursor:
        cursor.execute("VACUUM")
        if connection.vendor != "sqlite":
            return
        until = time.monotonic() + LONGEST_WAIT
        while cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0]:
            if time.monotonic() > until:
                raise StillRead(gettext("Somebody was reading the whole time."))
            time.sleep(0.1)


def make_erasing(claim: Claim) -> None:
    """The job. Raises: Lost, Refused."""
    try:
        failed = finish(claim)
    except ListDamaged as error:
        raise Refused(gettext("%(error)s Nothing more was removed.") % {"error": error}) from error
    except StillRead as error:
        raise Refused(
            gettext("%(error)s The words are out of the pages; old files may still hold them.") % {"error": error}
        ) from error
    claim.finish(said=gettext("Could not be rewritten: %(names)s.") % {"names": ", ".join(failed)} if failed else "")
