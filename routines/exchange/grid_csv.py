"""A grid as CSV, for a spreadsheet."""

from accounts.spreadsheets import table_csv
from routines.counting import Grid


def grid_csv(grid: Grid) -> str:
    """The rows of the grid as seen on the page; empty cells stay empty."""
    return table_csv([None if cell is None else cell.text for cell in row] for row in grid.cells())
