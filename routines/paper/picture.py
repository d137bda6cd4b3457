"""Placing a drawn grid on paper: as large as its room allows, and never too small to read."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from django.utils.safestring import SafeString, mark_safe

from accounts.models import School
from routines.drawing import Entry, Ink, draw_grid
from routines.drawing.layout import lay_out
from routines.drawing.sizes import SIZES
from routines.paper.subject import Subject
from routines.words import SpokenPattern

# Points. The margins are those of paper.css.
PAPER = {"letter": (612.0, 792.0), "a4": (595.28, 841.89)}
MARGIN_LEFT, MARGIN_RIGHT, MARGIN_TOP, MARGIN_BOTTOM = 60.0, 36.0, 36.0, 50.0
POSTER_MARGIN = 40.0

SMALLEST_READABLE = 7.0
_SIZE = re.compile(r'width="(\d+)" height="(\d+)"')


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing with the size it takes on paper. Units: points; `numeral` is the font size of its numerals."""

    svg: SafeString
    width: float
    height: float
    numeral: float

    @property
    def is_readable(self) -> bool:
        return self.numeral >= SMALLEST_READABLE


def text_room(school: School) -> tuple[float, float]:
    """The width and height that a page's text has."""
    width, height = PAPER[school.paper]
    return width - MARGIN_LEFT - MARGIN_RIGHT, height - MARGIN_TOP - MARGIN_BOTTOM


def draw(
    subject: Subject,
    room: tuple[float, float],
    *,
    lit: Sequence[SpokenPattern] = (),
    landmarks: bool = True,
    entries: Mapping[int, Entry] | None = None,
    title: str = "",
    largest: float = 400.0,
    labels: Mapping[int, str] | None = None,
    centred: bool = False,
    ink: Ink | None = None,
) -> Picture:
    """The plan's grid, scaled to fill a room, but its numerals to no more than `largest`. Units: points.

    labels: small words in the cells; without any, the groups of the plan's story. centred: in the middle of the room,
    all of which it takes.
    """
    marked = subject.shown.landmarks if landmarks else ()
    svg = draw_grid(
        subject.grid,
        size="print",
        lit=lit,
        landmarks=marked,
        entries=entries,
        title=title or subject.picture_title,
        language=subject.say.main,
        labels=subject.group_labels if labels is None else labels,
        ink=ink,
    )
    natural = _SIZE.search(svg)
    width, height = (float(side) for side in natural.groups()) if natural else room
    drawn = lay_out(subject.grid, SIZES["print"], marked, entries).numeral
    scale = min(room[0] / width, room[1] / height, largest / drawn)
    numeral, width, height = drawn * scale, width * scale, height * scale
    if centred and numeral >= SMALLEST_READABLE:
        width, height = room  # SVG centres what its viewBox holds
    placed = f'width="{width:.1f}pt" height="{height:.1f}pt"'
    # The drawing escapes every word that it writes (routines/drawing/svg.py).
    return Picture(mark_safe(_SIZE.sub(placed, svg, count=1)), width, height, numeral)  # noqa: S308
