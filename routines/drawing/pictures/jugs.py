"""Measuring jugs: one a term, all of one size, filled to the term; an arrow beside them rises by the jump."""

from fractions import Fraction
from math import pi

from routines.counting import Count, Kind

from .amounts import Marks, marks_of, shows_jumps, top_of
from .jumps import arrow, jump_words
from .sheet import Sheet, quiet_numeral
from .shelf import draw_side_by_side

BODY, TALL, RIM = 80.0, 150.0, 12.0  # width, the height of the scale, what stands above its top
LIP, HANDLE, BESIDE = 7.0, 15.0, 9.0  # what stands out at the left; where the jump runs at the right
SIZE = (BODY + 2 * (HANDLE + 13), RIM + TALL)
NUMBER = 12
FINE_GAP, NUMBER_GAP = 5.0, 18.0


def fits(count: Count) -> bool:
    return count.kind == Kind.CAPACITY and shows_jumps(count)


def level(value: Fraction, top: Fraction) -> float:
    """How high the liquid stands, in px above the jug's floor."""
    return float(value / top * Fraction(TALL))


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height."""
    marks = marks_of(count, top_of(count, first, last), TALL, FINE_GAP, NUMBER_GAP)

    def draw_one(value: Fraction, before: Fraction | None, x: float, top: float) -> None:
        floor = top + RIM + TALL
        _draw_jug(sheet, count, marks, value, x, floor)
        if before is not None:
            _draw_rise(sheet, marks, before, value, x + BODY / 2 + BESIDE, floor)

    return draw_side_by_side(sheet, count, range(first, last + 1), SIZE, jump_words(count), draw_one)


def _draw_jug(sheet: Sheet, count: Count, marks: Marks, value: Fraction, x: float, floor: float) -> None:
    left, right, rim = x - BODY / 2, x + BODY / 2, floor - TALL - RIM
    outline = f"M{left - LIP:.1f} {rim:.1f}L{left:.1f} {rim + 8:.1f}V{floor:.1f}H{right:.1f}V{rim:.1f}Z"
    sheet.path("p-body", outline)
    high = level(value, marks.top)
    sheet.put("rect", "p-liquid", x=left, y=floor - high, width=BODY, height=high)
    sheet.path("p-whole", f"M{left:.1f} {rim + 22:.1f}h{5 - HANDLE:.1f}q-5 0 -5 5v46q0 5 5 5h{HANDLE - 5:.1f}")
    for look, values, long in (("p-tick-fine", marks.fine, 9), ("p-tick", marks.numbered, 16)):
        sheet.path(look, "".join(f"M{right:.1f} {floor - level(v, marks.top):.1f}h{-long}" for v in values if v))
    for mark in marks.numbered:
        numeral, y = quiet_numeral(count, mark, NUMBER), floor - level(mark, marks.top)
        if mark and abs(floor - high - y) > 0.62 * NUMBER:
            sheet.numeral(numeral, right - 20 - numeral.width / 2, y)
    sheet.path("p-mark", f"M{left:.1f} {floor - high:.1f}H{right:.1f}")
    sheet.path("p-whole", outline)


def _draw_rise(sheet: Sheet, marks: Marks, before: Fraction, value: Fraction, x: float, floor: float) -> None:
    """The jump as an arrow from the level before to this one."""
    start, end = floor - level(before, marks.top), floor - level(value, marks.top)
    sheet.path("p-jump", f"M{x - 4:.1f} {start:.1f}h8M{x:.1f} {start:.1f}V{(start + end) / 2:.1f}")
    arrow(sheet, "p-jump-tip", (x, end), -pi / 2 if end < start else pi / 2, long=min(7.0, abs(end - start)))
