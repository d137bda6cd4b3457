"""Pictures that give every term a drawing of its own: side by side, the term and the jump that led to it written below."""

from collections.abc import Callable
from fractions import Fraction

from routines.counting import Count

from ..metrics import text_width
from ..numerals import HALF_DIGIT
from .sheet import AIR, Sheet, term_numeral

TERM, JUMP = 19, 13
TEXT_GAP, ROW_GAP = 12.0, 18.0
WIDEST = 1.35  # of a drawing, what it takes at most where there is room

DrawOne = Callable[[Fraction, Fraction | None, float, float], None]


def draw_side_by_side(
    sheet: Sheet, count: Count, terms: range, size: tuple[float, float], jump: str, draw_one: DrawOne
) -> float:
    """Draw one for every term, in rows as even as can be; return the height.

    size: width and height of one drawing. jump: the words below every term but the first of the count.
    draw_one: takes the value, the value before if there is one, and the middle and top of its place.
    """
    numerals = {n: term_numeral(sheet, count, n, TERM) for n in terms}
    wide, tall = size
    cell = max(wide, text_width(jump, JUMP) + 8, *(numeral.width + 8 for numeral in numerals.values()))
    room = sheet.width - 2 * AIR
    rows = -(-len(terms) // max(1, int(room // cell)))
    each = -(-len(terms) // rows)
    step = min(room / each, WIDEST * cell)
    row_height = tall + TEXT_GAP + TERM + 6 + JUMP + ROW_GAP
    for index, n in enumerate(terms):
        row, column = divmod(index, each)
        x, top = AIR + (column + 0.5) * step, AIR + row * row_height
        draw_one(count.value(n), count.value(n - 1) if n > 1 else None, x, top)
        foot = top + tall + TEXT_GAP
        sheet.numeral(numerals[n], x, foot + HALF_DIGIT * TERM)
        if n > 1:
            sheet.words(jump, x, foot + TERM + 2 + JUMP, JUMP)
    return 2 * AIR + rows * row_height - ROW_GAP
