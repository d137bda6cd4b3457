"""A reply sends children to what stands on the board by then, and to no ten that has not been said."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid
from routines.words import likely_slips
from tests.counting.any_count import KINDS, grids

ALONG = re.compile(
    r"(?:look(?: for a count)? (?:along|in)|look at the counts in|other counts in|every count in|test it on"
    r"|on the counts in|mira a lo largo de|los (?:otros )?números de|cada número de|busca en|a prueba en)"
    r" (?:the |la )?(?:row|column|fila|columna) (\d+)",
    re.IGNORECASE,
)
ENOUGH = 3


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_a_line_is_looked_along_where_enough_is_written_in_it(grid: Grid, level: int, language: str) -> None:
    for slip in likely_slips(grid, audience=Audience(level, language)):
        found = ALONG.search(slip.reply)
        if found:
            by_column = re.search("column", found[0], re.IGNORECASE)
            lines = [grid.place(n)[1 if by_column else 0] for n in range(1, slip.n)]
            assert lines.count(int(found[1])) >= ENOUGH, slip.reply


@pytest.mark.parametrize("language", ["en", "es"])
def test_some_lines_are_looked_along(language: str) -> None:
    count = Count.parse(kind="whole", start="8", step="7", terms=40)
    for level in (2, 4, 6):
        slips = likely_slips(Grid(count, 6), audience=Audience(level, language))
        assert any(ALONG.search(slip.reply) for slip in slips), level


@given(st.integers(20, 98), st.integers(0, 1), st.sampled_from(["en", "es"]))
def test_a_wrong_ten_is_asked_about_from_the_count_before(start: int, level: int, language: str) -> None:
    grid = Grid(Count(kind="whole", start=start, step=1, terms=24), 10)  # type: ignore[arg-type]
    for slip in likely_slips(grid, audience=Audience(level, language)):
        if slip.rule == "W02":
            assert re.findall(r"\d+", slip.reply)[0] == grid.count.text(slip.n - 1)
            assert not re.search(r"ten of|decena del", slip.reply), slip.reply


@given(grids("whole"), st.integers(0, 1), st.sampled_from(["en", "es"]))
def test_no_small_child_points_to_a_number_that_is_not_on_the_page(grid: Grid, level: int, language: str) -> None:
    on_the_page = [grid.count.text(n) for n in range(1, grid.terms + 1)]
    for slip in likely_slips(grid, audience=Audience(level, language)):
        if re.fullmatch(r"\d[\d,]*", slip.heard) and not slip.of_writing and not slip.equal_name:
            pointed = re.search("Show us on the grid|Point |Muéstralo en la|Señala", slip.reply)
            assert slip.heard in on_the_page or not pointed, slip.reply
