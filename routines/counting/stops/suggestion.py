"""A place to stop, as it is suggested."""

from dataclasses import dataclass
from fractions import Fraction

from ..claims import Claim
from ..locate.routes import Route
from .hard_spots import HardSpot


@dataclass(frozen=True, slots=True)
class StopSuggestion:
    """Stop after the `after`-th count and ask.

    reason: what makes it a good place: "target" (a `claim` can be seen), "dies" (it ends with the next count), "hard" (the
    next jump passes the landmark of a `spot`) or "end". far: a count further on that may be asked for; by: what leads there,
    the claim itself or the step from line to line. asked: at the end, a value that comes past it, or never; None where no
    such value is asked for. ways: two or three ways to the answer
    through the grid.
    Units: think, partner and share are in seconds; asked is in the base unit.
    """

    after: int
    reason: str
    claim: Claim | None
    spot: HardSpot | None
    far: int
    by: Claim
    asked: Fraction | None
    ways: tuple[Route, ...]
    think: int
    partner: int
    share: int
