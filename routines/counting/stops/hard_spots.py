"""Where a count is hard to go on: where it passes a large landmark that it seldom passes."""

from dataclasses import dataclass
from fractions import Fraction

from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..written_units import large_size, larger_unit_size, unit_above, written_units

# Counted before the first hard spot, so that the class has found its step.
WARM_UP = 3


@dataclass(frozen=True, slots=True)
class HardSpot:
    """The n-th count reaches or passes `landmark`, a multiple that is met `times` times in view.

    is_zero: the landmark is zero, which midnight is not. is_first_whole: a count that begins within the first whole, or the
    first of the larger unit, fills it here.
    Units: landmark is in the base unit.
    """

    n: int
    landmark: Fraction
    times: int
    is_zero: bool = False
    is_first_whole: bool = False


def hard_spots(grid: Grid) -> list[HardSpot]:
    """The hard spots of a grid, hardest first: the multiple met least often, then the earliest place."""
    count = grid.count
    whole = whole_of(count)
    found: dict[int, HardSpot] = {}
    for multiple in _multiples(count):
        places = [n for n in range(2, grid.terms + 1) if landmark_met(count, n, multiple) is not None]
        if 0 < len(places) < grid.terms - 1:
            for n in places:
                landmark = landmark_met(count, n, multiple)
                if landmark is not None:
                    zero = landmark == 0 and count.wrap is None
                    first = landmark == whole and count.step > 0 and count.start >= 0
                    found.setdefault(n, HardSpot(n, landmark, len(places), zero, first))
    spots = [spot for spot in found.values() if spot.n > WARM_UP]
    return sorted(spots, key=lambda spot: (spot.times, spot.n))


def _multiples(count: Count) -> list[Fraction]:
    """Multiples with a name, largest first; whole numbers go by tens, hundreds, thousands."""
    if count.kind == Kind.WHOLE:
        return [Fraction(10**power) for power in range(9, 0, -1)]
    if count.kind in (Kind.DECIMAL, Kind.FRACTION):
        wholes = [Fraction(10**power) for power in range(4, -1, -1)]
        return [*wholes, Fraction(1, 10)] if count.kind == Kind.DECIMAL else wholes
    if count.kind == Kind.MONEY:
        return [multiple * count.form.round_number() for multiple in (10, 1)]
    if count.kind in (Kind.CLOCK, Kind.ELAPSED):
        return [Fraction(720), Fraction(60)] if count.kind == Kind.CLOCK else [Fraction(60)]
    large = large_size(count) or unit_above(count)
    if large:
        return [large]
    units = written_units(count)
    unit = units.small.size if units else Fraction(1)
    return [1000 * unit, 100 * unit, 10 * unit, unit]


def whole_of(count: Count) -> Fraction | None:
    """The whole that a class fills first: 1, a dollar, an hour, the larger unit; whole numbers and times of day have none."""
    if count.kind in (Kind.DECIMAL, Kind.FRACTION):
        return Fraction(1)
    if count.kind == Kind.MONEY:
        return Fraction(count.form.round_number())
    return None if count.kind in (Kind.WHOLE, Kind.CLOCK) else large_size(count) or larger_unit_size(count)


def landmark_met(count: Count, n: int, multiple: Fraction) -> Fraction | None:
    """The multiple reached or passed in the jump to the n-th count, or left behind when counting back."""
    before, after = count.value(n - 1) / multiple, count.value(n) / multiple
    if count.step > 0:
        met = after // 1
        return met * multiple if met > before // 1 else None
    # Counting back is hard on leaving the multiple: 1,000 is easy, 950 is not.
    left = after // 1 + 1
    return left * multiple if left <= before and left > after else None
