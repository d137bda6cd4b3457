"""Slips where another jump is made than the one that is due: by ones, by a friendlier step, half of it, or the other way.

They hold for counts of every kind, start, step, level and direction. Common practice, no source.
"""

from fractions import Fraction
from functools import lru_cache

from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from .jump import Jump
from .places import is_sung, light, places_of
from .rule import Area, Rule

ALL = (0, 8)
NEAR = 12
"""So many of the least: ones are counted in place of a jump that is no longer than this."""

# Jumps that are friendly themselves, and those they give way to; minutes go by quarters and halves of an hour.
_FRIENDLIER = {5: 10, 25: 50, 50: 100, 75: 100, 250: 500}
_FRIENDLIER_MINUTES = {5: 10, 15: 30, 25: 30, 30: 60, 35: 30, 40: 30, 45: 60, 50: 60, 55: 60}


def serves(grid: Grid) -> bool:
    return True


def _signed(jump: Jump, size: Fraction) -> Fraction:
    return size if jump.s > 0 else -size


def _said(jump: Jump, value: Fraction) -> str:
    """A value in the writing of the count; nothing where it leads beyond zero, which this jump does not."""
    beyond = value < 0 <= min(jump.a, jump.b) or value > 0 >= max(jump.a, jump.b)
    return "" if beyond else jump.text(value)


def _by_ones(jump: Jump, language: str) -> str:
    """98 after 97 in a count by tens; 16¢ after 15¢ in a count by nickels; 95¢ after 85¢ in a count by quarters."""
    size = _known_best(jump.count)
    return _said(jump, jump.a + _signed(jump, size)) if size else ""


@lru_cache(maxsize=256)
def _known_best(count: Count) -> Fraction | None:
    """What is counted by in place of a jump: ones, or tens where it is longer; None where it is such a count itself.

    Whole hours, feet or dollars are counted as ones are, and hundreds as tens: by tens they are one place off.
    """
    places, size = places_of(count), abs(count.step)
    if size <= NEAR * places.least:
        return light(places.least) if size != places.least else None
    if any(place.name in ("whole", "unit") and size % place.size == 0 for place in places.above):
        return None
    ten = next((place.size for place in places.above if place.size == 10 * places.least), None)
    return light(ten) if ten and size > ten and size % (10 * ten) else None


@lru_cache(maxsize=256)
def _friendlier(count: Count) -> Fraction | None:
    """The friendlier size that a jump gives way to: one that is known, else the nearest in tens; None where it is as near."""
    places = places_of(count)
    one = places.one if count.step % places.one == 0 else places.least
    size = abs(count.step) / one
    known = _FRIENDLIER_MINUTES if count.kind in (Kind.CLOCK, Kind.ELAPSED) else _FRIENDLIER
    if size in known:
        return light(known[int(size)] * one)
    # 38 as 40, 8 as 10. One more or less may be a miscount as well.
    near = min(size // 10 * 10, size // 10 * 10 + 10, key=lambda other: (abs(other - size), other))
    return light(near * one) if near and 1 < abs(near - size) <= size / 2 else None


def _by_a_friendlier_step(jump: Jump, language: str) -> str:
    """2 h 30 min after 2 h in a count by 35 min; 20 after 10 in a count by fives."""
    size = _friendlier(jump.count)
    return _said(jump, jump.a + _signed(jump, size)) if size else ""


@lru_cache(maxsize=256)
def _split(count: Count) -> tuple[Fraction, Fraction] | None:
    """The part of a jump in its largest place, and the rest; None where it stands in one place, or is sung."""
    size = abs(count.step)
    if is_sung(count):
        return None
    for place in reversed(places_of(count).above):
        if place.size <= size:
            rest = size % place.size
            return (light(size - rest), light(rest)) if rest else None
    return None


def _larger_part(jump: Jump, language: str) -> str:
    """365 after 345 in a count by 23: the tens are added and the ones forgotten."""
    split = _split(jump.count)
    return _said(jump, jump.a + _signed(jump, split[0])) if split else ""


def _smaller_part(jump: Jump, language: str) -> str:
    """348 after 345 in a count by 23."""
    split = _split(jump.count)
    return _said(jump, jump.a + _signed(jump, split[1])) if split else ""


def _other_way(jump: Jump, language: str) -> str:
    """21 after 20 in a count back by ones."""
    return _said(jump, jump.a - jump.s)


def _turns_round(jump: Jump) -> bool:
    """Counting back, and up below zero."""
    return jump.is_hard and abs(jump.b) < abs(jump.a)


def _by_few(jump: Jump) -> bool:
    return abs(jump.s) <= NEAR * jump.places.least


RULES = (
    Rule("J01", (0, 2), lambda j: True, _by_ones),
    Rule("J02", (3, 8), _by_few, _by_ones, 1),
    Rule("J03", ALL, lambda j: True, _by_a_friendlier_step, 1),
    Rule("J04", (0, 2), _turns_round, _other_way, turns=True),
    Rule("J05", (3, 8), _turns_round, _other_way, 1, turns=True),
    Rule("J06", (1, 8), lambda j: True, _larger_part, 1),
    Rule("J07", (1, 8), lambda j: True, _smaller_part, 1),
    Rule("J08", ALL, lambda j: True, lambda j, _: _said(j, j.b + j.s), 0),
    Rule("J09", ALL, lambda j: True, lambda j, _: j.said, 0),
)

AREA = Area("jumps", serves, RULES, of_every_kind=True)
