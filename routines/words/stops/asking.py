"""What the class is asked at a stop."""

from collections.abc import Sequence
from functools import partial

from ..sentences import STUDENT_BANDS, first_that_fits
from .filling import Filling

# What each question of a hard jump asks for, by level band: how, along the grid, which parts change, or two ways.
ASKS = (("how", "how"), ("grid", "parts"), ("ways", "grid"), ("ways", "parts"))


Asked = tuple[Filling, str]
"""A hard jump with its question."""


def question_of(filling: Filling, ahead: Sequence[Asked]) -> str:
    """The question of a stop; ahead: the hard jumps ahead of it, of which no three are asked for in the same words."""
    least, most = STUDENT_BANDS[filling.band]
    return first_that_fits((partial(filling.filled, wording) for wording in _wordings(filling, ahead)), least, most)


def what_is_asked_for(filling: Filling, question: str) -> str:
    """What the question of a hard jump asks for: see ASKS."""
    wordings = filling.language.stops.questions["hard"][filling.band]
    return next(
        asks for asks, wording in zip(ASKS[filling.band], wordings, strict=True) if filling.filled(wording) == question
    )


def _wordings(filling: Filling, ahead: Sequence[Asked]) -> tuple[str, ...]:
    stop = filling.stop
    asked = "target" if stop.reason == "end" and stop.asked is None else stop.reason
    wordings = filling.language.stops.questions[asked][filling.band]
    if not filling.fields["idea"] or filling.band == 0:
        wordings = tuple(wording for wording in wordings if "{idea}" not in wording)
    # Stops at the ends of lines follow each other with another question too.
    at = stop.after // filling.grid.line_length + stop.after % filling.grid.line_length
    ordered = wordings if at % 2 or asked == "dies" else wordings[::-1]
    if asked != "hard":
        return ordered
    return tuple(
        sorted(ordered, key=lambda wording: sum(one.filled(wording) == question for one, question in ahead) > 1)
    )
