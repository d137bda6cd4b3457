"""Landmarks: the terms at multiples of a friendly number, how often they come, and how they lie on the page.

That they come every k counts holds always. Source: proof - v(n) is a multiple of m exactly when n solves a linear
congruence; its solutions, if any, are one remainder mod k = m/gcd(m, step) (`multiples.py`). How long they lie so: `lie.py`.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from ..claims import LIES, LandmarksClaim, stated
from ..count import Count
from ..errors import CountError
from ..grid import Grid
from ..results import Pattern, Verdict
from .lie import FILLED, Lie, Terms
from .lines import lines_of
from .multiples import Scaled, friendly_ones


def find(grid: Grid) -> Iterator[Pattern]:
    for scaled in friendly_ones(grid.count):
        found = _found(grid, scaled)
        if found is not None:
            yield found


def found_for(grid: Grid, multiple: Fraction) -> Pattern | None:
    """The landmarks of one multiple; None unless two or more can be seen, with other terms between."""
    return _found(grid, Scaled.of(grid.count, multiple))


def _found(grid: Grid, scaled: Scaled) -> Pattern | None:
    every, terms_in_view = scaled.every, grid.terms
    if every < 2 or every >= terms_in_view:
        return None
    first = scaled.first
    if first is None or first + every > terms_in_view:
        return None
    terms = tuple(range(first, terms_in_view + 1, every))
    lie = Lie.seen_in(grid, every, first)
    claim = LandmarksClaim(scaled.multiple, every, first, lie.name, lie.lines)
    return Pattern.of(claim, _groups(grid, lie, terms), lie.breaks_at())


def landmark_rhythm(count: Count, multiple: Fraction) -> tuple[int, int] | None:
    """Every how many counts a multiple comes, and the first; None where none ever comes."""
    scaled = Scaled.of(count, multiple)
    first = scaled.first
    return None if first is None else (scaled.every, first)


def _groups(grid: Grid, lie: Lie, terms: Terms) -> tuple[Terms, ...]:
    along = FILLED.get(lie.name)
    if along is None:
        return (terms,)
    shown = set(terms)
    return tuple(line for line in lines_of(grid, along).in_view if line[0] in shown)


def completed(claim: LandmarksClaim, grid: Grid) -> Iterator[LandmarksClaim]:
    """Fill in what is left out; where there is no landmark at all a claim that names no rhythm stays as it is."""
    for chosen in grid.count.friendly_multiples() if claim.multiple is None else (claim.multiple,):
        every, first = landmark_rhythm(grid.count, chosen) or (claim.every, claim.first)
        yield replace(claim, multiple=chosen, every=claim.every or every, first=claim.first or first)


def judge(claim: LandmarksClaim, grid: Grid) -> Verdict:
    count, multiple = grid.count, stated(claim.multiple)
    if count.wrap is not None and (count.wrap / multiple).denominator != 1:
        raise CountError("multiple", "minutes-do-not-divide", hours=count.wrap // 60)
    every, first = claim.every, claim.first
    rhythm = landmark_rhythm(count, multiple)
    if every is None or first is None:
        return Verdict.not_so()
    differs_at = _first_difference(rhythm, (every, first))
    if differs_at is not None and differs_at <= grid.terms:
        return Verdict.not_so((differs_at,), _same_from(rhythm, (every, first)) if claim.lie is None else None)
    there = () if rhythm is None else tuple(range(rhythm[1], grid.terms + 1, rhythm[0]))
    seen = every >= 2 and len(there) >= 2
    if claim.lie is None and claim.lines is None:
        return Verdict.so(seen, differs_at)
    names = LIES if claim.lie is None else (claim.lie,)
    lies = [Lie(grid, name, claim.lines, rhythm) for name in names]
    fitting = [lie for lie in lies if lie.fits(there)]
    if not fitting:
        wrong = lies[0].contradicted_by(there) if len(lies) == 1 else None
        return Verdict.not_so((wrong,) if wrong else ())
    breaks = [n for n in (differs_at, fitting[0].breaks_at()) if n is not None]
    return Verdict.so(seen, min(breaks, default=None))


def _first_difference(there: tuple[int, int] | None, said: tuple[int, int]) -> int | None:
    """The first term that is a landmark by one rhythm and not by the other; None if they are the same."""
    if there is None:
        return said[1]
    # Where two terms in a row of one rhythm belong to the other, all that follow do.
    return min(
        (
            n
            for (every, first), other in ((there, said), (said, there))
            for n in (first, first + every)
            if n < other[1] or (n - other[1]) % other[0]
        ),
        default=None,
    )


def _same_from(there: tuple[int, int] | None, said: tuple[int, int]) -> int | None:
    """From which term on both rhythms are the same; None if never."""
    if there is None or there[0] != said[0] or (there[1] - said[1]) % said[0]:
        return None
    return max(there[1], said[1]) - said[0] + 1
