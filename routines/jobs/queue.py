"""Asking for work: within bounds, and heard at once by this process."""

import threading
import uuid
from typing import Any

from django.db import transaction
from django.utils.translation import gettext_lazy as _

from accounts.models import School, User
from routines.models import Job

WAITING_AT_MOST = 40  # of each kind in the school; a person has one of each kind


class Bell:
    """Rung in this process when there is something to do; other processes look by themselves. No ring is lost."""

    def __init__(self) -> None:
        self._changed = threading.Condition()
        self.rung = 0

    def ring(self) -> None:
        with self._changed:
            self.rung += 1
            self._changed.notify_all()

    def wait(self, heard: int, seconds: float) -> None:
        """Until it is rung once more than `heard` times, or so long."""
        with self._changed:
            self._changed.wait_for(lambda: self.rung > heard, seconds)


bell = Bell()


FULL = {
    Job.Kind.BOOKLET: _("%(most)s booklets are waiting already. Try again in a few minutes."),
    Job.Kind.IMPORT: _("%(most)s imports are waiting already. Try again in a few minutes."),
    Job.Kind.LOOKING: _("%(most)s looks are waiting already. Try again in a few minutes."),
    Job.Kind.OWN_WORDS: _("%(most)s people wait for their words already. Try again in a few minutes."),
    Job.Kind.ERASING: _("%(most)s removals are waiting already. Try again in a few minutes."),
}


class QueueFull(Exception):
    """Too much is waiting already; `str()` is a sentence for who asked."""


@transaction.atomic
def ask(
    kind: Job.Kind,
    *,
    owner: User,
    title: str,
    total: int,
    payload: dict[str, Any] | None = None,
    key: uuid.UUID | None = None,
) -> Job:
    """Put it at the end of the queue, in the place of whatever this person asked for before of the same kind.

    Raises QueueFull.
    """
    School.objects.select_for_update().first()  # one at a time: so the bounds are kept to the letter
    Job.objects.of(owner).filter(kind=kind).delete()
    if Job.objects.unfinished().filter(kind=kind).count() >= WAITING_AT_MOST:
        raise QueueFull(str(FULL[kind]) % {"most": WAITING_AT_MOST})
    job = Job.objects.create(
        key=key or uuid.uuid4(), kind=kind, owner=owner, title=title[:120], total=total, payload=payload or {}
    )
    transaction.on_commit(bell.ring)
    return job


def drop_files_of_words() -> None:
    """Remove every booklet and every file of somebody's words, ready or not: after words were erased, none may hold them.

    One that is being made is not kept.
    """
    Job.objects.holding_words().delete()
