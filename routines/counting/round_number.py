"""What children read off a count by itself and go round by: a ten, a whole, a dollar, an hour, a foot, a meter."""

from fractions import Fraction

from .count import Count
from .written_units import large_size, unit_above, written_units

# The small metric units, and how many of each children go round by where nothing larger is written.
_METRIC = {"mm": Fraction(1), "cm": Fraction(100), "g": Fraction(1000), "mL": Fraction(1000)}


def round_number(count: Count) -> Fraction:
    """The amount that is round to children in this count. Units: the base unit.

    >>> round_number(Count.parse(kind="length", start="75 cm", step="25 cm", terms=12))
    Fraction(100, 1)
    """
    if count.kind == "whole":
        return Fraction(10)
    if count.kind in ("decimal", "fraction"):
        return Fraction(1)
    if count.kind == "money":
        return Fraction(100)
    if count.kind in ("clock", "elapsed"):
        return Fraction(60)
    units = written_units(count)
    small = units.small if units else None
    round_by = large_size(count) or unit_above(count) or (_METRIC.get(small.symbol) if small else None)
    return round_by or 10 * (small.size if small else Fraction(1))
