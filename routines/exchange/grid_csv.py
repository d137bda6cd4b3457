"""A grid as CSV, for a spreadsheet."""

import csv
import io

from accounts.spreadsheets import neutral
from routines.counting import Grid


def grid_csv(grid: Grid) -> str:
    """The rows of the grid as seen on the page; empty cells stay empty."""
    target = io.StringIO()
    writer = csv.writer(target)
    for row in grid.cells():
        writer.writerow(["" if cell is None else neutral(cell.text) for cell in row])
    return target.getvalue()
