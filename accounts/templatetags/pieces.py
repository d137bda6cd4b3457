"""Pieces of pages that are written once, for templates: {% load pieces %}. See accounts/written_once.py."""

from secrets import token_hex
from typing import Any

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString, mark_safe

from ..written_once import written_once

register = template.Library()
register.simple_tag(written_once, name="piece")

# Stands in a remembered piece where the token of each page goes. Drawn anew by each process, so nobody can type it.
TOKEN_FIELD = mark_safe(f"<!-- {token_hex(16)} -->")  # noqa: S308


@register.simple_tag(takes_context=True)
def top_line(context: dict[str, Any]) -> SafeString:
    """{% top_line %}: the head of every page, with the menus; the same on all pages of a part, but for the token of its forms."""
    user, school = getattr(context.get("request"), "user", None), context.get("school")
    if user is None or not user.is_authenticated:
        return written_once("_top_line.html", person="")
    piece = written_once(
        "_top_line.html",
        section=context.get("section", ""),
        school=school.name if school else "",
        person=user.display_name,
        is_administrator=user.is_administrator,
        token_field=TOKEN_FIELD,
    )
    return with_token(piece, context)


def with_token(piece: SafeString, context: dict[str, Any]) -> SafeString:
    """A piece that was given TOKEN_FIELD, with the token of this page."""
    if TOKEN_FIELD not in piece:
        return piece
    field = format_html('<input type="hidden" name="csrfmiddlewaretoken" value="{}">', context["csrf_token"])
    return mark_safe(piece.replace(TOKEN_FIELD, field))  # noqa: S308 - both are safe
