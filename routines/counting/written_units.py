"""The units a measure is written in."""

from fractions import Fraction
from typing import NamedTuple

from .count import Count
from .kinds.measure import Measure
from .kinds.unit_names import NAMES, WRITTEN_BY_NAME
from .kinds.units import UNITS, Unit, units_of


class WrittenUnits(NamedTuple):
    """large: None where the count is written in one unit."""

    large: Unit | None
    small: Unit


def written_units(count: Count) -> WrittenUnits | None:
    """The units of a length, mass, capacity or elapsed time; None for every other kind.

    >>> units = written_units(Count.parse(kind="length", start="1 ft 3 in", step="9 in", terms=12))
    >>> units.large.symbol, units.small.symbol
    ('ft', 'in')
    """
    form = count.form
    return WrittenUnits(form.large, form.small) if isinstance(form, Measure) else None


UNIT_ABOVE = {"in": Fraction(12), "oz": Fraction(16), "fl oz": Fraction(8)}
"""What children go round by where only the small customary unit is written: a foot, a pound, a cup."""


def unit_above(count: Count) -> Fraction | None:
    """The size of the unit above the small customary one, in the base unit; None for every other unit."""
    units = written_units(count)
    return UNIT_ABOVE.get(units.small.symbol) if units else None


def unit_to_reach(count: Count) -> Unit | None:
    """The unit whose wholes a measure may reach: the large one of two, else the next larger one of its system, if any.

    >>> unit_to_reach(Count.parse(kind="mass", start="250 g", step="250 g", terms=12)).symbol
    'kg'
    """
    units = written_units(count)
    if units is None or units.large:
        return units.large if units else None
    family = (unit for unit in units_of(units.small.measure) if unit.system == units.small.system)
    return min((unit for unit in family if unit.size > units.small.size), key=lambda unit: unit.size, default=None)


_LARGER = {"in": "ft", "oz": "lb", "fl oz": "cup", "cm": "m", "g": "kg", "mL": "L", "min": "h"}


def larger_unit_size(count: Count) -> Fraction | None:
    """The size of the unit above the only one a count is written in, in the base unit; None where there is none."""
    units = written_units(count)
    symbol = None if units is None or units.large else _LARGER.get(units.small.symbol)
    return UNITS[symbol].size if symbol else None


def in_larger_unit(count: Count, value: Fraction) -> str:
    """Write an amount of a count in one small unit in the next larger one too; nothing where it does not fill one.

    >>> count = Count.parse(kind="mass", start="12 oz", step="12 oz", terms=8)
    >>> in_larger_unit(count, Fraction(32)), in_larger_unit(count, Fraction(36)), in_larger_unit(count, Fraction(12))
    ('2 lb', '2 lb 4 oz', '')
    """
    units = written_units(count)
    symbol = None if units is None or units.large else _LARGER.get(units.small.symbol)
    if symbol is None or abs(value) < UNITS[symbol].size:
        return ""
    many, rest = divmod(abs(value), UNITS[symbol].size)
    name = symbol
    if symbol in WRITTEN_BY_NAME:
        said = NAMES[symbol, count.style.language]
        name = said.one if many == 1 else said.several
    return " ".join([f"{'-' if value < 0 else ''}{many} {name}", *([count.text_of(rest)] if rest else [])])


def in_both_units(count: Count, value: Fraction) -> str:
    """Write an amount as the count does and, where it fills a larger unit, in that too.

    >>> count = Count.parse(kind="mass", start="12 oz", step="12 oz", terms=8)
    >>> in_both_units(count, Fraction(36)), in_both_units(count, Fraction(12))
    ('36 oz (2 lb 4 oz)', '12 oz')
    """
    larger = in_larger_unit(count, value)
    return f"{count.text_of(value)} ({larger})" if larger else count.text_of(value)


def large_size(count: Count) -> Fraction | None:
    """The size of the large unit of a measure in two, in the base unit."""
    units = written_units(count)
    return units.large.size if units and units.large else None
