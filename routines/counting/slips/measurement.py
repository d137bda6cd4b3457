"""Slips in counts of measures in two units: the small unit is not renamed, or is renamed at ten."""

from collections.abc import Callable
from fractions import Fraction

from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..kinds.units import UNITS, Unit
from ..written_units import written_units
from .jump import Jump
from .places import light
from .rule import Area, Rule
from .writing import in_two_units

_MEASURES = (Kind.LENGTH, Kind.MASS, Kind.CAPACITY)


def serves(grid: Grid) -> bool:
    return grid.count.kind in _MEASURES and two_units(grid) is not None


def two_units(grid: Grid) -> tuple[Unit, Unit] | None:
    """The large and the small unit a count is written in; None where it is written in one."""
    units = written_units(grid.count)
    return (units.large, units.small) if units and units.large else None


class Parts:
    """A jump of a count in two units.

    Units: `a`, `b` and `s` are in the small unit, `size` of which make one large unit.
    """

    def __init__(self, jump: Jump) -> None:
        units = two_units(jump.grid)
        assert units is not None, "the area serves counts in two units only"
        self.jump = jump
        self.large, self.small = units
        self.size = light(self.large.size / self.small.size)
        self.a, self.b, self.s = jump.a, jump.b, jump.s
        if self.small.size != 1:
            self.a, self.b, self.s = (light(value / self.small.size) for value in (jump.a, jump.b, jump.s))

    def written(self, many: int, rest: Fraction) -> str:
        return in_two_units(self.jump, self.large, self.small, many, rest)

    def whole(self, value: Fraction) -> int:
        return int(value // self.size)

    @property
    def joined(self) -> Fraction:
        """How many small units stand together after the jump, before any are renamed."""
        return self.a % self.size + self.s

    @property
    def fills_a_large_unit(self) -> bool:
        return 0 < self.s < self.size and self.b // self.size > self.a // self.size

    @property
    def opens_a_large_unit(self) -> bool:
        return -self.size < self.s < 0 and self.b // self.size < self.a // self.size


def _not_renamed(parts: Parts) -> str:
    """2 ft 12 in after 2 ft 8 in."""
    return parts.written(parts.whole(parts.a), parts.joined)


def _full_at_ten(parts: Parts) -> str:
    """4 ft 0 in for 3 ft 10 in."""
    rest = parts.b % parts.size - 10
    return parts.jump.text(((parts.whole(parts.b) + 1) * parts.size + rest) * parts.small.size)


def _with_a_point(parts: Parts) -> str:
    """5.6 ft for 5 ft 6 in."""
    rest = parts.b % parts.size
    if rest.denominator != 1:
        return ""
    return f"{parts.whole(parts.b)}{parts.jump.count.style.decimal_mark}{rest} {parts.large.symbol}"


def _empty_places_left_out(parts: Parts) -> str:
    """3.4 kg for 3 kg 40 g."""
    rest = parts.b % parts.size
    if rest.denominator != 1:
        return ""
    return f"{parts.whole(parts.b)}{parts.jump.count.style.decimal_mark}{str(rest).rstrip('0')} {parts.large.symbol}"


def _traded_at_ten(parts: Parts) -> str:
    """3 ft 8 in after 2 ft 9 in by 9 in: eighteen inches are taken for one foot and eight."""
    many, rest = divmod(parts.joined, 10)
    value = (parts.whole(parts.a) + many) * parts.size + rest
    return parts.jump.text(value * parts.small.size)


def _opened_into_ten(parts: Parts) -> str:
    """2 ft 7 in after 3 ft 2 in by -5 in: the foot is opened into ten inches."""
    rest = parts.a % parts.size + 10 + parts.s
    if rest < 0:
        return ""
    return parts.jump.text(((parts.whole(parts.a) - 1) * parts.size + rest) * parts.small.size)


def _rule(
    name: str,
    pairs: tuple[tuple[str, str], ...],
    happens: Callable[[Parts], bool],
    heard: Callable[[Parts], str],
    weight: int,
    *,
    of_writing: bool = False,
) -> Rule:
    def counts(count: Count) -> bool:
        units = written_units(count)
        return units is not None and units.large is not None and (units.large.symbol, units.small.symbol) in pairs

    return Rule(
        name,
        (4, 5),
        lambda jump: happens(Parts(jump)),
        lambda jump, _: heard(Parts(jump)),
        weight,
        of_writing=of_writing,
        counts=counts,
    )


def _passes_ten(parts: Parts) -> bool:
    return parts.a // parts.size == parts.b // parts.size and parts.a % parts.size < 10 <= parts.b % parts.size


def _filled(parts: Parts) -> bool:
    return parts.fills_a_large_unit


_IN_THE_TABLE = (("ft", "in"), ("lb", "oz"), ("yd", "ft"), ("gal", "qt"), ("m", "cm"), ("L", "mL"))
_OTHERS = tuple(
    (large.symbol, small.symbol)
    for large in UNITS.values()
    for small in UNITS.values()
    if large.measure == small.measure
    and large.measure in _MEASURES
    and large.system == small.system
    and large.size > small.size
    and (large.symbol, small.symbol) not in _IN_THE_TABLE
)

RULES = (
    _rule("L01", (("ft", "in"),), _filled, _not_renamed, 3),
    _rule("L02", (("ft", "in"),), _passes_ten, _full_at_ten, 2),
    _rule("L03", (("ft", "in"),), lambda parts: parts.b % parts.size != 0, _with_a_point, 1, of_writing=True),
    _rule("L04", (("lb", "oz"),), _passes_ten, _full_at_ten, 2),
    _rule("L05", (("lb", "oz"),), _filled, _not_renamed, 3),
    _rule("L06", (("yd", "ft"),), _filled, _not_renamed, 3),
    _rule("L07", (("gal", "qt"),), _filled, _not_renamed, 3),
    _rule("L08", (("m", "cm"),), _filled, _not_renamed, 3),
    _rule("L09", (("kg", "g"),), lambda parts: 0 < parts.b % 1000 < 100, _empty_places_left_out, 2, of_writing=True),
    _rule("L10", (("L", "mL"),), _filled, _not_renamed, 3),
    # Beyond the table: other pairs of units, trading at ten across the large unit, and opening it when counting back.
    _rule("L11", (("ft", "in"),), _filled, _traded_at_ten, 3),
    _rule("L12", (("lb", "oz"),), _filled, _traded_at_ten, 3),
    _rule("L13", (("ft", "in"), ("lb", "oz")), lambda parts: parts.opens_a_large_unit, _opened_into_ten, 3),
    _rule("L14", _OTHERS, _filled, _not_renamed, 3),
)

AREA = Area("measurement", serves, RULES)
