"""The unfolded count: one strip of paper, creased where the grid folds it."""

from collections.abc import Collection
from itertools import pairwise

from routines.counting import Grid

from .metrics import text_width
from .numerals import MINUS, STACKED_ROW, set_numeral
from .svg import Pen, element, path_of, plain, text_of
from .words import WORDS

NUMERAL = 20
HEIGHT = 46
SLANT = 6.0  # how far a folded piece leans
CREASE = 6  # how far a crease line stands out
END_GAP = 18


def draw_strip(
    grid: Grid, *, landmarks: Collection[int] = (), width: float = 1140, on_paper: bool = False, language: str = "en"
) -> str:
    """Draw the strip within `width` px; where the count is longer, it ends in "… 154"."""
    pen = Pen(on_paper)
    count = grid.count
    shown = range(1, grid.terms + 1)
    numerals = [set_numeral(count.pieces(n), NUMERAL, "bold" if n in landmarks else "regular") for n in shown]
    cell = max(46.0, max(numeral.width for numeral in numerals) + 18)
    height = STACKED_ROW * NUMERAL + 6 if any(numeral.stacked for numeral in numerals) else HEIGHT
    last = set_numeral(count.pieces(grid.terms), NUMERAL - 2)
    dots = text_width("… ", NUMERAL - 2)
    fits = len(shown)
    if fits * cell > width:
        fits = max(2, int((width - last.width - dots - END_GAP) // cell))
        shown = shown[:fits]
    end = fits * cell

    def lean(x: float) -> float:
        """How low the paper stands at x: each folded piece leans the other way."""
        at = x / cell + grid.lead
        line, within = divmod(at, grid.line_length)
        share = within / grid.line_length
        return SLANT * (1 - share if int(line) % 2 else share)

    creases = [x for n in range(2, fits + 1) if (grid.lead + n - 1) % grid.line_length == 0 for x in ((n - 1) * cell,)]
    bounds = [0.0, *creases, end]
    drawn = []
    for left, right in pairwise(bounds):
        odd = int((left + cell / 2) / cell + grid.lead) // grid.line_length % 2
        from_, to = lean(left + 0.01), lean(right - 0.01)
        piece = ((left, from_), (right, to), (right, to + height), (left, from_ + height))
        drawn.append(element("path", pen.look("g-pleat" if odd else "g-sheet"), d=path_of(piece, close=True)))
        drawn.append(element("path", pen.look("g-edge"), d=path_of(piece, close=True)))
    ticks = "".join(f"M{plain(n * cell)} {plain(lean(n * cell))}v7" for n in range(1, fits) if n * cell not in creases)
    if ticks:
        drawn.append(element("path", pen.look("g-hairline"), d=ticks))
    for x in creases:
        y = lean(x)
        line = path_of(((x, y - CREASE), (x, y + height + CREASE)))
        drawn.append(element("path", pen.look("g-crease"), d=line))
    for n in shown:
        x = (n - 0.5) * cell
        drawn.append(numerals[n - 1].draw(pen, x, lean(x) + height / 2 + 2))
    whole = end
    if fits < grid.terms:
        foot = height / 2 + SLANT / 2
        drawn.append(element("text", pen.look("g-quiet"), "…", x=end + END_GAP, y=foot + 8, font_size=NUMERAL - 2))
        drawn.append(last.draw(pen, end + END_GAP + dots + last.width / 2, foot + 2, look="g-quiet"))
        whole = end + END_GAP + dots + last.width
    texts = ", ".join(count.text(n).replace("-", MINUS) for n in shown)
    more = f" … {count.text(grid.terms).replace('-', MINUS)}" if fits < grid.terms else ""
    top, tall = -CREASE - 1, height + SLANT + 2 * CREASE + 2
    return element(
        "svg",
        pen.look("g-root"),
        element("title", "", WORDS[language].unfolded) + element("desc", "", text_of(texts + more)) + "".join(drawn),
        role="img",
        viewBox=f"-1 {plain(top)} {plain(whole + 2)} {plain(tall)}",
        width=round(whole + 2),
        height=round(tall),
        focusable="false",
        xmlns="http://www.w3.org/2000/svg",
    )
