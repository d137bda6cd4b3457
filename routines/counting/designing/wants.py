"""What a wanted claim asks of the numbers of a grid.

Each want narrows the steps that a fold allows, and then the starts that a step allows, by necessary conditions: it
never leaves out a start or step with which the claim is true and seen. What is left is checked one by one.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from ..grid import Grid
from .congruences import Span
from .runs import Runs, held_by


def any_start(step: int, span: Span) -> Runs | None:
    """Narrow no starts."""
    return None


def anywhere(start: int, step: int) -> bool:
    """Bar no start."""
    return True


@dataclass(frozen=True, slots=True)
class Narrowing:
    """The steps with which a claim may be true and seen in one fold and, for a step, the starts of a span.

    None means that nothing is narrowed. `allows` is asked of each start that is left, before its grid is made.
    cells: how many looks at a cell it takes to find the starts of one step.
    """

    steps: Runs | None
    starts: Callable[[int, Span], Runs | None] = any_start
    allows: Callable[[int, int], bool] = anywhere
    cells: int = 1


NEVER = Narrowing(())
NO_MATTER = Narrowing(None)

Want = Callable[[Grid], Narrowing]
"""A claim as what it asks of a fold: of the fold of a stand-in count, because only the terms' places matter."""


def either(wants: Sequence[Want]) -> Want:
    """Give a claim with a parameter left out: any of the claims that fill it in."""

    def on(fold: Grid) -> Narrowing:
        narrowings = [want(fold) for want in wants]

        def meant(step: int) -> list[Narrowing]:
            return [one for one in narrowings if one.steps is None or held_by(one.steps, step)]

        def starts(step: int, span: Span) -> Runs | None:
            found: list[range] = []
            for narrowing in meant(step):
                some = narrowing.starts(step, span)
                if some is None:
                    return None
                found += some
            return found

        def allows(start: int, step: int) -> bool:
            return any(one.allows(start, step) for one in meant(step))

        steps: list[range] = []
        cells = sum(one.cells for one in narrowings)
        for narrowing in narrowings:
            if narrowing.steps is None:
                return Narrowing(None, starts, allows, cells)
            steps += narrowing.steps
        return Narrowing(steps, starts, allows, cells)

    return wants[0] if len(wants) == 1 else on
