"""What was said in a cell, set so that it stays in its cell: smaller, then on several lines."""

from collections.abc import Sequence

from routines.counting import Piece

from .metrics import text_width
from .numerals import HALF_DIGIT, Figure, Numeral, set_numeral

SMALLER = 0.6  # so much smaller before words are broken into lines
LINE = 1.15  # from line to line, of the size
STEPS = 24


def set_within(pieces: tuple[Piece, ...], size: float, width: float, height: float) -> Numeral:
    """The pieces at font size `size`, or as much smaller as `width` and `height` ask for, lengths in the unit of `size`."""
    whole = set_numeral(pieces, size)
    if whole.width <= width:
        return whole
    squeezed = width / whole.width
    if squeezed >= SMALLER or len(pieces) > 1:
        return set_numeral(pieces, size * squeezed)
    words = pieces[0].text
    for step in range(STEPS):
        smaller = size * SMALLER * 0.93**step
        lines = broken(words, smaller, width)
        if len(lines) * LINE * smaller <= height:
            break
    return _stacked(pieces[0].kind, lines, smaller)


def broken(words: str, size: float, width: float) -> list[str]:
    """The words on lines no wider than `width`; a word that is wider itself is cut."""
    lines = [""]
    for word in words.split():
        together = f"{lines[-1]} {word}".strip()
        if text_width(together, size) <= width:
            lines[-1] = together
            continue
        if lines[-1]:
            lines.append("")
        for sign in word:
            if lines[-1] and text_width(lines[-1] + sign, size) > width:
                lines.append("")
            lines[-1] += sign
    return lines


def _stacked(kind: str, lines: Sequence[str], size: float) -> Numeral:
    first = -LINE * size * (len(lines) - 1) / 2 + HALF_DIGIT * size
    figures = []
    for place, line in enumerate(lines):
        width = text_width(line, size)
        figures.append(Figure(kind, line, -width / 2, first + place * LINE * size, size, width))
    return Numeral(tuple(figures), (), size, "regular", max(figure.width for figure in figures), False)
