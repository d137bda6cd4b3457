"""Holding one job while it is made: nobody else makes it meanwhile, and what is lost is no longer written to."""

import time
import uuid
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from django.db import transaction
from django.utils import timezone
from django.utils.translation import gettext as _

from routines.models import Job, JobFile
from routines.models.job import ATTEMPTS, LEASE

PROGRESS_EVERY = 0.5  # seconds; each progress is a write that the disk must confirm
FILE_LIMIT = 32 * 1024 * 1024


class Lost(Exception):
    """The job was dropped, or another process has taken it over: stop, and write nothing."""


class Refused(Exception):
    """It cannot be done; `str()` is a sentence for its owner."""


class Claim:
    """The right to make one job. Every write asks whether the job is still ours, in the database, at that moment."""

    def __init__(self, job: Job, key: uuid.UUID) -> None:
        self.job = job
        self.key = key
        self._told_at = 0.0

    @classmethod
    def take(cls, kind: Job.Kind) -> "Claim | None":
        """The next job of this kind, or None. One that was begun too often is ended with a sentence instead."""
        waiting = Job.objects.filter(kind=kind).to_be_taken()
        while waiting.exists():  # read only: an idle server takes no lock
            with transaction.atomic():
                job = waiting.select_for_update(skip_locked=True).first()
                if job is None:
                    return None
                if job.attempts < ATTEMPTS:
                    key = uuid.uuid4()
                    job.state, job.claim, job.claimed_until = job.State.RUNNING, key, timezone.now() + LEASE
                    job.attempts += 1
                    job.save(update_fields=["state", "claim", "claimed_until", "attempts"])
                    return cls(job, key)
                job.state, job.ended_at = job.State.FAILED, timezone.now()
                job.said = _("The server stopped %(times)s times while it was at this. Try it with less at a time.") % {
                    "times": ATTEMPTS
                }
                job.save(update_fields=["state", "ended_at", "said"])
        return None

    def renew(self) -> None:
        """Say that it goes on. Raises Lost."""
        self._write(claimed_until=timezone.now() + LEASE)

    def progress(self, done: int) -> None:
        """Say how far it is, at most twice a second. Raises Lost."""
        if time.monotonic() - self._told_at >= PROGRESS_EVERY:
            self._told_at = time.monotonic()
            self._write(done=done, claimed_until=timezone.now() + LEASE)
        self.job.done = done

    def begin_part(self, part: str, total: int) -> None:
        """Say which part of its work it is at ("" where there is one only), and how much there is in it. Raises Lost."""
        self.job.payload, self.job.total, self.job.done = {**self.job.payload, "part": part}, total, 0
        self._told_at = time.monotonic()
        self._write(payload=self.job.payload, total=total, done=0, claimed_until=timezone.now() + LEASE)

    @contextmanager
    def held(self) -> Iterator[Job]:
        """A transaction in which the job is ours to the end, for writes that must happen once. Raises Lost."""
        with transaction.atomic():
            job = Job.objects.claimed(self.key).select_for_update().first()
            if job is None:
                raise Lost
            yield job

    def finish(self, *, said: str = "", content: bytes | None = None) -> None:
        """Done, with a file where there is one. Raises Lost, and Refused for a file that is too large to keep."""
        if content is not None and len(content) > FILE_LIMIT:
            raise Refused(
                _("This is larger than the %(most)s MB that are kept. Make two of it, with less in each.")
                % {"most": FILE_LIMIT // 1024 // 1024}
            )
        with self.held() as job:
            if content is not None:
                JobFile.objects.create(job=job, content=content)
            self._write(state=Job.State.DONE, done=self.job.done, said=said, ended_at=timezone.now())

    def fail(self, said: str) -> None:
        """Ended with a sentence for its owner. Raises Lost."""
        self._write(state=Job.State.FAILED, said=said, ended_at=timezone.now())

    def hand_back(self) -> None:
        """Let another process begin at once, as if this one never had. Raises Lost."""
        self._write(state=Job.State.WAITING, claim=None, claimed_until=None, attempts=self.job.attempts - 1)

    def _write(self, **values: Any) -> None:
        if not Job.objects.claimed(self.key).update(**values):
            raise Lost
