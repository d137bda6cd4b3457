"""A folded count: which cell of the page each term stands in."""

from dataclasses import dataclass, replace
from enum import StrEnum
from fractions import Fraction
from functools import lru_cache
from itertools import pairwise
from typing import Literal, NamedTuple, Self, get_args

from .count import Count, refuse_no_position
from .errors import CountError


class Fill(StrEnum):
    """How a grid is filled: rows across, columns down, or rows across from the bottom line up."""

    ACROSS = "across"
    DOWN = "down"
    ACROSS_UP = "across-up"


Along = Literal["count", "row", "column"]
ALONG: tuple[Along, ...] = get_args(Along)


class Cell(NamedTuple):
    """A written cell: the term's number, its value in the base unit, and its text."""

    n: int
    value: Fraction
    text: str


@dataclass(frozen=True, slots=True)
class Grid:
    """A count folded into lines of `line_length`: rows filled across, columns filled down, or rows upwards.

    lead: cells left empty before the first count. upto: only so many counts are on the board (None: all).
    Rows and columns are numbered from 1, from the top left of the page.

    Raises: CountError on line_length, fill, lead or n.
    """

    count: Count
    line_length: int
    fill: Fill = Fill.ACROSS
    lead: int = 0
    upto: int | None = None

    def __post_init__(self) -> None:
        if not isinstance(self.count, Count):
            raise CountError("start", "no-count")
        if not _is_whole(self.line_length) or self.line_length < 1:
            raise CountError("line_length", "no-line-length")
        if self.line_length > self.count.terms:
            raise CountError("line_length", "line-too-long", most=self.count.terms)
        if not isinstance(self.fill, Fill):
            object.__setattr__(self, "fill", read_fill(self.fill))
        if not _is_whole(self.lead) or not 0 <= self.lead < self.line_length:
            raise CountError("lead", "lead-out-of-range", most=self.line_length - 1)
        if self.upto is not None and (not _is_whole(self.upto) or self.upto < 1):
            raise CountError("n", "nothing-shown")

    @property
    def terms(self) -> int:
        """The number of terms in view."""
        return self.count.terms if self.upto is None else self.upto

    @property
    def fill_lines(self) -> int:
        """How many lines the fill has begun."""
        return -(-(self.lead + self.terms) // self.line_length)

    @property
    def rows(self) -> int:
        return self.line_length if self.fill is Fill.DOWN else self.fill_lines

    @property
    def columns(self) -> int:
        return self.fill_lines if self.fill is Fill.DOWN else self.line_length

    def place(self, n: int) -> tuple[int, int]:
        """Row and column of the n-th term; past the terms in view, in the grid grown just to hold it.

        Raises: CountError on `n` for what is no whole number from 1 on.

        >>> count = Count.parse(kind="whole", start="1", step="1", terms=12)
        >>> Grid(count, line_length=5, fill=Fill.ACROSS_UP, lead=2).place(1)
        (3, 3)
        """
        refuse_no_position(n)
        line, at = divmod(self.lead + n - 1, self.line_length)
        if self.fill is Fill.DOWN:
            return at + 1, line + 1
        if self.fill is Fill.ACROSS:
            return line + 1, at + 1
        return max(self.fill_lines - line, 1), at + 1

    def at(self, row: int, column: int) -> int | None:
        """The term in a cell; None for an empty cell or one outside the grid."""
        if not (1 <= row <= self.rows and 1 <= column <= self.columns):
            return None
        line, at = {
            Fill.ACROSS: (row - 1, column - 1),
            Fill.DOWN: (column - 1, row - 1),
            Fill.ACROSS_UP: (self.rows - row, column - 1),
        }[self.fill]
        n = line * self.line_length + at - self.lead + 1
        return n if 1 <= n <= self.terms else None

    def cells(self) -> list[list[Cell | None]]:
        """The rows of the page; None where a cell is empty."""
        page: list[list[Cell | None]] = [[None] * self.columns for _ in range(self.rows)]
        for n in range(1, self.terms + 1):
            row, column = self.place(n)
            page[row - 1][column - 1] = Cell(n, self.count.value(n), self.count.text(n))
        return page

    def lines(self, along: str) -> tuple[tuple[int, ...], ...]:
        """The terms of each line along the count, the rows or the columns: page order, each in counting order.

        A line without any count is left out.

        >>> count = Count.parse(kind="whole", start="1", step="1", terms=7)
        >>> Grid(count, line_length=3, fill=Fill.ACROSS_UP).lines("row")
        ((7,), (4, 5, 6), (1, 2, 3))
        """
        if along not in ALONG:
            raise CountError("along", "unknown-along", choices=ALONG)
        return _lines(self.terms, self.line_length, self.fill, self.lead, along)

    def cut(self, upto: int) -> Self:
        """The same fold with only the first counts on the board. Raises: CountError on `n`."""
        if not _is_whole(upto) or not 1 <= upto <= self.terms:
            raise CountError("n", "shown-out-of-range", most=self.terms)
        return replace(self, upto=upto)

    def grown(self, terms: int) -> Self:
        """The same fold when the count goes on to so many terms, beyond what a count may show."""
        return replace(self, upto=terms)


def read_fill(value: object) -> Fill:
    """A fill by its name. Raises: CountError on `fill`."""
    if not isinstance(value, str) or value not in tuple(Fill):
        raise CountError("fill", "unknown-fill", choices=tuple(Fill))
    return Fill(value)


@lru_cache(maxsize=2048)
def _lines(terms: int, length: int, fill: Fill, lead: int, along: str) -> tuple[tuple[int, ...], ...]:
    if along == "count":
        return (tuple(range(1, terms + 1)),)
    if (along == "column") == (fill is Fill.DOWN):  # lines that the fill runs along
        ends = [0, *range(length - lead, terms, length), terms]
        runs = [tuple(range(first + 1, last + 1)) for first, last in pairwise(ends) if first < last]
        return tuple(reversed(runs)) if fill is Fill.ACROSS_UP else tuple(runs)
    firsts = ((at - lead) % length + 1 for at in range(length))
    return tuple(tuple(range(first, terms + 1, length)) for first in firsts if first <= terms)


def _is_whole(value: object) -> bool:
    return isinstance(value, int) and not isinstance(value, bool)
