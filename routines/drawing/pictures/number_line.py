"""The number line with jumps: the terms as dots, friendly numbers between them, folded where the page ends.

Elapsed times and clock times stand on a time line: the same drawing, marked in minutes and hours.
"""

from fractions import Fraction
from math import pi

from routines.counting import Count

from ..numerals import Numeral
from .jumps import arrow, draw_jumps, room_above
from .ladders import finest, multiples, numbered
from .sheet import AIR, Sheet, jump_numeral, quiet_numeral, term_numeral
from .stretches import Stretch, stretches

TERM, QUIET, JUMP = 17, 13, 14
GAP = 12.0  # between two terms' numerals
TICK, LONG_TICK = 4.0, 7.0
BELOW = 12.0  # from the line to the top of the terms' numerals
ROW = 8.0  # between the terms and the friendly numbers below them
LINE_GAP = 22.0


def fits(count: Count) -> bool:
    return True


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height."""
    begin = max(first - 1, 1)
    numerals = {n: term_numeral(sheet, count, n, TERM) for n in range(begin, last + 1)}
    label = jump_numeral(count, JUMP)
    widest = max(numeral.width for numeral in numerals.values())
    need = max(widest + GAP, label.width + 10, 34)
    margin = round(AIR + max(widest / 2, 22))
    top = AIR
    for stretch in stretches(count, first, last, sheet.width, need, margin):
        top = _draw_stretch(sheet, count, stretch, numerals, label, top) + LINE_GAP
    return top - LINE_GAP + AIR


def _draw_stretch(
    sheet: Sheet, count: Count, stretch: Stretch, numerals: dict[int, Numeral], label: Numeral, top: float
) -> float:
    places = [stretch.x(count.value(n)) for n in stretch.terms]
    spacing = abs(count.step) * stretch.px
    y = top + room_above(float(spacing), label)
    left, right = _ends(sheet, count, stretch, y)
    values = (
        stretch.low + Fraction(left + 8 - stretch.left) / stretch.px,
        stretch.low + Fraction(right - 8 - stretch.left) / stretch.px,
    )
    _draw_marks(sheet, count, stretch, values, y)
    draw_jumps(sheet, stretch, places, y, label)
    tallest = max(numerals[n].box.bottom - numerals[n].box.top for n in stretch.terms)
    for n, x in zip(stretch.terms, places, strict=True):
        sheet.put("circle", "p-dot", cx=x, cy=y, r=4)
        sheet.numeral(numerals[n], x, y + BELOW + tallest / 2)
    return _draw_friendly(sheet, count, stretch, values, y, y + BELOW + tallest + ROW, numerals)


def _ends(sheet: Sheet, count: Count, stretch: Stretch, y: float) -> tuple[int, int]:
    """Draw the axis; it goes on as arrows, but for what ends at 0."""
    right = round(min(stretch.x(stretch.high) + stretch.left - AIR, sheet.width - AIR))
    left = round(AIR)
    closed = stretch.low == 0 and not count.form.goes_below_zero
    if closed:
        left = stretch.left
    sheet.path("p-axis", f"M{left} {y:.1f}H{right}")
    arrow(sheet, "p-arrow", (right, y), 0)
    if closed:
        sheet.path("p-axis", f"M{left} {y - LONG_TICK:.1f}V{y + LONG_TICK:.1f}")
    else:
        arrow(sheet, "p-arrow", (left, y), pi)
    return (left - 8 if closed else left), right


def _draw_marks(sheet: Sheet, count: Count, stretch: Stretch, ends: tuple[Fraction, Fraction], y: float) -> None:
    fine = finest(count, stretch.px)
    marks = "".join(f"M{stretch.x(v):.1f} {y - TICK:.1f}v{2 * TICK:.0f}" for v in multiples(fine, *ends))
    sheet.path("p-tick", marks)


def _draw_friendly(
    sheet: Sheet,
    count: Count,
    stretch: Stretch,
    ends: tuple[Fraction, Fraction],
    y: float,
    top: float,
    numerals: dict[int, Numeral],
) -> float:
    """Write the friendly numbers that are no terms in a row below the terms; return where the stretch ends."""
    rung = numbered(count, stretch.px, *ends, lambda value: quiet_numeral(count, value, QUIET).width)
    spoken = {count.value(n): stretch.x(count.value(n)) for n in stretch.terms}
    friendly = {}
    for value in multiples(rung, *ends):
        numeral = quiet_numeral(count, value, QUIET)
        x = stretch.x(value)
        if value not in spoken and numeral.width / 2 <= x <= sheet.width - numeral.width / 2:
            friendly[x] = numeral
    if not friendly:
        return top - ROW
    tallest = max(numeral.box.bottom - numeral.box.top for numeral in friendly.values())
    for x, numeral in friendly.items():
        clear = all(abs(x - stretch.x(count.value(n))) > numerals[n].width / 2 + 4 for n in stretch.terms)
        foot = top - 4 if clear else y + LONG_TICK
        sheet.path("p-tick", f"M{x:.1f} {y - LONG_TICK:.1f}V{foot:.1f}")
        sheet.numeral(numeral, x, top + tallest / 2, look="g-quiet")
    return top + tallest
