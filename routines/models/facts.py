"""What the engine says of a plan, in the columns by which the bank filters. Computed at save and by `recompute_facts`."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.languages import LANGUAGES as SPOKEN
from routines.counting import ENGINE_VERSION, Audience, Count, Fill, Grid, Kind
from routines.models.plan_document import Plan
from routines.words import SpokenPattern, patterns_to_say

FILLS = {
    Fill.ACROSS: gettext_lazy("across"),
    Fill.DOWN: gettext_lazy("down"),
    Fill.ACROSS_UP: gettext_lazy("across, bottom line first"),
}
"""How a grid is filled, in words."""

LANGUAGES = {**SPOKEN, "both": gettext_lazy("English and Spanish")}
"""The languages of a plan, in words."""

AREA_OF_KIND = {
    Kind.DECIMAL: "decimals",
    Kind.FRACTION: "fractions",
    Kind.LENGTH: "measurement",
    Kind.MASS: "measurement",
    Kind.CAPACITY: "measurement",
    Kind.MONEY: "money",
    Kind.CLOCK: "time",
    Kind.ELAPSED: "time",
}


@dataclass(frozen=True, slots=True)
class Facts:
    """Column values of a Routine, and its patterns, most noticeable first."""

    columns: dict[str, Any]
    patterns: list[SpokenPattern]


def kind_of_area(area: str) -> str:
    """The kind of number that a count for this area has; whole numbers where the area asks for none."""
    return next((kind for kind, of in AREA_OF_KIND.items() if of == area), Kind.WHOLE)


def area_of(count: Count) -> str:
    """The area a count belongs to unless the teacher says otherwise. A count that goes below zero is about integers."""
    if count.kind in AREA_OF_KIND:
        return AREA_OF_KIND[count.kind]
    lowest = min(count.value(1), count.value(count.terms))
    return "integers" if lowest < 0 else "whole"


def count_in_words(grid: Grid) -> str:
    """The count and its fold in one line: "By 6 from 10, across, 5 in a line"."""
    count = grid.count
    said = (
        _("By %(step)s from %(start)s, %(folded)s, %(length)s in a line")
        if count.step > 0
        else _("Back by %(step)s from %(start)s, %(folded)s, %(length)s in a line")
    )
    step = count.difference_text(abs(count.step))
    return said % {"step": step, "start": count.text(1), "folded": FILLS[grid.fill], "length": grid.line_length}


def facts_of(plan: Plan, level: int) -> Facts:
    """Units: numbers are in the kind's base unit, as numerator and denominator. Raises CountError for a plan that is no count."""
    grid = plan.grid()
    count = grid.count
    patterns = patterns_to_say(grid, audience=Audience(level=level))
    largest = max((count.value(1), count.value(count.terms)), key=abs)
    words = [plan.title, plan.story.text, count_in_words(grid), count.kind, plan.area, *plan.standards]
    words += [pattern.statement for pattern in patterns[:12]]
    columns: dict[str, Any] = {
        "kind": count.kind.value,
        "direction": "forward" if count.step > 0 else "backward",
        "terms": count.terms,
        "line_length": grid.line_length,
        "fill": grid.fill,
        **_exact("start", count.start),
        **_exact("step", count.step),
        **_exact("largest", largest),
        "engine_version": ENGINE_VERSION,
        "search_text": "\n".join(words).casefold(),
    }
    return Facts(columns, patterns)


def _exact(name: str, value: Fraction) -> dict[str, int]:
    return {f"{name}_numerator": value.numerator, f"{name}_denominator": value.denominator}
