"""Asking the app as several people, byte by byte as it was meant, and noting what must not happen."""

import logging
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from http.cookies import SimpleCookie
from typing import Any

from django.db import transaction
from django.http import HttpResponse
from django.test import Client

from accounts.models import User
from routines.lessons.passes import COOKIE
from routines.models import Lesson, LessonPass
from tests.fuzz.effort import TooMuchWork, bounded_work
from tests.fuzz.found import view_of

FORM = "application/x-www-form-urlencoded"
MEGABYTE = 1024 * 1024
GROWTH_AT_MOST = 300 * MEGABYTE


class Undone(Exception):
    """Ends a savepoint without keeping what was done in it."""


@contextmanager
def undone() -> Iterator[None]:
    """Whatever is asked in here leaves nothing behind."""
    try:
        with transaction.atomic():
            yield
            raise Undone
    except Undone:
        pass


def pass_to(lesson: Lesson, role: str) -> str:
    """The cookie of a device in the classroom that is paired to this lesson."""
    held, secret = LessonPass.objects.wait(address="127.0.0.1")
    held.tie(lesson=lesson, role=role, by=lesson.teacher)
    return f"{COOKIE}={secret}"


class Asker:
    """`faults` lists each fault once: what was asked, and where it broke."""

    def __init__(self, people: dict[str, User | None]) -> None:
        self.cookies: dict[str, str] = {}
        self.faults: dict[tuple[str, str], str] = {}
        self.endless: dict[str, int] = {}  # how often each view made too much work: twice is proof enough
        self.most_work = (0, "")
        self.asked = 0
        self.browser = Client(SERVER_NAME="localhost", raise_request_exception=False)
        for role, person in people.items():
            client = Client(SERVER_NAME="localhost")
            if person is not None:
                client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
            self.cookies[role] = client.cookies.output(header="", sep=";")

    def ask(
        self,
        role: str,
        method: str,
        address: str,
        body: bytes = b"",
        kind: str = FORM,
        *,
        said: str = "",
        live: bool = False,
    ) -> HttpResponse | None:
        """None where the request broke. `said` tells in a fault what was odd; `live` asks as htmx does."""
        self.browser.cookies = SimpleCookie(self.cookies[role])
        self.asked += 1
        path, _, query = address.partition("?")
        headers: dict[str, Any] = {"HTTP_HX_REQUEST": "true"} if live else {}
        asked = f"{method.upper()} {view_of(path) or path} as {role} {said}".strip()
        if self.endless.get(view_of(path), 0) > 1:
            return None
        try:
            with transaction.atomic(), bounded_work() as made:
                answer = self.browser.generic(
                    method.upper(), path.partition("#")[0], body, kind, QUERY_STRING=query.partition("#")[0], **headers
                )
                b"".join(answer)  # what is made while it is sent is work as well
        except (TooMuchWork, MemoryError) as fault:
            self.endless[view_of(path)] = self.endless.get(view_of(path), 0) + 1
            self._note(asked, f"{type(fault).__name__}: {fault}")
            return None
        except Exception as fault:
            self._note(asked, place_of(sys.exc_info(), fault))
            return None
        self.most_work = max(self.most_work, (made[-1], asked[:160]))
        if answer.status_code >= 500 and answer.status_code != 503:
            self._note(asked, place_of(answer.exc_info, None) if getattr(answer, "exc_info", None) else "no reason")
        return answer

    def _note(self, asked: str, fault: str) -> None:
        self.faults.setdefault((asked.split(" as ")[0], fault.partition(" | ")[0]), f"{asked[:300]} -> {fault}")

    def report(self) -> str:
        return "\n".join(sorted(self.faults.values()))


def place_of(information: Any, fault: BaseException | None) -> str:
    """The kind of fault and the last line of ours that it went through."""
    kind, value, trace = information
    place = ""
    while trace is not None:
        file = trace.tb_frame.f_code.co_filename
        if "site-packages" not in file and "/lib/python" not in file and "/tests/" not in file:
            place = f"{file.rpartition('/')[2]}:{trace.tb_lineno}"
        trace = trace.tb_next
    return f"{kind.__name__} at {place} | {str(value)[:160]!r}"


@contextmanager
def without_log() -> Iterator[None]:
    logging.disable(logging.CRITICAL)
    try:
        yield
    finally:
        logging.disable(logging.NOTSET)


@contextmanager
def bounded_memory(asker: Asker) -> Iterator[None]:
    """No growth of more than GROWTH_AT_MOST, and a request that asks for gigabytes breaks before the machine does."""
    try:
        import resource
    except ImportError:  # Windows has no such bound
        yield
        return
    unit = 1 if sys.platform == "darwin" else 1024
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * unit
    soft, hard = resource.getrlimit(resource.RLIMIT_AS)
    if sys.platform == "linux":
        with open("/proc/self/statm", encoding="ascii") as file:
            in_use = int(file.read().split()[0]) * resource.getpagesize()
        resource.setrlimit(resource.RLIMIT_AS, (in_use + 5 * GROWTH_AT_MOST, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_AS, (soft, hard))
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * unit - before
    assert grown <= GROWTH_AT_MOST, f"It grew by {grown // MEGABYTE} MB.\n{asker.report()}"
