"""Good numbers to ask about, near the grid: some that come past the end, and as many near misses that look as if they might."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from itertools import chain
from typing import NamedTuple

from .audience import Audience, level_of
from .count import Count
from .grid import Grid
from .kinds.measure import Measure
from .kinds.names import Kind
from .locate import locate
from .locate.routes import landmark_multiples
from .patterns.landmarks import landmark_rhythm
from .patterns.ranking import COUNTED_BY_THE_YOUNGEST, LEFT_OVER_AT_LEVELS_2_AND_3, YOUNG, YOUNGEST
from .slips.integers import BELOW_ZERO_FROM

MOST_OF_A_SORT = 3
LINES_ON = 2
LANDMARK_LINES_ON = 3
TIMES_THE_VIEW = 2
# So many numbers of one sort are tried: where the first is a count, the next is not.
TRIED = 4


@dataclass(frozen=True, slots=True)
class Probe:
    """A value to ask about ("will it be counted?"), whether it is, as which count, and what makes it a good question.

    sort: what it is. Of those that come: "landmark" and "zero" at a `multiple`; "lines", "line", "next" and "jumps" after
    the count `like`. Of those that do not: "step" is a `multiple` of the step; "ends alike", "alike" and "multiple" share
    with the count `like` what is left past a `multiple`; "even", "odd", "every" and "every multiple" share it with every
    count; "behind" lies ahead of the start. row, column: where it comes. before, after: the counts that jump over it.
    Units: values and `multiple` are in the base unit.
    """

    value: Fraction
    text: str
    appears: bool
    n: int | None
    sort: str
    multiple: Fraction | None = None
    like: int | None = None
    row: int | None = None
    column: int | None = None
    before: Fraction | None = None
    after: Fraction | None = None


class _Found(NamedTuple):
    value: Fraction
    sort: str
    multiple: Fraction | None = None
    like: int | None = None


def probes(grid: Grid, *, audience: Audience | None = None) -> list[Probe]:
    """Give up to three values that come past the end and as many near misses, in turns, the best of each first.

    None is farther from the start than twice the counts in view lead, and none stands on the board. A near miss shares a
    surface feature with a count: the same last digit, the same remainder by a friendlier number than the step, a multiple
    of the step; it lies just past the end, or in the view between two counts. Where one side is empty (all times of a
    clock are said, or every number comes) the other stands alone.

    >>> grid = Grid(Count.parse(kind="whole", start="7", step="10", terms=10), line_length=5)
    >>> [(probe.text, probe.appears) for probe in probes(grid)]
    [('197', True), ('100', False), ('147', True), ('102', False), ('107', True), ('99', False)]
    """
    level = level_of(audience)
    coming = _distinct(
        grid, (found for n, found in _coming(grid, level) if _is_first_said(grid, n)), level, appears=True
    )
    missing = _distinct(grid, chain(_near_misses(grid, level), _behind(grid)), level, appears=False)
    if coming and missing:
        as_many = min(len(coming), len(missing))
        return [probe for pair in zip(coming[:as_many], missing[:as_many], strict=True) for probe in pair]
    return coming + missing


def goes_below_zero(grid: Grid, level: int) -> bool:
    """Whether a count may be gone on with below zero in this class; a clock only ever turns."""
    count = grid.count
    if count.wrap is not None or min(count.value(1), count.value(grid.terms)) < 0:
        return True
    return count.form.goes_below_zero and level >= BELOW_ZERO_FROM


def _distinct(grid: Grid, found: Iterable[_Found], level: int, *, appears: bool) -> list[Probe]:
    """The first few that are as said; two of a sort that share the same only where there is nothing else."""
    chosen: list[Probe] = []
    again: list[Probe] = []
    below = goes_below_zero(grid, level)
    for one in found:
        if len(chosen) == MOST_OF_A_SORT:
            break
        if one.value < 0 and not below:
            continue
        location = locate(grid, one.value)
        # On a clock the same time may already have been said on an earlier turn.
        fits = location.appears == appears and (location.n is None or location.n > grid.terms)
        text = grid.count.text_of(one.value)
        if not fits or text in {probe.text for probe in chosen}:
            continue
        between = (None, None) if appears else (location.before, location.after)
        probe = Probe(one.value, text, appears, location.n, *one[1:], location.row, location.column, *between)
        alike = any((other.sort, other.multiple) == (one.sort, one.multiple) for other in chosen)
        (again if alike else chosen).append(probe)
    texts = {probe.text for probe in chosen}
    left = {probe.text: probe for probe in reversed(again) if probe.text not in texts}
    return [*chosen, *reversed(left.values())][:MOST_OF_A_SORT]


def _is_first_said(grid: Grid, n: int) -> bool:
    """Whether a count is not said sooner: on a clock the same time may come on an earlier turn."""
    return grid.count.wrap is None or locate(grid, grid.count.value(n)).n == n


def _coming(grid: Grid, level: int) -> Iterator[tuple[int, _Found]]:
    count, end, length = grid.count, grid.terms, grid.line_length
    farthest = TIMES_THE_VIEW * end
    near = min(farthest, end + LANDMARK_LINES_ON * length)
    for multiple in landmark_multiples(count):
        if multiple == count.wrap:
            continue  # a whole hour, as every other
        if level <= YOUNGEST and count.kind == Kind.WHOLE and multiple not in COUNTED_BY_THE_YOUNGEST:
            continue
        every, first = landmark_rhythm(count, multiple) or (near, near + 1)
        n = first + every * max(0, (end - first) // every + 1)
        if n <= near:
            value = count.value(n)
            yield n, _Found(value, "landmark" if value else "zero", multiple)
            break
    for n, sort in (
        (end + LINES_ON * length, "lines"),
        (end + length, "line"),
        (end + 1, "next"),
        (end + 2, "jumps"),
        (end + 3, "jumps"),
    ):
        if n <= farthest:
            yield n, _Found(count.value(n), sort, like=end)


def _near_misses(grid: Grid, level: int) -> Iterator[_Found]:
    count = grid.count
    step = abs(count.step)
    if count.wrap is None and count.start % step:
        ahead = -(count.start // -step) * step if count.step > 0 else count.start // step * step
        for value in _near(grid, ahead, step):
            yield _Found(value, "step", step)
    read_off = count.form.read_off()
    finest = _finest_written(count)
    # Every amount written is a multiple of the finest: that is nothing to share.
    written = [multiple for multiple in sorted(count.friendly_multiples()) if multiple % finest == 0]
    written = [multiple for multiple in written if multiple != finest]
    shared = [multiple for multiple in reversed(written) if count.step % multiple == 0]
    first = [multiple for multiple in written if multiple == read_off]
    for multiple in dict.fromkeys([*first, *shared, *written]):
        if multiple % count.step == 0:
            continue
        like = _landmark_in_view(grid, multiple)
        if multiple not in (read_off, *shared) and count.value(like) % multiple:
            continue  # Nobody sees that 5 6/8 and 15 6/8 are as much past a multiple of 10.
        for value in _near(grid, count.value(like), multiple):
            sort = _alike(grid, value, like, multiple)
            if _is_met_by(level, count, multiple, sort):
                yield _Found(value, sort, multiple, like)


def _near(grid: Grid, like: Fraction, by: Fraction) -> Iterator[Fraction]:
    """Values whole multiples of `by` away from one, no farther than twice the view: those just past the end, then in view."""
    count = grid.count
    on = 1 if count.step > 0 else -1
    farthest = abs(count.step) * (TIMES_THE_VIEW * grid.terms - 1)
    end = like + on * by * ((count.value(grid.terms) - like) * on // by)
    onward = (end + on * by * k for k in range(1, TRIED + 1))
    back = (end - on * by * k for k in range(TRIED))
    yield from (value for value in chain(onward, back) if 0 < on * (value - count.start) <= farthest)


def _is_met_by(level: int, count: Count, multiple: Fraction, sort: str) -> bool:
    """Whether a class of the level knows of what is shared; of other numbers than whole ones all do (EXACT 29)."""
    if count.kind != Kind.WHOLE or level > YOUNG or sort in ("even", "odd", "ends alike"):
        return True
    if level <= YOUNGEST:
        return sort in ("multiple", "every multiple") and multiple in COUNTED_BY_THE_YOUNGEST
    known = multiple % 5 == 0 if sort in ("multiple", "every multiple") else False
    return known or multiple in LEFT_OVER_AT_LEVELS_2_AND_3


def _finest_written(count: Count) -> Fraction:
    """Give the smallest amount that this count writes, in the base unit: what every number asked about is made of."""
    form = count.form
    if isinstance(form, Measure):
        return form.small.size / (form.over if form.places is None else 10**form.places)
    return Fraction(1, count.scale)


def _landmark_in_view(grid: Grid, multiple: Fraction) -> int:
    """Give the last term in view at the multiple, or else the last term."""
    every, first = landmark_rhythm(grid.count, multiple) or (1, grid.terms)
    return grid.terms - (grid.terms - first) % every if first <= grid.terms else grid.terms


def _alike(grid: Grid, value: Fraction, like: int, multiple: Fraction) -> str:
    """What a value has in common with the count `like`, or with every count."""
    count = grid.count
    rest = value % multiple
    every = count.step % multiple == 0
    if every and count.kind == Kind.WHOLE and multiple == 2:
        return "odd" if rest else "even"
    if count.kind == Kind.WHOLE and multiple == 10 and min(value, count.value(like)) >= 0:
        return "ends alike"
    if every:
        return "every" if rest else "every multiple"
    return "alike" if rest else "multiple"


def _behind(grid: Grid) -> Iterator[_Found]:
    """Numbers ahead of the first: one jump the other way, and a round one no farther than the view is long."""
    count = grid.count
    if count.wrap is not None:
        return
    yield _Found(count.start - count.step, "behind")
    whole, on = count.form.round_number(), 1 if count.step > 0 else -1
    value = (count.start - on * whole) // whole * whole if on > 0 else -((count.start + whole) // -whole) * whole
    for further in range(MOST_OF_A_SORT):
        behind = value - on * further * whole
        if on * (count.start - behind) <= abs(count.step) * grid.terms:
            yield _Found(behind, "behind")
