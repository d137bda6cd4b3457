"""One jump of a count, as the rules look at it: the count just said and the one that is due."""

from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from ..count import Count
from ..grid import Grid
from ..locate.clock import since_midnight


@dataclass(frozen=True)
class Jump:
    """The jump of a grid's count to its `n`-th term, n >= 2.

    Units: `a`, `b`, `s` and `start` are in the count's base unit.
    """

    grid: Grid
    n: int

    @property
    def count(self) -> Count:
        return self.grid.count

    @cached_property
    def a(self) -> Fraction:
        """The count before."""
        return self.count.value(self.n - 1)

    @cached_property
    def b(self) -> Fraction:
        """The count that is due."""
        return self.count.value(self.n)

    @cached_property
    def minutes(self) -> tuple[Fraction, Fraction]:
        """The time before and the one that is due, on a clock.

        Units: minutes since midnight of the first day; a bare 12-hour start outside 7:00 to 11:59 is p.m.
        """
        return since_midnight(self.count, self.a), since_midnight(self.count, self.b)

    @property
    def s(self) -> Fraction:
        return self.count.step

    @property
    def start(self) -> Fraction:
        return self.count.start

    @cached_property
    def said(self) -> str:
        """The count before, as written."""
        return self.count.text(self.n - 1)

    @cached_property
    def due(self) -> str:
        return self.count.text(self.n)

    def text(self, value: Fraction | int) -> str:
        """Another value, written in the style of the count."""
        return self.count.text_of(Fraction(value))

    def words(self, value: int, language: str) -> str:
        """A whole number in words, whatever the saying style."""
        return self.count.words_of(Fraction(value), language)
