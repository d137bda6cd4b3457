"""What every count of a sequence has in common and a value that is skipped has not: the plainest such mark."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import gcd

from ..count import Count
from ..kinds.currency import currency_named
from ..kinds.names import Kind
from ..kinds.units import UNITS
from .clock import since_midnight

MOST_ENDINGS = 6


@dataclass(frozen=True, slots=True)
class Mark:
    """A way to see that a value is skipped.

    sort: "parity" (every count is odd or every one even), "ending" (last digits), "part" (the number of one part, such
    as the minutes), "left" (what is left past the last whole) or "remainder" (what is left past a multiple).
    `shown` are the endings (or the one remainder) the counts have, `own` is the value's. `down_to_zero`: true of the
    counts above zero only. `modulus` is what the marks are left over from, in the base unit.
    """

    sort: str
    modulus: Fraction
    shown: tuple[Fraction, ...]
    own: Fraction
    down_to_zero: bool = False
    part: str = ""
    unit: Fraction = Fraction(1)
    """The size of the part's unit: shown and own are counted in it."""


def mark_against(count: Count, value: Fraction, turn: int | None = None) -> Mark:
    """Give the plainest mark that tells a skipped value from every count: fewest endings first, else the remainder.

    turn: after how many minutes a clock is taken to show the same again (with a.m. and p.m., a day).

    Source: proof - a count only ever adds the step, so by any modulus it runs through start, start + g, start + 2g ...
    with g = gcd(step, modulus) and no other remainders; by the step itself it keeps one.
    """
    marks = [mark for mark in _candidates(count, value) if mark.own not in mark.shown and _is_read_off(mark)]
    if marks:
        return min(marks, key=lambda mark: len(mark.shown))
    modulus = abs(count.step) if turn is None else _gcd(abs(count.step), Fraction(turn))
    start = since_midnight(count, count.start)
    return Mark("remainder", modulus, (start % modulus,), value % modulus)


def _is_read_off(mark: Mark) -> bool:
    """Say whether a part is a number that stands there by itself: "2 in", but not the 2 1/2 of "2 1/2 in"."""
    return mark.sort != "part" or all(number.denominator == 1 for number in (*mark.shown, mark.own))


def _candidates(count: Count, value: Fraction) -> list[Mark]:
    if count.kind == Kind.CLOCK:
        return _mark(count, value, Fraction(60), "part", "minutes", Fraction(1))
    if count.start < 0 or value < 0:
        return _parity(count, value)
    if count.kind == Kind.WHOLE:
        endings = [Fraction(10)] + ([Fraction(100)] if min(count.start, value) >= 100 else [])
        return _parity(count, value) + [mark for modulus in endings for mark in _mark(count, value, modulus, "ending")]
    if count.kind in (Kind.DECIMAL, Kind.FRACTION):
        return _mark(count, value, Fraction(1), "left")
    if count.kind == Kind.MONEY:
        small_coins = 10 ** currency_named(count.style.currency, "en").digits
        parts = count.part_names()
        return _mark(count, value, Fraction(small_coins), "part", parts[-1], Fraction(1)) if parts else []
    units = sorted((unit for unit in UNITS.values() if unit.part in count.part_names()), key=lambda unit: unit.size)
    matching = [unit for unit in units if unit.system == count.system]
    if len(matching) != 2:
        return []
    small, large = matching
    return _mark(count, value, large.size, "part", small.part, small.size)


def _parity(count: Count, value: Fraction) -> list[Mark]:
    whole = count.kind == Kind.WHOLE and count.step % 2 == 0 and value.denominator == 1
    return [Mark("parity", Fraction(2), (count.start % 2,), value % 2)] if whole else []


def _mark(
    count: Count, value: Fraction, modulus: Fraction, sort: str, part: str = "", unit: Fraction = Fraction(1)
) -> list[Mark]:
    endings = modulus / _gcd(abs(count.step), modulus)
    if endings > MOST_ENDINGS:
        return []
    falling = count.wrap is None and count.step < 0
    # A falling count that is soon at 0 has not the time to show every ending.
    terms = min(int(endings), int(count.start // -count.step) + 1) if falling else int(endings)
    shown = tuple(sorted((count.start + k * count.step) % modulus / unit for k in range(terms)))
    return [Mark(sort, modulus, shown, value % modulus / unit, falling, part, unit)]


def _gcd(a: Fraction, b: Fraction) -> Fraction:
    """Give the largest number of which both are whole multiples."""
    scale = a.denominator * b.denominator
    return Fraction(gcd(int(a * scale), int(b * scale)), scale)
