"""Room for all the calls of one request at once.

CPython keeps what its calls need in pieces of 16 KB, and gives a piece back to the system as soon as nothing stands in it
(Python/pystate.c, push_chunk and _PyThreadState_PopFrame). A page whose small calls begin where a piece happens to end asks the
system for memory at each of them: the live preview took one and a half to three times as long, as deep as the server called it.
A call that says it needs much is given a larger piece, and those below it stand in what is left of that.
"""

from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from wsgiref.types import StartResponse, WSGIApplication

# 125 KB, for which a piece has twice 128. What stands below, some 200 calls deep, takes 30; of memory only what is used.
PLACES = 16_000


def with_room(application: "WSGIApplication") -> "WSGIApplication":
    """Wrap a WSGI application: each request is answered within one piece."""

    def roomy(environ: dict[str, Any], start_response: "StartResponse") -> Iterable[bytes]:
        return application(environ, start_response)

    roomy.__code__ = roomy.__code__.replace(co_stacksize=PLACES)
    return roomy
