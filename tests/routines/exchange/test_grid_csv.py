"""The grid as a table: the cells as on the page."""

import csv
import io

from routines.counting import Count, Grid
from routines.exchange.grid_csv import grid_csv


def rows_of(**fold):
    count = Count.parse(kind="whole", start="4", step="-3", terms=6)
    return list(csv.reader(io.StringIO(grid_csv(Grid(count, **fold)))))


def test_the_rows_are_those_of_the_page():
    assert rows_of(line_length=4) == [["4", "1", "-2", "-5"], ["-8", "-11", "", ""]]
    assert rows_of(line_length=3, fill="down") == [["4", "-5"], ["1", "-8"], ["-2", "-11"]]
    assert rows_of(line_length=4, lead=1) == [["", "4", "1", "-2"], ["-5", "-8", "-11", ""]]
