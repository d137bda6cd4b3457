"""With which numbers a class of each level counts: kinds, sizes, and the steps it knows, the friendliest first.

Sizes and kinds from the grades in which the Common Core State Standards (2010) name them: to 100 (K.CC.A.1), 120
(1.NBT.A.1), 1,000 (2.NBT.A.2), 1,000,000 (4.NBT.A.2); time to the half hour (1.MD.B.3), five minutes (2.MD.C.7) and the
minute (3.MD.A.1); money (2.MD.C.8); fractions (3.NF.A.1, 4.NF.B.3), decimals (4.NF.C.6, 5.NBT.A.3), below zero (6.NS.C.5).
Which steps are friendly: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from ..kinds.currency import currency_named
from ..kinds.names import Kind
from ..kinds.units import UNITS
from ..slips.integers import BELOW_ZERO_FROM
from ..style import Style

# On the clock a class counts through a school day, from eight in the morning; lengths of time are written in hours and
# minutes from an hour on.
MORNING = Fraction(8 * 60)
LAST_LEVEL = 8


@dataclass(frozen=True, slots=True)
class Sort:
    """Numbers of one sort. Units: all amounts are in `unit`, or in the kind's base unit where it is "".

    larger: the unit written in front of it. grain: what starts are multiples of. crossed: landmarks worth a stop, the
    largest first. least: where counts begin. back: whether the class counts backwards with them. later: how much later
    a class comes to them than to the first of their kind, in points of goodness.
    """

    kind: Kind
    grain: Fraction
    steps: tuple[Fraction, ...]
    crossed: tuple[Fraction, ...]
    largest: Fraction
    unit: str = ""
    larger: str = ""
    least: Fraction = Fraction(0)
    back: bool = True
    later: int = 0

    @property
    def size(self) -> Fraction:
        """What one is, in the base unit."""
        return UNITS[self.unit].size if self.unit else Fraction(1)

    @property
    def goes_below_zero(self) -> bool:
        return self.least < 0

    @property
    def origin(self) -> Fraction:
        """What counts begin at, if at nothing else."""
        return max(self.least, Fraction(0))

    def written(self, amount: Fraction) -> str | Fraction:
        """An amount as it is typed; exact where it needs no unit."""
        if not self.unit:
            return amount
        if self.larger:
            many, amount = divmod(amount, UNITS[self.larger].size / self.size)
            ahead = f"{many} {self.larger}"
            return f"{ahead} {_number(amount)} {self.unit}" if many and amount else ahead if many else self._one(amount)
        return self._one(amount)

    def _one(self, amount: Fraction) -> str:
        return f"{_number(amount)} {self.unit}"


def _number(amount: Fraction) -> str:
    whole, rest = divmod(amount, 1)
    return f"{whole} {rest}" if whole and rest else str(rest or whole)


@lru_cache(maxsize=128)
def sorts_of(kind: Kind, level: int, style: Style, system: str) -> tuple[Sort, ...]:
    """The sorts of numbers of a kind that a class of this level counts with, its everyday ones first; () before it does.

    system: the system of units that the school measures in; the other one comes second.
    """
    found = {
        Kind.WHOLE: _whole,
        Kind.DECIMAL: _decimals,
        Kind.FRACTION: _fractions,
        Kind.LENGTH: _measures,
        Kind.MASS: _measures,
        Kind.CAPACITY: _measures,
        Kind.CLOCK: _clock,
        Kind.ELAPSED: _elapsed,
    }
    if kind == Kind.MONEY:
        return tuple(_money(level, style))
    sorts = list(found[kind](kind, level))
    return tuple(sorted(sorts, key=lambda sort: bool(sort.unit) and UNITS[sort.unit].system not in (None, system)))


def below_zero(level: int) -> tuple[Sort, ...]:
    """Whole numbers on both sides of zero."""
    if level < BELOW_ZERO_FROM:
        return ()
    return (_sort(Kind.WHOLE, "1", "4 6 5 3 7 8 9 12 15 20 25 2 10", "100 10", 200, least=-200),)


# By level from kindergarten on; the last line stands for all that follow.
_WHOLE_STEPS = (
    "1",
    "10 1 2",
    "10 5 100 2 25 20 50 3 4 1",
    "4 6 3 8 5 9 7 25 15 50 20 11 12 2 10 100 30 40",
    "6 8 7 9 12 15 25 11 50 40 75 125 150 99 250 500 1000 10 100",
)
# By tens and fives a class counts from tens and fives before it does from anywhere (1.NBT.C.5, 2.NBT.A.2).
_FROM_MULTIPLES = {0: ("10", "5"), 1: ("5",)}
_WHOLE_LARGEST = (100, 120, 1000, 1000, 1_000_000)


def _whole(kind: Kind, level: int) -> Iterator[Sort]:
    at = min(level, len(_WHOLE_LARGEST) - 1)
    crossed, largest, back = "100000 10000 1000 100 10", _WHOLE_LARGEST[at], level > 0
    yield _sort(kind, "1", _WHOLE_STEPS[at], crossed, largest, back=back)
    for step in _FROM_MULTIPLES.get(level, ()):
        yield _sort(kind, step, step, crossed, largest, back=back)


def _decimals(kind: Kind, level: int) -> Iterator[Sort]:
    least = -20 if level >= BELOW_ZERO_FROM else 0
    if level >= 4:
        yield _sort(kind, "1/10", "3/10 4/10 2/10 6/10 7/10 5/10 9/10 8/10 1/10 12/10", "10 1", 100, least=least)
        yield _sort(kind, "1/100", "25/100 5/100 15/100 9/100 4/100 1/100 75/100 11/100", "10 1", 100, least=least)
    if level >= 5:
        yield _sort(kind, "1/1000", "125/1000 5/1000 25/1000 4/1000 1/1000", "1 1/10 1/100", 10, least=least)


# Of 3.NF: no others. The parts a class knows best first, with what it counts by, and how much later it comes to them.
_FIRST_BOTTOMS = (4, 3, 8, 2, 6)
_FRACTIONS = (
    (4, "3 1 5", 0),
    (3, "2 1 4", 6),
    (8, "3 1 5", 11),
    (2, "1 3 5", 6),
    (10, "3 1 7", 12),
    (6, "5 1 7", 13),
    (5, "2 3 1 4", 14),
    (12, "5 1 7", 17),
    (100, "1 3 11 9", 18),
)


def _fractions(kind: Kind, level: int) -> Iterator[Sort]:
    least = -10 if level >= BELOW_ZERO_FROM else 0
    for bottom, tops, later in _FRACTIONS:
        if level > 3 or (level == 3 and bottom in _FIRST_BOTTOMS):
            counted = tops.split() if level > 3 else ["1"]
            steps = " ".join(f"{top}/{bottom}" for top in counted)
            yield _sort(kind, f"1/{bottom}", steps, "10 1", 20, least=least, back=level > 3, later=later)


def _measures(kind: Kind, level: int) -> Iterator[Sort]:
    for levels, of_kind, unit, larger, grain, steps, crossed, largest in _MEASURES:
        if of_kind == kind and level in levels:
            yield _sort(kind, grain, steps, crossed, largest, unit=unit, larger=larger, back=level > 1)


_ON = LAST_LEVEL + 1
# At which levels, in which unit: grain, steps, what is worth crossing, the largest.
_MEASURES = (
    (range(1, 4), Kind.LENGTH, "in", "", "1", "1 2 3 6 4 5 10", "12", 100),
    (range(1, 4), Kind.LENGTH, "cm", "", "1", "1 5 10 2 20 25", "100 10", 100),
    (range(2, 5), Kind.LENGTH, "ft", "", "1", "3 2 5 4 10 6", "100 10", 100),
    (range(2, 5), Kind.LENGTH, "m", "", "1", "5 2 10 3 20", "100 10", 100),
    (range(4, _ON), Kind.LENGTH, "in", "ft", "1", "9 8 6 15 10 4 18", "12", 600),
    (range(4, _ON), Kind.LENGTH, "cm", "m", "1", "25 40 35 20 75 15", "100", 2000),
    (range(3, _ON), Kind.LENGTH, "in", "", "1/4", "1/4 1/2 3/4", "10 1", 20),
    (range(4, _ON), Kind.LENGTH, "in", "", "1/8", "1/8 3/8", "10 1", 20),
    (range(3, _ON), Kind.MASS, "g", "", "10", "50 100 250 200 150 20 500", "1000 100", 5000),
    (range(3, 5), Kind.MASS, "kg", "", "1", "2 5 3 4 10 6 20", "100 10", 200),
    (range(4, _ON), Kind.MASS, "oz", "lb", "1", "12 6 10 4 8 20", "16", 400),
    (range(4, _ON), Kind.MASS, "g", "kg", "50", "250 400 150 600 350", "1000", 20_000),
    (range(4, _ON), Kind.MASS, "lb", "", "1/4", "1/2 1/4 3/4", "10 1", 20),
    (range(5, _ON), Kind.MASS, "lb", "", "1/8", "1/8 3/8", "10 1", 20),
    (range(3, 5), Kind.CAPACITY, "L", "", "1", "2 5 3 4 10 6 20", "100 10", 200),
    (range(4, _ON), Kind.CAPACITY, "fl oz", "cup", "1", "6 4 12 10", "8", 300),
    (range(4, _ON), Kind.CAPACITY, "mL", "L", "50", "250 400 150 200 350", "1000", 20_000),
    (range(4, _ON), Kind.CAPACITY, "cup", "", "1/4", "1/2 1/4 3/4", "10 1", 20),
)

_CLOCK_STEPS = {1: "30 60", 2: "5 10 15 20 25 30", 3: "15 20 25 10 12 8 35 45 6 40 7"}


def _clock(kind: Kind, level: int) -> Iterator[Sort]:
    if level:
        steps, grain = _CLOCK_STEPS[min(level, 3)], {1: "30", 2: "5"}.get(level, "1")
        yield _sort(kind, grain, steps, "720 60", 20 * 60, least=MORNING, back=level > 2)


def _elapsed(kind: Kind, level: int) -> Iterator[Sort]:
    if level > 2:
        yield _sort(kind, "5", "15 20 25 10 45 35 40", "60", 20 * 60, unit="min", larger="h", least=60)


_MONEY_STEPS = {2: "5 10 25 100 50 1 20", 3: "25 5 15 50 20 35 75 10", 4: "35 45 75 15 25 65 125 150"}


def _money(level: int, style: Style) -> Iterator[Sort]:
    """Amounts in hundredths of the main unit; of a currency without small coins, in its own."""
    if level > 1:
        steps = [Fraction(step) for step in _MONEY_STEPS[min(level, 4)].split()]
        one = Fraction(max(10 ** currency_named(style.currency, "en").digits, 100), 100)
        crossed = tuple(one * Fraction(many) for many in (1000, 100))
        yield Sort(
            Kind.MONEY, one * (1 if level > 2 else 5), tuple(one * step for step in steps), crossed, one * 10_000
        )


def _sort(
    kind: Kind,
    grain: str,
    steps: str,
    crossed: str,
    largest: int,
    *,
    unit: str = "",
    larger: str = "",
    least: Fraction | int = 0,
    back: bool = True,
    later: int = 0,
) -> Sort:
    by, over = (tuple(Fraction(text) for text in texts.split()) for texts in (steps, crossed))
    return Sort(kind, Fraction(grain), by, over, Fraction(largest), unit, larger, Fraction(least), back, later)
