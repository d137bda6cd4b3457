"""What colleagues do for each other, on pages of rooms that know nothing of it: {% load team %}."""

from datetime import date
from functools import lru_cache
from typing import Any, NamedTuple

from django import template
from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.timezone import localdate
from django.utils.translation import get_language

from grade_bands.models import SchoolYear
from routines.models import Suggestion
from routines.team.suggesting import waiting_for

register = template.Library()

SHOWN_ELSEWHERE = 5
LINES_REMEMBERED = 200  # of about 1 KB each


@register.inclusion_tag("team/_suggestions_waiting.html", takes_context=True)
def suggestions_waiting(context: dict[str, Any], year: SchoolYear | None = None) -> dict[str, object]:
    """{% suggestions_waiting this_year %}: what was suggested to the reader and waits for an answer, the newest of it."""
    return {"waiting": waiting_for(context["request"].user, SHOWN_ELSEWHERE, year)}


class SuggestedLine(NamedTuple):
    """All that stands in the line of a suggestion. routine: None where its reader may not open it."""

    routine: int | None
    title: str
    who: str
    day: date
    until: date | None
    why: str
    language: str | None


@register.filter
def suggested_line(one: Suggestion) -> SafeString:
    """{{ suggestion|suggested_line }}: what was suggested, by whom, until when and why."""
    routine = one.routine_id if one.routine_open else None
    day = localdate(one.made_at)
    return drawn_line(SuggestedLine(routine, one.title, one.by.display_name, day, one.by_when, one.why, get_language()))


@lru_cache(maxsize=LINES_REMEMBERED)
def drawn_line(line: SuggestedLine) -> SafeString:
    """Lines in which the same stands are the same to the letter, whoever reads them."""
    return render_to_string("team/_suggested_line.html", {"line": line})
