"""However deep a server calls the app, its small calls ask the system for no memory."""

import sys
from threading import Thread

import pytest

from config.room_for_calls import with_room

CALLS = 500
DEPTHS = range(300)  # of calls before the small ones: a piece of 16 KB ends somewhere among them


def small(one: object, two: object, three: object) -> object:
    return three


def pages_asked_for(environ: dict[str, object], start_response: object) -> list[bytes]:
    """How many pages of memory this thread was given while small calls were made, at the depth where that was most."""
    resource = pytest.importorskip("resource")

    def asked() -> int:
        return int(resource.getrusage(resource.RUSAGE_THREAD).ru_minflt)

    def at(depth: int) -> int:
        if depth:
            return at(depth - 1)
        before = asked()
        for number in range(CALLS):
            small(number, number, number)
        return asked() - before

    return [b"%d" % max(map(at, DEPTHS))]


def in_a_thread_of_its_own(application) -> int:
    found: list[bytes] = []
    thread = Thread(target=lambda: found.extend(application({}, None)))
    thread.start()
    thread.join()
    return int(found[0])


@pytest.mark.skipif(sys.platform != "linux", reason="Only Linux counts them for a thread.")
def test_no_small_call_asks_for_memory():
    assert in_a_thread_of_its_own(with_room(pages_asked_for)) < CALLS / 10


def test_the_answer_is_the_applications_own():
    def application(environ, start_response):
        start_response("200 OK", [])
        return [environ["PATH_INFO"].encode()]

    said = []
    assert with_room(application)({"PATH_INFO": "/bank/"}, lambda *words: said.append(words)) == [b"/bank/"]
    assert said == [("200 OK", [])]
