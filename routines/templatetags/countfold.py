"""Drawings and typesetting for templates: {% load countfold %}."""

from collections.abc import Collection, Mapping, Sequence
from functools import lru_cache
from typing import Any

from django import template
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import gettext as _

from accounts.models import User
from routines import drawing
from routines.counting import Count, Grid
from routines.drawing import pictures
from routines.drawing.typesetting import typeset
from routines.words import SpokenIdea, SpokenPattern

register = template.Library()

register.filter(typeset)


@register.filter
def times_taught(times: int, user: User) -> str:
    """{{ routine.times_taught|times_taught:request.user }}: how often a count was taught this year, as far as she is told.

    Where she is told of none, the words are true whether or not a class elsewhere had it.
    """
    if times:
        often = {1: _("taught once this year"), 2: _("taught twice this year")}
        return often.get(times) or _("taught {times} times this year").format(times=times)
    if user.is_coach:
        return _("not taught this year")
    return _("taught in fewer than two classes") if user.is_administrator else _("not taught in your grade this year")


def _svg(drawn: str) -> SafeString:
    """The drawing escapes every word that it writes (routines/drawing/svg.py), so its output is safe as it is."""
    return mark_safe(drawn)  # noqa: S308


@register.filter
def drawn(picture: str) -> SafeString:
    """{{ says.picture|drawn }}: a drawing that was kept."""
    return _svg(picture)


@register.simple_tag
def grid(
    grid: Grid,
    size: str = "card",
    lit: Sequence[SpokenPattern] = (),
    landmarks: Collection[int] = (),
    overlays: Sequence[tuple[str, SpokenPattern]] = (),
    **options: Any,
) -> SafeString:
    """{% grid grid size="plan" lit=lit landmarks=landmarks overlays=overlays title=title interactive=True %}"""
    return _svg(
        drawing.draw_grid(grid, size=size, lit=lit or (), landmarks=landmarks or (), overlays=overlays or (), **options)
    )


@register.simple_tag
def grid_with(shown: Grid, options: Mapping[str, Any], size: str = "card", title: str = "") -> SafeString:
    """{% grid_with grid options title=title %}: a grid drawn as somebody else's options say."""
    return grid(shown, size=size, title=str(title), **options)


@register.simple_tag
def strip(grid: Grid, landmarks: Collection[int] = (), **options: Any) -> SafeString:
    """{% strip grid landmarks=landmarks %}: the count unfolded, creased where the grid folds."""
    return _svg(drawing.draw_strip(grid, landmarks=landmarks or (), **options))


@register.simple_tag
def picture(count: Count, name: str = "", narrow: bool = False, **options: Any) -> SafeString:
    """{% picture count "line" first=13 language="es" %}: a dozen terms as one of drawing.pictures; narrow=True for a phone."""
    width = pictures.NARROW if narrow else pictures.WIDE
    return _svg(pictures.draw_picture(count, kind=name, width=width, **options))


@register.simple_tag
def timeline(ideas: Sequence[SpokenIdea], stops: Sequence[int], count: Count, **options: Any) -> SafeString:
    """{% timeline ideas stops count %}: when each idea can be seen and when it dies, with the stops (term numbers)."""
    return _svg(drawing.draw_timeline(ideas, stops, count.terms, count=count, **options))


@register.simple_tag
@lru_cache(maxsize=8)  # there are three, and a list of patterns draws one in each row
def sign(holds: str) -> SafeString:
    """{% sign pattern.holds %}: the small solid (always) or dashed (shown) sign, or "flag"."""
    return _svg(drawing.draw_sign(holds))


@register.simple_tag
def letter(place: int, on_paper: bool = False) -> SafeString:
    """{% letter forloop.counter0 %}: the sign of a phrase, as it stands in the cells that it is pinned to."""
    return _svg(drawing.draw_letter(place, on_paper=on_paper))


@register.simple_tag
def folded_glyph(amount: str, on_paper: bool = False) -> SafeString:
    """{% folded_glyph "none"|"few"|"good" %}: the small grid in a cell of the coverage."""
    return _svg(drawing.draw_folded_glyph(amount, on_paper=on_paper))


@register.simple_tag
def said_mark(said: str, title: str = "", on_paper: bool = False) -> SafeString:
    """{% said_mark "seen"|"not-yet"|"not-recorded" %}: what was said of target patterns, before its number."""
    return _svg(drawing.draw_said_mark(said, title=str(title), on_paper=on_paper))


@register.simple_tag
def week_bars(lessons: Sequence[int], **options: Any) -> SafeString:
    """{% week_bars lessons_by_week %}: one bar a week."""
    return _svg(drawing.draw_week_bars(lessons, **options))
