"""What colleagues do for each other, on pages of rooms that know nothing of it: {% load team %}."""

from typing import Any

from django import template

from routines.team.suggesting import waiting_for

register = template.Library()

SHOWN_ELSEWHERE = 5


@register.inclusion_tag("team/_suggestions_waiting.html", takes_context=True)
def suggestions_waiting(context: dict[str, Any]) -> dict[str, object]:
    """{% suggestions_waiting %}: what was suggested to the reader and waits for an answer, the newest of it."""
    return {"waiting": waiting_for(context["request"].user, SHOWN_ELSEWHERE)}
