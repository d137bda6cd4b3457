"""Words of a plan for templates: places, times, sorts of answers. {% load plan_words %}"""

from urllib.parse import urlencode

from django import template
from django.utils.translation import get_language, gettext
from django.utils.translation import gettext_lazy as _

from routines.counting import Grid
from routines.counting.written_units import in_both_units
from routines.models.facts import count_in_words
from routines.models.plan_document import NextCount, Stop
from routines.words import ordinal as ordinal_words

register = template.Library()

SORT_WORDS = {
    "easy": _("easy"),
    "deeper": _("deeper"),
    "not-for-long": _("not for long"),
    "not-so": _("not so"),
    "slip": _("slip"),
    "own": _("my guess"),
}
OUTCOME_WORDS = {
    "not-yet": _("if it was not there yet"),
    "as-planned": _("if it went as planned"),
    "ready-for-more": _("if they are ready for more"),
}


@register.filter
def sort_words(sort: str) -> str:
    return str(SORT_WORDS.get(sort, sort))


@register.filter
def outcome_words(outcome: str) -> str:
    return str(OUTCOME_WORDS.get(outcome, outcome))


@register.simple_tag
def term_in_both(grid: Grid, n: int) -> str:
    """The n-th count as written, and in the larger unit where it fills one: "32 oz (2 lb)"."""
    return in_both_units(grid.count, grid.count.value(n)).replace("-", "\u2212")


@register.simple_tag
def ordinal(n: int, language: str = "") -> str:
    """ "3rd", in the language of the page unless another is given."""
    return ordinal_words(n, "es" if (language or get_language() or "en").startswith("es") else "en")


@register.simple_tag
def stop_times(stop: Stop) -> str:
    """ "think 20 s · partner 1 min · share 90 s"; a time of 0 is left out."""
    named = ((gettext("think"), stop.think), (gettext("partner"), stop.partner), (gettext("share"), stop.share))
    return " · ".join(f"{name} {_time(seconds)}" for name, seconds in named if seconds)


def _time(seconds: int) -> str:
    if seconds % 60 == 0:
        return gettext("{minutes} min").format(minutes=seconds // 60)
    return gettext("{seconds} s").format(seconds=seconds)


@register.simple_tag
def next_count_words(following: NextCount) -> str:
    """The next count in one line, or nothing when the plan gives only a reason."""
    grid = following.grid()
    return f"{count_in_words(grid)}." if grid is not None else ""


@register.simple_tag
def light_query(lit: list[str], key: str) -> str:
    """The query string with one pattern lit or put out; two at most stay lit, the latest ones."""
    keys = [other for other in lit if other != key] if key in lit else [*lit, key][-2:]
    return urlencode({"lit": keys or [""]}, doseq=True)
