"""What colleagues do for each other, on pages of rooms that know nothing of it: {% load team %}."""

from datetime import date
from typing import Any, NamedTuple

from django import template
from django.utils.safestring import SafeString
from django.utils.timezone import localdate

from accounts.templatetags.pieces import TOKEN_FIELD, with_token
from accounts.written_once import long, written_once
from grade_bands.models import SchoolYear
from routines.models import Suggestion
from routines.team.planned_week import PlannedCount
from routines.team.suggesting import waiting_for

register = template.Library()

SHOWN_ELSEWHERE = 5


class PlannedLine(NamedTuple):
    """All that stands in the piece of one planned count beside its picture. taught_on: None before it was taught."""

    pk: int
    routine: int
    title: str
    is_open: bool
    class_group: int
    class_name: str
    on: date
    taught_on: date | None
    may_change: bool
    may_teach: bool


@register.simple_tag(takes_context=True)
def planned_count(context: dict[str, Any], count: PlannedCount, with_class: bool = False) -> SafeString:
    """{% planned_count count %}; with_class: its class is said too, and it is only taught and printed from here."""
    planned = count.planned
    line = PlannedLine(
        planned.pk,
        planned.routine_id,
        planned.title,
        planned.routine_open,
        planned.class_group_id,
        planned.class_group.name,
        planned.on,
        count.lesson.taught_on if count.lesson else None,
        count.may_change,
        count.may_teach,
    )
    piece = written_once(
        "team/_planned.html", count=line, picture=count.picture, with_class=with_class, token_field=TOKEN_FIELD
    )
    return with_token(piece, context)


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
    is_past: bool
    why: str


@register.filter
def suggested_line(one: Suggestion) -> SafeString:
    """{{ suggestion|suggested_line }}: what was suggested, by whom, until when and why."""
    routine = one.routine_id if one.routine_open else None
    line = SuggestedLine(
        routine, one.title, one.by.display_name, localdate(one.made_at), one.by_when, one.is_past, one.why
    )
    return written_once("team/_suggested_line.html", line=long(line))
