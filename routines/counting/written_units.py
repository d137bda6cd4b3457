"""The units a measure is written in."""

from fractions import Fraction
from typing import NamedTuple

from .count import Count
from .kinds.measure import Measure
from .kinds.units import Unit, units_of


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


def large_size(count: Count) -> Fraction | None:
    """The size of the large unit of a measure in two, in the base unit."""
    units = written_units(count)
    return units.large.size if units and units.large else None
