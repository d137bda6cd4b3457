"""How children meet the multiples of a kind of number: which of two is the friendlier (EXACT 29).

Common practice, no source, but for the first whole ones: K.CC.A.1 counts by tens, 2.NBT.A.2 by fives, tens and hundreds,
2.OA.C.3 tells even from odd (Common Core State Standards for Mathematics, 2010).
"""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from ..count import Count
from ..kinds.currency import currency_named
from ..kinds.names import Kind

AS_MET = tuple(map(Fraction, (10, 100, 1000, 2, 5, 25, 50, 20, 3, 4, 6, 8, 9, 7, 11, 12)))
"""Of whole numbers, the friendliest first."""

TENS_HUNDREDS_THOUSANDS = frozenset(map(Fraction, (10, 100, 1000)))
LEARNED_WITH_THE_TABLES = frozenset(map(Fraction, (3, 4, 6, 7, 8, 9, 11, 12)))

_WHOLES = {"in": 12, "cm": 100, "oz": 16, "g": 1000, "fl oz": 128, "mL": 1000, "min": 60}

Friendliness = tuple[int, Fraction]


def never_hidden(count: Count) -> Fraction:
    """What a class says first of any count: even and odd, or the whole that the kind reads by. Units: the base unit."""
    if count.kind == Kind.WHOLE:
        return Fraction(2)
    if count.kind == Kind.MONEY:
        return Fraction(10 ** currency_named(count.style.currency, "en").digits)
    return Fraction(_WHOLES.get(count.base_unit, 1))


def is_read_by(multiple: Fraction | None, count: Count) -> bool:
    """Whether a class reads numbers by it: tens, hundreds; else the whole of the kind, or what this count goes round by."""
    if count.kind == Kind.WHOLE:
        return multiple in TENS_HUNDREDS_THOUSANDS
    return multiple in (never_hidden(count), count.form.round_number())


def friendliness(multiple: Fraction, count: Count) -> Friendliness:
    """The sort key of a multiple of the base unit: the smaller, the sooner met.

    Of whole numbers as in `AS_MET`, others after them; else the whole that this count is written round by, the whole of
    the kind, halves and quarters, larger ones from the smallest on, others from the largest on.

    >>> eggs = Count.parse(kind="whole", start="16", step="6", terms=20)
    >>> friendliness(Fraction(10), eggs) < friendliness(Fraction(20), eggs)
    True
    """
    return _as_met(multiple, count.kind, _wholes(count))


def friendliness_to_the_kind(multiple: Fraction, count: Count) -> Friendliness:
    """The same without what this one count is written round by, as F6 of EXACT 11 asks: alike for all counts of a kind."""
    return _as_met(multiple, count.kind, _wholes(count)[1:])


@lru_cache(maxsize=256)
def _wholes(count: Count) -> tuple[Fraction, ...]:
    """The whole that this count is written round by, and that of the kind; none where multiples go by `AS_MET`."""
    return () if count.kind == Kind.WHOLE else (count.form.round_number(), never_hidden(count))


@lru_cache(maxsize=4096)
def _as_met(multiple: Fraction, kind: Kind, wholes: tuple[Fraction, ...]) -> Friendliness:
    """The same few multiples are asked about in every search, whatever the count."""
    if kind == Kind.WHOLE:
        return (AS_MET.index(multiple) if multiple in AS_MET else len(AS_MET)), multiple
    for at, sizes in enumerate((wholes, tuple(x / 2 for x in wholes), tuple(x / 4 for x in wholes))):
        if multiple in sizes:
            return 2 * at + sizes.index(multiple), multiple
    larger = multiple > wholes[-1] and multiple % wholes[-1] == 0
    return (6, multiple) if larger else (7, -multiple)
