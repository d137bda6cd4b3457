"""Digits and parts as wheels: what size one number on the wheel is, and after how many it begins again."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..claims import PlaceClaim, no_such_part
from ..kinds.clock import Clock
from ..kinds.kind import NumberKind
from ..kinds.measure import Measure
from ..kinds.money import Money
from ..kinds.registry import number_kind
from .limits import Limits


@dataclass(frozen=True, slots=True)
class Wheel:
    """A digit or part as a wheel that shows floor(size / unit): `numbers` of them, then it begins again.

    `lowest` is the least number on it: a 12-hour clock shows 12 for 0, so 1. by_size: read from |value|, else from the
    value itself (a clock's). Units: those that the caller counts in.
    """

    unit: int
    numbers: int
    lowest: int = 0
    by_size: bool = True

    @property
    def turn(self) -> int:
        return self.unit * self.numbers

    @property
    def shown(self) -> range:
        return range(self.lowest, self.lowest + self.numbers)

    def at(self, value: int) -> int:
        """Give what the wheel shows for a value."""
        number = (abs(value) if self.by_size else value) // self.unit % self.numbers
        return number if number >= self.lowest else number + self.numbers


@dataclass(frozen=True, slots=True)
class Part:
    """A digit or part by its unit in the base unit; `numbers` None: it never begins again (feet, dollars)."""

    unit: Fraction
    numbers: int | None
    lowest: int = 0
    by_size: bool = True

    def wheel(self, scale: int, reach: int) -> Wheel:
        """Make the wheel for values over `scale`, none of which is larger than `reach`."""
        unit = int(self.unit * scale)
        return Wheel(unit, self.numbers or reach // unit + 2, self.lowest, self.by_size)


def parts_meant(claim: PlaceClaim, limits: Limits) -> list[Part | None]:
    """Give the digits or parts that a claim may mean; None for one that is no wheel (the top of a fraction).

    Raises: CountError on `part` for a part that these numbers are not written with.
    """
    form = number_kind(limits.kind, limits.style, Fraction(limits.grain))
    if claim.place is not None:
        return [Part(Fraction(10) ** claim.place, 10)]
    name = claim.part
    if name is None:
        digits: list[Part | None] = [Part(Fraction(10) ** place, 10) for place in _places(limits)]
        return digits + [part_of(form, each) for each in form.part_names]
    if name not in form.part_names:
        raise no_such_part(form.part_names)
    return [part_of(form, name)]


def _places(limits: Limits) -> range:
    """Give the places that any grid within the limits may be written with."""
    finest = 0
    while finest > -3 and Fraction(limits.grain) % Fraction(10) ** finest:
        finest -= 1
    return range(finest, len(str(int(limits.reach))))


def part_of(form: NumberKind, name: str) -> Part | None:
    """Give a part by its unit; None for one that is no wheel (the top of a fraction)."""
    if name == "whole":
        return Part(Fraction(1), None)
    if isinstance(form, Clock):
        hours = form.style.clock
        return Part(Fraction(1), 60, 0, False) if name == "minutes" else Part(Fraction(60), hours, hours == 12, False)
    if isinstance(form, Money):
        coins = 10**form.currency.digits
        return Part(Fraction(coins), None) if name == form.main_part else Part(Fraction(1), coins)
    if isinstance(form, Measure):
        if form.large is not None and name == form.large.part:
            return Part(form.large.size, None)
        if name == form.small.part:
            return Part(form.small.size, None if form.large is None else int(form.large.size / form.small.size))
    return None
