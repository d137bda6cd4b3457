"""Backwards design: from the patterns a class should see to the grids that show them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ..claims import Claim
from ..errors import CountError
from ..grid import Grid
from ..patterns import MODULES
from .candidates import best_first
from .limits import Limits
from .work import Work

__all__ = ["Designs", "Limits", "design_grids"]


@dataclass(frozen=True, slots=True)
class Designs:
    """Grids that show what is wanted, best first; `complete` is False where `at_most` left some out."""

    grids: tuple[Grid, ...]
    complete: bool


def design_grids(wanted: Sequence[Claim], limits: Limits | None = None) -> Designs:
    """Give every grid within the limits in which all the wanted claims are true and can be seen.

    A parameter that a claim leaves out may be anything. Sound: each grid is checked. Complete: for every fold the wants
    narrow steps and starts by necessary conditions only (see `wants.py` and the proofs beside each family). Bounded: what
    will be looked at is counted by arithmetic, and more than MOST_LOOKS is refused (see `work.py`).

    Raises: CountError on `family` for what is no Claim, on a claim's parameter that the number kind does not have, on
    start, step, terms or line_length where the limits are too wide to be looked through, and as Limits does.

    >>> from fractions import Fraction
    >>> from ..claims import LandmarksClaim
    >>> from ..grid import Fill
    >>> tens_in_a_column = LandmarksClaim(multiple=Fraction(10), lie="column")
    >>> limits = Limits(starts=(50, 60), steps=(6, 6), line_lengths=(5, 5), terms=(20, 20), fills=(Fill.ACROSS,))
    >>> [int(grid.count.start) for grid in design_grids([tens_in_a_column], limits).grids]
    [54, 56, 52, 58, 50, 60]
    """
    limits = Limits() if limits is None else limits
    if not isinstance(limits, Limits):
        raise CountError("value", "no-limits")
    if not isinstance(wanted, (list, tuple)) or not all(isinstance(claim, Claim) for claim in wanted):
        raise CountError("family", "no-wanted-claims")
    found: list[Grid] = []
    for grid in best_first(list(wanted), limits, Work(limits)):
        if all(_shows(claim, grid) for claim in wanted):
            if len(found) == limits.at_most:
                return Designs(tuple(found), complete=False)
            found.append(grid)
    return Designs(tuple(found), complete=True)


def _shows(claim: Claim, grid: Grid) -> bool:
    family = MODULES[type(claim)]
    try:
        verdicts = (family.judge(whole, grid) for whole in family.completed(claim, grid))
        return any(judged.true and judged.seen for judged in verdicts)
    except CountError:  # a part that only some counts of this kind are written with
        return False
