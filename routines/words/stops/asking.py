"""What the class is asked at a stop."""

from collections.abc import Sequence
from functools import partial

from routines.counting.kinds.names import Kind

from ..sentences import STUDENT_BANDS, first_that_fits
from .filling import Filling
from .hows import tells_along_the_grid, tells_in_two_ways, tells_what_changes

# What the questions of a hard jump ask for, by level band: how, along the grid, which parts change, or two ways. How is
# asked last, where the others will not do.
ASKS = {
    "hard": (
        ("how", "how"),
        ("grid", "parts", "how", "how"),
        ("ways", "grid", "how", "how"),
        ("ways", "parts", "how", "how"),
    ),
    **dict.fromkeys(("from zero", "to zero", "first whole"), (("how",), ("how",), ("ways", "how"), ("ways", "how"))),
}

Asked = tuple[Filling, str]
"""A hard jump with its question."""


def question_of(filling: Filling, ahead: Sequence[Asked]) -> str:
    """The question of a stop; ahead: the hard jumps ahead of it, of which no three are asked for in the same words."""
    least, most = STUDENT_BANDS[filling.band]
    return first_that_fits((partial(filling.filled, wording) for wording in _wordings(filling, ahead)), least, most)


def what_is_asked_for(filling: Filling, question: str) -> str:
    """What the question of a hard jump asks for: see ASKS."""
    return next(asks for asks, wording in _of_a_hard_jump(filling) if filling.filled(wording) == question)


def _of_a_hard_jump(filling: Filling) -> list[tuple[str, str]]:
    """What is asked for, and in which words: only what a child can tell here of the parts, or along the grid."""
    key, band = _sort_of_jump(filling), filling.band
    asked = list(zip(ASKS[key][band], filling.language.stops.questions[key][band], strict=True))
    return [one for one in asked if _can_be_told(filling, one[0])]


def _can_be_told(filling: Filling, asks: str) -> bool:
    if asks == "parts":
        return tells_what_changes(filling)
    if asks == "ways":
        return tells_in_two_ways(filling)
    return asks == "how" or tells_along_the_grid(filling)


def _sort_of_jump(filling: Filling) -> str:
    """Whether it is about zero, about the first whole, or about another landmark; to the youngest it is all one."""
    spot = filling.stop.spot
    if spot is None or not filling.band:
        return "hard"
    if spot.is_zero:
        return "from zero" if filling.jump.a == 0 else "to zero"
    in_wholes = filling.grid.count.kind in (Kind.FRACTION, Kind.DECIMAL)
    return "first whole" if spot.is_first_whole and in_wholes else "hard"


def _wordings(filling: Filling, ahead: Sequence[Asked]) -> list[str]:
    stop = filling.stop
    asked = "target" if stop.reason == "end" and stop.asked is None else stop.reason
    # Stops at the ends of lines follow each other with another question too.
    turned = (stop.after // filling.grid.line_length + stop.after % filling.grid.line_length) % 2 == 0
    if asked == "hard":
        of_jump = _of_a_hard_jump(filling)
        special = [wording for asks, wording in of_jump if asks != "how"] or [wording for _, wording in of_jump]
        fallback = [wording for _, wording in of_jump if wording not in special]

        def asked_ahead(wording: str) -> int:
            return sum(one.filled(wording) == question for one, question in ahead)

        ordered = sorted(special[::-1] if turned else special, key=asked_ahead) + fallback
        return sorted(ordered, key=lambda wording: asked_ahead(wording) > 1)
    asked = {"end": "dies at its end", "front": "dies in front"}.get(filling.looked_at, asked)
    wordings = list(filling.language.stops.questions[asked][filling.band])
    if not filling.fields["idea"]:
        wordings = [wording for wording in wordings if "{idea}" not in wording]
    return wordings[::-1] if turned and stop.reason != "dies" else wordings
