"""Kitchen scales: one a term, all with the same dial; the pointer turns by the jump."""

from fractions import Fraction
from itertools import combinations
from math import cos, pi, radians, sin

from routines.counting import Count, Kind, Piece

from ..numerals import HALF_DIGIT, Box, Numeral, set_numeral
from .amounts import Marks, marks_of, shows_jumps, top_of
from .jumps import arrow, jump_words
from .sheet import Sheet, quiet_numeral
from .shelf import draw_side_by_side

RADIUS, ABOVE, BELOW = 62.0, 18.0, 8.0  # of the dial; what the pan and the foot take
SIZE = (2 * RADIUS + 12, ABOVE + 2 * RADIUS + BELOW)
POINTER, SWEPT_AT = 0.84, 0.36  # of the radius
NUMBER, NUMBER_RIM = 12, 12.0  # size of the numbers; how far from the rim they end
FINE_GAP, NUMBER_GAP = 4.0, 50.0


def fits(count: Count) -> bool:
    return count.kind == Kind.MASS and shows_jumps(count)


def pointer_angle(value: Fraction, top: Fraction) -> Fraction:
    """Degrees from the top of the dial, clockwise; one whole turn is what the scale can weigh."""
    return value / top * 360


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height."""
    marks = _clear_marks(count, top_of(count, first, last))

    def draw_one(value: Fraction, before: Fraction | None, x: float, top: float) -> None:
        _draw_scale(sheet, x, top)
        _draw_dial(sheet, count, marks, value, before, x, top + ABOVE + RADIUS)

    return draw_side_by_side(sheet, count, range(first, last + 1), SIZE, jump_words(count), draw_one)


def _clear_marks(count: Count, top: Fraction) -> Marks:
    """As many numbers as stand clear of each other round the dial."""
    gap = NUMBER_GAP
    while True:
        marks = marks_of(count, top, 2 * pi * RADIUS, FINE_GAP, gap)
        boxes = [box for _, box in _numbers(count, marks)]
        if not any(one.meets(other) for one, other in combinations(boxes, 2)):
            return marks
        gap *= 1.3


def _numbers(count: Count, marks: Marks) -> list[tuple[Numeral, Box]]:
    """The numbers, each with the box it takes round the middle: all end at one distance from the rim, however wide."""
    found = []
    for mark in marks.numbered:
        if mark == marks.top:
            continue
        numeral = quiet_numeral(count, mark, NUMBER) if mark else set_numeral((Piece("number", "0"),), NUMBER)
        angle = radians(float(pointer_angle(mark, marks.top)))
        reach = abs(sin(angle)) * numeral.width / 2 + abs(cos(angle)) * HALF_DIGIT * NUMBER
        found.append((numeral, numeral.box.moved(*_at(0, 0, RADIUS - NUMBER_RIM - reach, mark, marks.top)).grown(2)))
    return found


def _draw_scale(sheet: Sheet, x: float, top: float) -> None:
    """The pan, its stem and the foot that the dial stands on."""
    foot = top + ABOVE + 2 * RADIUS
    sheet.path("p-whole", f"M{x:.1f} {top + ABOVE:.1f}v-9M{x - 46:.1f} {top + 1:.1f}q6 8 16 8h60q10 0 16 -8Z")
    sheet.path("p-whole", f"M{x - 27:.1f} {foot - 6:.1f}l-8 {6 + BELOW - 1:.1f}h70l-8 {1 - 6 - BELOW:.1f}")
    sheet.put("circle", "p-face", cx=x, cy=top + ABOVE + RADIUS, r=RADIUS)


def _draw_dial(
    sheet: Sheet, count: Count, marks: Marks, value: Fraction, before: Fraction | None, x: float, y: float
) -> None:
    if before is not None:
        _draw_turn(sheet, pointer_angle(before, marks.top), pointer_angle(value, marks.top), x, y)
    for look, values, long in (("p-tick-fine", marks.fine, 5), ("p-tick", marks.numbered, 8)):
        ends = ((_at(x, y, RADIUS - 2, v, marks.top), _at(x, y, RADIUS - 2 - long, v, marks.top)) for v in values)
        sheet.path(look, "".join(f"M{a:.1f} {b:.1f}L{c:.1f} {d:.1f}" for (a, b), (c, d) in ends))
    end_x, end_y = _at(x, y, POINTER * RADIUS, value, marks.top)
    sheet.path("p-minute", f"M{x:.2f} {y:.2f}L{end_x:.2f} {end_y:.2f}")
    sheet.put("circle", "p-dot", cx=x, cy=y, r=4.5)
    for numeral, box in _numbers(count, marks):
        # A clear patch, so that the pointer runs under the number.
        width, height = box.right - box.left, box.bottom - box.top
        sheet.put("rect", "p-body", x=x + box.left, y=y + box.top, width=width, height=height)
        sheet.numeral(numeral, x + box.left + width / 2, y + box.top + height / 2)


def _draw_turn(sheet: Sheet, start: Fraction, end: Fraction, x: float, y: float) -> None:
    """The turn of the pointer from the term before: its ground, and its path with an arrowhead."""
    radius = SWEPT_AT * RADIUS
    steps = max(2, int(abs(end - start) / 6))
    angles = [radians(float(start + (end - start) * k / steps)) for k in range(steps + 1)]
    path = [(x + radius * sin(a), y - radius * cos(a)) for a in angles]
    line = "L".join(f"{a:.1f} {b:.1f}" for a, b in path)
    sheet.path("p-swept", f"M{x:.1f} {y:.1f}L{line}Z")
    sheet.path("p-jump", f"M{line}")
    arrow(sheet, "p-jump-tip", path[-1], angles[-1] + (0 if end > start else pi))


def _at(x: float, y: float, far: float, value: Fraction, top: Fraction) -> tuple[float, float]:
    angle = radians(float(pointer_angle(value, top)))
    return x + far * sin(angle), y - far * cos(angle)
