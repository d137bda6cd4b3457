"""{% form_key %}: the hidden key of a form that makes something, new for each page. See accounts/sent_once.py."""

import uuid

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString

from accounts.sent_once import FIELD

register = template.Library()


@register.simple_tag
def form_key() -> SafeString:
    # Told to forget it, a browser does not put an old key back into a page it loads again.
    return format_html('<input type="hidden" name="{}" value="{}" autocomplete="off">', FIELD, uuid.uuid4())
