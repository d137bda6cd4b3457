"""Where a count crosses a ten, a hundred, a whole or a larger unit: the counts at which a class slows down."""

from fractions import Fraction
from typing import NamedTuple

from .count import Count
from .slips.places import Place, places_of_a_count

ROUND_WHICH_IT_IS_WRITTEN = ("whole", "unit")
# Of the jumps: what nearly all of them cross marks no place in the count.
SELDOM, NOT_NEARLY_ALWAYS = Fraction(1, 2), Fraction(3, 4)


class Crossed(NamedTuple):
    """A place that is crossed, and the counts in view that are the first on its other side."""

    place: Place
    terms: tuple[int, ...]


def crossed(count: Count) -> Crossed | None:
    """Give the place whose crossings stand out in a count: its whole or larger unit, else the smallest ten above a jump.

    None where nothing is crossed, as in a count by tens below a hundred, or nearly every jump crosses.

    >>> found = crossed(Count.parse(kind="whole", start="4", step="7", terms=20))
    >>> found.place.name, found.terms
    ('hundred', (15,))
    """
    ready = places_of_a_count(count)
    named = [place for place in ready.places.above if place.name in ROUND_WHICH_IT_IS_WRITTEN]
    least = max([abs(count.step), *(place.size for place in named if place.size > abs(count.step))], default=0)
    at: dict[Place, list[int]] = {}
    for n in range(2, count.terms + 1):
        for place in ready.crossing(count.scaled(n - 1), count.scaled(n)).crossed:
            if place.size >= least and place.size > abs(count.step):
                at.setdefault(place, []).append(n)
    standing_out = [place for place, terms in at.items() if _stands_out(place, len(terms), count.terms - 1)]
    if not standing_out:
        return None
    smallest = min(standing_out, key=lambda one: one.size)
    return Crossed(smallest, tuple(at[smallest]))


def _stands_out(place: Place, crossings: int, jumps: int) -> bool:
    return crossings <= (NOT_NEARLY_ALWAYS if place.name in ROUND_WHICH_IT_IS_WRITTEN else SELDOM) * jumps
