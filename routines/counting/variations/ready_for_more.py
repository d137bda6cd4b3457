"""Next counts for a class that is ready for more: past a larger landmark, a step that is less friendly, a fold that
lets the pattern slide."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from math import gcd

from ..claims import LandmarksClaim
from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..locate.routes import landmark_multiples
from ..patterns import landmarks
from ..slips.integers import BELOW_ZERO_FROM
from ..written_units import written_units
from .as_planned import YOUNGEST
from .changes import Change, across_the_fill, changed, shown, small_unit
from .reach import largest_measured

# The largest landmark among whole numbers that a level counts past; see `reach`.
LARGEST = (100, 100, 1000, 10_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000)
TEN = 10
# Steps below this are made ten times as long; a step just short of a round one is for grade 3 and up. Common practice.
SMALL, NEARLY_FROM = 6, 3
# Source: Common Core State Standards 5.NBT.A.3 (decimals to thousandths), 4.NF.C.6 (to hundredths).
THOUSANDTHS_FROM = 5
UNFRIENDLY = {Kind.MONEY: (35, 15, 45, 65), Kind.CLOCK: (25, 35, 40, 55), Kind.ELAPSED: (25, 35, 40, 55)}
BEFORE = 4
HALF_DAY = 720


def changes(grid: Grid, level: int) -> Iterator[Change]:
    yield from _past_a_landmark(grid, level)
    if grid.count.kind == Kind.WHOLE and (level <= YOUNGEST or abs(grid.count.step) == 1):
        yield from _by_tens(grid, level)
    else:
        yield from _harder_step(grid, level)
    yield from _one_more_in_a_line(grid)


def _past_a_landmark(grid: Grid, level: int) -> Iterator[Change]:
    """The same count further on (or begun so that it goes below zero), a few jumps before a landmark."""
    count = grid.count
    landmark = _next_landmark(grid, level)
    # At least one count past the landmark must be in view.
    before = min(BEFORE, count.terms - 2)
    if landmark is None or before < 1:
        return
    step = count.step
    jumps = -((count.start - landmark) // step) if step > 0 else (count.start - landmark) // -step
    first = count.start + (jumps - before) * step
    new = changed(grid, start=first)
    if new is None:
        return
    told = {"start": new.count.text(1), "landmark": count.text_of(landmark), "size": count.difference_text(step)}
    yield Change("landmark", new, told, shown(new, across_the_fill(grid)))


def _next_landmark(grid: Grid, level: int) -> Fraction | None:
    """A round number ten times as large, beyond every count in view; zero for older classes that count back."""
    count = grid.count
    values = (count.start, count.value(grid.terms))
    if count.kind == Kind.WHOLE and count.step < 0 and level >= BELOW_ZERO_FROM and min(values) >= 0:
        return Fraction(0)
    if count.wrap:
        passed = (max(values) // HALF_DAY) != (min(values) // HALF_DAY)
        return None if passed else (max(values) // HALF_DAY + 1) * Fraction(HALF_DAY)
    if min(values) < 0:
        return -_ten_times_as_large(count.form.round_number(), -min(values))
    landmark = _ten_times_as_large(count.form.round_number(), max(values))
    largest = Fraction(LARGEST[level]) if count.kind == Kind.WHOLE else largest_measured(count)
    return landmark if largest is None or landmark <= largest else None


def _ten_times_as_large(landmark: Fraction, than: Fraction) -> Fraction:
    """The first of 10, 100, 1000 ... times a landmark that lies beyond a value."""
    landmark *= 10
    while landmark <= than:
        landmark *= 10
    return landmark


def _by_tens(grid: Grid, level: int) -> Iterator[Change]:
    """Jumps of ten, which do at once what several jumps did; in K from a ten on, as far as a hundred."""
    count = grid.count
    size = abs(count.step)
    if size == TEN or TEN % size:
        return
    step = Fraction(TEN if count.step > 0 else -TEN)
    start = None if level > 0 else step if step > 0 else Fraction(LARGEST[0])
    new = changed(grid, start=start, step=step, terms=None if level > 0 else LARGEST[0] // TEN)
    if new is not None:
        told = {"size": "10", "old": count.difference_text(size), "many": str(TEN // size)}
        yield Change("by tens", new, told, shown(new, across_the_fill(new)))


def _harder_step(grid: Grid, level: int) -> Iterator[Change]:
    count = grid.count
    found = _harder(count, level)
    if found is None:
        return
    name, size, round_by = found
    new = changed(grid, step=size if count.step > 0 else -size, style=replace(count.style, places=None))
    if new is not None:
        told = {
            "size": new.count.difference_text(size),
            "round": new.count.difference_text(round_by),
            "old": count.difference_text(count.step),
        }
        yield Change(name, new, told, shown(new, across_the_fill(new)))


def _harder(count: Count, level: int) -> tuple[str, Fraction, Fraction] | None:
    """What makes the step harder, the step, and what it is nearly or does not fill."""
    size, round_by = abs(count.step), count.form.round_number()
    if count.kind == Kind.WHOLE:
        if size < SMALL or (size == TEN and level < NEARLY_FROM):
            return "ten times", TEN * size, round_by
        if size % 5 == 0:
            return "nearly round", size - 1, size
        nine = Fraction(size // TEN * TEN + TEN - 1)
        # The step and ten more is proposed after a lesson as planned.
        nine += 0 if nine > size else 2 * TEN
        return "nearly round", nine, nine + 1
    if count.kind == Kind.DECIMAL:
        places = 2 if level < THOUSANDTHS_FROM else 3
        if (size / TEN * 10**places).denominator == 1:
            return "finer", size / TEN, round_by
        nine_parts = Fraction(9, 10**places)
        return ("nearly round", nine_parts, nine_parts / 9 * TEN) if size != nine_parts else None
    if count.kind == Kind.FRACTION:
        parts = count.scale
        tops = [top for top in range(2, parts) if gcd(top, parts) == 1 and Fraction(top, parts) != size]
        return ("several parts", Fraction(tops[0], parts), round_by) if tops else None
    if count.kind in UNFRIENDLY:
        return "unfriendly", next(Fraction(step) for step in UNFRIENDLY[count.kind] if step != size), round_by
    return next((("unfriendly", step, round_by) for step in _unfriendly_amounts(count, round_by) if step != size), None)


def _unfriendly_amounts(count: Count, round_by: Fraction) -> Iterator[Fraction]:
    """Amounts that do not fill what is round; in whole units without a larger one, little more than the step."""
    unit, size = small_unit(count), abs(count.step)
    many = int(round_by / unit)
    parts, units = count.form.counted_parts(), written_units(count)
    if parts == 1 and units and round_by == 10 * units.small.size:
        yield from (step * unit for step in range(int(size / unit) + 1, many) if many % step)
        return
    yield from (step * unit for step in range(many // 2 + 1, many) if gcd(step, many) <= max(1, many // 20))
    if parts > 1:
        yield from (share for share in (size / 2, size * 2) if share < round_by and round_by % share)


def _one_more_in_a_line(grid: Grid) -> Iterator[Change]:
    """One more in each line: what stood under each other now slides."""
    new = changed(grid, line_length=grid.line_length + 1)
    if new is None:
        return
    known = landmark_multiples(grid.count)
    slid = [
        found.claim
        for found in landmarks.find(new)
        if isinstance(found.claim, LandmarksClaim)
        and found.claim.lie in ("down-right", "down-left")
        and found.claim.multiple in known
    ]
    told = {"length": str(new.line_length), "across": grid.count.difference_text(grid.count.step * new.line_length)}
    yield Change("one more", new, told, shown(new, *slid[:1]) or shown(new, across_the_fill(new)))
