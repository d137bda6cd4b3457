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
    keeps_cells: bool = False,
) -> Grid | None:
    """The grid with some of its numbers changed; None where that is no count, or the same one.

    keeps_cells: each count is compared with the one that stood in its cell, so the empty cells stay.
    """
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
        new = Grid(count, length, grid.fill, grid.lead if keeps_cells else _lead(grid, count, length))
    except CountError:
        return None
    same = (new.count, new.line_length) == (old, grid.line_length)
    return None if same else new


def _lead(old: Grid, new: Count, length: int) -> int:
    """The empty cells first with which what is round stands at the same end of the lines again; none where they mean nothing.

    A count that goes on keeps its columns, one that goes back has them the other way round.
    """
    count = old.count
    if not old.lead or length != old.line_length:
        return 0
    if (new.start, new.step) == (count.start, count.step):
        return old.lead
    jumps = (new.start - count.start) / count.step
    if new.step == count.step and jumps.denominator == 1:
        lead = (old.lead + int(jumps)) % length
    elif (new.start, new.step) == (count.value(old.terms), -count.step):
        lead = length - 1 - (old.lead + old.terms - 1) % length
    else:
        return 0
    size = new.form.round_number()
    stand = {(lead + n - 1) % length for n in range(1, new.terms + 1) if new.value(n) % size == 0}
    return lead if stand in ({0}, {length - 1}) else 0


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


def back_again(grid: Grid, terms: int) -> Iterator[Change]:
    """The first so many numbers the other way."""
    count = grid.count
    new = changed(grid, start=count.value(terms), step=-count.step, terms=terms)
    if new is not None:
        ends = {"start": new.count.text(1), "last": new.count.text(terms)}
        told = {**ends, "size": count.difference_text(count.step), "terms": str(terms)}
        yield Change("back again" if terms == grid.terms else "few back", new, told, shown(new, across_the_fill(new)))


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
