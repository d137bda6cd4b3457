"""What a child reads off a count: the digit at a place, a part; other families bring readings of their own.

A reading gives a whole number for every term (None where a part is not written) and knows, for terms far past the
view, the first at which two terms a fixed gap apart stop differing by a given change. The terms asked about then lie
on one side of zero (`sides` splits them), because what is written is read from |value|.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterator
from fractions import Fraction
from functools import lru_cache
from itertools import chain
from math import ceil, gcd, lcm

from ..claims import no_such_part
from ..count import Count
from ..kinds.measure import Measure
from ..kinds.money import Money
from ..kinds.names import Kind
from .lines import Progression
from .windows import first_in_window

Value = int | Fraction


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


class Wheel(Reading):
    """The whole units in |value|, turning back to 0 after `turn` of them (None: never): a digit, the inches, the feet.

    Source: proof - for a gap worth q*unit + r (0 <= r < unit), the reading goes up by q, and by one more exactly where
    |v| mod unit >= unit - r; so the terms that differ lie in windows of |v| mod unit, and, where a reading must not turn
    back, in a window of |v| mod turn*unit.
    """

    def __init__(self, count: Count, unit: Fraction, turn: int | None) -> None:
        super().__init__(count)
        self._times = lcm(count.scale, unit.denominator) // count.scale
        self._unit: int = count.scale * self._times * unit.numerator // unit.denominator
        self._turn = turn

    def at(self, n: int) -> int:
        units = abs(self.count.scaled(n)) * self._times // self._unit
        return units if self._turn is None else units % self._turn

    def upto(self, terms: int) -> list[int | None]:
        start, step, unit = self.count.scaled_start * self._times, self.count.scaled_step * self._times, self._unit
        units = [abs(v) // unit for v in range(start, start + terms * step, step)]
        return [None, *units] if self._turn is None else [None, *[u % self._turn for u in units]]

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        j = self._steps_to_miss(terms.first, terms.by, gap, change)
        return None if j is None else within(terms, j)

    def last_miss(self, terms: Progression, gap: int, change: int) -> int:
        assert terms.end is not None
        last = terms.first + (terms.end - 1 - terms.first) // terms.by * terms.by
        j = self._steps_to_miss(last, -terms.by, gap, change)
        n = 0 if j is None else last - j * terms.by
        return n if n >= terms.first else 0

    def size(self, n: int) -> int:
        """What is read off the n-th term before it turns back: |value|, in the parts that `unit` counts."""
        return abs(self.count.scaled(n)) * self._times

    def _steps_to_miss(self, first: int, by: int, gap: int, change: int) -> int | None:
        size, size_before = self.size(first), self.size(first - gap)
        if size_before > size:  # the later term is the smaller one
            lower, up = size, -change
        else:
            lower, up = size_before, change
        step = (self.size(first) - self.size(first - 1)) * by
        windows = self._windows(abs(size - size_before), up)
        steps = [j for m, low, high in windows if (j := first_in_window(lower, step, m, low, high)) is not None]
        return min(steps, default=None)

    def _windows(self, gap: int, up: int) -> list[tuple[int, int, int]]:
        """The windows (modulus, low, high) of the smaller size in which the digit does not go up by `up`."""
        unit, turn = self._unit, self._turn
        q, rest = divmod(gap, unit)
        if turn is None:
            without, carried = q == up, q + 1 == up
        else:
            without, carried = (q - up) % turn == 0, (q + 1 - up) % turn == 0
        windows = []
        if not (without or carried) or (turn is not None and abs(up) >= turn):
            return [(1, 0, 0)]
        if not carried:
            windows += [(unit, unit - rest, unit - 1)] if rest else []
        elif not without:
            windows.append((unit, 0, unit - rest - 1))
        if turn is not None and up > 0:
            windows.append((turn * unit, (turn - up) * unit, turn * unit - 1))
        elif turn is not None and up < 0:
            windows.append((turn * unit, 0, -up * unit - 1))
        return windows


class PlaceDigit(Wheel):
    """The digit of |value| at a place of the base unit: floor(|v| / 10^place) mod 10."""

    def __init__(self, count: Count, place: int) -> None:
        super().__init__(count, Fraction(10) ** place, 10)


class ClockPart(Wheel):
    """The hours or the minutes of a clock, from `lowest` up: they turn back in the same way before the start of a day."""

    reads_sign = True

    def __init__(self, count: Count, minutes: int, turn: int, lowest: int) -> None:
        super().__init__(count, Fraction(minutes), turn)
        self._minutes, self._around, self._lowest = minutes, turn, lowest

    def size(self, n: int) -> int:
        return self.count.scaled(n) - self._lowest * self._minutes

    def at(self, n: int) -> int:
        return self.size(n) // self._minutes % self._around + self._lowest

    def upto(self, terms: int) -> list[int | None]:
        return Reading.upto(self, terms)

    def settled(self, zero: int | None) -> int:
        return 1


class Part(Reading):
    """A part as it is written: the top number, the bottom one, the whole.

    Source: proof - when the value grows by the larger unit (the whole, the inch), each part of
    |value| stays or grows by an amount that depends only on where the value stands within that unit. So after N
    terms worth whole units a difference of two parts grows evenly from turn to turn: if it is right in two turns, it
    is right in all of them that keep clear of zero. Near zero and where the sign changes every term is looked at.
    """

    may_be_missing = True

    def __init__(self, count: Count, name: str, terms: int) -> None:
        super().__init__(count)
        self.name = name
        self._written = written_parts(count)
        self._unit = larger_unit(count)
        # A whole or a top that is not written because it is 0 counts as 0 where some count in view writes one (EXACT 20).
        mixed = count.style.shape == "mixed" and name in ("whole", "top")
        self._nothing = mixed and is_written(count, name, terms)

    def at(self, n: int) -> int | None:
        number = self._written.of(n).get(self.name)
        if number is not None or not self._nothing:
            return number
        size, unit = abs(self.count.scaled(n)) * self._unit.denominator, self._unit.numerator * self.count.scale
        nothing = size < self._unit.denominator * self.count.scale if self.name == "whole" else size % unit == 0
        return 0 if nothing else None

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
        first = zero or 1
        missing = self._unit - abs(self.count.value(first))
        return first + max(0, ceil(missing / abs(self.count.step)))

    def _look(self, by: int, gap: int) -> int:
        """How many terms, each `by` after the last, reach clear of zero and then through two turns."""
        worth = abs(self.count.step) * by
        return ceil((self._unit + abs(self.count.step) * gap) / worth) + 1 + 2 * (self._unit / worth).numerator


class TopHeavyPart(Part):
    """A part of an amount that is written top-heavy beside a larger unit: the 5, the 2, the ounces of 3 lb 5/2 oz.

    Source: proof - let x be what is left of |value| past the larger unit, in the smaller one. Where x is not 0, what is
    read grows evenly with x, as steeply as x mod 1 says, so along equally spaced terms as its place in a turn says. Take
    the pairs at one place of a turn with as many larger units between them: if both terms are equally steep, all of
    those pairs differ by the same; if not, at most one is right. There are two such sorts of pairs at a place, and a
    term of at most two is x = 0: so five turns show what is not equally steep, and the first pair of each sort shows
    the rest. Nothing is looked at as many times as a ton has ounces.
    """

    def __init__(self, count: Count, name: str, terms: int, small: Fraction) -> None:
        super().__init__(count, name, terms)
        scale = lcm(count.scale, small.denominator)
        self._times = scale // count.scale
        self._small, self._large = int(small * scale), int(self._unit * scale)

    def first_miss(self, terms: Progression, gap: int, change: int) -> int | None:
        j = self._steps_to_miss(terms.first, terms.by, gap, change, _how_many(terms))
        return None if j is None else terms.first + j * terms.by

    def last_miss(self, terms: Progression, gap: int, change: int) -> int:
        total = _how_many(terms)
        assert total is not None
        last = terms.first + (total - 1) * terms.by
        j = self._steps_to_miss(last, -terms.by, gap, change, total)
        return 0 if j is None else last - j * terms.by

    def settled(self, zero: int | None) -> int:
        return (zero or 1) + 1

    def _steps_to_miss(self, first: int, by: int, gap: int, change: int, total: int | None) -> int | None:
        size, before = self._size(first), self._size(first - gap)
        value = self.count.scaled(first)
        grows = value == 0 or (value > 0) == (self.count.scaled_step * by > 0)
        step = abs(self.count.scaled_step * by) * self._times * (1 if grows else -1)
        turn = self._small // gcd(self._small, step)
        for j in range(5 * turn if total is None else min(5 * turn, total)):
            if self.differs(first + j * by, gap, change):
                return j
        later = {
            at + turn * j
            for at in range(turn)
            for j in self._first_of_each_sort(min(size, before) + at * step, turn * step, abs(size - before))
        }
        for j in sorted(later):
            if (total is None or j < total) and self.differs(first + j * by, gap, change):
                return j
        return None

    def _first_of_each_sort(self, lower: int, step: int, gap: int) -> Iterator[int]:
        """Of pairs with equally spaced smaller sizes: the first of each sort, and the first two in which x is 0."""
        rest = gap % self._large
        crossed = self._large - rest
        for low, high in ((1, crossed - 1), (crossed + 1, self._large - 1)):
            if low <= high and (j := first_in_window(lower, step, self._large, low, high)) is not None:
                yield j
        for zero in {0, crossed % self._large}:
            j = first_in_window(lower, step, self._large, zero, zero)
            if j is not None:
                yield j
                again = first_in_window(lower + (j + 1) * step, step, self._large, zero, zero)
                yield j if again is None else j + 1 + again

    def _size(self, n: int) -> int:
        return abs(self.count.scaled(n)) * self._times


def _how_many(terms: Progression) -> int | None:
    return None if terms.end is None else max(0, -(-(terms.end - terms.first) // terms.by))


class WrittenParts:
    """All parts of the terms of one count, each term looked at once, however many of its parts are read."""

    def __init__(self, count: Count) -> None:
        self._count = count
        self._known: dict[int, dict[str, int]] = {}

    def of(self, n: int) -> dict[str, int]:
        parts = self._known.get(n)
        if parts is None:
            parts = self._known[n] = self._count.parts(n)
        return parts


@lru_cache(maxsize=16)
def written_parts(count: Count) -> WrittenParts:
    """The parts of a count, kept while its grids are looked at: digits and runs read the same ones."""
    return WrittenParts(count)


@lru_cache(maxsize=256)
def is_written(count: Count, part: str, terms: int) -> bool:
    """Whether some of the counts in view write a part: 3 in, 6 in, 9 in write no feet."""
    # Measures name a unit that is 0 and not written; of "0/6 = 0" the fraction is read and not the number beside it.
    return any(part in count.parts(n) and count.span(n, part=part) is not None for n in range(1, terms + 1))


def part_reading(count: Count, name: str, terms: int) -> Reading:
    """How a part is read: whole units by counting them round, the rest by looking at what is written.

    terms: how many counts are in view.
    Raises: CountError on `part` for a part that these numbers do not have.
    """
    if name not in count.part_names():
        raise no_such_part(count.part_names())
    form = count.form
    if count.wrap is not None:
        hours = count.wrap // 60
        first = 1 if hours == 12 else 0  # a 12-hour clock begins at 1, for it writes 12 where the others write 0
        return ClockPart(count, 60, hours, first) if name == "hours" else ClockPart(count, 1, 60, 0)
    if isinstance(form, Money):
        coins = 10**form.currency.digits
        return Wheel(count, Fraction(coins), None) if name == form.main_part else Wheel(count, Fraction(1), coins)
    if isinstance(form, Measure) and form.large is not None and name == form.large.part:
        return Wheel(count, form.large.size, None)
    # Top-heavy amounts ("707/60 h") write no whole units: what is written has to be looked at.
    top_heavy = isinstance(form, Measure) and form.places is None and count.style.shape == "top-heavy"
    if isinstance(form, Measure) and top_heavy and form.large is not None:
        return TopHeavyPart(count, name, terms, form.small.size)
    if isinstance(form, Measure) and name == form.small.part and not top_heavy:
        turn = None if form.large is None else (form.large.size / form.small.size).numerator
        return Wheel(count, form.small.size, turn)
    return Part(count, name, terms)


def larger_unit(count: Count) -> Fraction:
    """The amount after which the written fraction comes again: a whole, an inch; a foot where inches are top-heavy."""
    form = count.form
    if not isinstance(form, Measure):
        return Fraction(1)
    return (form.large or form.small).size if count.style.shape == "top-heavy" else form.small.size


def places(count: Count, terms: int) -> tuple[int, ...]:
    """The places whose digits are looked at, coarser first; none for fractions, measures and clocks."""
    if count.kind not in (Kind.WHOLE, Kind.DECIMAL, Kind.MONEY):
        return ()
    largest = max(abs(count.scaled_start), abs(count.scaled(terms))) // count.scale
    finest = 0
    while 10**finest % count.scale:
        finest += 1
    return tuple(range(len(str(largest)) - 1, -finest - 1, -1))


def within(terms: Progression, j: int) -> int | None:
    """The j-th of some terms after the first, None if it is beyond their end."""
    n = terms.first + j * terms.by
    return n if terms.end is None or n < terms.end else None
