"""Ways to count, each a sort of numbers with a step, up or down: the counts and folds it proposes, the likeliest first.

Where a count starts and how it is folded is worked out by arithmetic, from the landmark that is to be crossed and from
the counts after which landmarks come again.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from itertools import chain, islice

from ..count import Count
from ..errors import CountError
from ..grid import Fill, Grid
from ..kinds.names import Kind
from ..standards.amounts import numbers_named
from ..standards.conditions import Facts, meets
from ..standards.features import Features
from ..standards.fitting import fit_of
from ..style import Style
from .sorts import Sort

# A board holds so many cells (EXACT 28).
MOST_CELLS = 60
LINE_LENGTHS = (5, 4, 3, 6, 10, 8, 2, 7, 9)
FEWEST_TERMS, FEWEST_LINES, MOST_LINES = 4, 2, 8
# How many counts a class says at one go; by ones it says more. Common practice, no source.
USUAL_TERMS, USUAL_BY_ONES = 20, 40
# A clock is counted on from the morning, for so many minutes at most.
CLOCK_GOES_ON = 24 * 60
PREFERRED = re.compile(r"start multiple of (?P<multiple>\d+) when step=(?P<steps>[\d|]+)")


def typed_again(count: Count, style: Style) -> Count:
    """The count that comes of typing this one's start and step as it writes them. Raises: CountError."""
    start, step = count.text(1).split(" = ")[0], count.difference_text(count.step)
    return Count.parse(
        kind=count.kind,
        start=start,
        step=f"-{step}" if count.step < 0 else step,
        terms=count.terms,
        style=style,
    )


