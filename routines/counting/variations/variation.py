"""A count to do next, ready to copy."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from ..claims import Claim
from ..grid import Grid


@dataclass(frozen=True, slots=True)
class Variation:
    """The next count after one that went a certain way.

    change: the name of what changes. shows: claims that are true of the new grid and can be seen in it. written: numbers
    of the change as they are written, by name: counts of the new grid, sizes of jumps, how many.
    """

    outcome: str
    change: str
    grid: Grid
    shows: tuple[Claim, ...] = ()
    written: Mapping[str, str] = field(default_factory=dict, hash=False)

    @property
    def typed_start(self) -> str:
        """The start as it may be typed to get this count."""
        return self.grid.count.text(1).split(" = ")[0]

    @property
    def typed_step(self) -> str:
        """The step as it may be typed to get this count."""
        count = self.grid.count
        return ("-" if count.step < 0 else "") + count.difference_text(count.step)
