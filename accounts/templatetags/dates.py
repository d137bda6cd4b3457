"""How a day is written, on every screen and print alike: {% load dates %}, {{ lesson.taught_on|day }}."""

from datetime import date, datetime

from django import template
from django.utils.timezone import is_aware, localtime
from django.utils.translation import get_language

from accounts.days_written import written_in
from accounts.models import School

register = template.Library()


@register.filter
def day(value: date | None, language: str = "") -> str:
    """ "November 29, 2026", in the language of the page unless another is given; nothing where there is no day."""
    return written_in(language or get_language()).day(_here(value)) if value else ""


@register.filter
def full_day(value: date | None) -> str:
    """ "Thursday, November 5, 2026": a day that is planned or remembered by its weekday."""
    return written_in(get_language()).full_day(_here(value)) if value else ""


@register.filter
def weekday(value: date | None) -> str:
    """ "Sunday"."""
    return written_in(get_language()).weekday(_here(value)) if value else ""


@register.filter
def moment(value: datetime | None, school: School | None = None) -> str:
    """ "November 29, 2026, 2:05 PM": a day with its time as the school's clocks show it."""
    return f"{day(value)}, {time_of_day(value, school)}" if value else ""


@register.filter
def time_of_day(value: datetime | None, school: School | None = None) -> str:
    """ "2:05 PM", or "14:05" where the school counts the hours to 24."""
    if not value:
        return ""
    here = localtime(value) if is_aware(value) else value
    to_24 = school is not None and school.clock == 24
    return written_in(get_language()).time(here, to_24=to_24).replace("\u202f", "\u00a0").replace(" ", "\u00a0")


def _here(value: date) -> date:
    return localtime(value) if isinstance(value, datetime) and is_aware(value) else value
