"""Next counts for a class that is ready for more: past a larger landmark, a step that is less friendly, a fold that
lets the pattern slide."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from math import gcd

from ..grid import Grid
from ..locate.routes import landmark_multiples
from ..patterns import FAMILIES
from ..round_number import round_number
from .as_planned import YOUNGEST
from .changes import Change, across_the_fill, changed, shown, small_unit

# The largest landmark among whole numbers that a level counts past. Source: Common Core State Standards K.CC.A.1,
# 1.NBT.A.1, 2.NBT.A.2, 4.NBT (domain note); grade 3 as grade 4, common practice.
LARGEST = (100, 100, 1000, 10_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000)
BELOW_ZERO_FROM = 6
NEARLY = (9, 11, 19, 21, 29, 49, 51, 99, 101, 199, 499, 501, 999, 1001)
UNFRIENDLY = {"money": (35, 15, 45, 65), "clock": (25, 35, 40, 55), "elapsed": (25, 35, 40, 55)}
BEFORE = 4
HALF_DAY = 720


def changes(grid: Grid, level: int) -> Iterator[Change]:
    yield from _past_a_landmark(grid, level)
    if level > YOUNGEST or grid.count.kind != "whole":
        yield from _less_friendly_step(grid)
    else:
        yield from _by_tens(grid)
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
    if count.kind == "whole" and count.step < 0 and level >= BELOW_ZERO_FROM and min(values) >= 0:
        return Fraction(0)
    if count.wrap:
        passed = (max(values) // HALF_DAY) != (min(values) // HALF_DAY)
        return None if passed else (max(values) // HALF_DAY + 1) * Fraction(HALF_DAY)
    if count.step < 0 and min(values) < 0:
        return -_ten_times_as_large(round_number(count), -min(values))
    landmark = _ten_times_as_large(round_number(count), max(values))
    return landmark if count.kind != "whole" or landmark <= LARGEST[level] else None


def _ten_times_as_large(landmark: Fraction, than: Fraction) -> Fraction:
    """The first of 10, 100, 1000 ... times a landmark that lies beyond a value."""
    landmark *= 10
    while landmark <= than:
        landmark *= 10
    return landmark


def _by_tens(grid: Grid) -> Iterator[Change]:
    """For the youngest: jumps of ten, which do at once what several jumps did."""
    count = grid.count
    size = abs(count.step)
    if size == 10 or 10 % size:
        return
    new = changed(grid, step=Fraction(10 if count.step > 0 else -10))
    if new is not None:
        told = {"size": "10", "old": count.difference_text(size), "many": str(10 // size)}
        yield Change("by tens", new, told, shown(new, across_the_fill(new)))


def _less_friendly_step(grid: Grid) -> Iterator[Change]:
    count = grid.count
    sign = 1 if count.step > 0 else -1
    size = _less_friendly(grid)
    if size is None or size == abs(count.step):
        return
    new = changed(grid, step=sign * size, style=replace(count.style, places=None))
    if new is None:
        return
    name = {"whole": "nearly round", "decimal": "finer", "fraction": "several parts"}.get(count.kind, "unfriendly")
    near = 10 * round(size / 10)
    told = {
        "size": new.count.difference_text(size),
        "round": new.count.text_of(Fraction(near))
        if name == "nearly round"
        else count.difference_text(round_number(count)),
        "old": count.difference_text(count.step),
    }
    yield Change(name, new, told, shown(new, across_the_fill(new)))


def _less_friendly(grid: Grid) -> Fraction | None:
    count = grid.count
    size = abs(count.step)
    if count.kind == "whole":
        nearest = [Fraction(step) for step in NEARLY if step != size]
        return min(nearest, key=lambda step: (abs(step - size), step))
    if count.kind == "decimal":
        return size / 10 if (size / 10 * 1000).denominator == 1 else None
    if count.kind == "fraction":
        parts = count.scale
        tops = [top for top in range(2, parts) if gcd(top, parts) == 1 and Fraction(top, parts) != size]
        return Fraction(tops[0], parts) if tops else None
    if count.kind in UNFRIENDLY:
        return next(Fraction(step) for step in UNFRIENDLY[count.kind] if step != size)
    unit = small_unit(count)
    many = int(round_number(count) / unit)
    steps = [step for step in range(many // 2 + 1, many) if gcd(step, many) <= max(1, many // 20)]
    return next((step * unit for step in steps if step * unit != size), None)


def _one_more_in_a_line(grid: Grid) -> Iterator[Change]:
    """One more in each line: what stood under each other now slides."""
    new = changed(grid, line_length=grid.line_length + 1)
    if new is None:
        return
    known = landmark_multiples(grid.count)
    slid = [
        found.claim
        for found in FAMILIES["landmarks"].find(new)
        if found.claim.get("lie") in ("down-right", "down-left") and found.claim.get("multiple") in known
    ]
    told = {"length": str(new.line_length), "across": grid.count.difference_text(grid.count.step * new.line_length)}
    yield Change("one more", new, told, shown(new, *slid[:1]) or shown(new, across_the_fill(new)))
