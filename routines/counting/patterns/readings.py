"""What a child reads off a count: the digit at a place, a part, a digit sum, a remainder.

A reading gives a whole number for every term (None where a part is not written) and knows, for terms far past the
view, the first at which two terms a fixed gap apart stop differing by a given change. The terms asked about then lie
on one side of zero (`sides` splits them), because what is written is read from |value|.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from fractions import Fraction
from itertools import chain
from math import ceil, lcm

from ..count import Count
from ..errors import CountError
from ..kinds.measure import Measure
from ..kinds.money import Money
from .lines import Progression
from .windows import first_in_window

Value = int | Fraction

DIGIT_SUM_REACH = 200_000


class BeyondReach(CountError):
    """Digit sums that stay the same for longer than they are followed."""

    def __init__(self) -> None:
        super().__init__("family", "These digit sums stay the same for longer than we look; choose a smaller step.")

    def __reduce__(self) -> tuple[type[CountError], tuple[str, str]]:
        return CountError, (self.field, self.message)


class Reading(ABC):
    """One way to read the terms of one count."""

    reads_sign = False
    may_be_missing = False

    def __init__(self, count: Count) -> None:
        self.count = count

    @abstractmethod
    def at(self, n: int) -> int | None:
        """What is read off the n-th term."""

    def upto(self, terms: int) -> list[int | None]:
        """What is read off the terms 1 to `terms`, with a None in front so that it is indexed by term number."""
        return [None, *map(self.at, range(1, terms + 1))]

    def shown(self, value: int) -> Value:
        """What a claim says for a reading."""
        return value

    def differs(self, n: int, gap: int, change: int) -> bool:
        """Whether the n-th term does not read `change` more than the one `gap` terms before it."""
        now, before = self.at(n), self.at(n - gap)
        return now is None or before is None or now - before != change

    @abstractmethod
    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        """Give the first of these terms that `differs`, all of them and those before on one side of zero."""

    def last_miss(self, terms: Progression, gap: int, change: int) -> int:
        """Give the last of these terms that `differs`, 0 if none does; they end, and lie on one side of zero."""
        assert terms.end is not None
        for n in range(terms.first + (terms.end - 1 - terms.first) // terms.by * terms.by, 0, -terms.by):
            if n >= terms.first and self.differs(n, gap, change):
                return n
        return 0

    def settled(self, zero: int | None) -> int:
        """From which term on the readings come again for ever in the same way, `zero` being the first across zero."""
        return zero or 1


class PlaceDigit(Reading):
    """The digit of |value| at a place of the base unit: floor(|v| / 10^place) mod 10.

    Source: proof - with unit = 10^place and a gap worth q*unit + r (0 <= r < unit), the digit goes up by q, and by one
    more exactly where |v| mod unit >= unit - r; so the terms that differ lie in windows of |v| mod unit, and, where
    a digit must not pass 9 or 0, in a window of |v| mod 10*unit.
    """

    def __init__(self, count: Count, place: int) -> None:
        super().__init__(count)
        fine = 10 ** max(0, -place)
        self._times = lcm(count.scale, fine) // count.scale
        self._unit: int = count.scale * self._times * 10 ** max(0, place) // fine

    def at(self, n: int) -> int:
        return abs(self.count.scaled(n)) * self._times // self._unit % 10

    def upto(self, terms: int) -> list[int | None]:
        start, step, unit = self.count.scaled_start * self._times, self.count.scaled_step * self._times, self._unit
        return [None, *[abs(v) // unit % 10 for v in range(start, start + terms * step, step)]]

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        j = self._steps_to_miss(terms.first, terms.by, gap, change)
        return None if j is None else _within(terms, j)

    def last_miss(self, terms: Progression, gap: int, change: int) -> int:
        assert terms.end is not None
        last = terms.first + (terms.end - 1 - terms.first) // terms.by * terms.by
        j = self._steps_to_miss(last, -terms.by, gap, change)
        n = 0 if j is None else last - j * terms.by
        return n if n >= terms.first else 0

    def _steps_to_miss(self, first: int, by: int, gap: int, change: int) -> int | None:
        size = abs(self.count.scaled(first)) * self._times
        size_before = abs(self.count.scaled(first - gap)) * self._times
        if size_before > size:  # towards zero: the later term is the smaller one
            lower, up = size, -change
        else:
            lower, up = size_before, change
        outward = self.count.scaled(first) * self.count.scaled_step >= 0
        step = abs(self.count.scaled_step) * self._times * by * (1 if outward else -1)
        windows = self._windows(abs(size - size_before), up)
        steps = [j for m, low, high in windows if (j := first_in_window(lower, step, m, low, high)) is not None]
        return min(steps, default=None)

    def _windows(self, gap: int, up: int) -> list[tuple[int, int, int]]:
        """The windows (modulus, low, high) of the smaller size in which the digit does not go up by `up`."""
        unit = self._unit
        if abs(up) > 9:
            return [(1, 0, 0)]
        q, rest = divmod(gap, unit)
        windows = []
        if (q - up) % 10 == 0:
            if rest:
                windows.append((unit, unit - rest, unit - 1))
        elif (q + 1 - up) % 10 == 0:
            windows.append((unit, 0, unit - rest - 1))
        else:
            return [(1, 0, 0)]
        if up > 0:
            windows.append((10 * unit, (10 - up) * unit, 10 * unit - 1))
        elif up < 0:
            windows.append((10 * unit, 0, -up * unit - 1))
        return windows


class Part(Reading):
    """A part as it is written: the inches, the minutes, the top number.

    Source: proof - when the value grows by the larger unit (the whole, the foot; on a clock once round), each part of
    |value| stays or grows by an amount that depends only on where the value stands within that unit. So after N
    terms worth whole units a difference of two parts grows evenly from turn to turn: if it is right in two turns, it
    is right in all of them that keep clear of zero. Near zero and where the sign changes every term is looked at.
    """

    may_be_missing = True

    def __init__(self, count: Count, name: str) -> None:
        super().__init__(count)
        if name not in count.part_names():
            names = ", ".join(count.part_names())
            raise CountError("part", f"Name a part of these numbers: {names}." if names else "Name a place instead.")
        self.name = name
        self.reads_sign = count.wrap is not None
        self._known: dict[int, int | None] = {}
        self._unit = larger_unit(count)

    def at(self, n: int) -> int | None:
        if n in self._known:
            return self._known[n]
        value = self._known[n] = self.count.parts(n).get(self.name)
        return value

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        look = self._look(terms.by, gap)
        total = look if terms.end is None else max(0, -(-(terms.end - terms.first) // terms.by))
        for j in chain(range(min(look, total)), range(max(look, total - look), total)):
            if self.differs(terms.first + j * terms.by, gap, change):
                return terms.first + j * terms.by
        return None

    def last_miss(self, terms: Progression, gap: int, change: int) -> int:
        assert terms.end is not None
        total = -(-(terms.end - terms.first) // terms.by)
        kept = max(0, total - self._look(terms.by, gap))
        return super().last_miss(terms._replace(first=terms.first + kept * terms.by), gap, change)

    def settled(self, zero: int | None) -> int:
        if self.reads_sign:
            return 1
        first = zero or 1
        missing = self._unit - abs(self.count.value(first))
        return first + max(0, ceil(missing / abs(self.count.step)))

    def _look(self, by: int, gap: int) -> int:
        """How many terms, each `by` after the last, reach clear of zero and then through two turns."""
        worth = abs(self.count.step) * by
        return ceil((self._unit + abs(self.count.step) * gap) / worth) + 1 + 2 * (self._unit / worth).numerator


class DigitSum(Reading):
    """The sum of the digits of |value|, for whole numbers.

    Source: proof that the search ends - where the digit sum is the same after a gap worth e, adding e carries s(e)/9
    times, s(e) being its digit sum; that is at most as often as e has digits, E. Going past a multiple of 10^M carries
    at least M - E times, so beyond M = 2E such a passing breaks the claim. Only lines that always begin just at these
    multiples could escape. Then a line's worth divides a power of ten, the lower digits come again after so many lines,
    and the higher ones change inside no line: if eleven such turns show no break (one of them would, were a multiple
    of ten turns passed inside a line), none comes.
    """

    def at(self, n: int) -> int:
        return sum(map(int, str(abs(self.count.scaled(n)))))

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        turn = self._turn(terms.by)
        reach = DIGIT_SUM_REACH if turn is None else min(DIGIT_SUM_REACH, 11 * turn)
        total = None if terms.end is None else max(0, -(-(terms.end - terms.first) // terms.by))
        most = reach if total is None else min(reach, total)
        for n in range(terms.first, terms.first + most * terms.by, terms.by):
            if self.differs(n, gap, change):
                return n
        if most == total or (turn is not None and reach == 11 * turn):
            return None
        raise BeyondReach

    def _turn(self, by: int) -> int | None:
        """After how many lines of `by` terms the lower digits come again, if a line is worth part of a power of ten."""
        worth = abs(self.count.scaled_step) * by
        power = next((10**m for m in range(1, 40) if 10**m % worth == 0), None)
        return None if power is None or by == 1 else power // worth


class Remainder(Reading):
    """The remainder v - m*floor(v/m), below zero too.

    Source: proof - two terms a gap apart leave the same remainder exactly when the gap's worth is a multiple of m,
    whatever the terms: one pair decides for all.
    """

    reads_sign = True

    def __init__(self, count: Count, modulus: Fraction) -> None:
        super().__init__(count)
        self.modulus = modulus
        if count.wrap is not None and (count.wrap / modulus).denominator != 1:
            raise CountError(
                "modulus", f"Choose minutes that go evenly into {count.wrap // 60} hours, such as 15 or 60."
            )
        self.scale = lcm(count.scale, modulus.denominator)
        self.turn = modulus.numerator * (self.scale // modulus.denominator)
        self._times = self.scale // count.scale
        self._shown: dict[int, Fraction] = {}

    @property
    def period(self) -> int:
        """After how many consecutive terms the remainders first come again."""
        return abs((self.modulus / self.count.step).numerator)

    def at(self, n: int) -> int:
        return self.count.scaled(n) * self._times % self.turn

    def upto(self, terms: int) -> list[int | None]:
        start, step, turn = self.count.scaled_start * self._times, self.count.scaled_step * self._times, self.turn
        return [None, *[v % turn for v in range(start, start + terms * step, step)]]

    def shown(self, value: int) -> Fraction:
        if value not in self._shown:
            self._shown[value] = Fraction(value, self.scale)
        return self._shown[value]

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        return _within(terms, 0) if self.differs(terms.first, gap, change) else None

    def settled(self, zero: int | None) -> int:
        return 1


def larger_unit(count: Count) -> Fraction:
    """The amount after which the smaller parts of a written value come again: a whole, a foot, once round a clock."""
    form = count.form
    if count.wrap is not None:
        return Fraction(count.wrap)
    if isinstance(form, Measure):
        return (form.large or form.small).size
    return Fraction(10**form.currency.digits) if isinstance(form, Money) else Fraction(1)


def places(count: Count, terms: int) -> tuple[int, ...]:
    """The places whose digits are looked at, coarser first; none for fractions, measures and clocks."""
    if count.kind not in ("whole", "decimal", "money"):
        return ()
    largest = max(abs(count.scaled_start), abs(count.scaled(terms))) // count.scale
    finest = 0
    while 10**finest % count.scale:
        finest += 1
    return tuple(range(len(str(largest)) - 1, -finest - 1, -1))


def _within(terms: Progression, j: int) -> int | None:
    n = terms.first + j * terms.by
    return n if terms.end is None or n < terms.end else None
