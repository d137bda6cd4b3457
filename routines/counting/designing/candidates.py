"""The grids that may show what is wanted, the best first."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from heapq import heapify, heappop, heapreplace

from ..claims import Claim
from ..count import Count
from ..errors import CountError
from ..grid import Grid
from ..kinds.names import Kind
from .choices import numbers_in, wants_of
from .congruences import Residues
from .limits import Limits
from .numbers import Numbers
from .ordering import fold_rank, start_rank, wanted_constants
from .runs import Runs, held_by, how_many_in, nearest_first
from .wants import Narrowing, Want, either
from .work import CHOICES, Work

FOR_A_RUN, FOR_A_TRIED_CELL, MOST_WAYS_TRIED = 10, 5, 5
"""What a run of starts, and a cell of a grid that is tried, cost beside a cell that is only looked at, as measured. A claim
that leaves something open is tried in several ways, and hardly in more than five before one fits."""

Ranked = dict[tuple[int, int], list[tuple[Grid, int, list[Narrowing]]]]


@dataclass(frozen=True, slots=True)
class Candidates:
    """The grids of one fold and step that may show what is wanted, by their starts."""

    fold: Grid
    step: int
    runs: Runs
    may_start: Callable[[int], bool]

    @property
    def cells(self) -> int:
        return how_many_in(self.runs) * self.fold.terms


def best_first(wanted: list[Claim], limits: Limits, work: Work) -> Iterator[Grid]:
    """Give the candidates in the order of the key, working out one rank after the other.

    Raises: CountError where there are too many to look through, counted before they are looked at.
    """
    numbers = Numbers.of(limits, numbers_in(wanted, limits))
    middle_twice = numbers.starts.low + numbers.starts.high
    wants = wants_of(wanted, limits, numbers, work)
    by_rank = _ranked(wanted, wants, limits, numbers, work)
    ranks = ([_candidates(*one, numbers, limits, work) for one in by_rank[rank]] for rank in sorted(by_rank))
    looks = FOR_A_TRIED_CELL * max(1, sum(min(len(ways), MOST_WAYS_TRIED) for ways in wants))
    if limits.at_most is None:  # all of them will be tried, so count them all before the first
        all_ranks = list(ranks)
        work.will_take(sum(one.cells for rank in all_ranks for one in rank) * looks, *CHOICES)
        ranks = (rank for rank in all_ranks)
    for rank in ranks:
        for one, start in _in_order(rank, middle_twice):
            if limits.at_most is not None:
                work.will_take(one.fold.terms * looks, *CHOICES)
            grid = _grid(one, start, numbers, limits) if one.may_start(start) else None
            if grid is not None:
                yield grid


def _ranked(wanted: list[Claim], wants: list[list[Want]], limits: Limits, numbers: Numbers, work: Work) -> Ranked:
    """Give every fold and step by its rank, with what each claim asks of the starts."""
    multiples = tuple(
        int(multiple * numbers.scale)
        for multiple in _sample(limits).friendly_multiples()
        if (multiple * numbers.scale).denominator == 1
    )
    constants = wanted_constants(wanted, numbers.scale)
    work.will_take(_cells_of_folds(limits) * (1 + sum(map(len, wants))), "terms", "line_length")
    asked = [either(ways) for ways in wants]
    found: Ranked = {}
    for fold in _folds(limits):
        narrowings = [want(fold) for want in asked]
        for step in _steps(fold, narrowings, numbers, work):
            found.setdefault(fold_rank(fold, step, multiples, constants), []).append((fold, step, narrowings))
    return found


def _folds(limits: Limits) -> Iterator[Grid]:
    """Give every fold within the limits, of a stand-in count by ones: only the terms' places matter."""
    for terms in range(limits.terms[0], limits.terms[1] + 1):
        ones = Count(Kind.WHOLE, Fraction(1), Fraction(1), terms)
        for line_length in range(limits.line_lengths[0], min(limits.line_lengths[1], terms) + 1):
            for fill in limits.fills:
                yield Grid(ones, line_length, fill)


def _cells_of_folds(limits: Limits) -> int:
    shortest, longest = limits.line_lengths
    lengths = ((terms, min(longest, terms) - shortest + 1) for terms in range(limits.terms[0], limits.terms[1] + 1))
    return sum(terms * max(0, many) for terms, many in lengths) * len(limits.fills)


def _steps(fold: Grid, narrowings: list[Narrowing], numbers: Numbers, work: Work) -> list[int]:
    """Give the steps that every claim leaves: those of the claim that leaves fewest, as far as the others leave them."""
    left = [narrowing.steps for narrowing in narrowings if narrowing.steps is not None]
    fewest = min(left, key=how_many_in, default=[numbers.steps.members()])
    listed, different = how_many_in(fewest), how_many_in([numbers.steps.members()])
    work.will_take(listed + min(listed, different) * fold.terms, "step", "terms", "line_length")
    steps = {step for run in fewest for step in run if step}
    return sorted(step for step in steps if all(held_by(runs, step) for runs in left if runs is not fewest))


def _candidates(
    fold: Grid, step: int, narrowings: list[Narrowing], numbers: Numbers, limits: Limits, work: Work
) -> Candidates:
    work.will_take(sum(narrowing.cells for narrowing in narrowings), "step", "terms", "line_length")
    span = numbers.starts_for(step, fold.terms)
    found = (narrowing.starts(step, span) for narrowing in narrowings)
    left = [runs for runs in found if runs is not None]
    if limits.off_multiple is False:
        left.append([span.members(Residues(0, abs(step)))])
    fewest: Runs = min(left, key=how_many_in, default=[span.members()])
    work.will_take(len(fewest) * FOR_A_RUN, *CHOICES)

    def may_start(start: int) -> bool:
        return (
            all(held_by(runs, start) for runs in left if runs is not fewest)
            and (limits.off_multiple is not True or start % step != 0)
            and all(narrowing.allows(start, step) for narrowing in narrowings)
        )

    return Candidates(fold, step, fewest, may_start)


def _in_order(rank: list[Candidates], middle_twice: int) -> Iterator[tuple[Candidates, int]]:
    """Give the candidates of one rank, each once, the best first, without listing them."""

    def entry(at: int, one: Candidates, run: range) -> tuple[tuple[int, ...], int, Candidates, range]:
        return start_rank(one.fold, run[0], one.step, middle_twice), at, one, run

    sides = ((one, side) for one in rank for run in one.runs for side in nearest_first(run, middle_twice))
    waiting = [entry(at, one, side) for at, (one, side) in enumerate(sides)]
    heapify(waiting)
    last: tuple[int, ...] = ()
    while waiting:
        key, at, one, run = waiting[0]
        if key != last:
            yield one, run[0]
        last = key
        if run[1:]:
            heapreplace(waiting, entry(at, one, run[1:]))
        else:
            heappop(waiting)


def _grid(one: Candidates, start: int, numbers: Numbers, limits: Limits) -> Grid | None:
    """Give the grid itself; None where such a count cannot be (its denominators are too large, say)."""
    first, by = Fraction(start, numbers.scale), Fraction(one.step, numbers.scale)
    try:
        return Grid(Count(limits.kind, first, by, one.fold.terms, limits.style), one.fold.line_length, one.fold.fill)
    except CountError:
        return None


def _sample(limits: Limits) -> Count:
    return Count(limits.kind, Fraction(0), Fraction(limits.grain), 2, limits.style)
