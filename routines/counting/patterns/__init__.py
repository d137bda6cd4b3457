"""What can be seen in a grid: one module per family, each with `find(grid)`, `completed(claim, grid)` and `judge(claim, grid)`.

`find` gives every claim of its family that is true of the view and can be seen in it, with the first term that breaks
it when the count goes on. `completed` fills in what a claim leaves out, in every way it may be meant. `judge` judges a
complete claim. Adding a family: its type in `claims.py`, a module of its name here, its sentences in `routines.words`,
a test.
"""

from __future__ import annotations

from functools import lru_cache
from importlib import import_module
from types import ModuleType

from ..audience import Audience, level_of
from ..claims import FAMILIES, Claim
from ..grid import Grid
from ..results import Pattern
from .follows import implied as implied_by_others
from .ranking import in_order

# Each module bears the name of its family: "how-many" is looked for by how_many.py.
MODULES: dict[type[Claim], ModuleType] = {
    claim: import_module(f".{family.replace('-', '_')}", __name__) for family, claim in FAMILIES.items()
}
FINDERS = tuple(module.find for module in MODULES.values())
KEPT_GRIDS = 64  # of some tens of kilobytes each


def find_patterns(
    grid: Grid, upto: int | None = None, implied: bool = False, *, audience: Audience | None = None
) -> list[Pattern]:
    """Everything that can be seen in a grid, most noticeable first.

    upto: only the first so many counts are on the board. implied: also what follows from a broader claim on the list.
    audience: whose order it is; the list is complete for everybody.
    Raises: CountError on `n` for an `upto` that is not in view.

    >>> from ..count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="58", step="6", terms=20), line_length=5)
    >>> [p.breaks_at for p in find_patterns(grid) if p.claim.family == "how-many" and p.claim.multiple == 10]
    [None]
    """
    view = grid if upto is None else grid.cut(upto)
    found = everything(view)
    if not implied:
        follow = implied_by_others(found, view)
        found = tuple(one for i, one in enumerate(found) if i not in follow)
    return in_order(found, view, level_of(audience))


@lru_cache(maxsize=KEPT_GRIDS)
def everything(grid: Grid) -> tuple[Pattern, ...]:
    """All that can be seen, in the order of the finders. Searched once: a page asks for the same grid several times."""
    return tuple(one for find in FINDERS for one in find(grid))
