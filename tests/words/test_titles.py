"""What a count is called where nobody writes a title: its count, and the first thing that a class would say of it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting.audience import Audience
from routines.counting.checking import check
from routines.counting.count import Count
from routines.counting.grid import Grid
from routines.words import find_patterns, title_of, title_of_count
from tests.words.test_locate import number_grids


def called(kind: str, start: str, step: str, terms: int, length: int, level: int, language: str = "en") -> str:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)
    return title_of(grid, find_patterns(grid, audience=Audience(level, language)), language)


@pytest.mark.parametrize(
    ("count", "level", "title", "titulo"),
    [
        (
            ("whole", "16", "6", 20, 5),
            3,
            "By 6 from 16: all the tens are in column 5",
            "De 6 en 6 desde 16: en la columna 5 están las decenas completas",
        ),
        (
            ("whole", "25", "25", 20, 4),
            3,
            "By 25 from 25: columns 2 and 4 hold the tens",
            "De 25 en 25 desde 25: las columnas 2 y 4 tienen las decenas completas",
        ),
        (
            ("fraction", "3/4", "3/4", 12, 4),
            4,
            "By 3/4 from 3/4: all the wholes are in column 4",
            "De 3/4 en 3/4 desde 3/4: en la columna 4 están los enteros",
        ),
        (
            ("clock", "9:10", "10 min", 12, 6),
            2,
            "By 10 min from 9:10: the o'clock times are in column 6",
            "De 10 min en 10 min desde 9:10: las horas en punto están en la columna 6",
        ),
        # 7, 17, 27 ...: what jumps of ten do to the ones digit.
        (
            ("whole", "7", "10", 10, 5),
            1,
            "By 10 from 7: the ones digit is 7 in every count",
            None,
        ),
        # 25 min, 50 min, 75 min ... in rows of 4: no hour in line, and no class speaks of blocks of six.
        (("elapsed", "25 min", "25 min", 12, 4), 4, "By 25 min from 25 min", "De 25 min en 25 min desde 25 min"),
        # Every count is so many tenths, as it is written.
        (("decimal", "-1.2", "0.4", 18, 6), 6, "By 0.4 from -1.2", None),
    ],
)
def test_the_count_and_what_is_said_first(count, level, title, titulo):
    assert called(*count, level) == title
    if titulo is not None:
        assert called(*count, level, "es") == titulo


def test_a_count_back_says_so():
    assert called("whole", "100", "-5", 16, 4, 2) == "Back by 5 from 100: the tens make columns 1 and 3"


@given(number_grids(), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_a_title_is_short_begins_with_its_count_and_says_what_always_holds(grid, level, language):
    patterns = find_patterns(grid, audience=Audience(level, language))
    title, count = title_of(grid, patterns, language), title_of_count(grid, language)
    assert title.startswith(count)
    assert len(title) <= max(72, len(count))
    said = title.removeprefix(count).removeprefix(": ")
    named = [pattern for pattern in patterns if said and pattern.statement.lower().startswith(said.lower())]
    assert not said or any(check(pattern.claim, grid).holds == "always" for pattern in named)


def test_what_is_chosen_comes_first():
    grid = Grid(Count.parse(kind="whole", start="16", step="6", terms=20), 5)
    found = find_patterns(grid, audience=Audience(3))
    even = [pattern for pattern in found if pattern.claim.family == "remainder" and pattern.claim.block_length == 1]
    assert title_of(grid, [*even, *found], "en").startswith("By 6 from 16: every count is even")
