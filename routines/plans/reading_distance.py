"""Can the grid be read from the back of the room?

The board's numerals never fall below the size at which digits are 1/200 of the viewing distance (ten metres before a
picture two metres wide); what then does not fit has to be scrolled. Common practice, no source.
"""

from routines.counting import Grid
from routines.drawing.layout import lay_out
from routines.drawing.sizes import SIZES


def far_reading(grid: Grid) -> str:
    """One sentence when the whole grid cannot be read at once from the back; "" when it can."""
    board = SIZES["board"]
    layout = lay_out(grid, board, ())
    width, height = board.room
    columns, rows = max(int(width // layout.width), 1), max(int(height // layout.height), 1)
    if columns < grid.columns:
        return f"From the back of the room {columns} columns can be read at once; here are {grid.columns}. Try shorter lines."
    if rows < grid.rows:
        return f"From the back of the room {rows} rows can be read at once. The board scrolls through all {grid.rows}."
    return ""
