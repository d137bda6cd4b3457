"""One jump of a count, as the rules look at it: the count just said and the one that is due."""

from fractions import Fraction
from functools import cached_property
from typing import cast

from ..count import Count
from ..grid import Grid
from ..kinds.clock import DAY
from ..locate.clock import since_midnight
from .places import PlacesOfACount, is_plain, places_of_a_count

FIRST_TWO = 3


class Jump:
    """The jump of a grid's count to its `n`-th term, n >= 2.

    a, b: the count before and the one that is due; s: the step; all in the count's base unit, as is `start`.
    places: those of the count; crossing: what the jump crosses, fills and leaves of them. written_values: what the texts
    made here say, so that none has to be read again.
    """

    def __init__(self, grid: Grid, n: int, known: PlacesOfACount | None = None) -> None:
        """`known`: the places of the count, where they are at hand."""
        count = self.count = grid.count
        ready = self._ready = known or places_of_a_count(count)
        before, due = count.scaled(n - 1), count.scaled(n)
        if count.wrap is not None and min(before, due) < 0:  # a clock knows no zero: the same times some days later
            later = -(min(before, due) // (DAY * count.scale)) * DAY * count.scale
            before, due = before + later, due + later
        self.grid, self.n = grid, n
        self.a, self.b = _light(count, before), _light(count, due)
        self.s, self.start, self.places = ready.by, ready.start, ready.places
        self.crossing = ready.crossing(before, due)
        self.written_values: dict[str, Fraction] = {}

    @cached_property
    def minutes(self) -> tuple[Fraction, Fraction]:
        """The time before and the one that is due, on a clock.

        Units: minutes since midnight of the first day; a bare 12-hour start outside 7:00 to 11:59 is p.m.
        """
        return since_midnight(self.count, self.a), since_midnight(self.count, self.b)

    @cached_property
    def said(self) -> str:
        """The count before, as written."""
        return self.count.text(self.n - 1)

    @cached_property
    def due(self) -> str:
        return self.count.text(self.n)

    def how_hard(self) -> tuple[bool, Fraction | float]:
        """Whether it passes zero, and the largest place it crosses; a whole or larger unit is as hard as any above it."""
        largest = self.crossing.largest
        return self._ready.both_sides and self.a * self.b <= 0, min(largest, self._ready.unit) if largest else 0

    @property
    def counts_one_place(self) -> bool:
        """Whether it goes by one of a place: by ones, tens, hundreds, wholes, tenths, units (parts of a whole have no digits)."""
        return self._ready.by_one_place

    @cached_property
    def is_hard(self) -> bool:
        """Whether a place is crossed, filled or left; where it hardly happens in view, the first two jumps too."""
        return self.crossing.is_hard or (self.n <= FIRST_TWO and is_plain(self.count))

    def text(self, value: Fraction | int) -> str:
        """Another value, written in the style of the count."""
        text = self.count.text_of(cast("Fraction", value))
        style = self.count.style
        turn = None if self.count.wrap is None else DAY if style.halves else self.count.wrap
        self.written_values[text] = cast("Fraction", value if turn is None else value % turn)
        return text

    def words(self, value: int, language: str) -> str:
        """A whole number in words, whatever the saying style."""
        return self.count.words_of(Fraction(value), language)


def _light(count: Count, scaled: int) -> Fraction:
    """A scaled value of a count, a whole one as an int, without reducing a fraction for it."""
    whole, rest = divmod(scaled, count.scale)
    return Fraction(scaled, count.scale) if rest else cast("Fraction", whole)
