"""{% opened %}: when the page of a form was asked for. See routines/words_erased/late_words.py."""

from typing import Any

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString

from routines.words_erased.late_words import OPENED

register = template.Library()


@register.simple_tag(takes_context=True)
def opened(context: dict[str, Any]) -> SafeString:
    # Told to forget it, a browser does not put an old moment back into a page it loads again.
    moment = context["request"].asked_at.isoformat(timespec="milliseconds")
    return format_html('<input type="hidden" name="{}" value="{}" autocomplete="off">', OPENED, moment)
