"""What a request of ours holds beside what Django says: what the middleware puts there, and who is signed in."""

from datetime import datetime
from typing import TypeGuard

from django.http import HttpRequest
from django_htmx.middleware import HtmxDetails

from .models import School, User


class Request(HttpRequest):
    """Any request behind the middleware. `school` is None only on the page of set-up.

    A type for reading: at run time a request is Django's own, with these attributes put on it.
    """

    htmx: HtmxDetails
    school: School | None
    # Whom the names typed at sign-in mean, by what was typed: see throttling.py, which puts it there.
    tries_meant: dict[str, str]
    # When it came, and which words were taken out of it, as they stood there: see routines/words_erased/late_words.py.
    asked_at: datetime
    words_removed: list[str]


class SchoolRequest(Request):
    """At any address but that of set-up: there is a school."""

    school: School


class SignedInRequest(SchoolRequest):
    """What every view gets that is not marked `login_not_required`: somebody of this school sent it."""

    user: User


LOOPBACK = ("localhost", "127.0.0.1", "::1")


def names_this_machine(request: HttpRequest) -> bool:
    """Whether the address it was asked for means, on every machine, that machine itself."""
    host = request.get_host()
    name = host[1 : host.index("]")] if host.startswith("[") else host.partition(":")[0]
    return name in LOOPBACK


def is_signed_in(request: HttpRequest) -> TypeGuard[SignedInRequest]:
    return request.user.is_authenticated
