"""Stops: where to pause in a count, what to ask for there, and the ways to the answer."""

from collections.abc import Iterable
from typing import Any

from ..audience import Audience
from ..grid import Grid
from ..slips.checked import in_order, reader_of
from .choosing import choose, claim_of
from .questions import ask
from .suggestion import StopSuggestion

__all__ = ["StopSuggestion", "suggest_stops"]


def suggest_stops(
    grid: Grid, targets: Iterable[Any] = (), grade: int | None = None, *, audience: Audience | None = None
) -> list[StopSuggestion]:
    """Two to four places to stop, in counting order and well apart; the last one is the end (of a short count, the only).

    targets: claims, patterns or their data, the most important first; without any, what shows best in the grid.
    grade: the level 0 (K) to 8, in place of the audience's.
    Raises: CountError on `targets` for one that is no claim, on `grid`, `level` or `audience`.

    >>> from ..count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="1,325", step="-50", terms=16), line_length=4)
    >>> [stop.after for stop in suggest_stops(grid)]
    [7, 16]
    """
    reader = reader_of(grid, grade, audience)
    claims = [claim_of(target, "targets") for target in in_order(targets, "targets")]
    choices = choose(grid, claims, reader.level)
    predicted = {choice.after + 1 for choice in choices if choice.reason in ("hard", "dies")}
    return [ask(grid, choice, reader.level, predicted) for choice in choices]
