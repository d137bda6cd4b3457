"""Pages on which the grid is nearly everything: upright or across, whichever lets it be larger."""

from typing import Any

from django.template.loader import render_to_string
from django.utils.safestring import SafeString, mark_safe

from routines.drawing import Drawn
from routines.paper.picture import PAPER, Picture, place
from routines.paper.plan_page import common
from routines.paper.subject import Subject

NEARLY = 0.92  # a page across looks fuller, so it may cost a little size
MARGIN, FOOT = 40.0, 44.0  # points, as the named pages of paper.css have them


def placed(subject: Subject, drawn: Drawn, taken: float) -> tuple[str, Picture]:
    """The kind of page ("sheet-upright" or "sheet-wide") and the grid in the middle of it.

    Units: points; `taken` is the height that other things need on the page.
    """
    kind, room = room_for(subject, drawn, taken)
    return kind, place(drawn, room, centred=True)


def room_for(
    subject: Subject, drawn: Drawn, taken: float, *, taken_across: float | None = None
) -> tuple[str, tuple[float, float]]:
    """The kind of page on which the grid is larger, and the width and height that it may take there.

    Units: points; `taken_across` is what other things need on a page across, where that is not the same.
    """
    short, long = PAPER[subject.school.paper]
    upright = (short - 2 * MARGIN, long - MARGIN - FOOT - taken)
    wide = (long - 2 * MARGIN, short - MARGIN - FOOT - (taken if taken_across is None else taken_across))
    is_wide = place(drawn, wide).numeral > NEARLY * place(drawn, upright).numeral
    return ("sheet-wide", wide) if is_wide else ("sheet-upright", upright)


def full_page(template: str, subject: Subject, kind: str, **context: Any) -> SafeString:
    """One such page. It is looked at by children: nothing on it says who planned it, which version, or what teachers note."""
    whole = {**common(subject), "kind": kind, "foot_left": subject.school.name, "foot_right": "", **context}
    return mark_safe(render_to_string(f"paper/sheets/{template}", whole))  # noqa: S308 - our own template
