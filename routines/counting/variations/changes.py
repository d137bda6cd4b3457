"""New counts made from one that was taught: what may change without losing what the class knows."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from fractions import Fraction

from ..checking import judge
from ..claims import Claim, NeighbourClaim
from ..count import Count
from ..errors import CountError
from ..grid import Fill, Grid
from ..kinds.names import Kind
from ..style import Style
from ..written_units import written_units

LENGTHS = range(3, 13)
HANDY = ("clock", "money", "min", "g", "cm", "mL")


@dataclass(frozen=True, slots=True)
class Change:
    """A new grid, the name of the change that makes it, the numbers of the change as they are written, and what it shows."""

    name: str
    grid: Grid
    written: dict[str, str] = field(default_factory=dict)
    shows: tuple[Claim, ...] = ()


def changed(
    grid: Grid,
    *,
    start: Fraction | None = None,
    step: Fraction | None = None,
    terms: int | None = None,
    line_length: int | None = None,
    style: Style | None = None,
) -> Grid | None:
    """The grid with some of its numbers changed; None where that is no count, or the same one."""
    old = grid.count
    try:
        count = Count(
            old.kind,
            old.start if start is None else start,
            old.step if step is None else step,
            terms or old.terms,
            style or old.style,
        )
        length = min(line_length or grid.line_length, count.terms)
        new = Grid(count, length, grid.fill, grid.lead if grid.lead < length else 0)
    except CountError:
        return None
    same = (new.count, new.line_length) == (old, grid.line_length)
    return None if same else new


def is_shown(claim: Claim, grid: Grid) -> bool:
    """Whether a claim is true of a grid and can be seen in it."""
    try:
        _, judged = judge(claim, grid)
    except CountError:
        return False
    return judged.true and judged.seen


def across_the_fill(grid: Grid) -> NeighbourClaim:
    """The claim about the next count in the same place of the next line."""
    difference = grid.count.step * grid.line_length * (-1 if grid.fill is Fill.ACROSS_UP else 1)
    return NeighbourClaim("right" if grid.fill is Fill.DOWN else "down", difference)


def shown(grid: Grid, *claims: Claim) -> tuple[Claim, ...]:
    """Those of the claims that the grid shows."""
    return tuple(claim for claim in claims if is_shown(claim, grid))


def small_unit(count: Count) -> Fraction:
    """The smallest amount that children step by here.

    One part, one inch, one of the last place; of minutes, cents, grams, centimeters and milliliters fifty, ten or
    five, where the count keeps to them.
    """
    unit = finest(count)
    units = written_units(count)
    if unit != (units.small.size if units else 1):
        return unit
    handy = (50, 10, 5) if units and units.small.symbol in HANDY else (5,) if count.kind in HANDY else ()
    return next(
        (many * unit for many in handy if not count.start % (many * unit) and not count.step % (many * unit)), unit
    )


def finest(count: Count) -> Fraction:
    """The amount that every count is made of, whatever it is: one, one part, one of the last place, one unit."""
    if count.kind in (Kind.DECIMAL, Kind.FRACTION):
        return Fraction(1, count.scale)
    units = written_units(count)
    return units.small.size / count.form.counted_parts() if units else Fraction(1)


def other_lengths(grid: Grid) -> Iterator[Grid]:
    """The same count in every other line length that a board takes."""
    for length in LENGTHS if grid.count.terms > LENGTHS.start else (1, 2, 3):
        if length <= grid.count.terms and length != grid.line_length:
            yield replace(grid, line_length=length, lead=0)
