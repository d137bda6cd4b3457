"""The gate for every text that a request brings: its fields, the names of its files, its cookies and its headers.

What counts as text, and how the rest is mended, is settled in `accounts.text`. Fields and file names are mended and
go on. Headers are written by browsers, not by people: one that cannot be read is answered with a page that says so.
A cookie that is no text is nobody's, so it is left out. An address with more fields than are taken is answered here,
where it is read first; a form with more of them in `accounts.too_much`.
"""

import codecs
import re
from collections.abc import Callable, Iterable
from contextlib import suppress
from typing import TYPE_CHECKING, Any

from django.conf import settings
from django.core.exceptions import TooManyFieldsSent
from django.http import HttpRequest, HttpResponse, QueryDict
from django.http.request import UnreadablePostError
from django.shortcuts import render
from django.utils.http import parse_header_parameters
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.text import is_text, mended

if TYPE_CHECKING:
    from wsgiref.types import StartResponse, WSGIApplication

    from django.http.request import _ImmutableQueryDict as SentFields

UNREADABLE = "countfold.unreadable_content_type"
_CONTROL = re.compile(r"[\x00-\x08\x0a-\x1f\x7f]")

OTHER_LETTERS = _("It was sent in a way of writing letters that Countfold does not read. Countfold reads UTF-8.")
BROKEN_HEADER = _("A line that your browser sends along with it holds signs that belong to no text.")


def disarm_content_type(application: "WSGIApplication") -> "WSGIApplication":
    """Wrap a WSGI application: Django reads the Content-Type before any middleware could answer for it, and gives up
    on one that names an unknown charset inside a parameter. It is taken away here, and answered by the middleware."""

    def disarmed(environ: dict[str, Any], start_response: "StartResponse") -> Iterable[bytes]:
        try:
            _type, parameters = parse_header_parameters(environ.get("CONTENT_TYPE", ""))
            with suppress(LookupError):
                codecs.lookup(parameters.get("charset", "utf-8"))
        except ValueError:
            environ["CONTENT_TYPE"] = ""
            environ[UNREADABLE] = True
        return application(environ, start_response)

    return disarmed


class TextMiddleware:
    """Stands before whatever reads a field or a cookie."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        if any(_CONTROL.search(value) for name, value in request.META.items() if is_sent(name, value)):
            return not_understood(request, str(BROKEN_HEADER), status=400)
        if not is_utf8(request):
            return not_understood(request, str(OTHER_LETTERS), status=415)
        try:
            request.encoding = "utf-8"  # Django reads the query to decode it anew, so this is where it gives up
            request.GET = mended_fields(request.GET)
        except TooManyFieldsSent:
            request.GET = QueryDict(encoding="utf-8")  # whoever answers reads it too
            most = settings.DATA_UPLOAD_MAX_NUMBER_FIELDS
            why = gettext("This address holds more than %(most)s fields, the most that is taken at once.") % {
                "most": f"{most:,}"
            }
            return not_understood(request, why, status=414)
        request.COOKIES = {name: value for name, value in request.COOKIES.items() if is_text(name + value)}
        return self.get_response(request)

    def process_view(self, request: HttpRequest, view: object, args: object, kwargs: object) -> None:
        """Only here is the form read: a page that is not there, or leads to set-up first, reads none."""
        with suppress(UnreadablePostError):  # the sender is gone, so nobody waits for an answer
            request.POST = mended_fields(request.POST)
            mend_files(request)


def is_sent(name: str, value: object) -> bool:
    return isinstance(value, str) and (name.startswith("HTTP_") or name in ("CONTENT_TYPE", "QUERY_STRING"))


def is_utf8(request: HttpRequest) -> bool:
    """Whether the request says that it is written in UTF-8, or in ASCII, which is part of it, or says nothing."""
    if request.META.get(UNREADABLE):
        return False
    try:
        return codecs.lookup((request.content_params or {}).get("charset", "utf-8")).name in ("utf-8", "ascii")
    except LookupError:
        return False


def not_understood(request: HttpRequest, why: str, *, status: int) -> HttpResponse:
    return render(request, "not_understood.html", {"why": why}, status=status)


def mended_fields(fields: "SentFields") -> "SentFields":
    """The same fields in the same order, names and texts mended."""
    if all(is_text(name) and all(map(is_text, texts)) for name, texts in fields.lists()):
        return fields
    found = QueryDict(mutable=True, encoding="utf-8")
    for name, texts in fields.lists():
        for text in texts:
            found.appendlist(mended(name), mended(text))
    return QueryDict(found.urlencode(), encoding="utf-8")  # closed again to changes, as Django hands them out


def mend_files(request: HttpRequest) -> None:
    for field, files in list(request.FILES.lists()):
        for file in files:
            file.name = mended(file.name or "")
        if not is_text(field):
            del request.FILES[field]
            request.FILES.setlist(mended(field), files)
