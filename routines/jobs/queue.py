"""Asking for work: within bounds, and heard at once by this process."""

import threading
import uuid
from typing import Any

from django.db import transaction

from accounts.models import School
from routines.models import Job

WAITING_AT_MOST = 40  # of each kind in the school; a person has one of each kind

bell = threading.Condition()  # rung in this process when there is something to do; other processes look by themselves


class QueueFull(Exception):
    """Too much is waiting already; `str()` is a sentence for who asked."""


@transaction.atomic
def ask(
    kind: Job.Kind,
    *,
    owner,
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
        raise QueueFull(f"{WAITING_AT_MOST} {kind.label}s are waiting already. Try again in a few minutes.")
    job = Job.objects.create(
        key=key or uuid.uuid4(), kind=kind, owner=owner, title=title[:120], total=total, payload=payload or {}
    )
    transaction.on_commit(ring)
    return job


def ring() -> None:
    with bell:
        bell.notify_all()
