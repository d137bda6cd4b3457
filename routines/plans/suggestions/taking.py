"""Turning what the engine proposes into the changes that take it into the plan."""

import json
from dataclasses import dataclass

from routines.counting import Audience, Claim, Grid, Outcome
from routines.models.declared import declared
from routines.models.plan_document import Stop
from routines.models.suggested_stop import suggested_stop
from routines.words import SpokenStop, SpokenVariation, next_counts, suggest_stops


@dataclass(frozen=True, slots=True)
class Offer:
    """Something to take: what the engine says, and the change that takes it."""

    offered: SpokenStop | SpokenVariation
    take: str


def typed_start(grid: Grid) -> str:
    """The start as a teacher would type it to get this count."""
    return grid.count.text(1).split(" = ")[0]


def typed_step(grid: Grid) -> str:
    count = grid.count
    return ("-" if count.step < 0 else "") + count.difference_text(count.step)


def take_fold(grid: Grid) -> str:
    """Fold the plan's count as this grid is folded."""
    fold = {"line_length": grid.line_length, "fill": grid.fill, "lead": grid.lead}
    return f"fold {json.dumps(fold)}"


def take_count(grid: Grid) -> str:
    """Count and fold as this grid does."""
    return f"count {json.dumps(count_and_fold(grid))}"


def count_and_fold(grid: Grid) -> dict[str, object]:
    """The fields of a count and its fold, as a teacher would type them."""
    return {
        "kind": grid.count.kind,
        "start": typed_start(grid),
        "step": typed_step(grid),
        "terms": grid.count.terms,
        "line_length": grid.line_length,
        "fill": grid.fill,
        "lead": grid.lead,
    }


def offered_stops(grid: Grid, targets: list[Claim], audience: Audience, asked_already: set[str]) -> list[Offer]:
    offers = []
    for offered in suggest_stops(grid, targets, audience=audience):
        if offered.question not in asked_already:
            stop = suggested_stop(offered)
            row = {name: getattr(stop, name) for name in declared(Stop)} | {"routes": "\n".join(stop.routes)}
            offers.append(Offer(offered, f"stops.add {json.dumps(row)}"))
    return offers


def offered_next_counts(grid: Grid, audience: Audience, written_already: set[str]) -> list[Offer]:
    """The most fitting ones for each way the lesson may go."""
    offers = []
    for outcome in Outcome:
        for variation in next_counts(grid, outcome, audience=audience)[:2]:
            why = f"{variation.what} {variation.why}"
            if why not in written_already:
                row = {"outcome": outcome, "why": why, **count_and_fold(variation.grid)}
                row.pop("lead")
                offers.append(Offer(variation, f"next.add {json.dumps(row)}"))
    return offers
