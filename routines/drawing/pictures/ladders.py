"""Which marks a measuring line carries: each kind's own rungs, from fine to coarse, every rung a multiple of the one before.

Source: the sizes of the units are the engine's (kinds/units.py); which of them a school ruler, scale or clock marks is
common practice, no source.
"""

from collections.abc import Callable, Iterator
from fractions import Fraction
from math import ceil, floor

from routines.counting import Count, Kind

FINEST_GAP = 5.0  # px between the finest marks
NUMBER_GAP = 14.0  # px kept free between two numbers of the line

_RUNGS: dict[str, tuple[Fraction, ...]] = {
    "in": tuple(Fraction(n) / 8 for n in (1, 2, 4, 8, 24, 48, 96)),
    "oz": tuple(Fraction(n) / 4 for n in (1, 2, 4, 16, 32, 64)),
    "fl oz": tuple(map(Fraction, (1, 4, 8, 16, 32, 128))),
    "min": tuple(map(Fraction, (1, 5, 15, 30, 60, 180, 360, 720, 1440))),
}
_COARSEST = 10**12


def rungs(count: Count) -> tuple[Fraction, ...]:
    """The rungs of a count's kind, ascending. Units: the base unit."""
    own = _RUNGS.get(count.base_unit) or (_parts_of_one(count.scale) if count.kind == Kind.FRACTION else ())
    coarser = own[-1] if own else Fraction(1, 1000)
    more: list[Fraction] = []
    while coarser < _COARSEST:
        coarser *= 5 if len(more) % 2 == 0 else 2
        more.append(coarser)
    return (*(own or (Fraction(1, 1000),)), *more)


def _parts_of_one(bottom: int) -> tuple[Fraction, ...]:
    """1/8 1/4 1/2 1, 1/3 1, 1/6 1/3 1: halved while the number of parts is even."""
    parts = [bottom]
    while parts[-1] % 2 == 0:
        parts.append(parts[-1] // 2)
    return tuple(Fraction(1, n) for n in dict.fromkeys((*parts, 1)))


def finest(count: Count, px: Fraction, gap: float = FINEST_GAP) -> Fraction:
    """The finest rung whose marks stand `gap` px apart at least, at `px` px a base unit."""
    return next(rung for rung in rungs(count) if rung * px >= gap)


def numbered(count: Count, px: Fraction, low: Fraction, high: Fraction, room: Callable[[Fraction], float]) -> Fraction:
    """The finest rung whose numbers stand clear of each other. room: what the number of a value takes, in px.

    Fives and fifties are numbered only where the count steps by them, tens and hundreds always; of fractions only wholes.
    """
    for rung in rungs(count):
        if (count.kind == Kind.FRACTION and rung < 1) or (_is_half(rung) and count.step % rung):
            continue
        if rung * px >= NUMBER_GAP and rung * px >= max(map(room, multiples(rung, low, high)), default=0) + NUMBER_GAP:
            return rung
    raise AssertionError("the coarsest rung is beyond every value of a count")


def _is_half(rung: Fraction) -> bool:
    """5, 50, 0.5: half of a power of ten."""
    digits = str(rung.numerator if rung >= 1 else rung.denominator).rstrip("0")
    return digits == ("5" if rung >= 1 else "2")


def multiples(rung: Fraction, low: Fraction, high: Fraction) -> Iterator[Fraction]:
    """The multiples of a rung from low to high, both included."""
    return (rung * k for k in range(ceil(low / rung), floor(high / rung) + 1))
