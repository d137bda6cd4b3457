"""The two words of the button between paper and slate, for js/theme.js: `{{ words|json_script:"theme-words" }}`."""

from django import template
from django.utils.translation import gettext as _

register = template.Library()


@register.simple_tag
def theme_words() -> dict[str, str]:
    return {"slate": _("Slate instead of paper"), "paper": _("Paper instead of slate")}
