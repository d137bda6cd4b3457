"""The grid as a table: the cells as on the page, and nothing a spreadsheet would run."""

import csv
import io

import pytest

from routines.counting import Count, Grid
from routines.exchange.grid_csv import grid_csv, neutral


def rows_of(**fold):
    count = Count.parse(kind="whole", start="4", step="-3", terms=6)
    return list(csv.reader(io.StringIO(grid_csv(Grid(count, **fold)))))


def test_the_rows_are_those_of_the_page():
    assert rows_of(line_length=4) == [["4", "1", "-2", "-5"], ["-8", "-11", "", ""]]
    assert rows_of(line_length=3, fill="down") == [["4", "-5"], ["1", "-8"], ["-2", "-11"]]
    assert rows_of(line_length=4, lead=1) == [["", "4", "1", "-2"], ["-5", "-8", "-11", ""]]


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1+1", "@sum", "\tx", "\r=1", "-3/4", "-1 1/2"])
def test_what_would_be_run_is_made_text(text):
    assert neutral(text) == f"'{text}"


@pytest.mark.parametrize("text", ["7", "-7", "-1,325", "0.5", "3/4", "$0.35", "10:50", "2 ft"])
def test_numbers_and_plain_texts_stay_as_they_are(text):
    assert neutral(text) == text
