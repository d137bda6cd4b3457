"""Will it appear? The answer, its ways through the grid, and the stop it could become."""

import json
from dataclasses import dataclass

from routines.counting import Audience, Grid
from routines.counting.written_units import in_both_units
from routines.plans.forms.marks import in_mark
from routines.words import SpokenLocation, locate

from .sentences import said


@dataclass(frozen=True, slots=True)
class Appearing:
    """Where a value stands, or between which counts it is jumped over; all texts are the count's own writing.

    `told`, `before` and `after` are said in the larger unit too, where they fill one.
    """

    text: str
    told: str
    location: SpokenLocation
    before: str
    after: str
    routes: tuple[str, ...]
    take: str


def look_for(grid: Grid, typed: str, audience: Audience) -> Appearing:
    """Raises CountError on `value` for what is no value of this count's kind."""
    count, language = grid.count, audience.language
    location = locate(grid, in_mark(typed, count.style.decimal_mark, count.kind), audience)
    text = count.text_of(location.value)
    routes = tuple(str(route) for route in location.routes)
    row = {
        "after": grid.terms,
        "question": said("will we", language, value=text),
        "answer": said("yes" if location.appears else "no", language, reason=location.reason),
        "routes": "\n".join(routes),
    }
    return Appearing(
        text=text,
        told=in_both_units(count, location.value),
        location=location,
        before="" if location.before is None else in_both_units(count, location.before),
        after=in_both_units(count, location.after),
        routes=routes,
        take=f"stops.add {json.dumps(row)}",
    )
