"""A full disk: how it is told from other failures, and what is answered when a save meets it."""

import errno
import logging
import shutil
import sqlite3
from collections.abc import Callable

from django.conf import settings
from django.http import HttpRequest, HttpResponse
from django.shortcuts import render
from django.utils.translation import gettext_lazy as _

from accounts.kept_text import KeptText, is_secret
from accounts.views.sign_in import FORM_TYPES

logger = logging.getLogger(__name__)

NO_ROOM = {errno.ENOSPC, getattr(errno, "EDQUOT", errno.ENOSPC)}
# Where less is free, SQLite may not even get its small files beside the database, and calls that an I/O error.
NOTHING_FREE = 1024 * 1024
POSTGRESQL_DISK_FULL = "53100"  # PostgreSQL's documentation, appendix A
SENTENCE = _(
    "Not saved: the server's disk is full. Leave this page open until there is room again, then save once more."
)


def free_room() -> int:
    return shutil.disk_usage(settings.DATA_DIR).free


def is_disk_full(error: BaseException | None) -> bool:
    """Whether this error, or one that led to it, is that of a full disk, as the system or either database says it."""
    seen: set[int] = set()
    while error is not None and id(error) not in seen:
        seen.add(id(error))
        if isinstance(error, OSError) and error.errno in NO_ROOM:
            return True
        if getattr(error, "sqlstate", None) == POSTGRESQL_DISK_FULL:
            return True
        kind = (getattr(error, "sqlite_errorcode", None) or 0) & 0xFF
        if kind == sqlite3.SQLITE_FULL:
            return True
        if kind in (sqlite3.SQLITE_IOERR, sqlite3.SQLITE_CANTOPEN) and free_room() < NOTHING_FREE:
            return True
        error = error.__cause__ or error.__context__
    return False


class FullDiskMiddleware:
    """Answers a view that met a full disk."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponse]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponse:
        return self.get_response(request)

    def process_exception(self, request: HttpRequest, error: Exception) -> HttpResponse | None:
        return answer(request) if is_disk_full(error) else None


def answer(request: HttpRequest) -> HttpResponse:
    """507, with the fields of the form to be sent again; for scripts one sentence."""
    logger.error("The disk is full: %s %s was not saved.", request.method, request.path, extra={"request": request})
    if hasattr(request, "session"):
        request.session.modified = False  # there is no room for it either
    if is_for_a_script(request):
        return HttpResponse(SENTENCE, status=507, content_type="text/plain; charset=utf-8")
    try:
        kept = what_may_be_sent_again(request)
    except OSError:  # the upload itself found no room
        kept = None
    context = {"kept": kept, "address": request.get_full_path(), "saving": request.method != "GET"}
    return render(request, "507.html", context, status=507)


def is_for_a_script(request: HttpRequest) -> bool:
    """Whether a script of ours asks, which shows a sentence and no page."""
    if request.headers.get("HX-Request") == "true":
        return True
    return request.method not in ("GET", "HEAD") and request.content_type not in FORM_TYPES


def what_may_be_sent_again(request: HttpRequest) -> KeptText | None:
    """Nothing of a form with a passphrase or a file in it: without them it would not be the same form."""
    secrets = [name for name in request.POST if is_secret(name) and name != "csrfmiddlewaretoken"]
    return None if request.method != "POST" or secrets or request.FILES else KeptText.from_post(request)
