"""Which cells a follow-up leaves empty, so that the targets are what fills them."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from routines.counting import Grid
from routines.words import SpokenPattern

AT_MOST = 3  # cells, where a class is not asked for fewer


@dataclass(frozen=True, slots=True)
class Asked:
    """Cell `n` is asked for; `given` is the cell of the same pattern it is found from. `around` stays empty with it."""

    n: int
    given: int
    around: frozenset[int]
    pattern: SpokenPattern


def asked_cells(grid: Grid, patterns: Sequence[SpokenPattern], at_most: int = AT_MOST) -> list[Asked]:
    """So many cells at most, in counting order, spread over the grid, turn by turn for each pattern.

    Where the pattern joins cells that are not neighbours in the count, the neighbours of the cell asked for are empty
    too, so that the pattern is the short way to it.
    """
    chosen: list[Asked] = []
    for turn in range(at_most):
        if len(chosen) == at_most or not patterns:
            break
        pattern = patterns[turn % len(patterns)]
        wished = grid.terms * (turn + 1) / (at_most + 1)
        fitting = [asked for asked in _candidates(grid, pattern) if all(_apart(asked, other) for other in chosen)]
        if fitting:
            chosen.append(min(fitting, key=lambda asked: (abs(asked.n - wished), asked.n)))
    return sorted(chosen, key=lambda asked: asked.n)


def _candidates(grid: Grid, pattern: SpokenPattern) -> Iterable[Asked]:
    for group in pattern.groups or (pattern.cells,):
        for given, n in pairwise(group):
            beside = {n} if abs(n - given) == 1 else {n - 1, n, n + 1}
            around = frozenset(m for m in beside if 1 <= m <= grid.terms)
            if given not in around and n != 1:
                yield Asked(n, given, around, pattern)


def _apart(asked: Asked, other: Asked) -> bool:
    """Neither leaves empty what the other is found from, and they don't touch."""
    return not (
        asked.around & other.around or asked.given in other.around or other.given in asked.around or asked.n == other.n
    )
