"""The sizes a grid is drawn in."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Size:
    """One use of the drawing. All lengths in px of the drawing at its natural size.

    numeral: the font size wished for and the smallest allowed. cell_width: wished for and largest; cell_height:
    smallest and tallest (few rows may stand taller). room: the width and height the grid should keep within.
    air, tight: white beside the widest numeral, wished for and least, of the numeral. cut: leave the last lines away
    rather than grow over the room. sketched: light one pattern of each kind at most, by an example where it covers much.
    even: every grid of one count is drawn to one scale, whatever its line length. flag_words: a flag says until when.
    larger_units: a landmark of 32 oz says "2 lb" too.
    thickest: of a lit outline and thread.
    """

    name: str
    numeral: float
    smallest: float
    cell_width: float
    cell_height: float
    tallest: float
    room: tuple[float, float]
    air: float = 0.66
    tight: float = 0.4
    cut: bool = False
    sketched: bool = False
    even: bool = False
    flag_words: bool = False
    larger_units: bool = False
    thickest: float = 3.2


SIZES = {
    size.name: size
    for size in (
        Size("card", 16, 14, 40, 29, 40, (266, 150), air=1.15, cut=True, sketched=True),
        Size("fold", 14, 14, 36, 29, 30, (330, 266), air=1.0, cut=True),
        Size("tile", 14, 14, 26, 29, 29, (420, 266), air=0.7, tight=0.7, cut=True, even=True),
        Size("phone", 21, 14, 62, 40, 40, (310, 330)),
        Size("plan", 36, 18, 96, 82, 82, (600, 620), flag_words=True, larger_units=True),
        Size("print", 31, 12, 83, 70, 70, (560, 420), flag_words=True),
        Size("board", 88, 74, 262, 156, 156, (1310, 860), air=0.5, thickest=5),
    )
}
