"""Setting a written value as figures: stacked fractions, small units, the place of each digit."""

import re
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import NamedTuple

from routines.counting import Piece

from .metrics import DIGIT_HEIGHT, text_width
from .svg import Pen, element, text_of

STACKED = 0.74  # a fraction's top and bottom, of the numeral
SMALL = 0.62  # units
BAR = 0.075  # thickness of the fraction bar
BAR_OVERHANG = 0.06  # at each end
TOP_MIDDLE, BOTTOM_MIDDLE = -0.43, 0.45
HALF_DIGIT = DIGIT_HEIGHT / 2000
GAP_FRACTION, GAP_UNIT, GAP_PARTS, GAP_EQUALS, GAP_SIGN = 0.12, 0.07, 0.28, 0.2, 0.06
MINUS = "\u2212"
STACKED_ROW = 2.3  # a row of fractions is at least this many numerals high

_BEFORE_A_NUMBER = re.compile(r"(?<![\w\u2212-])-(?=[$£€]?[\d.])")
_TYPED_FRACTION = re.compile(r"^(-?)(?:(\d+)\s+)?(\d+)/(\d+)$")


def with_minus(words: str) -> str:
    """The words with a true minus before a number; a hyphen between words or numbers stays one.

    >>> with_minus("-5"), with_minus("sixty-four"), with_minus("90-10")
    ('\u22125', 'sixty-four', '90-10')
    """
    if "-" not in words:
        return words
    return MINUS if words == "-" else _BEFORE_A_NUMBER.sub(MINUS, words)


class Box(NamedTuple):
    """A rectangle by its edges."""

    left: float
    top: float
    right: float
    bottom: float

    def moved(self, dx: float, dy: float) -> "Box":
        return Box(self.left + dx, self.top + dy, self.right + dx, self.bottom + dy)

    def grown(self, by: float, down: float = 0.0) -> "Box":
        return Box(self.left - by, self.top - by, self.right + by, self.bottom + by + down)

    def within(self, other: "Box") -> "Box":
        return Box(
            max(self.left, other.left),
            max(self.top, other.top),
            min(self.right, other.right),
            min(self.bottom, other.bottom),
        )

    def draw(self, pen: Pen, look: str, rx: float = 0.0) -> str:
        """The rectangle drawn, its corners rounded by `rx`."""
        wide, high = self.right - self.left, self.bottom - self.top
        return element("rect", pen.look(look), x=self.left, y=self.top, width=wide, height=high, rx=rx or None)

    def meets(self, other: "Box") -> bool:
        return (
            self.left < other.right and other.left < self.right and self.top < other.bottom and other.top < self.bottom
        )


class Figure(NamedTuple):
    """One piece set in its place: `x` is its left edge and `baseline` its foot, from the middle of the numeral."""

    kind: str
    text: str
    x: float
    baseline: float
    size: float
    width: float


@dataclass(frozen=True)
class Numeral:
    """A value set at one size. Figures stand in the order of the pieces; all measures are from the middle."""

    figures: tuple[Figure, ...]
    bars: tuple[tuple[float, float], ...]
    size: float
    weight: str
    width: float
    stacked: bool

    @cached_property
    def box(self) -> Box:
        """The ink of the whole numeral."""
        half = HALF_DIGIT * self.size
        top = min((figure.baseline - 2 * HALF_DIGIT * figure.size for figure in self.figures), default=-half)
        bottom = max((figure.baseline for figure in self.figures), default=half)
        return Box(-self.width / 2, min(top, -half), self.width / 2, max(bottom, half))

    def digits(self, piece: int, start: int, end: int) -> Box:
        """Where characters start..end of one piece stand, for underlining them."""
        figure = self.figures[piece]
        before = text_width(figure.text[:start], figure.size, self.weight)
        through = text_width(figure.text[:end], figure.size, self.weight)
        height = DIGIT_HEIGHT / 1000 * figure.size
        return Box(figure.x + before, figure.baseline - height, figure.x + through, figure.baseline)

    def draw(self, pen: Pen, x: float, y: float, look: str = "g-numeral") -> str:
        """Draw the numeral with its middle at (x, y). Without a look it takes that of the group it stands in, and its size."""
        bold = ["g-bold"] if self.weight == "bold" else []
        classes, known = ([look, *bold], None) if look else (bold, self.size)
        text_look, bar_look = (pen.look(*names) if names else "" for names in (classes, [look] if look else []))
        drawn = [
            element(
                "text", text_look, text_of(words), x=x + left, y=y + foot, font_size=None if size == known else size
            )
            for words, left, foot, size in self._runs
        ]
        thick = BAR * self.size
        drawn += [
            element("rect", bar_look, x=x + left, y=y - thick / 2, width=right - left, height=thick)
            for left, right in self.bars
        ]
        return "".join(drawn)

    @cached_property
    def _runs(self) -> list[tuple[str, float, float, float]]:
        """Pieces that touch on one line and in one size are written together, so that they read as one word."""
        runs: list[tuple[str, float, float, float]] = []
        end = None
        for figure in self.figures:
            joined = (
                runs
                and end is not None
                and abs(end - figure.x) < 0.01
                and runs[-1][2:] == (figure.baseline, figure.size)
            )
            if joined:
                words, left, foot, size = runs[-1]
                runs[-1] = (words + figure.text, left, foot, size)
            else:
                runs.append((figure.text, figure.x, figure.baseline, figure.size))
            end = figure.x + figure.width
        return runs


