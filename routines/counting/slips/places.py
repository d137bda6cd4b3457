"""The places a count is written in, and which of them a jump crosses: a ten, a hundred, a whole, a larger unit."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import islice
from math import inf, lcm
from typing import NamedTuple, cast

from ..count import Count
from ..kinds.decimal import DecimalNumber
from ..kinds.measure import Measure
from ..kinds.names import Kind
from ..kinds.numerals import places_needed

# Counted as songs, from one of their own; nobody works out where their tens and hundreds begin.
SONGS, SONG_OF_A_HUNDRED = (2, 5, 10, 20, 25, 50, 100), (25, 50)
QUARTER_HOUR = 15


def light(value: Fraction) -> Fraction:
    """A whole number as an int, which reckons as exactly and many times faster."""
    return cast("Fraction", value.numerator) if value.denominator == 1 else value


class Place(NamedTuple):
    """What the parts below it fill. size: in the base unit. name: ten, hundred, thousand, whole, unit (a larger one), place."""

    size: Fraction
    name: str


class Places(NamedTuple):
    """least: the least a count of this writing goes by, in the base unit. above: what it fills, and what that fills."""

    least: Fraction
    one: Fraction
    above: tuple[Place, ...]


@lru_cache(maxsize=256)
def places_of(count: Count) -> Places:
    """The places of a count, smaller first.

    >>> [place.name for place in places_of(Count.parse(kind="length", start="1 m 5 cm", step="5 cm", terms=4)).above[:3]]
    ['ten', 'unit', 'ten']
    """
    form, one = count.form, Fraction(1)
    if isinstance(form, Measure):
        one = form.small.size
        least = _least(count, one, form.places)
        if form.large is not None:
            return Places(
                least, one, (*_up_to_one(least, one), *_below_a_unit(one, form.large.size), *_tens(form.large.size))
            )
    elif count.kind in (Kind.CLOCK, Kind.ELAPSED):
        return Places(one, one, (Place(Fraction(10), "ten"), Place(Fraction(60), "unit")))
    elif count.kind == Kind.MONEY and len(count.part_names()) == 2:
        dollar = Fraction(10**form.currency.digits)  # type: ignore[attr-defined]
        tens = tuple(Place(Fraction(10**k), "place") for k in range(1, form.currency.digits))  # type: ignore[attr-defined]
        return Places(one, one, (*tens, Place(dollar, "unit"), *_tens(dollar)))
    else:
        least = _least(count, one, form.places_shown if isinstance(form, DecimalNumber) else None)
    return Places(least, one, (*_up_to_one(least, one), *_tens(one)))


def _least(count: Count, one: Fraction, places: int | None) -> Fraction:
    """One in the last decimal place, or one part."""
    if places:
        return one / Fraction(10**places)
    scale = lcm((count.start / one).denominator, (count.step / one).denominator)
    kept = count.style.over if count.kind == Kind.FRACTION and count.style.fractions == "kept" else 1
    return one / lcm(scale, kept)


def _up_to_one(least: Fraction, one: Fraction) -> Iterator[Place]:
    """The decimal places below one, and one itself where it has parts."""
    if least == one:
        return
    places = places_needed((least / one).denominator) or 0
    if least * 10**places == one:
        yield from (Place(least * 10**k, "place") for k in range(1, places))
    yield Place(one, "whole")


def _below_a_unit(one: Fraction, large: Fraction) -> Iterator[Place]:
    """The tens and hundreds of a small unit, where the large one is made of them; and the large one."""
    many = large / one
    for size, name in ((10, "ten"), (100, "hundred")):
        if size < many and many % size == 0:
            yield Place(one * size, name)
    yield Place(large, "unit")


def _tens(one: Fraction) -> Iterator[Place]:
    for size, name in ((10, "ten"), (100, "hundred"), (1000, "thousand"), (10**4, "thousand"), (10**5, "thousand")):
        yield Place(one * size, name)


@dataclass(frozen=True, slots=True)
class Crossing:
    """What a jump does to the places, in sizes without sign; below zero the same, seen from zero.

    crossed: the places whose higher digits have to change, smaller first. landed: the largest place that is filled
    exactly by the count that is due; left: by the count before; both larger than the jump.
    """

    crossed: tuple[Place, ...] = ()
    landed: Place | None = None
    left: Place | None = None

    @property
    def touched(self) -> set[str]:
        """The largest places that are crossed, filled and left, by what is done and by name."""
        if not self.is_hard:
            return set()
        places = {"crossed": self.crossed[-1] if self.crossed else None, "landed": self.landed, "left": self.left}
        return {f"{done} {place.name}" for done, place in places.items() if place}

    @property
    def is_hard(self) -> bool:
        return bool(self.crossed or self.landed or self.left)

    @property
    def largest(self) -> Fraction | int:
        """The size of the largest place that is crossed, filled or left; 0 where none is."""
        largest: Fraction | int = self.crossed[-1].size if self.crossed else 0
        for place in (self.landed, self.left):
            if place and place.size > largest:
                largest = place.size
        return largest


NOTHING = Crossing()


class PlacesOfACount(NamedTuple):
    """The places of a count, and the same as whole numbers, with which to look at many of its jumps.

    times: what a scaled value of the count is multiplied by. fewest: smaller places are sung. start, by: the count's own.
    unit: the size of its whole or larger unit, the hardest place of its parts; infinite where it has none.
    both_sides: whether it has counts above zero and below. by_one_place: whether it goes by one of a place.
    """

    places: Places
    times: int
    step: int
    sizes: tuple[tuple[int, Place], ...]
    fewest: int
    start: Fraction
    by: Fraction
    unit: Fraction | float
    both_sides: bool
    by_one_place: bool

    def crossing(self, before: int, due: int) -> Crossing:
        """What a jump between two scaled values crosses; nothing where it passes zero, or is of a song inside its ten."""
        if before * due < 0:
            return NOTHING
        a, b, s = abs(before) * self.times, abs(due) * self.times, self.step
        up, crossed, landed, left = b > a, [], None, None
        for size, place in self.sizes:
            jump = s % size
            if not jump:
                continue
            sung = size < self.fewest and place.name not in ("unit", "whole")
            if not sung and (a % size + jump >= size if up else a % size < jump):
                crossed.append(place)
            if s < size:
                landed = place if b and b % size == 0 else landed
                left = place if a and a % size == 0 else left
        return Crossing(tuple(crossed), landed, left) if crossed or landed or left else NOTHING


def is_sung(count: Count) -> bool:
    """Whether a count goes through twos, fives, tens, quarters of a hundred or of an hour: nobody works them out."""
    size = abs(count.step) / places_of(count).one
    quarters = count.kind in (Kind.CLOCK, Kind.ELAPSED) and size == QUARTER_HOUR
    return (quarters or size in SONGS) and count.start % count.step == 0


@lru_cache(maxsize=256)
def places_of_a_count(count: Count) -> PlacesOfACount:
    """The places of a count, made ready for its jumps."""
    places = places_of(count)
    fine = lcm(count.scale, *(place.size.denominator for place in places.above))
    step = abs(count.step)
    farthest = 10 * (max(abs(count.start), abs(count.value(count.terms))) + step)
    near = [place for place in places.above if place.size <= farthest]
    sizes = tuple((int(place.size * fine), place._replace(size=light(place.size))) for place in near)
    fewest = Fraction(0)
    if is_sung(count):
        fewest = places.one * (1000 if step / places.one in SONG_OF_A_HUNDRED else 100)
    ends = light(count.start), light(count.step)
    unit = max((light(place.size) for place in places.above if place.name in ("whole", "unit")), default=inf)
    both = count.scaled(1) * count.scaled(count.terms) < 0
    by_one = count.kind != Kind.FRACTION and step in (places.least, *(place.size for place in places.above))
    light_places = Places(light(places.least), light(places.one), places.above)
    return PlacesOfACount(
        light_places, fine // count.scale, int(step * fine), sizes, int(fewest * fine), *ends, unit, both, by_one
    )


@lru_cache(maxsize=256)
def is_plain(count: Count) -> bool:
    """Whether hardly a jump of a count crosses, fills or leaves any place in view: one at most."""
    ready = places_of_a_count(count)
    hard = (n for n in range(2, count.terms + 1) if ready.crossing(count.scaled(n - 1), count.scaled(n)).is_hard)
    return len(list(islice(hard, 2))) < 2
