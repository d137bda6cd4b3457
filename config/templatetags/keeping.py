"""How safe the data are, for the administrators' pages: only where something is to be done about it."""

from typing import Any

from django import template
from django.conf import settings

from .. import backups
from ..full_disk import free_room
from ..opening_backups import MEGABYTE

register = template.Library()

# Enough for some weeks of a school's work; a backup of a large school takes about as much.
LITTLE_ROOM = 200 * MEGABYTE


@register.inclusion_tag("config/_keeping.html", takes_context=True)
def keeping_notice(context: dict[str, Any]) -> dict[str, object]:
    request = context.get("request")
    if settings.DEMO or not request or not getattr(request.user, "is_administrator", False):
        return {}
    free = free_room()
    return {
        "request": request,
        "little_room": f"{free // MEGABYTE} MB" if free < LITTLE_ROOM else "",
        "backup": backups.newest_and_failure() if backups.on_this_database() else None,
    }


@register.simple_tag
def newest_backup() -> dict[str, object]:
    """{% newest_backup as backup %}: `at` is when the newest was written, None before the first; `kept_here`: by this app."""
    if not backups.on_this_database():
        return {"kept_here": False}
    return {"kept_here": True, "at": backups.newest_and_failure().newest_at}
