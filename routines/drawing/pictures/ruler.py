"""The ruler with jumps along its edge: inches and feet, centimetres and metres, with the count's own marks through it.

Every second large unit is a shade darker, as every second line of a folded grid is. A ruler that begins at 0 has an
edge there; where it is laid on from one line to the next its end stays open.
"""

from fractions import Fraction

from routines.counting import Count, Kind

from ..numerals import Numeral
from .jumps import draw_jumps, room_above
from .ladders import finest, multiples, numbered, rungs
from .sheet import AIR, Sheet, jump_numeral, quiet_numeral, term_numeral
from .stretches import Stretch, stretches

TERM, NUMBER, JUMP = 17, 13, 14
BODY = 52.0
SHORTEST, LONGEST = 7.0, 24.0  # marks
NUMBER_FOOT = 14.0  # from the lower edge to the middle of the numbers
GAP = 12.0
BELOW = 7.0
LINE_GAP = 20.0
LARGE = {"in": Fraction(12), "cm": Fraction(100)}


def fits(count: Count) -> bool:
    return count.kind == Kind.LENGTH


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height."""
    begin = max(first - 1, 1)
    numerals = {n: term_numeral(sheet, count, n, TERM) for n in range(begin, last + 1)}
    label = jump_numeral(count, JUMP)
    widest = max(numeral.width for numeral in numerals.values())
    need = max(widest + GAP, label.width + 10, 34)
    margin = round(AIR + widest / 2)
    top = AIR
    for stretch in stretches(count, first, last, sheet.width, need, margin):
        top = _draw_stretch(sheet, count, stretch, numerals, label, top) + LINE_GAP
    return top - LINE_GAP + AIR


def _draw_stretch(
    sheet: Sheet, count: Count, stretch: Stretch, numerals: dict[int, Numeral], label: Numeral, top: float
) -> float:
    places = [stretch.x(count.value(n)) for n in stretch.terms]
    y = top + room_above(float(abs(count.step) * stretch.px), label)
    left = stretch.left if stretch.low == 0 else round(AIR)
    right = round(min(stretch.x(stretch.high) + stretch.left - AIR, sheet.width - AIR))
    ends = (
        stretch.low + Fraction(left - stretch.left) / stretch.px,
        stretch.low + Fraction(right - stretch.left) / stretch.px,
    )
    _draw_body(sheet, count, stretch, ends, y)
    _draw_marks(sheet, count, stretch, ends, y)
    tallest = max(numerals[n].box.bottom - numerals[n].box.top for n in stretch.terms)
    for n, x in zip(stretch.terms, places, strict=True):
        sheet.path("p-mark", f"M{x:.1f} {y:.1f}V{y + BODY + BELOW - 2:.1f}")
        sheet.numeral(numerals[n], x, y + BODY + BELOW + tallest / 2)
    draw_jumps(sheet, stretch, places, y, label)
    return y + BODY + BELOW + tallest


def _draw_body(sheet: Sheet, count: Count, stretch: Stretch, ends: tuple[Fraction, Fraction], y: float) -> None:
    """The body in light and darker large units, its two long edges, and the short edge at 0."""
    low, high = ends
    left, right = stretch.x(low), stretch.x(high)
    sheet.put("rect", "p-body", x=left, y=y, width=right - left, height=BODY)
    large = LARGE[count.base_unit]
    while large * stretch.px < 40:
        large *= 10
    for start in multiples(large, low - large, high):
        if start / large % 2 == 1 and start + large > low:
            x, end = stretch.x(max(start, low)), stretch.x(min(start + large, high))
            sheet.put("rect", "p-body-second", x=x, y=y, width=end - x, height=BODY)
    edges = f"M{left:.1f} {y:.1f}H{right:.1f}M{left:.1f} {y + BODY:.1f}H{right:.1f}"
    sheet.path("p-outline", edges + (f"M{left:.1f} {y:.1f}V{y + BODY:.1f}" if low == 0 else ""))


def _draw_marks(sheet: Sheet, count: Count, stretch: Stretch, ends: tuple[Fraction, Fraction], y: float) -> None:
    """Marks longer the coarser their rung; numbers where a term's own mark leaves room."""
    fine = finest(count, stretch.px)
    rung = numbered(count, stretch.px, *ends, lambda value: quiet_numeral(count, value, NUMBER).width)
    ladder = [size for size in rungs(count) if fine <= size <= rung]
    shares = max(len(ladder) - 1, 1)
    for level, size in enumerate(ladder):
        finer_only = [v for v in multiples(size, *ends) if level + 1 == len(ladder) or v % ladder[level + 1]]
        long = SHORTEST + (LONGEST - SHORTEST) * level / shares
        look = "p-tick-fine" if level == 0 and shares > 1 else "p-tick"
        sheet.path(look, "".join(f"M{stretch.x(v):.1f} {y:.1f}v{long:.1f}" for v in finer_only))
    terms = [stretch.x(count.value(n)) for n in stretch.terms]
    for value in multiples(rung, *ends):
        numeral, x = quiet_numeral(count, value, NUMBER), stretch.x(value)
        half = numeral.width / 2 + 3
        inside = stretch.x(ends[0]) <= x - half and x + half <= stretch.x(ends[1])
        if value and inside and all(abs(x - term) > half for term in terms):
            sheet.numeral(numeral, x, y + BODY - NUMBER_FOOT, look="g-quiet")
