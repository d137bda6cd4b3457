"""Backwards design: from the patterns a class should see to the grids that show them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from operator import itemgetter

from ..claims import Claim
from ..count import Count
from ..errors import CountError
from ..grid import Grid
from ..patterns import FAMILIES
from .asking import numbers_in, wants_of
from .limits import Limits
from .numbers import Numbers
from .ordering import fold_rank, start_rank, wanted_constants
from .wants import Narrowing

__all__ = ["Designs", "Limits", "design_grids"]


@dataclass(frozen=True, slots=True)
class Designs:
    """Grids that show what is wanted, best first; `complete` is False where `at_most` left some out."""

    grids: tuple[Grid, ...]
    complete: bool


def design_grids(wanted: Sequence[Claim], limits: Limits | None = None) -> Designs:
    """Give every grid within the limits in which all the wanted claims are true and can be seen.

    A parameter that a claim leaves out may be anything. Sound: each grid is checked. Complete: for every fold the wants
    narrow steps and starts by necessary conditions only (see `wants.py` and the proofs beside each family).

    Raises: CountError on `family` for what is no Claim, on a claim's parameter that the number kind does not have, and as
    Limits does.

    >>> tens_in_a_column = Claim("landmarks", multiple=10, lie="column")
    >>> limits = Limits(starts=(50, 60), steps=(6, 6), line_lengths=(5, 5), terms=(20, 20), fills=("across",))
    >>> [int(grid.count.start) for grid in design_grids([tens_in_a_column], limits).grids]
    [54, 56, 52, 58, 50, 60]
    """
    limits = Limits() if limits is None else limits
    if not isinstance(limits, Limits):
        raise CountError("value", "Give the limits as Limits.")
    if not isinstance(wanted, (list, tuple)) or not all(isinstance(claim, Claim) for claim in wanted):
        raise CountError("family", "Give what is wanted as a list of Claims.")
    found: list[Grid] = []
    for grid in _best_first(list(wanted), limits):
        if all(_shows(claim, grid) for claim in wanted):
            if len(found) == limits.at_most:
                return Designs(tuple(found), complete=False)
            found.append(grid)
    return Designs(tuple(found), complete=True)


def _best_first(wanted: list[Claim], limits: Limits) -> Iterator[Grid]:
    """Give the grids that may show what is wanted in the order of the key, working out one rank after the other."""
    numbers = Numbers.of(limits, numbers_in(wanted, limits))
    multiples = tuple(
        int(multiple * numbers.scale)
        for multiple in _sample(limits).friendly_multiples()
        if (multiple * numbers.scale).denominator == 1
    )
    constants = wanted_constants(wanted, numbers.scale)
    by_rank: dict[tuple[int, int], list[tuple[Grid, int, list[Narrowing]]]] = {}
    wants = wants_of(wanted, limits, numbers)
    for fold in _folds(limits):
        narrowings = [want(fold) for want in wants]
        for step in _steps(narrowings, numbers):
            by_rank.setdefault(fold_rank(fold, step, multiples, constants), []).append((fold, step, narrowings))
    middle_twice = numbers.starts.low + numbers.starts.high
    for rank in sorted(by_rank):
        candidates = [
            (start_rank(fold, start, step, middle_twice), fold, start, step)
            for fold, step, narrowings in by_rank[rank]
            for start in _starts(narrowings, fold, step, numbers, limits)
        ]
        for _, fold, start, step in sorted(candidates, key=itemgetter(0)):
            grid = _grid(fold, start, step, numbers, limits)
            if grid is not None:
                yield grid


def _folds(limits: Limits) -> Iterator[Grid]:
    """Give every fold within the limits, of a stand-in count by ones: only the terms' places matter."""
    for terms in range(limits.terms[0], limits.terms[1] + 1):
        ones = Count("whole", Fraction(1), Fraction(1), terms)
        for line_length in range(limits.line_lengths[0], min(limits.line_lengths[1], terms) + 1):
            for fill in limits.fills:
                yield Grid(ones, line_length, fill)


def _steps(narrowings: list[Narrowing], numbers: Numbers) -> list[int]:
    steps: set[int] | None = None
    for narrowing in narrowings:
        if narrowing.steps is not None:
            steps = set(narrowing.steps) if steps is None else steps.intersection(narrowing.steps)
    return [step for step in (numbers.steps.members() if steps is None else sorted(steps)) if step]


def _starts(narrowings: list[Narrowing], fold: Grid, step: int, numbers: Numbers, limits: Limits) -> list[int]:
    span = numbers.starts_for(step, fold.terms)
    starts: set[int] | None = None
    for narrowing in narrowings:
        some = narrowing.starts(step, span)
        if some is not None:
            starts = set(some) if starts is None else starts.intersection(some)
            if not starts:
                return []
    candidates = span.members() if starts is None else starts
    return [start for start in candidates if limits.off_multiple in (None, start % step != 0)]


def _grid(fold: Grid, start: int, step: int, numbers: Numbers, limits: Limits) -> Grid | None:
    """Give the grid itself; None where such a count cannot be (its denominators are too large, say)."""
    first, by = Fraction(start, numbers.scale), Fraction(step, numbers.scale)
    try:
        return Grid(Count(limits.kind, first, by, fold.terms, limits.style), fold.line_length, fold.fill)
    except CountError:
        return None


def _shows(claim: Claim, grid: Grid) -> bool:
    family = FAMILIES[claim.family]
    try:
        verdicts = (family.judge(whole, grid) for whole in family.completed(claim, grid))
        return any(judged.true and judged.seen for judged in verdicts)
    except CountError:  # a part that only some counts of this kind are written with
        return False


def _sample(limits: Limits) -> Count:
    return Count(limits.kind, Fraction(0), Fraction(limits.grain), 2, limits.style)
