"""The small pictures from which a print is chosen: what each does to this very grid."""

from typing import Any

from routines.drawing import Entry
from routines.models.shown_plan import ShownPlan
from routines.paper.asked_cells import asked_cells
from routines.paper.follow_up import entries_with, patterns_to_use
from routines.paper.recording import givens


def print_pictures(shown: ShownPlan) -> dict[str, Any]:
    """Options of the grid tag: `lit` on the plan page, `first_stop`, cells `given` on a sheet and `asked` in a follow-up."""
    grid, stops = shown.grid, shown.plan.stops
    return {
        "lit": [item.pattern for item in shown.lit],
        "first_stop": min(stop.after for stop in stops) if stops else max(2, grid.terms // 2),
        "given": {n: Entry() for n in givens(grid, "some", shown.audience.level)},
        "asked": entries_with(grid, asked_cells(grid, patterns_to_use(shown))),
    }
