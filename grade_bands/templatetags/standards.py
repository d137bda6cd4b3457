"""The notice that stands wherever codes of standards are listed."""

from django import template
from django.utils.html import format_html
from django.utils.translation import gettext as _

from ..standards import COMMON_CORE, COMMON_CORE_NOTICE

register = template.Library()


@register.simple_tag
def standards_notice() -> str:
    return format_html(
        '<p class="small quiet">{}: {} {}</p>', COMMON_CORE, COMMON_CORE_NOTICE, _("Summaries are in our own words.")
    )
