"""A grid as CSV, for a spreadsheet. Nothing in it is run as a formula."""

import csv
import io
import re

from routines.counting import Grid

PLAIN_NUMBER = re.compile(r"-?[0-9][0-9.,\u00a0\u202f ]*")
DANGEROUS = ("=", "+", "-", "@", "\t", "\r")


def grid_csv(grid: Grid) -> str:
    """The rows of the grid as seen on the page; empty cells stay empty."""
    target = io.StringIO()
    writer = csv.writer(target)
    for row in grid.cells():
        writer.writerow(["" if cell is None else neutral(cell.text) for cell in row])
    return target.getvalue()


def neutral(text: str) -> str:
    """A text that no spreadsheet takes for a formula. Plain numbers, also below zero, stay numbers.

    >>> neutral("-7"), neutral("=1+1"), neutral("-3/4")
    ('-7', "'=1+1", "'-3/4")
    """
    if text.startswith(DANGEROUS) and not PLAIN_NUMBER.fullmatch(text):
        return f"'{text}"
    return text
