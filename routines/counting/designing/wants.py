"""What a wanted claim asks of the numbers of a grid.

Each want narrows the steps that a fold allows, and then the starts that a step allows, by necessary conditions: it
never leaves out a start or step with which the claim is true and seen. What is left is checked one by one.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass

from ..grid import Grid
from .congruences import Span


def any_start(step: int, span: Span) -> Iterable[int] | None:
    """Narrow no starts."""
    return None


@dataclass(frozen=True, slots=True)
class Narrowing:
    """The steps with which a claim may be true and seen in one fold and, for a step, the starts of a span.

    None means that nothing is narrowed.
    """

    steps: Collection[int] | None
    starts: Callable[[int, Span], Iterable[int] | None] = any_start


NEVER = Narrowing(())
NO_MATTER = Narrowing(None)

Want = Callable[[Grid], Narrowing]
"""A claim as what it asks of a fold: of the fold of a stand-in count, because only the terms' places matter."""


def either(wants: Sequence[Want]) -> Want:
    """Give a claim with a parameter left out: any of the claims that fill it in."""

    def on(fold: Grid) -> Narrowing:
        narrowings = [want(fold) for want in wants]

        def starts(step: int, span: Span) -> Iterable[int] | None:
            found: set[int] = set()
            for narrowing in narrowings:
                if narrowing.steps is None or step in narrowing.steps:
                    some = narrowing.starts(step, span)
                    if some is None:
                        return None
                    found.update(some)
            return found

        steps: set[int] = set()
        for narrowing in narrowings:
            if narrowing.steps is None:
                return Narrowing(None, starts)
            steps.update(narrowing.steps)
        return Narrowing(steps, starts)

    return wants[0] if len(wants) == 1 else on
