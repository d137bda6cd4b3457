"""What to count next, as the plan has it or else as the engine offers it; the one taken becomes a draft copy."""

from collections.abc import Sequence
from dataclasses import dataclass

from accounts.models import User
from routines.counting import Grid, Outcome, check
from routines.models import Routine, RoutineVersion
from routines.models.plan_document import CountSection, Fold
from routines.models.shown_plan import ShownPlan
from routines.plans.actions import start_routine
from routines.plans.suggestions.taking import typed_start, typed_step
from routines.words import next_counts, title_of_count


@dataclass(frozen=True, slots=True)
class NextGrid:
    """One next count to take. `outcome` is the way the lesson went that it is for."""

    outcome: str
    why: str
    grid: Grid
    count: CountSection
    fold: Fold


def next_grids(shown: ShownPlan) -> list[NextGrid]:
    """Those that the plan names with a count; where it names none, one for each way the lesson may have gone."""
    named = [
        NextGrid(item.outcome, item.why, grid, item.count, item.fold)
        for item in shown.plan.next_counts
        if item.count is not None and item.fold is not None and (grid := item.grid()) is not None
    ]
    if named:
        return named
    offered = []
    for outcome in Outcome:
        for variation in next_counts(shown.grid, outcome, audience=shown.audience)[:1]:
            grid = variation.grid
            typed = CountSection(
                grid.count.kind, typed_start(grid), typed_step(grid), grid.count.terms, shown.plan.count.style
            )
            fold = Fold(grid.line_length, grid.fill, grid.lead)
            offered.append(
                NextGrid(outcome, f"{variation.what} {variation.why}", fold.grid(typed.count()), typed, fold)
            )
    return offered


def start_next(*, version: RoutineVersion, taken: NextGrid, by: User) -> Routine:
    """A draft of `by`'s own with the next count, copied from what was taught. Targets that can be seen in it stay; answers and
    stops belong to the old numbers and do not.
    """
    plan = version.read_plan()
    targets = [
        target
        for target, claim in zip(plan.targets, plan.claims(), strict=True)
        if not target.words and check(claim, taken.grid).true
    ]
    following = plan.changed(
        title=title_of_count(taken.grid, plan.audience(0).language),
        count=taken.count,
        fold=taken.fold,
        targets=tuple(targets),
        expected=(),
        stops=(),
        next_counts=(),
        landmark="",
        story=type(plan.story)(),
        notes=taken.why,
    )
    return start_routine(plan=following, by=by, copied_from=version)


def choices(grids: Sequence[NextGrid]) -> list[tuple[str, str]]:
    return [(str(i), item.why) for i, item in enumerate(grids)]