@lru_cache(maxsize=1024)  # one count is set for its strip and its grid, and most numerals stand in other counts too
def set_numeral(pieces: tuple[Piece, ...], size: float, weight: str = "regular") -> Numeral:
    """Set the pieces of a value at font size `size`, its middle at (0, 0)."""
    if len(pieces) == 1 and pieces[0].kind == "number":
        text = with_minus(pieces[0].text)
        width = text_width(text, size, weight)
        alone = Figure("number", text, -width / 2, HALF_DIGIT * size, size, width)
        return Numeral((alone,), (), size, weight, width, stacked=False)
    figures: list[Figure] = []
    bars: list[tuple[float, float]] = []
    x, before = 0.0, ""
    for index, piece in enumerate(pieces):
        kind = piece.kind
        text = piece.text if kind == "unit" else with_minus(piece.text)
        if kind == "bottom":
            before = kind
            continue  # set with its top
        x += _gap(before, kind) * size
        if kind == "top":
            bottom = pieces[index + 1]
            upper, lower = (text_width(part.text, STACKED * size, weight) for part in (piece, bottom))
            bar = max(upper, lower) + 2 * BAR_OVERHANG * size
            for part, width, middle in ((piece, upper, TOP_MIDDLE), (bottom, lower, BOTTOM_MIDDLE)):
                foot = (middle + HALF_DIGIT * STACKED) * size
                figures.append(Figure(part.kind, part.text, x + (bar - width) / 2, foot, STACKED * size, width))
            bars.append((x, x + bar))
            x += bar
        else:
            own = SMALL * size if kind == "unit" else size
            width = text_width(text, own, weight)
            figures.append(Figure(kind, text, x, HALF_DIGIT * size, own, width))
            x += width
        before = kind
    half = x / 2
    centred = tuple(Figure(f.kind, f.text, f.x - half, f.baseline, f.size, f.width) for f in figures)
    return Numeral(centred, tuple((a - half, b - half) for a, b in bars), size, weight, x, bool(bars))


def pieces_of_words(words: str) -> tuple[Piece, ...]:
    """The pieces of what was typed as said: a fraction is stacked, anything else stands as it is."""
    match = _TYPED_FRACTION.match(words.strip())
    if not match:
        return (Piece("number", words.strip()),)
    sign, whole, top, bottom = match.groups()
    pieces = [Piece("sign", sign)] if sign else []
    pieces += [Piece("number", whole)] if whole else []
    return (*pieces, Piece("top", top), Piece("bottom", bottom))


def _gap(before: str, kind: str) -> float:
    """The white before a piece, of the numeral's size."""
    if not before:
        return 0.0
    if "equals" in (before, kind):
        return GAP_EQUALS
    if kind == "unit":
        return GAP_UNIT
    if kind == "top":
        return GAP_SIGN if before == "sign" else GAP_FRACTION
    if before in ("unit", "bottom"):
        return GAP_PARTS
    return 0.0
