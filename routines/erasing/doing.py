"""One erasure from its entry in the list to its end: the database at once, then what lies beside it, as a job.

Whatever ends early is gone on with from the list: everything here may be done again.
"""

import time
from collections.abc import Callable, Sequence
from dataclasses import replace

from django.conf import settings
from django.db import connection
from django.utils.module_loading import import_string

from accounts.models import User
from routines.erasing.taking_out import TakenOut, take_out
from routines.jobs.claim import Claim, Refused
from routines.jobs.queue import ask
from routines.models import Job
from routines.paper.booklet_jobs import drop_all_booklets
from routines.words_erased import list_of_erasures
from routines.words_erased.list_of_erasures import Erasure, ListDamaged
from routines.words_erased.matching import mark_of

LONGEST_WAIT = 20.0


def begin(words: str, *, by: User, places: Sequence[str], whose: int | None) -> Erasure:
    """Write it down, and take the words out of the database. Raises: ListDamaged, and then nothing was changed."""
    length, mark = mark_of(words)
    entry = list_of_erasures.add(
        Erasure(length, mark, tuple(places), whose, by.pk, begun_at=list_of_erasures.now_said())
    )
    taken = take_out([entry])
    drop_all_booklets()
    remember(taken)
    return entry


def remember(taken: TakenOut, *, count: bool = True) -> None:
    """Write down which events became stubs, and which plans changed."""
    if not (taken.texts or taken.events or taken.plans):
        return
    list_of_erasures.change(
        lambda entries: [
            replace(
                list_of_erasures.remember(
                    entry, events=taken.events.get(entry.id, ()), plans=taken.plans.get(entry.id, ())
                ),
                taken_out=entry.taken_out + (taken.texts if count and not entry.finished_at else 0),
            )
            for entry in entries
        ]
    )


def unfinished() -> list[Erasure]:
    return [entry for entry in list_of_erasures.read() if not entry.finished_at]


def ask_to_finish(by: User) -> Job:
    """Raises: QueueFull."""
    return ask(Job.Kind.ERASING, owner=by, title="Removing words", total=1)


def finish(on_each: Callable[[int, int], None] = lambda done, total: None, *, again: bool = False) -> list[str]:
    """Whatever is begun is brought to its end: rows, pages of the database's file, backups.

    again: take out also what was finished before, as after a database was put back by other means than ours.

    Names the backups that could not be rewritten. Raises: ListDamaged, StillRead.
    """
    entries = unfinished()
    if not (entries or again):
        return []
    # What is finished stays as it is: who wrote such a word again since then means it.
    taken = take_out(list_of_erasures.read() if again else entries)
    drop_all_booklets()
    remember(taken)
    rewrite_pages()
    rewritten, failed = 0, []
    if connection.vendor == "sqlite":
        rewritten, failed, in_backups = import_string(settings.ERASE_IN_BACKUPS)(list_of_erasures.read(), on_each)
        remember(in_backups, count=False)
        rewrite_pages()
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
                raise StillRead("Somebody was reading the whole time.")
            time.sleep(0.1)


def make_erasing(claim: Claim) -> None:
    """The job. Raises: Lost, Refused."""

    def on_each(done: int, total: int) -> None:
        if claim.job.total != total:
            claim.job.total = total
            Job.objects.claimed(claim.key).update(total=total)
        claim.progress(done)

    try:
        failed = finish(on_each)
    except (ListDamaged, StillRead) as error:
        raise Refused(f"{error} The words are out of the pages; the files are not done. Go on later.") from error
    claim.finish(said=f"Could not be rewritten: {', '.join(failed)}." if failed else "Everything is done.")
