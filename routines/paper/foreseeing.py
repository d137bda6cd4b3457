"""About how tall a sheet will be with each look, foreseen from its HTML, so that it is laid out with the one that fits.

Words are broken into lines by the widths of our font, and `sheet_rules.py` says what else makes a sheet taller: far less work
than to lay it out. Where this foresees wrongly a sheet is laid out once more than it might be (`fitting.py`).
"""

import itertools
import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import cache

from routines.drawing.metrics import text_width
from routines.paper.fitting import Fit
from routines.paper.sheet_parts import Part, parts_of
from routines.paper.sheet_rules import HIDDEN, Rule, rule_of
from routines.paper.styles import LOOKS

ERROR = 0.01
"""By what share of itself the growth from a look to the next roomier one may be less than foreseen. Of the demo school's plans on
two papers and in two languages it mostly is by less than half of that; where a line is broken otherwise, up to three times."""

FLOWED_OVER = 0.1
"""By how much of it a sheet may be laid out taller where it takes two pages, for then its parts stand apart."""

SIGN = 14.0  # points: the width of a drawing among words
BREAK = -1.0  # in the place of a width: what follows begins a line

Tall = Callable[[Part, float], float]
"""How tall a part is where it has so much room across."""


@dataclass(frozen=True, slots=True)
class Letters:
    size: float
    line: float = 1.35
    bold: bool = False

    @property
    def space(self) -> float:
        return self.width(" ")

    def width(self, text: str) -> float:
        return text_width(text, self.size, "bold" if self.bold else "regular")


class Look:
    """A look of a page: its sizes by name, and what it hides."""

    def __init__(self, css: str) -> None:
        self.sizes = {name: float(points) for name, points in re.findall(r"--(\w+): ([\d.]+)pt", css)}
        self.hidden = HIDDEN.union(re.findall(r"\.(ruled-\d)", css))

    def height_of(self, sheet: Part, room: float) -> float:
        return self._height(sheet, room, Letters(self.sizes["text"]), frozenset())

    def _height(self, part: Part, room: float, letters: Letters, around: frozenset[str]) -> float:
        if part.height:
            return part.height
        if not self.hidden.isdisjoint(part.names):
            return 0.0
        rule = rule_of(part.names, around)
        margins = self._points(rule.above) + self._points(rule.below) + rule.border
        if rule.height is not None:
            return self._points(rule.height) + margins
        letters = self._letters(rule, letters)
        around = around.union(part.names)
        room -= rule.across + rule.hanging

        def tall(inner: Part, across: float) -> float:
            return self._height(inner, across, letters, around)

        if rule.columns:
            content = _in_columns(part, rule, *rule.columns, room, tall)
        elif rule.beside is not None:
            content = _beside(part, room - rule.beside, tall)
        else:
            content = self._flow(part, room, letters, rule.hanging, tall)
        return max(content, rule.least) + margins

    def _points(self, size: float | str) -> float:
        return self.sizes[size] if isinstance(size, str) else size

    def _letters(self, rule: Rule, around: Letters) -> Letters:
        size = around.size if rule.size is None else self._points(rule.size)
        line = around.line if rule.line is None else rule.line
        return Letters(size * rule.times, line, around.bold if rule.bold is None else rule.bold)

    def _flow(self, part: Part, room: float, letters: Letters, hanging: float, tall: Tall) -> float:
        """One under the other, with words in lines between them."""
        height = 0.0
        for in_line, inside in itertools.groupby(part.inside, lambda inner: isinstance(inner, str) or inner.in_line):
            if in_line:
                lines = _lines(self._widths(inside, letters), room, hanging, letters.space)
                height += lines * letters.size * letters.line
            else:
                height += sum(tall(inner, room) for inner in inside if isinstance(inner, Part))
        return height

    def _widths(self, inside: Iterable[Part | str], letters: Letters) -> Iterator[float]:
        """Of what is not broken between two lines."""
        for inner in inside:
            if isinstance(inner, str):
                yield from (letters.width(word) for word in re.split(r"[ \n]+", inner) if word)
            elif inner.is_drawing:
                yield SIGN
            elif inner.names[0] == "br":
                yield BREAK
            else:
                rule = rule_of(inner.names)
                widths = self._widths(inner.inside, self._letters(rule, letters))
                if rule.whole is None:
                    yield from widths
                else:
                    yield sum(width + letters.space for width in widths) - letters.space + rule.whole


def _lines(widths: Iterator[float], room: float, hanging: float, space: float) -> int:
    """How many lines these take, of which the first begins so much further left."""
    lines, at = 0, 0.0
    for width in widths:
        if width == BREAK:
            at = room
        elif not lines:
            lines, at = 1, width + space - hanging
        elif at + width > room:
            lines, at = lines + 1, width + space
        else:
            at += width + space
    return lines


def _in_columns(part: Part, rule: Rule, number: int, gap: float, room: float, tall: Tall) -> float:
    """Rows, each as tall as what is tallest in it; or two columns that are filled one after the other."""
    blocks = part.blocks
    if rule.balanced:
        blocks = [inner for block in blocks for inner in (block.blocks if rule_of(block.names).broken else [block])]
    each = [tall(block, (room - gap * (number - 1)) / number) for block in blocks]
    if rule.balanced:
        return min(max(sum(each[:at]), sum(each[at:])) for at in range(len(each) + 1))
    return sum(max(each[first : first + number]) for first in range(0, len(each), number))


def _beside(part: Part, room: float, tall: Tall) -> float:
    """A picture with its legend, and what stands beside it."""
    picture, *others = part.blocks
    width = max((drawing.width for drawing in picture.drawings()), default=0.0)
    return max([tall(picture, width), *(tall(other, room - width) for other in others)])


@cache
def _looks() -> list[Look]:
    return [Look(css) for css in LOOKS]


def heights(sheet: Part, room: float) -> list[float]:
    """Points that a sheet takes with each look where it has so many across."""
    return [look.height_of(sheet, room) for look in _looks()]


def foreseen(sheet: str, room: tuple[float, float]) -> Fit:
    """How a sheet (HTML) will fit a page with so many points across and down."""
    parts = parts_of(sheet)
    tall = heights(parts, room[0])
    picture = max((drawing.height for drawing in parts.drawings()), default=0.0)
    growth = [
        1 + max(0.0, roomier - tighter) / max(1.0, tighter - picture) for roomier, tighter in itertools.pairwise(tall)
    ]
    first = next((look for look, height in enumerate(tall) if height <= room[1]), len(tall) - 1)
    return Fit(first, [each * (1 - ERROR) for each in growth], [each * (1 + FLOWED_OVER) for each in growth])
