"""Slips in counts of measures that are written in one unit, and in hundreds of a metric unit.

Beyond the table; common practice, no source.
"""

from fractions import Fraction

from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..kinds.units import UNITS, Unit
from ..written_units import written_units
from .jump import Jump
from .places import light
from .rule import Area, Rule
from .sources import KAMII_RUSSELL_2012

_LARGER = {"cm": "m", "g": "kg", "mL": "L", "in": "ft", "oz": "lb", "min": "h"}
HUNDRED = 100
_HUNDREDS = ("cm", "mm", "g", "mL")


def serves(grid: Grid) -> bool:
    return written_units(grid.count) is not None


def _small(jump: Jump) -> Unit:
    units = written_units(jump.count)
    assert units is not None, "the area serves measures only"
    return units.small


def _larger(count: Count) -> Unit | None:
    """The unit that the one written fills now and then; None where two are written, or none is used above it."""
    units = written_units(count)
    return UNITS[_LARGER[units.small.symbol]] if units and not units.large and units.small.symbol in _LARGER else None


def _fills_larger(jump: Jump) -> bool:
    """Whether whole ones of the larger unit are full; of hours more is said than the full ones."""
    larger = _larger(jump.count)
    if larger is None or jump.b < larger.size:
        return False
    return jump.b % larger.size == 0 or larger.symbol == "h"


def _in_the_larger(jump: Jump, language: str) -> str:
    """1 m for 100 cm, 1 h 15 min for 75 min."""
    larger = _larger(jump.count)
    if larger is None:
        return ""
    many, rest = divmod(jump.b, larger.size)
    return f"{many} {larger.symbol}" + (f" {jump.text(rest)}" if rest else "")


def _goes_in_hundreds(count: Count) -> bool:
    """Metric small units, of which a jump has less than a hundred."""
    units = written_units(count)
    return units is not None and units.small.symbol in _HUNDREDS and abs(count.step) < 100 * units.small.size


def _hundred_kept(jump: Jump) -> Fraction:
    """How far off the count is when the digit of the hundreds is left as it was; 0 where no hundred is crossed."""
    unit = _small(jump)
    a, b, s, start = (light(value / unit.size) for value in (jump.a, jump.b, jump.s, jump.start))
    units = written_units(jump.count)
    large = units.large.size / unit.size if units and units.large else None
    crosses = a // 100 != b // 100 and min(a, b) >= 0 and (large is None or a // large == b // large)
    known_by_heart = s in (25, 50) and start % 25 == 0
    if not crosses or min(a, b) < (100 if s > 0 else 0):
        return Fraction(0)
    return Fraction(0) if known_by_heart else (-100 if s > 0 else 100) * unit.size


def _reaches_another_hundred(jump: Jump) -> bool:
    """Whether minutes alone reach or pass a hundred that they had not, or stand at one."""
    return jump.b >= HUNDRED and (jump.b % HUNDRED == 0 or jump.a // HUNDRED < jump.b // HUNDRED)


def _hours_of_a_hundred(jump: Jump, language: str) -> str:
    """1 h for 100 min, 1 h 25 min for 125 min."""
    many, rest = divmod(jump.b, HUNDRED)
    return f"{many} {UNITS['h'].symbol}" + (f" {jump.text(rest)}" if rest else "")


RULES = (
    Rule(
        "L15", (2, 5), _fills_larger, _in_the_larger, of_writing=True, counts=lambda count: _larger(count) is not None
    ),
    Rule(
        "L16",
        (3, 5),
        lambda j: _hundred_kept(j) != 0,
        lambda j, _: j.text(j.b + _hundred_kept(j)),
        counts=_goes_in_hundreds,
    ),
    # Minutes are taken for hundredths of an hour, as centimeters are of a meter.
    Rule(
        "L17",
        (2, 5),
        _reaches_another_hundred,
        _hours_of_a_hundred,
        3,
        source=KAMII_RUSSELL_2012,
        counts=lambda count: count.kind == Kind.ELAPSED and _larger(count) is not None,
    ),
)

AREA = Area("measurement in one unit", serves, RULES)
