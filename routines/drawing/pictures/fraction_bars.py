"""Fraction bars: every term as wholes cut into equal parts, grey as far as the term goes.

The parts of the last jump are light, in a strong line, under a bracket that points the way; what a count backward has
taken away stays as empty parts under the bracket. Where there are too many wholes for one line, the full ones stand
together in one closed block that says how many they are.
"""

from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor, lcm, pi

from routines.counting import Count, Kind

from ..metrics import text_width
from ..numerals import HALF_DIGIT
from ..words import WORDS
from .jumps import arrow
from .sheet import AIR, Sheet, jump_numeral, readable
from .wording import parts_key

TERM, SMALL_WORDS = 17, 13
MOST_PARTS, LARGEST_STEP = 16, 2
PART_LEAST, WHOLE_LEAST, WHOLE_MOST = 5.0, 46.0, 150.0
WHOLE_GAP, LABEL_GAP, BAR = 5.0, 14.0, 24.0
BRACKET = 10.0  # above the bars
ROW_GAP = 18.0


def parts_of_whole(count: Count) -> int:
    """Into how many parts each whole is cut: the kept denominator, tenths for decimals, at most MOST_PARTS; else 0."""
    parts = lcm(count.scale, 10) if count.kind == Kind.DECIMAL else lcm(count.scale, count.style.over)
    if parts > MOST_PARTS and count.kind == Kind.FRACTION:
        parts = count.scale
    return parts if 1 < parts <= MOST_PARTS else 0


def fits(count: Count) -> bool:
    if count.kind not in (Kind.FRACTION, Kind.DECIMAL) or not parts_of_whole(count):
        return False
    return min(count.start, count.value(count.terms)) >= 0 and abs(count.step) <= LARGEST_STEP


@dataclass(frozen=True, slots=True)
class Row:
    """One term's bars. before: the value it jumped from (its own for the first term); skipped: wholes in the block."""

    value: Fraction
    before: Fraction
    skipped: int
    wholes: int


def rows_of(count: Count, terms: range, room: int) -> list[Row]:
    """The rows of some terms, with room for that many wholes a line."""
    found = []
    for n in terms:
        value = count.value(n)
        before = count.value(n - 1) if n > 1 else value
        low, high = floor(min(value, before)), max(1, ceil(max(value, before)))
        skipped = low if high > room else 0
        found.append(Row(value, before, skipped, high - skipped))
    return found


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height."""
    parts, terms = parts_of_whole(count), range(first, last + 1)
    numerals = {n: readable(count.pieces(n), TERM) for n in terms}
    label = max(numeral.width for numeral in numerals.values()) + LABEL_GAP
    least = max(PART_LEAST * parts, WHOLE_LEAST) + WHOLE_GAP
    room = sheet.width - 2 * AIR
    rows = rows_of(count, terms, int((room - label) // least))
    most = max(row.wholes for row in rows)
    block = (
        text_width(WORDS[sheet.language].wholes.format(n=999), SMALL_WORDS) + 14
        if any(row.skipped for row in rows)
        else 0.0
    )
    whole = min((room - label - block) / most - WHOLE_GAP, WHOLE_MOST)
    tall = max(max(n.box.bottom - n.box.top for n in numerals.values()), BAR + BRACKET) + ROW_GAP
    for index, (n, row) in enumerate(zip(terms, rows, strict=True)):
        top = AIR + index * tall + BRACKET
        sheet.numeral(numerals[n], AIR + numerals[n].width / 2, top + BAR / 2)
        bars = AIR + label
        if row.skipped:
            _draw_block(sheet, row.skipped, bars, top, block - WHOLE_GAP)
            bars += block
        _draw_row(sheet, row, parts, bars, top, whole)
    return _draw_key(sheet, count, AIR + len(rows) * tall) + AIR


def _draw_block(sheet: Sheet, wholes: int, x: float, y: float, width: float) -> None:
    words = WORDS[sheet.language].wholes.format(n=wholes)
    sheet.put("rect", "p-part-shaded", x=x, y=y, width=width, height=BAR)
    sheet.put("rect", "p-whole", x=x, y=y, width=width, height=BAR)
    sheet.words(words, x + width / 2, y + BAR / 2 + HALF_DIGIT * SMALL_WORDS, SMALL_WORDS, "g-numeral")


def _draw_row(sheet: Sheet, row: Row, parts: int, x: float, y: float, whole: float) -> None:
    low, high = sorted((row.before, row.value))
    changed = "p-part-jump" if row.value > row.before else "p-part-taken"
    for k in range(row.wholes * parts):
        value = row.skipped + Fraction(k, parts)
        look = "p-part-shaded" if value < low else changed if value < high else "p-part"
        left = x + _along(value - row.skipped, whole)
        sheet.put("rect", look, x=left, y=y, width=whole / parts, height=BAR)
    for k in range(row.wholes):
        sheet.put("rect", "p-whole", x=x + k * (whole + WHOLE_GAP), y=y, width=whole, height=BAR)
    if row.value != row.before:
        start, end = (x + _along(value - row.skipped, whole, value == high) for value in (row.before, row.value))
        _draw_bracket(sheet, start, end, y)


def _draw_bracket(sheet: Sheet, start: float, end: float, y: float) -> None:
    sheet.path("p-jump", f"M{start:.1f} {y - 3:.1f}V{y - BRACKET + 3:.1f}H{end:.1f}V{y - 5:.1f}")
    arrow(sheet, "p-jump-tip", (end, y - 1.5), pi / 2, long=6)


def _along(value: Fraction, whole: float, from_left: bool = False) -> float:
    """How far right a value stands. from_left: at a whole, the end of the bar before it, not the start of the next."""
    wholes = ceil(value) - 1 if from_left and value > 0 else floor(value)
    return wholes * (whole + WHOLE_GAP) + float(value - wholes) * whole


def _draw_key(sheet: Sheet, count: Count, top: float) -> float:
    """What the two shadings mean, in words, with the jump's own size; return where the key ends."""
    before, jump = parts_key(count.step > 0, sheet.language)
    numeral = jump_numeral(count, SMALL_WORDS)
    tall = max(numeral.box.bottom - numeral.box.top, 22.0)
    middle = top + BRACKET + tall / 2
    x = AIR
    for look, words, shown in (("p-part-shaded", before, None), (_changed(count), jump, numeral)):
        sheet.put("rect", look, x=x, y=middle - 8, width=16, height=16)
        if shown is None:
            sheet.put("rect", "p-whole", x=x, y=middle - 8, width=16, height=16)
        else:
            _draw_bracket(sheet, *((x, x + 16) if count.step > 0 else (x + 16, x)), middle - 8)
        x += 24
        if shown is not None:
            sheet.numeral(shown, x + shown.width / 2, middle)
            x += shown.width + 6
        sheet.words(words, x, middle + HALF_DIGIT * SMALL_WORDS, SMALL_WORDS, middle=False)
        x += text_width(words, SMALL_WORDS) + 22
    return middle + tall / 2


def _changed(count: Count) -> str:
    return "p-part-jump" if count.step > 0 else "p-part-taken"
