"""Making what was asked for: one thread for each kind in every server process, so that no booklet keeps an import waiting."""

import atexit
import logging
import os
import threading
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from django.db import DatabaseError, close_old_connections, connection

from routines.jobs.claim import Claim, Lost, Refused
from routines.jobs.queue import bell
from routines.models import Job

if TYPE_CHECKING:
    from wsgiref.types import StartResponse, WSGIApplication

logger = logging.getLogger(__name__)

LOOK_EVERY = 2.0  # seconds; for what other processes were asked for, or left unfinished
RENEW_EVERY = 5.0  # a twelfth of the lease: a slow disk or a long lock loses nothing


@dataclass(frozen=True, slots=True)
class Work:
    """How one kind of job is made: `make` does it, `give_up` ends it early from another thread."""

    make: Callable[[Claim], None]
    give_up: Callable[[], None]
    failed: str


works: dict[Job.Kind, Work] = {}
"""Who makes which kind of job. The rooms are above this one, so `routines/apps.py` enters them when the app is ready."""


def do_next(kind: Job.Kind, stopping: threading.Event | None = None) -> bool:
    """Make the next job of this kind, here and now; False where there is none."""
    claim = Claim.take(kind)
    if claim is None:
        return False
    work = works[kind]
    ended = threading.Event()
    beat = threading.Thread(target=_keep, args=(claim, work, ended, stopping or threading.Event()), daemon=True)
    beat.start()
    try:
        _make(claim, work)
    finally:
        ended.set()
        beat.join()
    return True


def _make(claim: Claim, work: Work) -> None:
    try:
        try:
            work.make(claim)
        except Refused as refused:
            claim.fail(str(refused))
        except (Lost, DatabaseError):
            raise
        except Exception:  # the thread has nobody else to tell
            logger.exception("A job could not be done: %s", claim.job.kind)
            claim.fail(work.failed)
    except Lost:
        pass
    except DatabaseError:  # nothing can be written now; when the lease has run out somebody tries again
        logger.exception("A job was left unfinished: %s", claim.job.kind)


def _keep(claim: Claim, work: Work, ended: threading.Event, stopping: threading.Event) -> None:
    """Renew the lease while the work goes on; end the work when it is no longer ours, or when the process closes."""
    waited = 0.0
    try:
        while not ended.wait(0.5):
            waited += 0.5
            if stopping.is_set():
                claim.hand_back()
                raise Lost
            if waited >= RENEW_EVERY:
                waited = 0.0
                _renew(claim)
    except (Lost, DatabaseError):
        work.give_up()
    finally:
        connection.close()


def _renew(claim: Claim) -> None:
    try:
        claim.renew()
    except DatabaseError:
        logger.exception("A lease could not be renewed")


class Runner:
    """The threads of this process."""

    def __init__(self) -> None:
        self.stopping = threading.Event()
        self.threads: list[threading.Thread] = []
        self.failing: set[Job.Kind] = set()

    def start(self) -> None:
        self.stopping.clear()
        self.threads = [
            threading.Thread(target=self._go_on, args=(kind,), daemon=True, name=f"jobs: {kind}") for kind in Job.Kind
        ]
        for thread in self.threads:
            thread.start()

    def stop(self) -> None:
        """Hand back what is being made, and wait for the threads to see it."""
        self.stopping.set()
        bell.ring()
        for thread in self.threads:
            thread.join(timeout=5)

    def _go_on(self, kind: Job.Kind) -> None:
        while not self.stopping.is_set():
            try:
                close_old_connections()
                heard = bell.rung
                made = do_next(kind, self.stopping)
                if not made:
                    Job.objects.filter(kind=kind).remove_outdated()
                self._looked(kind)
                if not made:
                    bell.wait(heard, LOOK_EVERY)
            except Exception:
                self._looked_in_vain(kind)
                self.stopping.wait(LOOK_EVERY)
        connection.close()

    def _looked(self, kind: Job.Kind) -> None:
        if kind in self.failing:
            self.failing.discard(kind)
            logger.warning("Looking for jobs goes on: %s", kind)

    def _looked_in_vain(self, kind: Job.Kind) -> None:
        """Told once, however long it lasts: a database that is away for a night would fill the disk with this."""
        if kind not in self.failing:
            self.failing.add(kind)
            logger.exception("Looking for jobs failed, and is tried again: %s", kind)


runner = Runner()
started_in: int | None = None  # the process: threads don't survive a fork, so a forked server starts its own
starting = threading.Lock()


def start() -> None:
    """Called by whatever serves the app, or by `manage.py run_jobs`; never by a page or a test. Again changes nothing."""
    global started_in
    with starting:
        if started_in == os.getpid():
            return
        started_in = os.getpid()
        runner.start()
        atexit.register(runner.stop)


def with_jobs(application: "WSGIApplication") -> "WSGIApplication":
    """Wrap a WSGI application: whatever serves it makes what was asked for, from its first request on."""

    def serving(environ: dict[str, Any], start_response: "StartResponse") -> Iterable[bytes]:
        if started_in != os.getpid():
            start()
        return application(environ, start_response)

    return serving
