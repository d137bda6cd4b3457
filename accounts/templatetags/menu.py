"""{% main_menu %}: the menu in the head of every page, which stands there twice; the same for all who see the same part of it."""

from functools import lru_cache
from typing import Any

from django import template
from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.translation import get_language

register = template.Library()

MENUS_REMEMBERED = 50  # seven parts of the app, for administrators and for others, in each language


@register.simple_tag(takes_context=True)
def main_menu(context: dict[str, Any]) -> SafeString:
    return drawn_menu(context.get("section", ""), context["request"].user.is_administrator, get_language())


@lru_cache(maxsize=MENUS_REMEMBERED)
def drawn_menu(section: str, is_administrator: bool, language: str | None) -> SafeString:
    return render_to_string("_menu.html", {"section": section, "is_administrator": is_administrator})
