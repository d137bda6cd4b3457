"""What children read off a count by itself and go round by: a ten, a whole, a dollar, an hour, a foot, a meter, a cup."""

from fractions import Fraction
from math import lcm

from .count import Count
from .kinds.currency import currency_named
from .kinds.names import Kind
from .written_units import large_size, unit_above, written_units

# The small metric units, and how many of each children go round by where nothing larger is written.
_METRIC = {"mm": Fraction(1), "cm": Fraction(100), "g": Fraction(1000), "mL": Fraction(1000)}


def round_number(count: Count) -> Fraction:
    """The amount that is round to children in this count. Units: the base unit.

    >>> round_number(Count.parse(kind="length", start="75 cm", step="25 cm", terms=12))
    Fraction(100, 1)
    """
    if count.kind == Kind.WHOLE:
        return Fraction(10)
    if count.kind in (Kind.DECIMAL, Kind.FRACTION):
        return Fraction(1)
    if count.kind == Kind.MONEY:
        digits = currency_named(count.style.currency, "en").digits
        return Fraction(10**digits if digits else 100)
    units = written_units(count)
    if count.kind in (Kind.CLOCK, Kind.ELAPSED) or units is None:
        return Fraction(60)
    large = large_size(count)
    if large is None and counted_parts(count) > 1:
        return units.small.size
    return large or unit_above(count) or _METRIC.get(units.small.symbol) or 10 * units.small.size


def counted_parts(count: Count) -> int:
    """Into how many parts a measure is counted in its small unit; 1 where whole units are counted, and for other kinds.

    >>> counted_parts(Count.parse(kind="capacity", start="3/4 cup", step="3/4 cup", terms=12))
    4
    """
    units = written_units(count)
    if units is None:
        return 1
    size = units.small.size
    return lcm((count.start / size).denominator, (count.step / size).denominator)
