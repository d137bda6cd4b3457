"""A number off by one, or the name of another feature, line or direction, turns every sort of text red."""

import re
from collections.abc import Iterator
from random import Random

import pytest

from routines.counting import Audience, Count, Grid
from tests.words.every_text import Told
from tests.words.test_every_text_is_so import LEVELS, SORTS, wrong_in

# kind, start, step, terms, line length, fill: counts as classrooms have them.
COUNTS = [
    ("whole", "58", "6", 20, 5, "across"),
    ("whole", "1,325", "-50", 16, 4, "across"),
    ("whole", "-9", "3", 12, 4, "down"),
    ("decimal", "0.2", "0.3", 15, 5, "across"),
    ("fraction", "1/3", "2/3", 12, 3, "across"),
    ("length", "1 ft 3 in", "9 in", 12, 4, "across"),
    ("money", "$0.10", "$0.35", 12, 3, "across-up"),
    ("clock", "10:50", "20 min", 12, 3, "across"),
    ("elapsed", "1 h 35 min", "10 min", 12, 3, "across"),
]
GRIDS = [
    Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill)
    for kind, start, step, terms, length, fill in COUNTS
]
NUMBER = re.compile(r"(?<![\d.,:/])\d+(?![\d.,:/]*\d)")

# In place of a name stands another of the same sort.
OTHER_NAMES = {
    "en": [
        ("ones digit", "tens digit"),
        ("tens digit", "ones digit"),
        ("inches", "feet"),
        ("minutes", "hours"),
        ("the cents", "the dollars"),
        ("down a column", "across a row"),
        ("down and right", "down and left"),
        ("each column", "each row"),
        ("their column", "their row"),
        ("the tens", "the hundreds"),
        ("a half hour", "a full hour"),
        (" later", " earlier"),
        (" more each time", " less each time"),
        ("row down", "row up"),
        ("go up", "go down"),
        ("line up", "slide"),
    ],
    "es": [
        ("de las unidades", "de las decenas"),
        ("de las decenas", "de las unidades"),
        ("las pulgadas", "los pies"),
        ("los minutos", "las horas"),
        ("los centavos", "los dólares"),
        ("al bajar un lugar", "al pasar un lugar a la derecha"),
        ("hacia abajo y a la derecha", "hacia abajo y a la izquierda"),
        ("cada columna", "cada fila"),
        ("su columna", "su fila"),
        ("de media hora", "de una hora entera"),
        (" más tarde", " antes"),
        ("fila abajo", "fila arriba"),
        ("suben", "bajan"),
        ("se alinean", "se deslizan"),
    ],
}


def told_of(sort: str, language: str) -> Iterator[Told]:
    for number, grid in enumerate(GRIDS):
        for level in LEVELS:
            yield from SORTS[sort](grid, Audience(level, language), Random(number))


def off_by_one(text: str) -> Iterator[str]:
    """The text with each of its numbers in turn one more than it was."""
    for found in NUMBER.finditer(text):
        yield f"{text[: found.start()]}{int(found[0]) + 1}{text[found.end() :]}"


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("sort", SORTS)
def test_texts_of_classroom_counts_are_so(sort: str, language: str) -> None:
    for told in told_of(sort, language):
        assert wrong_in(told, language) == [], told.sort


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("sort", SORTS)
def test_every_number_that_is_off_by_one_is_found(sort: str, language: str) -> None:
    planted = 0
    for told in told_of(sort, language):
        for wrong in off_by_one(told.text):
            planted += 1
            assert wrong_in(told._replace(text=wrong), language), wrong
    assert planted > 30


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_other_name_is_found(language: str) -> None:
    planted = dict.fromkeys(OTHER_NAMES[language], 0)
    for sort in ("patterns", "locations", "folds"):
        for told in told_of(sort, language):
            for name, other in planted:
                if name in told.text:
                    planted[name, other] += 1
                    wrong = told.text.replace(name, other)
                    assert wrong_in(told._replace(text=wrong), language), wrong
    assert all(planted.values()), planted
