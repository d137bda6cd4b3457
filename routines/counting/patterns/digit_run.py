"""Digit run: a digit or a part goes up or down by the same amount from each term to the next in its line.

Plain differences, no carrying (EXACT 6). How long it holds is worked out by the readings.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from ..claims import DigitRunClaim, stated
from ..grid import ALONG, Along, Grid
from ..results import Pattern, Verdict
from .digit import named_by, reading_of, readings
from .going_on import first_break, last_break
from .lines import Lines, lines_of
from .readings import Reading


def find(grid: Grid) -> Iterator[Pattern]:
    for named, reading in readings(grid):
        values = reading.upto(grid.terms)
        for along in ALONG:
            lines = lines_of(grid, along)
            change = _first_change(values, lines) if lines.longest >= 3 else None
            if change and _runs(values, lines, change):
                claim = DigitRunClaim(*named, along, change)
                # A line of one cell is no step, and shows nothing where the part is not written.
                groups = tuple([line for line in lines.in_view if values[line[0]] is not None])
                yield Pattern.of(claim, groups, _break_beyond(reading, lines, change, grid.terms))


def completed(claim: DigitRunClaim, grid: Grid) -> Iterator[DigitRunClaim]:
    for named in named_by(claim, grid):
        for along in ALONG if claim.along is None else (claim.along,):
            change = claim.change
            if change is None:
                change = _first_change(reading_of(named, grid).upto(grid.terms), lines_of(grid, along)) or 0
            yield DigitRunClaim(*named, along, change)


def judge(claim: DigitRunClaim, grid: Grid) -> Verdict:
    along: Along = stated(claim.along)
    reading, lines, change = reading_of(claim, grid), lines_of(grid, along), stated(claim.change)
    wrong = [
        (n, later) for line in lines.in_view for n, later in pairwise(line) if reading.differs(later, later - n, change)
    ]
    last = last_break(reading, lines.later_pairs(1, 0), lines.stride, change)
    true_from = None if last is None else max(1, last - lines.stride + 1)
    if wrong:
        return Verdict.not_so(min(wrong, key=max), true_from)
    seen = lines.longest >= 3 and change != 0
    return Verdict.so(seen, _break_beyond(reading, lines, change, grid.terms), true_from)


def _first_change(values: Sequence[int | None], lines: Lines) -> int | None:
    for line in lines.in_view:
        if len(line) >= 2:
            before, now = values[line[0]], values[line[1]]
            return None if before is None or now is None else now - before
    return None


def _runs(values: Sequence[int | None], lines: Lines, change: int) -> bool:
    for line in lines.in_view:
        read = values[line[0] : line[-1] + 1 : lines.stride]
        for before, now in pairwise(read):
            if before is None or now is None or now - before != change:
                return False
    return True


def _break_beyond(reading: Reading, lines: Lines, change: int, terms: int) -> int | None:
    return first_break(reading, lines.later_pairs(1, terms), lines.stride, change)
