"""Slips of counts in two units and of clocks that the table leaves to other grades, units or directions.

The rows of the table are instances of them. Common practice, no source.
"""

from fractions import Fraction

from ..count import Count
from ..grid import Grid
from ..kinds.measure import Measure
from ..kinds.names import Kind
from ..kinds.units import UNITS
from ..written_units import written_units
from .jump import Jump
from .measurement import Parts
from .rule import Area, Rule, of_kind
from .sources import KAMII_RUSSELL_2012
from .writing import in_two_units, with_part


def serves(grid: Grid) -> bool:
    return isinstance(grid.count.form, Measure) or grid.count.kind in (Kind.CLOCK, Kind.MONEY)


def _in_two(count: Count) -> bool:
    units = written_units(count)
    return units is not None and units.large is not None


def _in_two_but_hours(count: Count) -> bool:
    return _in_two(count) and count.kind != Kind.ELAPSED


def _in_hours_and_minutes(count: Count) -> bool:
    return count.kind == Kind.ELAPSED and _in_two(count)


def _in_hours(count: Count) -> bool:
    return count.kind == Kind.CLOCK or _in_hours_and_minutes(count)


def _fills_a_unit(jump: Jump) -> bool:
    return Parts(jump).fills_a_large_unit


def _not_renamed(jump: Jump, language: str) -> str:
    """1 h 60 min for 2 h."""
    parts = Parts(jump)
    return parts.written(parts.whole(parts.a), parts.joined)


def _minutes_run_on(jump: Jump, language: str) -> str:
    """2:60 after 2:30, where the hour is read before minutes are."""
    return with_part(jump, jump.a, "minutes", f"{int(jump.a % 60 + jump.s):02d}")


def _opens_an_hour(jump: Jump) -> bool:
    return -60 < jump.s < 0 <= jump.b and jump.b // 60 < jump.a // 60


def _opened_into_a_hundred(jump: Jump, language: str) -> str:
    """1 h 85 min for 2 h 15 min less 30 min: the hour is opened into a hundred minutes."""
    minutes = jump.a % 60 + 100 + jump.s
    if jump.count.kind == Kind.CLOCK:
        return with_part(jump, jump.b, "minutes", f"{int(minutes):02d}")
    return in_two_units(jump, UNITS["h"], UNITS["min"], jump.a // 60 - 1, minutes)


def _opened_into_ten(jump: Jump, language: str) -> str:
    """1 gal 9 qt for 2 gal 1 qt less 2 qt: the gallon is opened into ten quarts."""
    parts = Parts(jump)
    rest = parts.a % parts.size + 10 + parts.s
    return parts.written(parts.whole(parts.a) - 1, rest) if rest > 0 else ""


def _opens_an_odd_unit(jump: Jump) -> bool:
    """A unit is opened that is not made of tens."""
    parts = Parts(jump)
    return parts.opens_a_large_unit and parts.size % 10 != 0 and parts.b >= 0


def _two_jumps_unrenamed(jump: Jump) -> bool:
    """Two jumps back an hour and its minutes stood there; the jump before filled the hour, and this one fills a hundred."""
    return _joined_after_two(jump) >= 100


def _joined_after_two(jump: Jump) -> Fraction:
    if jump.n < 3 or not 0 < jump.s < 60:
        return Fraction(0)
    joined = (jump.a - jump.s) % 60 + jump.s
    return joined + jump.s if 60 <= joined < 100 else Fraction(0)


def _hundred_after_two(jump: Jump, language: str) -> str:
    """4 h 15 min after 3 h 70 min in a count by 45 min: a hundred and fifteen are an hour and fifteen."""
    hours = (jump.a - jump.s) // 60 + 1
    return in_two_units(jump, UNITS["h"], UNITS["min"], hours, _joined_after_two(jump) - 100)


def _places(count: Count) -> int:
    form = count.form
    return form.places or 0 if isinstance(form, Measure) and form.large is None else 0


def _passes_a_whole(jump: Jump) -> bool:
    one = jump.places.one
    return 0 < jump.s < one and jump.a // one < jump.b // one


def _decimals_run_on(jump: Jump, language: str) -> str:
    """1.100 L after 1.75 L: the decimals go on as a number of their own."""
    form, mark = jump.count.form, jump.count.style.decimal_mark
    assert isinstance(form, Measure), "decimals of a measure"
    one = jump.places.one
    run_on = int((jump.a % one + jump.s) / one * 10 ** _places(jump.count))
    return f"{int(jump.a // one)}{mark}{run_on} {form.small.symbol}"


RULES = (
    Rule("U01", (0, 3), _fills_a_unit, _not_renamed, counts=_in_two),
    Rule(
        "U02",
        (0, 1),
        lambda j: 0 < j.s < 60 and j.a // 60 < j.b // 60 and j.a % 60 + j.s < 100,
        _minutes_run_on,
        counts=of_kind(Kind.CLOCK),
    ),
    Rule("U03", (3, 8), _opens_an_hour, _opened_into_a_hundred, source=KAMII_RUSSELL_2012, counts=_in_hours),
    Rule("U04", (3, 8), _opens_an_odd_unit, _opened_into_ten, counts=_in_two_but_hours),
    Rule(
        "U05",
        (3, 8),
        _two_jumps_unrenamed,
        _hundred_after_two,
        1,
        source=KAMII_RUSSELL_2012,
        counts=_in_hours_and_minutes,
    ),
    Rule("U06", (3, 8), _passes_a_whole, _decimals_run_on, 3, counts=lambda count: _places(count) > 0),
    Rule("U07", (6, 8), lambda j: j.b < 0, lambda j, _: j.text(-j.b), counts=of_kind(Kind.MONEY)),
)

AREA = Area("larger units", serves, RULES)
