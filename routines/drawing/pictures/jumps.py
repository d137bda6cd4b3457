"""Jumps along a measuring line: an arc from term to term with its arrowhead and its size."""

from itertools import pairwise
from math import atan2, cos, sin

from routines.counting import Count

from ..numerals import MINUS, Numeral
from .sheet import Sheet
from .stretches import Stretch

TALLEST, CLEAR = 30.0, 5.0  # of an arc; between its foot and the line
TIP = 7.0
LABEL_GAP = 5.0


def jump_words(count: Count) -> str:
    """The jump with its sign, in one line of text: +750 mL."""
    return ("+" if count.step > 0 else MINUS) + count.difference_text(abs(count.step))


def arc_height(spacing: float) -> float:
    return min(TALLEST, 0.42 * spacing)


def room_above(spacing: float, label: Numeral) -> float:
    """What arcs and their labels take above the line."""
    return CLEAR + arc_height(spacing) + LABEL_GAP + label.box.bottom - label.box.top


def draw_jumps(sheet: Sheet, stretch: Stretch, places: list[float], y: float, label: Numeral) -> None:
    """Draw the arcs between neighbouring places, in counting order, above the line at y."""
    for start, end in pairwise(places):
        tall, foot = arc_height(abs(end - start)), y - CLEAR
        middle = (start + end) / 2
        # A quadratic curve rises to half the height of its control point.
        sheet.path("p-jump", f"M{start:.1f} {foot:.1f}Q{middle:.1f} {foot - 2 * tall:.1f} {end:.1f} {foot:.1f}")
        arrow(sheet, "p-jump-tip", (end, foot), atan2(2 * tall, end - middle))
        sheet.numeral(label, middle, foot - tall - LABEL_GAP - label.box.bottom)


def arrow(sheet: Sheet, look: str, tip: tuple[float, float], heading: float, long: float = TIP) -> None:
    """A filled arrowhead that ends at `tip`; heading in radians, 0 to the right, growing clockwise as y grows down."""
    x, y = tip
    corners = [(x - long * cos(heading + side), y - long * sin(heading + side)) for side in (-0.42, 0.42)]
    sheet.path(look, f"M{x:.1f} {y:.1f}" + "".join(f"L{a:.1f} {b:.1f}" for a, b in corners) + "Z")
