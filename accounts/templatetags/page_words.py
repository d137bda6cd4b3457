"""The words of the scripts that every page has (js/theme.js, js/text_limits.js): `{{ words|json_script:"page-words" }}`."""

from django import template
from django.utils.translation import gettext as _

register = template.Library()


@register.simple_tag
def page_words() -> dict[str, str]:
    return {
        "slate": _("Slate instead of paper"),
        "paper": _("Paper instead of slate"),
        "too-long": _("Shorten this by {over}: {most} characters are the most."),
        "room-left": _("{left} of {most} characters left."),
    }
