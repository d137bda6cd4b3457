"""Landmarks: every so many counts, from which on, and how they lie on the page."""

from __future__ import annotations

from math import gcd

from ..claims import LIES, LandmarksClaim
from ..grid import Grid
from ..patterns.lie import Lie
from .congruences import Residues, Span
from .numbers import Numbers
from .runs import Runs
from .wants import Narrowing, Want
from .work import Work


def landmarks(claim: LandmarksClaim, multiple: int, numbers: Numbers, work: Work) -> Want:
    """The multiples stand at every k-th count from the n-th on, and lie so.

    Source: proof - the terms at multiples of m are every k-th one with k = m / gcd(step, m): so the step is m/k times
    a number without a factor in common with k, and the start is a multiple of m, n - 1 steps back.
    How they lie depends on k, n and the fold alone.
    """

    def on(fold: Grid) -> Narrowing:
        everies = _everies(claim, multiple, fold)
        work.will_take(fold.terms * len(everies), "terms", "line_length")
        firsts = _firsts(claim, everies, fold)
        steps: list[range] = []
        for every in firsts:
            for times in range(1, every):
                if gcd(times, every) == 1:
                    steps.append(numbers.steps.members(Residues(multiple // every * times, multiple)))

        def starts(step: int, span: Span) -> Runs:
            every = multiple // gcd(multiple, step)
            return [span.members(Residues(-(first - 1) * step % multiple, multiple)) for first in firsts.get(every, ())]

        return Narrowing(steps, starts, cells=max(map(len, firsts.values()), default=1))

    return on


def _everies(claim: LandmarksClaim, multiple: int, fold: Grid) -> list[int]:
    """Give by how many counts landmarks may follow one another in the fold."""
    some = range(2, fold.terms) if claim.every is None else (claim.every,)
    return [every for every in some if 2 <= every < fold.terms and multiple % every == 0]


def _firsts(claim: LandmarksClaim, everies: list[int], fold: Grid) -> dict[int, list[int]]:
    """Give, by every how many counts, the first terms with which landmarks would lie in the fold as wanted."""
    found: dict[int, list[int]] = {}
    for every in everies:
        for first in range(1, every + 1) if claim.first is None else (claim.first,):
            if first <= every and first + every <= fold.terms and _lie_so(claim, fold, every, first):
                found.setdefault(every, []).append(first)
    return found


def _lie_so(claim: LandmarksClaim, fold: Grid, every: int, first: int) -> bool:
    lie, lines = claim.lie, claim.lines
    if lie is None and lines is None:
        return True
    terms = tuple(range(first, fold.terms + 1, every))
    return any(Lie(fold, name, lines, (every, first)).fits(terms) for name in (LIES if lie is None else (lie,)))
