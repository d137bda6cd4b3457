"""The lines that a claim runs along, in view and when the count goes on."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ..grid import Along, Fill, Grid


class Progression(NamedTuple):
    """Terms first, first + by, ... below `end` (None: for ever)."""

    first: int
    by: int
    end: int | None


class Lines(NamedTuple):
    """The lines along the count, the rows or the columns of a grid.

    in_view: their terms, page order, each in counting order. stride: from one term of a line to the next.
    length: of the lines that the fill runs along, which end; None where lines go on for ever. lead: cells left empty.
    """

    in_view: tuple[tuple[int, ...], ...]
    stride: int
    length: int | None
    lead: int

    @property
    def longest(self) -> int:
        return max(map(len, self.in_view))

    def later_pairs(self, k: int, after: int, only: Sequence[tuple[int, ...]] | None = None) -> list[Progression]:
        """The terms beyond `after` that have a term of their own line k cells before them, in all lines or `only` some.

        In lines that go on for ever these are all terms beyond k strides. In lines of `length` cells, each cell from
        the k-th on gives one progression; the first line begins at its lead.
        """
        least = max(after, k * self.stride) + 1
        if only is not None:
            return [self._within(line, k, after) for line in only]
        if self.length is None:
            return [Progression(least, 1, None)]
        return [
            Progression(least + (cell + 1 - self.lead - least) % self.length, self.length, None)
            for cell in range(k, self.length)
        ]

    def _within(self, line: tuple[int, ...], k: int, after: int) -> Progression:
        first = line[0] + k * self.stride
        if self.length is None:
            behind = max(0, -((first - after - 1) // self.stride))
            return Progression(first + behind * self.stride, self.stride, None)
        return Progression(max(first, after + 1), 1, self.end_of(line))

    def end_of(self, line: tuple[int, ...]) -> int | None:
        """The term after the last one that a line will hold; None for lines that go on for ever."""
        if self.length is None:
            return None
        return line[0] + self.length - (self.lead + line[0] - 1) % self.length


def axis(grid: Grid, along: Along) -> tuple[int, int | None]:
    """Stride and length of the lines along a direction of this grid."""
    if along == "count":
        return 1, None
    if (along == "column") == (grid.fill is Fill.DOWN):
        return 1, grid.line_length
    return grid.line_length, None


def lines_of(grid: Grid, along: Along) -> Lines:
    """The lines along "count", "row" or "column"."""
    return Lines(grid.lines(along), *axis(grid, along), grid.lead)


def lines_named(grid: Grid, along: Along, numbers: tuple[int, ...]) -> list[tuple[int, ...]] | None:
    """The lines with these numbers on the page (1-based); None if one of them is not in view."""
    axis_index = 0 if along == "row" else 1
    by_number = {grid.place(line[0])[axis_index]: line for line in grid.lines(along)}
    if any(number not in by_number for number in numbers):
        return None
    return [by_number[number] for number in numbers]
