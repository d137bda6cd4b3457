"""The sheet that one picture is drawn on: its pen, its words, and how values are set so that a class can read them."""

from fractions import Fraction

from routines.counting import Count, Piece

from ..metrics import text_width
from ..numerals import SMALL, STACKED, Numeral, pieces_of_words, set_numeral
from ..svg import Pen, element, plain, text_of

SMALLEST = 12.0  # no figure of a picture is set smaller, in px
AIR = 8.0  # kept free at every edge


class Sheet:
    """Collects what is drawn, in page order, and closes it as one titled SVG. All lengths are px at natural size."""

    def __init__(self, width: float, *, on_paper: bool = False, language: str = "en") -> None:
        self.width = width
        self.language = language
        self.pen = Pen(on_paper)
        self._drawn: list[str] = []

    @property
    def narrow(self) -> bool:
        """True on a phone's sheet."""
        return self.width < 480

    def put(self, name: str, look: str, **attributes: object) -> None:
        self._drawn.append(element(name, self.pen.look(look), **attributes))

    def path(self, look: str, data: str) -> None:
        if data:
            self.put("path", look, d=data)

    def words(self, words: str, x: float, y: float, size: float, look: str = "g-quiet", *, middle: bool = True) -> None:
        """Write words with their foot at y; x is their middle, or their left edge."""
        left = x - text_width(words, size) / 2 if middle else x
        self._drawn.append(element("text", self.pen.look(look), text_of(words), x=left, y=y, font_size=size))

    def numeral(self, numeral: Numeral, x: float, y: float, look: str = "g-numeral") -> None:
        """Set a numeral with its middle at (x, y)."""
        self._drawn.append(numeral.draw(self.pen, x, y, look))

    def close(self, height: float, title: str, desc: str, kind: str) -> str:
        told = element("title", "", text_of(title)) + element("desc", "", text_of(desc))
        return element(
            "svg",
            self.pen.look("g-root"),
            told + "".join(self._drawn),
            role="img",
            viewBox=f"0 0 {plain(self.width)} {plain(height)}",
            width=plain(self.width),
            height=plain(height),
            data_picture=kind,
            focusable="false",
            xmlns="http://www.w3.org/2000/svg",
        )


def term_numeral(sheet: Sheet, count: Count, n: int, size: float) -> Numeral:
    """A term of the count as in the grid; on a phone its units are as large as its numbers, which takes less room."""
    return quiet_numeral(count, count.value(n), size) if sheet.narrow else readable(count.pieces(n), size)


def readable(pieces: tuple[Piece, ...], wished: float, weight: str = "regular") -> Numeral:
    """A numeral at the wished size, or larger where its fraction or unit would come out smaller than SMALLEST."""
    kinds = {piece.kind for piece in pieces}
    size = max(wished, SMALLEST / STACKED if "top" in kinds else 0, SMALLEST / SMALL if "unit" in kinds else 0)
    return set_numeral(pieces, size, weight)


def quiet_numeral(count: Count, value: Fraction, size: float) -> Numeral:
    """A number of the instrument itself: units as large as the number, so that it stays small beside the terms."""
    pieces = count.pieces_of(value)
    if any(piece.kind == "top" for piece in pieces):
        return readable(pieces, size)
    return set_numeral((Piece("number", count.text_of(value)),), size)


def jump_numeral(count: Count, size: float) -> Numeral:
    """The jump with its sign: +6, −1/4 with the fraction stacked, +9 in."""
    sign = "+" if count.step > 0 else "-"
    return readable((Piece("sign", sign), *pieces_of_words(count.difference_text(abs(count.step)))), size)
