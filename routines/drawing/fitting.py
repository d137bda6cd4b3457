"""Fitting a size to one grid: how large its numerals and cells get, and how many lines fit."""

from collections.abc import Iterable
from dataclasses import dataclass

from .numerals import STACKED_ROW, Numeral
from .sizes import Size

COUNT_GOES_ON = 1.4  # room for the line that says how far a cut count goes, in numerals


@dataclass(frozen=True, slots=True)
class Fit:
    numeral: float
    width: float
    height: float
    rows: int
    columns: int


def fit_to(size: Size, rows: int, columns: int, measured: Iterable[Numeral]) -> Fit:
    """Give the largest numerals whose cells keep within the size's room, else its smallest ones.

    measured: the numerals set at font size 1. Where even the smallest do not fit, a size that may be cut shows fewer
    rows and columns; the others grow over the room, and their page lets them scroll.
    """
    measured = list(measured)
    widest = max(numeral.width for numeral in measured)
    stacked = any(numeral.stacked for numeral in measured)
    room_width, room_height = size.room
    numeral = size.numeral
    while True:
        scale = numeral / size.numeral
        tight = (widest + size.tight) * numeral
        low = max(size.cell_height * scale, STACKED_ROW * numeral if stacked else 0)
        fits_across, fits_down = columns * tight <= room_width, rows * low <= room_height
        if (fits_across and fits_down) or numeral <= size.smallest:
            break
        numeral = max(numeral - (1 if numeral <= 40 else 2), size.smallest)
    if size.cut and not fits_across:
        columns = max(2, int((room_width - numeral) // tight))
    if size.cut and not fits_down:
        rows = max(2, int((room_height - COUNT_GOES_ON * numeral) // low))
    wished = max(size.cell_width * scale, (widest + size.air) * numeral)
    width = max(tight, min(wished, room_width / columns))
    height = max(low, min(size.tallest * scale, room_height / 1.3 / rows))
    return Fit(numeral, width, height, rows, columns)
