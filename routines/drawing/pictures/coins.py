"""Coins and notes, each with its value written on it: the same kind together, the largest first, the jump beside them.

The drawings are plain and our own: a coin is a disc with a rim, as large beside the others as in a purse; a note is a
framed slip of paper. They imitate no currency.
"""

from dataclasses import dataclass
from itertools import pairwise

from routines.counting import Count, Kind

from ..metrics import text_width
from ..numerals import HALF_DIGIT
from .jumps import TIP, arrow
from .purses import PURSES, Denomination, Purse, change
from .sheet import AIR, Sheet, jump_numeral, term_numeral

TERM, FACE, FACE_NOTE, TIMES, JUMP = 17, 12, 15, 15, 13
PX_A_MM = 1.7
NOTE_WIDTH, NOTE_HEIGHT = 62.0, 34.0
SINGLY = 4  # of one kind; more are drawn once with how many they are
APART, KINDS_APART, LABEL_GAP, TIMES_GAP = 4.0, 14.0, 22.0, 6.0
ROW_GAP = 14.0
SPINE = 26.0  # where the jumps run, left of the amounts


@dataclass(frozen=True, slots=True)
class Group:
    """Pieces of one kind. times: "6 ×" where one is drawn for all."""

    piece: Denomination
    many: int
    times: str = ""


def fits(count: Count) -> bool:
    """Every amount of the count can be paid exactly in the coins and notes of its currency."""
    if count.kind != Kind.MONEY or count.style.currency not in PURSES:
        return False
    purse = PURSES[count.style.currency]
    return all(change(purse, count.value(n).numerator, int(count.step)) is not None for n in range(1, count.terms + 1))


def draw(sheet: Sheet, count: Count, first: int, last: int) -> float:
    """Draw terms first..last; return the height. On a phone the amount and its jump stand above their coins."""
    purse, terms = PURSES[count.style.currency], range(first, last + 1)
    numerals = {n: term_numeral(sheet, count, n, TERM) for n in terms}
    jump = jump_numeral(count, JUMP)
    spine = AIR + jump.width + 8
    amounts = AIR if sheet.narrow else spine + SPINE
    left = AIR if sheet.narrow else amounts + max(numeral.width for numeral in numerals.values()) + LABEL_GAP
    above = TERM + 10 if sheet.narrow else 0
    top, middles = AIR, []
    for n in terms:
        paid = change(purse, count.value(n).numerator, int(count.step)) or []
        lines = _lines(paid, sheet.width - AIR - left)
        if n > first:
            sheet.path("p-row", f"M{amounts:.1f} {top - ROW_GAP / 2:.1f}H{sheet.width - AIR:.1f}")
        tall = max(max((_tallest(line) for line in lines), default=0.0), NOTE_HEIGHT)
        middles.append(top + (TERM if sheet.narrow else tall) / 2)
        sheet.numeral(numerals[n], amounts + numerals[n].width / 2, middles[-1])
        if sheet.narrow and n > 1:
            sheet.numeral(jump, sheet.width - AIR - jump.width / 2, middles[-1], look="g-quiet")
        top += above
        for index, line in enumerate(lines):
            _draw_line(sheet, purse, line, left, top + index * (tall + APART) + tall / 2)
        top += max(len(lines), 1) * (tall + APART) - APART + ROW_GAP
    if not sheet.narrow:
        for before, after in pairwise(middles):
            _draw_jump(sheet, spine, before, after)
            sheet.numeral(jump, spine - 8 - jump.width / 2, (before + after) / 2)
    return top - ROW_GAP + AIR


def _draw_jump(sheet: Sheet, x: float, before: float, after: float) -> None:
    """The jump from row to row, bowed to the left."""
    foot, start, end = x + SPINE - 10, before + 4, after - 4
    sheet.path(
        "p-jump",
        f"M{foot:.1f} {start:.1f}C{x - 2:.1f} {start + 6:.1f} {x - 2:.1f} {end - 6:.1f} {foot - 3:.1f} {end:.1f}",
    )
    arrow(sheet, "p-jump-tip", (foot, end + 1), 0.45, long=TIP)


def _across(piece: Denomination) -> float:
    return NOTE_WIDTH if piece.is_note else piece.across * PX_A_MM


def _width(group: Group) -> float:
    if group.times:
        return text_width(group.times, TIMES) + TIMES_GAP + _across(group.piece)
    return group.many * (_across(group.piece) + APART) - APART


def _tallest(line: list[Group]) -> float:
    return max(NOTE_HEIGHT if group.piece.is_note else _across(group.piece) for group in line)


def _lines(paid: list[tuple[Denomination, int]], room: float) -> list[list[Group]]:
    """The groups in lines that keep within the room; many of one kind, or too many for a line, are drawn once."""
    lines: list[list[Group]] = []
    used = 0.0
    for piece, many in paid:
        group = Group(piece, many)
        if many > SINGLY or _width(group) > room:
            group = Group(piece, many, f"{many} ×")
        used += KINDS_APART + _width(group)
        if not lines or used > room:
            lines.append([])
            used = _width(group)
        lines[-1].append(group)
    return lines


def _draw_line(sheet: Sheet, purse: Purse, line: list[Group], left: float, middle: float) -> None:
    x = left
    for group in line:
        across = _across(group.piece)
        if group.times:
            sheet.words(group.times, x, middle + HALF_DIGIT * TIMES, TIMES, "g-numeral", middle=False)
        start = x + _width(group) - across if group.times else x
        for k in range(1 if group.times else group.many):
            _draw_piece(sheet, purse, group.piece, start + k * (across + APART) + across / 2, middle)
        x += _width(group) + KINDS_APART


def _draw_piece(sheet: Sheet, purse: Purse, piece: Denomination, x: float, y: float) -> None:
    size = FACE_NOTE if piece.is_note else FACE
    if piece.is_note:
        left, top = x - NOTE_WIDTH / 2, y - NOTE_HEIGHT / 2
        sheet.put("rect", "p-note", x=left, y=top, width=NOTE_WIDTH, height=NOTE_HEIGHT)
        sheet.put("rect", "p-rim", x=left + 4, y=top + 4, width=NOTE_WIDTH - 8, height=NOTE_HEIGHT - 8)
    else:
        radius = _across(piece) / 2
        sheet.put("circle", "p-coin-warm" if piece.warm else "p-coin", cx=x, cy=y, r=radius)
        sheet.put("circle", "p-rim", cx=x, cy=y, r=radius - 2.5)
    sheet.words(purse.face(piece.value), x, y + HALF_DIGIT * size, size, "g-numeral")
