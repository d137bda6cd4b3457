"""Which cells a child's phrase is about: a letter in a bubble in each of them, and the same letter beside the words.

A letter, for a number in a corner would be read as a count; and where a drawing is small or wide there is no gutter to
write the words into.
"""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from .layout import Layout
from .metrics import DIGIT_HEIGHT, text_width
from .numerals import Box
from .svg import Pen, element, path_of, plain, text_of

HIGH, LOW = 0.44, 0.3  # a bubble, of the numeral; the lower where cells are low
TAIL = 0.22  # of the bubble, under it
SIZE = 0.74  # its letter, of the bubble
_ALPHABET = "abcdefghijklmnopqrstuvwxyz"


@dataclass(frozen=True, slots=True)
class Phrase:
    """What a child said, pinned to cells."""

    text: str
    cells: Sequence[int]


def letter(place: int) -> str:
    """The letter of the phrase at a place from 0: a ... z, then aa, ab.

    >>> [letter(place) for place in (0, 25, 26, 27)]
    ['a', 'z', 'aa', 'ab']
    """
    before, last = divmod(place, len(_ALPHABET))
    return (letter(before - 1) if before else "") + _ALPHABET[last]


def draw_letters(pen: Pen, layout: Layout, phrases: Sequence[Phrase]) -> str:
    """The letters in their cells; several phrases about one cell stand side by side."""
    pinned: dict[int, list[str]] = defaultdict(list)
    for place, phrase in enumerate(phrases):
        for n in dict.fromkeys(phrase.cells):
            if layout.cell(n):
                pinned[n].append(letter(place))
    return "".join(_in_cell(pen, layout, n, " ".join(letters)) for n, letters in pinned.items())


def draw_letter(place: int, on_paper: bool = False) -> str:
    """The same sign alone, to stand before the words."""
    pen, high = Pen(on_paper), 18.0
    wide = _width(letter(place), high)
    return element(
        "svg",
        pen.look("g-root"),
        _bubble(pen, Box(1, 1, 1 + wide, 1 + high), letter(place)),
        viewBox=f"0 0 {plain(wide + 2)} {plain(1.3 * high + 2)}",
        width=round(wide + 2),
        height=round(1.3 * high + 2),
        role="img",
        aria_label=letter(place),
        focusable="false",
        xmlns="http://www.w3.org/2000/svg",
    )


def _in_cell(pen: Pen, layout: Layout, n: int, letters: str) -> str:
    """At the foot of the cell on the left, where no jump and no struck count comes; at its head where a label has the foot."""
    box, inside = layout.rectangle(n), 0.04 * layout.height
    under = (box.bottom - inside - layout.ink(n).bottom) / (1 + TAIL) - 0.04 * layout.numeral
    high = max(min(under, HIGH * layout.numeral), LOW * layout.numeral)
    wide = _width(letters, high)
    if n in layout.labels:
        top = box.top + inside
        place = Box(box.right - inside - wide, top, box.right - inside, top + high)
    else:
        top = box.bottom - inside - high * (1 + TAIL)
        place = Box(box.left + inside, top, box.left + inside + wide, top + high)
    drawn = _bubble(pen, place, letters)
    return drawn if pen.on_paper else element("g", pen.look("g-phrase"), drawn, data_pinned=n)


def _width(letters: str, high: float) -> float:
    return max(high, text_width(letters, SIZE * high) + 0.5 * high)


def _bubble(pen: Pen, box: Box, letters: str) -> str:
    """A speech bubble: its tail hangs at the foot on the left."""
    high = box.bottom - box.top
    left, foot, drop = box.left + 0.22 * high, box.bottom - 0.1 * high, (TAIL + 0.1) * high
    tail = path_of(((left, foot), (left, foot + drop), (left + 0.34 * high, foot)))
    size = SIZE * high
    x = (box.left + box.right) / 2 - text_width(letters, size) / 2
    # letters with and without an ascender share one line, a little under the middle of a digit's height
    y = (box.top + box.bottom) / 2 + 0.34 * DIGIT_HEIGHT / 1000 * size
    return (
        element("path", pen.look("g-bubble"), d=tail)
        + box.draw(pen, "g-bubble", rx=0.3 * high)
        + element("text", pen.look("g-bubble-words"), text_of(letters), x=x, y=y, font_size=size)
    )
