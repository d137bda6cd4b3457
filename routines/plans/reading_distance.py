"""Can the grid be read from the back of the room?

The board's numerals never fall below the size at which digits are 1/200 of the viewing distance (ten metres before a
picture two metres wide); what then does not fit has to be scrolled. Common practice, no source.
"""

from django.utils.translation import gettext as _

from routines.counting import Grid
from routines.drawing.fitting import fit_to
from routines.drawing.numerals import set_numeral
from routines.drawing.sizes import SIZES


def far_reading(grid: Grid) -> str:
    """One sentence when the whole grid cannot be read at once from the back; "" when it can."""
    board = SIZES["board"]
    fit = fit_to(
        board, grid.rows, grid.columns, (set_numeral(grid.count.pieces(n), 1.0) for n in range(1, grid.terms + 1))
    )
    width, height = board.room
    columns, rows = max(int(width // fit.width), 1), max(int(height // fit.height), 1)
    if columns < grid.columns:
        words = _(
            "From the back of the room %(columns)s columns can be read at once; here are %(all)s. Try shorter lines."
        )
        return words % {"columns": columns, "all": grid.columns}
    if rows < grid.rows:
        words = _("From the back of the room %(rows)s rows can be read at once. The board scrolls through all %(all)s.")
        return words % {"rows": rows, "all": grid.rows}
    return ""