@dataclass(frozen=True)
class Way:
    """Counting with a sort of numbers by a step, below zero for down, as `features` ask, where a standard does."""

    sort: Sort
    step: Fraction
    features: Features | None

    def may_serve(self, style: Style) -> bool:
        """Whether a standard allows this step and direction, wherever the count starts."""
        if self.features is None:
            return True
        count = self.counted(self.sort.origin, 2, style, abs(self.step))
        asked = [one for key in ("kind", "step") for one in self.features.with_key(key) if one.only_if is None]
        up = {"up": True, "down": False}
        directions = (up.get(one.value, self.step > 0) for one in self.features.with_key("direction"))
        served = count is not None and all(meets(one, Facts(count, 2)) for one in asked if one.value != "integer")
        return served and all(direction == (self.step > 0) for direction in directions)

    def grids(self, most: int, style: Style) -> Iterator[Grid]:
        """What it proposes, made and held against the standard: at most so many tries, folds and starts in turn."""
        folds, starts = self._folds(), self._starts()
        pairs = ((at, (at + turn) % len(starts)) for turn in range(len(starts)) for at in range(len(folds)))
        made: set[tuple[Fraction, int, Fill]] = set()
        for at, start in islice(pairs, most):
            length, fill = folds[at]
            terms = self._terms(starts[start], length)
            if terms and (starts[start], length, fill) not in made:
                made.add((starts[start], length, fill))
                count = self.counted(starts[start], terms, style, self.step)
                if count is not None and self._serves(count):
                    yield Grid(count, length, fill)

    def counted(self, start: Fraction, terms: int, style: Style, step: Fraction) -> Count | None:
        """The count that a teacher gets who types this start and step; None where there can be none."""
        size = self.sort.written(abs(step))
        by = size if step > 0 else f"-{size}" if isinstance(size, str) else -size
        try:
            meant = Count.parse(kind=self.sort.kind, start=self.sort.written(start), step=by, terms=terms, style=style)
            count = typed_again(meant, style)
        except CountError:
            return None
        return count if (count.start, count.step) == (meant.start, meant.step) else None

    def _serves(self, count: Count) -> bool:
        """Whether it does what the standard names, and crosses what it names, even where it only supports it."""
        if self.features is None:
            return True
        facts = Facts(count, count.terms)
        crosses = all(meets(one, facts) for one in self.features.with_key("cross"))
        fit = fit_of(self.features, facts)
        return crosses and (fit == "direct" or (fit == "support" and not self.features.is_served_directly))

    @cached_property
    def _low(self) -> Fraction:
        return max([self.sort.least, *self._limits("min", ">=", "=")])

    @cached_property
    def _high(self) -> Fraction:
        on = CLOCK_GOES_ON if self.sort.kind == Kind.CLOCK else 0
        return min([self.sort.largest + on, *self._limits("max", "<=", "=")])

    @cached_property
    def _usual(self) -> int:
        """How many counts there are, if nothing asks for fewer."""
        by_ones = abs(self.step) == 1 and self.sort.kind == Kind.WHOLE
        return int(min([Fraction(USUAL_BY_ONES if by_ones else USUAL_TERMS), *self._limits("terms", "<=", "=")]))

    def _limits(self, key: str, *signs: str) -> list[Fraction]:
        found = self.features.with_key(key) if self.features else ()
        return [Fraction(one.value.split(" ")[0]) for one in found if one.sign in signs and one.only_if is None]

    def _folds(self) -> list[tuple[int, Fill]]:
        """Lines in which landmarks line up or walk down diagonals first; short ones filled across and down in turn."""
        lengths = sorted(LINE_LENGTHS, key=self._plainness)
        turns = (Fill.ACROSS, Fill.DOWN)
        first = [(length, turns[at % 2] if length < 8 else Fill.ACROSS) for at, length in enumerate(lengths)]
        return first + [(length, turns[1 - at % 2]) for at, length in enumerate(lengths) if length < 8]

    def _plainness(self, length: int) -> int:
        """How little lines up in lines of this length; the one that a standard names comes first."""
        if self.features and self.features.hints.get("fold") == str(length):
            return -1
        period = self._period
        if length % period == 0:
            return 1 if length == period or period == 1 else 2
        return 2 if (length + 1) % period == 0 or (length - 1) % period == 0 or period % length == 0 else 3

    @cached_property
    def _period(self) -> int:
        """After how many counts the nearest landmark comes again that is not counted every time."""
        tens = (Fraction(10), Fraction(100), Fraction(1000))
        marks = tens if self.sort.kind in (Kind.WHOLE, Kind.MONEY) else self.sort.crossed
        return next((period for mark in sorted(marks) if (period := (self.step / mark).denominator) > 1), 1)

    def _starts(self) -> list[Fraction]:
        """What the standard names, where counts begin, the step, and starts from which a landmark is crossed in the middle."""
        size = abs(self.step)
        plain = [self.sort.origin, self.sort.origin + size]
        if self.step < 0:
            plain = [start + size * (self._usual - 1) for start in plain]
        ahead = [mark - self.step * many + rest for mark, many, rest in self._crossings()]
        # Below where counts begin, the first with the same rest.
        moved = [start if start >= self._low else self._low + (start - self._low) % size for start in ahead]
        inside = (start for start in chain(self._named_starts(), plain[:1], moved, plain[1:]) if start <= self._high)
        starts = list(dict.fromkeys(inside))
        multiple = self._preferred
        return [start for start in starts if start % multiple == 0] or starts if multiple else starts

    @cached_property
    def _preferred(self) -> Fraction | None:
        """Of what the standard would have starts be multiples, where it says so of this step."""
        told = PREFERRED.fullmatch(self.features.hints.get("prefer", "")) if self.features else None
        asked = told is not None and str(abs(self.step)) in told["steps"].split("|")
        return Fraction(told["multiple"]) if told and asked else None

    def _crossings(self) -> Iterator[tuple[Fraction, int, Fraction]]:
        """Landmarks with the number of jumps to them, and how far off the multiples of the step the count is there."""
        grain, size = self.sort.grain, abs(self.step)
        rests = [rest for many in (0, 1, 3, 2, 4, 7) if (rest := many * grain) < size]
        jumps = (self._usual // 2, self._usual * 3 // 4, self._usual // 3)
        for turn in range(len(rests) * 2):
            for at, mark in enumerate(self._marks()):
                yield mark, jumps[(at + turn) % len(jumps)], rests[(at + turn) % len(rests)]

    def _marks(self) -> list[Fraction]:
        """The landmarks within the limits that are worth crossing, and the next of each."""
        low = max(self._low, Fraction(0))
        near = sorted(mark for mark in self.sort.crossed if mark > 2 * abs(self.step)) or self.sort.crossed
        ahead = [(low // mark + 1 + on) * mark for on in (0, 1) for mark in near]
        zero = [Fraction(0)] if self.sort.goes_below_zero else []
        return zero + [mark for mark in ahead if mark <= self._high]

    def _named_starts(self) -> list[Fraction]:
        starts = self.features.with_key("start") if self.features else ()
        return [number for one in starts for number in numbers_named(one.value)]

    def _terms(self, start: Fraction, length: int) -> int:
        """As many counts as fit the level, the standard and the board, in full lines if they can be; 0 where none do."""
        room = (self._high - start if self.step > 0 else start - self._low) // abs(self.step) + 1
        usual = length * min(max(round(self._usual / length), FEWEST_LINES + 1), MOST_LINES)
        terms = int(min([Fraction(usual), Fraction(room), *self._limits("terms", "<=", "=")]))
        if terms >= FEWEST_LINES * length:
            terms -= terms % length
        fits = self._low <= start and length < terms >= FEWEST_TERMS and -(-terms // length) * length <= MOST_CELLS
        return terms if fits else 0
