"""Addresses that browsers ask for by themselves, what is answered to a fault, and the page of the backups."""

import sys
from datetime import datetime
from pathlib import Path
from typing import NamedTuple

from django.contrib import messages
from django.contrib.auth.decorators import login_not_required
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.templatetags.static import static
from django.utils.translation import gettext as _
from django.utils.translation import ngettext
from django.views.decorators.cache import cache_control
from django.views.decorators.http import require_http_methods, require_safe
from django.views.defaults import server_error as django_server_error

from accounts.access import administrators_only
from accounts.requests import SignedInRequest
from accounts.templatetags.dates import moment

from . import backups, database_away, full_disk
from .checking_backups import Opened, open_newest
from .opening_backups import BackupRefused


@login_not_required
@cache_control(public=True, max_age=86400)
@require_safe
def favicon(request: HttpRequest) -> HttpResponse:
    """What a browser asks for beside a file that cannot name an icon of its own: a PDF, a table, a JSON document."""
    return redirect(static("img/icon.svg"))


def server_error(request: HttpRequest) -> HttpResponse:
    """What Django calls for every 500: also for what fails outside of the views, as keeping the session or an upload."""
    error = sys.exc_info()[1]
    if full_disk.is_disk_full(error):
        return full_disk.answer(request)
    return database_away.answer(request) if database_away.is_away(error) else django_server_error(request)


@administrators_only
@require_http_methods(["GET", "POST"])
def kept_backups(request: SignedInRequest) -> HttpResponse:
    """Which backups there are; a press opens the newest one, as restoring would."""
    kept_here = backups.on_this_database()
    if request.method == "POST" and kept_here:
        try_the_newest(request)
        return redirect("backups")
    context: dict[str, object] = {"section": "school", "kept_here": kept_here, "most": backups.KEEP}
    if kept_here:
        context |= files_of_backups()
    return render(request, "config/backups.html", context)


class File(NamedTuple):
    name: str
    written_at: datetime
    size: int


def files_of_backups() -> dict[str, object]:
    """Where they lie, and each; where the folder can't be used the head of the page says so."""
    try:
        kept = [path for path in backups.kept_backups() if path.exists()]
    except OSError:
        return {"folder_fails": True}
    files = [File(path.name, backups.when_written(path), path.stat().st_size) for path in kept]
    return {"folder": backups.folder(), "restore": putting_back(kept[0]) if kept else "", "kept": files}


def putting_back(path: Path) -> str:
    """As it is typed on this system."""
    python = "py" if sys.platform == "win32" else "python3"
    return " ".join([python, "run.py", "restore", f'"{path}"' if " " in str(path) else str(path)])


def try_the_newest(request: SignedInRequest) -> None:
    try:
        opened = open_newest()
    except BackupRefused as refused:
        messages.error(request, _("The newest backup can't be put back. %(why)s") % {"why": refused})
    except OSError as error:
        if full_disk.is_disk_full(error):
            messages.error(request, _("The disk has no room to open the newest backup. Make some, then try again."))
        else:
            messages.error(
                request, _("The newest backup can't be put back. %(why)s") % {"why": backups.why(error) + "."}
            )
    else:
        if opened is None:
            messages.error(request, _("There is no backup yet."))
        else:
            messages.success(request, said_of(opened, request))


def said_of(opened: Opened, request: SignedInRequest) -> str:
    found = (
        ngettext("%(number)s person", "%(number)s people", opened.people) % {"number": opened.people},
        ngettext("%(number)s count", "%(number)s counts", opened.counts) % {"number": opened.counts},
        ngettext("%(number)s lesson", "%(number)s lessons", opened.lessons) % {"number": opened.lessons},
    )
    said = {
        "moment": moment(opened.written_at, request.school),
        "people": found[0],
        "counts": found[1],
        "lessons": found[2],
    }
    return _("The backup of %(moment)s opened: %(people)s, %(counts)s, %(lessons)s.") % said
