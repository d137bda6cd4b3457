"""Will it appear? Where a value stands in a count that goes on for ever, and how to get there through the grid."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..errors import CountError
from ..grid import Grid
from .clock import part_of_day, since_midnight, turn_of
from .meeting import meet
from .routes import Move, Route, routes_to

__all__ = ["Location", "Move", "Route", "locate"]


@dataclass(frozen=True, slots=True)
class Location:
    """Whether and where a value is counted, with its neighbours and two or three ways to it.

    `row` and `column` are the place in the grid grown just to hold it. `before` and `after` are the values counted
    just before and after it; `before` is None ahead of the first term. On a clock `turn` says which time round the
    clock the count is on (1 until the hands have gone all the way round) and `day_part` names the part of the day, in
    English; elsewhere both are None. `half_of_day`: the value was asked for as a.m. or p.m. `jumps` is the number of whole
    jumps from the first term to the last one before or at the value, None where the count goes away from it; `distance`
    is how far the value is ahead of the first term, in the counting direction.

    Units: values are in the kind's base unit; positions, rows and columns count from 1.
    """

    value: Fraction
    appears: bool
    n: int | None
    row: int | None
    column: int | None
    before: Fraction | None
    after: Fraction
    jumps: int | None
    distance: Fraction
    half_of_day: bool
    routes: tuple[Route, ...] = ()
    turn: int | None = None
    day_part: str | None = None


FARTHEST = 10**12
"""So far from zero a number may be looked for: a thousand times as far as any count goes in view."""


def locate(grid: Grid, value: Fraction | int | str) -> Location:
    """Say whether `value` is counted if the count goes on, and where.

    On a clock a time typed with a.m. or p.m. is met in that half of the day only.
    Units: a number is in the base unit; typed text is read in the count's own kind and style.
    Raises: CountError on `value` for what is no value of this kind.

    >>> from routines.counting.count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="58", step="6", terms=20), line_length=5)
    >>> here = locate(grid, 130)
    >>> here.n, here.row, here.column
    (13, 3, 3)
    >>> nowhere = locate(grid, 80)
    >>> nowhere.appears, int(nowhere.before), int(nowhere.after)
    (False, 76, 82)
    """
    count = grid.count
    met = meet(count, *_exact(grid, value))
    row, column = grid.place(met.n) if met.n is not None else (None, None)
    turns = count.wrap is not None and met.n is not None
    return Location(
        value=met.value,
        appears=met.n is not None,
        n=met.n,
        row=row,
        column=column,
        before=met.before,
        after=met.after,
        jumps=met.jumps,
        distance=met.distance,
        half_of_day=met.half_of_day,
        routes=routes_to(grid, met.n) if met.n is not None else (),
        turn=turn_of(count, met.n) if met.n is not None and turns else None,
        day_part=part_of_day(since_midnight(count, count.value(met.n))) if met.n is not None and turns else None,
    )


def _exact(grid: Grid, value: Fraction | int | str) -> tuple[Fraction, bool]:
    """The value, and whether it was typed as a time with a.m. or p.m."""
    if isinstance(value, str):
        typed = grid.count.typed(value)
        return typed.value, typed.halves
    if isinstance(value, bool) or not isinstance(value, (int, Fraction)):
        raise CountError("value", "nothing-to-look-for")
    if not -FARTHEST <= value <= FARTHEST:
        raise CountError("value", "too-far-to-look-for")
    if grid.count.wrap is not None and Fraction(value).denominator != 1:
        raise CountError("value", "time-not-whole")
    return Fraction(value), False
