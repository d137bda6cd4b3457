"""Good numbers to ask about: some that come past the end, and near misses that look as if they might."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from .count import Count
from .grid import Grid
from .kinds.measure import Measure
from .kinds.names import Kind
from .locate import locate
from .locate.routes import landmark_multiples

MOST_OF_A_SORT = 3
FAR_TERMS = (25, 50, 100, 200, 500)
LINES_ON = 2


@dataclass(frozen=True, slots=True)
class Probe:
    """A value to ask about ("will it be counted?"), whether it is, as which count, and what makes it a good question.

    sort: what it is. Of those that come: "landmark" and "zero" at a `multiple`, "lines" and "next" after the count `like`,
    "far". Of those that do not: "ends alike", "alike" and "multiple" share with the count `like` what is left past a
    `multiple`; "even", "odd", "every" and "every multiple" share it with every count; "behind" lies ahead of the start.
    Units: `value` and `multiple` are in the base unit.
    """

    value: Fraction
    text: str
    appears: bool
    n: int | None
    sort: str
    multiple: Fraction | None = None
    like: int | None = None


class _Found(NamedTuple):
    value: Fraction
    sort: str
    multiple: Fraction | None = None
    like: int | None = None


def probes(grid: Grid) -> list[Probe]:
    """Give up to three values that come past the end and up to three near misses.

    A near miss shares a surface feature with a count: the same last digit, or the same remainder by a friendlier
    number than the step.
    """
    coming = _distinct(grid, _said_first(grid, _coming(grid)), appears=True)
    missing = _distinct(grid, _near_misses(grid), appears=False)
    return coming + (missing or _distinct(grid, _behind(grid), appears=False))


def _distinct(grid: Grid, found: Iterator[_Found], *, appears: bool) -> list[Probe]:
    chosen: list[Probe] = []
    for one in found:
        if one.value < 0 and not grid.count.form.goes_below_zero:
            continue
        location = locate(grid, one.value)
        # On a clock the same time may already have been said on an earlier turn.
        fits = location.appears == appears and (location.n is None or location.n > grid.terms)
        text = grid.count.text_of(one.value)
        if fits and text not in {probe.text for probe in chosen}:
            chosen.append(Probe(one.value, text, appears, location.n, one.sort, one.multiple, one.like))
        if len(chosen) == MOST_OF_A_SORT:
            break
    return chosen


def _said_first(grid: Grid, found: Iterator[tuple[int, _Found]]) -> Iterator[_Found]:
    """Only those that are not said sooner: on a clock the same time may come on an earlier turn."""
    for n, one in found:
        if grid.count.wrap is None or locate(grid, one.value).n == n:
            yield one


def _coming(grid: Grid) -> Iterator[tuple[int, _Found]]:
    count, end = grid.count, grid.terms
    for multiple in landmark_multiples(count):
        landmark = next(
            (n for n in range(end + 1, end + 3 * grid.line_length + 1) if count.value(n) % multiple == 0), 0
        )
        if landmark:
            value = count.value(landmark)
            yield landmark, _Found(value, "landmark" if value else "zero", multiple)
            break
    on = end + LINES_ON * grid.line_length
    yield on, _Found(count.value(on), "lines", like=end)
    far = next((n for n in FAR_TERMS if n > on), on + FAR_TERMS[-1])
    yield far, _Found(count.value(far), "far")
    yield end + 1, _Found(count.value(end + 1), "next", like=end)


def _near_misses(grid: Grid) -> Iterator[_Found]:
    count = grid.count
    read_off = count.form.read_off()
    finest = _finest_written(count)
    # Every amount written is a multiple of the finest: that is nothing to share.
    written = [multiple for multiple in sorted(count.friendly_multiples()) if multiple % finest == 0]
    written = [multiple for multiple in written if multiple != finest]
    shared = [multiple for multiple in reversed(written) if count.step % multiple == 0]
    first = [multiple for multiple in written if multiple == read_off]
    on = 1 if count.step > 0 else -1
    for multiple in dict.fromkeys([*first, *shared, *written]):
        if multiple % count.step == 0:
            continue
        like = _landmark_in_view(grid, multiple)
        if multiple not in (read_off, *shared) and count.value(like) % multiple:
            continue  # Nobody sees that 5 6/8 and 15 6/8 are as much past a multiple of 10.
        to_the_end = abs(count.value(grid.terms) - count.value(like))
        value = count.value(like) + on * multiple * (to_the_end // multiple + 1)
        if _said(grid, value):  # the next is not, or the multiple would be so many jumps
            value += on * multiple
        yield _Found(value, _alike(grid, value, like, multiple), multiple, like)


def _finest_written(count: Count) -> Fraction:
    """Give the smallest amount that this count writes, in the base unit: what every number asked about is made of."""
    form = count.form
    if isinstance(form, Measure):
        return form.small.size / (form.over if form.places is None else 10**form.places)
    return Fraction(1, count.scale)


def _landmark_in_view(grid: Grid, multiple: Fraction) -> int:
    """Give the last term in view at the multiple, or else the last term."""
    for n in range(grid.terms, 0, -1):
        if grid.count.value(n) % multiple == 0:
            return n
    return grid.terms


def _said(grid: Grid, value: Fraction) -> bool:
    return ((value - grid.count.start) / grid.count.step).denominator == 1


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
    yield _Found(grid.count.start - grid.count.step, "behind")
