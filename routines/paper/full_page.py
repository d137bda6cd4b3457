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


def text_widths(subject: Subject) -> tuple[float, float]:
    """The width that text has on a page upright and on one across. Units: points."""
    short, long = PAPER[subject.school.paper]
    return short - 2 * MARGIN, long - 2 * MARGIN


def placed(subject: Subject, drawn: Drawn, taken: float, taken_across: float) -> tuple[str, Picture]:
    """The kind of page ("sheet-upright" or "sheet-wide") and the grid in the middle of it.

    Units: points; `taken` is the height that other things need on a page upright, `taken_across` on one across.
    """
    kind, room = room_for(subject, drawn, taken, taken_across=taken_across)
    return kind, place(drawn, room, centred=True)


def room_for(subject: Subject, drawn: Drawn, taken: float, *, taken_across: float) -> tuple[str, tuple[float, float]]:
    """The kind of page on which the grid is larger, and the width and height that it may take there.

    Units: points; `taken` is the height that other things need on a page upright, `taken_across` on one across.
    """
    short, long = PAPER[subject.school.paper]
    upright_width, wide_width = text_widths(subject)
    upright = (upright_width, long - MARGIN - FOOT - taken)
    wide = (wide_width, short - MARGIN - FOOT - taken_across)
    is_wide = place(drawn, wide).numeral > NEARLY * place(drawn, upright).numeral
    return ("sheet-wide", wide) if is_wide else ("sheet-upright", upright)


def full_page(template: str, subject: Subject, kind: str, **context: Any) -> SafeString:
    """One such page. It is looked at by children: nothing on it says who planned it, which version, or what teachers note."""
    whole = {**common(subject), "kind": kind, "foot_left": subject.school.name, "foot_right": "", **context}
    return mark_safe(render_to_string(f"paper/sheets/{template}", whole))  # noqa: S308 - our own template
