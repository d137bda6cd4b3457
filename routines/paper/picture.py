"""Placing a drawn grid on paper: as large as its room allows, and never too small to read."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from django.utils.safestring import SafeString, mark_safe

from accounts.models import School
from routines.drawing import Drawn, Entry, Ink, draw_grid
from routines.paper.subject import Subject
from routines.words import SpokenPattern

# Points. The margins are those of paper.css.
PAPER = {"letter": (612.0, 792.0), "a4": (595.28, 841.89)}
MARGIN_LEFT, MARGIN_RIGHT, MARGIN_TOP, MARGIN_BOTTOM = 60.0, 36.0, 36.0, 50.0
POSTER_MARGIN = 40.0

SMALLEST_READABLE = 7.0


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
    *,
    lit: Sequence[SpokenPattern] = (),
    landmarks: bool = True,
    entries: Mapping[int, Entry] | None = None,
    title: str = "",
    labels: Mapping[int, str] | None = None,
    ink: Ink | None = None,
) -> Drawn:
    """The plan's grid, to be placed on a page.

    labels: small words in the cells; without any, the groups of the plan's story.
    """
    return draw_grid(
        subject.grid,
        size="print",
        lit=lit,
        landmarks=subject.shown.landmarks if landmarks else (),
        entries=entries,
        title=title or subject.picture_title,
        language=subject.say.main,
        labels=subject.group_labels if labels is None else labels,
        ink=ink,
    )


def place(drawn: Drawn, room: tuple[float, float], *, largest: float = 400.0, centred: bool = False) -> Picture:
    """A drawing scaled to fill a room, but its numerals to no more than `largest`. Units: points.

    centred: in the middle of the room, all of which it takes.
    """
    scale = min(room[0] / drawn.width, room[1] / drawn.height, largest / drawn.numeral)
    numeral, width, height = drawn.numeral * scale, drawn.width * scale, drawn.height * scale
    if centred and numeral >= SMALLEST_READABLE:
        width, height = room  # SVG centres what its viewBox holds
    # The drawing escapes every word that it writes (routines/drawing/svg.py).
    return Picture(mark_safe(drawn.placed(f"{width:.1f}pt", f"{height:.1f}pt")), width, height, numeral)  # noqa: S308
