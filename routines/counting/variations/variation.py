"""A count to do next, ready to copy."""

from dataclasses import dataclass

from ..claims import Claim
from ..grid import Grid


@dataclass(frozen=True, slots=True)
class Variation:
    """The next count after one that went a certain way.

    what: what changes, and reason: why this, after what happened. Both speak to the teacher and are the same at all
    grades, because a change of numbers is. ask: a question for the class, in the voice of its grade. why: the reason
    with the question. shows: claims that are true of the new grid and can be seen in it.
    """

    outcome: str
    what: str
    reason: str
    ask: str
    why: str
    grid: Grid
    shows: tuple[Claim, ...] = ()

    @property
    def typed_start(self) -> str:
        """The start as it may be typed to get this count."""
        return self.grid.count.text(1).split(" = ")[0]

    @property
    def typed_step(self) -> str:
        """The step as it may be typed to get this count."""
        count = self.grid.count
        return ("-" if count.step < 0 else "") + count.difference_text(count.step)
