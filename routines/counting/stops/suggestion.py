"""A place to stop, as it is suggested."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class StopSuggestion:
    """Stop after the `after`-th count and ask.

    routes: two or three ways to the answer through the grid. why: what makes this a good place, for the teacher.
    Units: think, partner and share are in seconds.
    """

    after: int
    question: str
    answer: str
    routes: tuple[str, ...]
    why: str
    think: int
    partner: int
    share: int
