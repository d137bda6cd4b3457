"""docs/bounds.md names the bounds that the code has, with their numbers."""

import re
from importlib import import_module
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
BOUNDS = (ROOT / "docs/bounds.md").read_text(encoding="utf-8")
ROWS = [
    re.split(r" *\| *", line.strip("| "))
    for line in BOUNDS.splitlines()
    if line.startswith("| ") and not line.startswith(("| what", "| ---"))
]
NAMED = [row for row in ROWS if row[2]]


SAID = " ".join(
    path.read_text(encoding="utf-8")
    for folder in ("accounts", "config", "grade_bands", "routines", "templates")
    for kind in ("*.py", "*.html")
    for path in (ROOT / folder).rglob(kind)
)


def constants(cell: str) -> list:
    """The values of the names in a cell; one without a module is of the module before it."""
    module, found = "", []
    for name in re.findall(r"`([\w.]+)`", cell):
        if "." in name:
            module, _, name = name.rpartition(".")
        found.append(getattr(import_module(module), name))
    return found


def numbers(cell: str) -> list[float]:
    return [float(number.replace(",", "")) for number in re.findall(r"[0-9][0-9,]*", cell)]


def test_every_row_has_its_four_cells():
    assert len(ROWS) > 40
    assert {len(row) for row in ROWS} == {4}


@pytest.mark.parametrize("row", NAMED, ids=[row[0] for row in NAMED])
def test_the_number_is_the_constant(row):
    assert numbers(row[1]) == [float(value) for value in constants(row[2])]


def pieces(sentence: str) -> list[str]:
    """A sentence in the pieces that the code does not fill in."""
    found = (piece.strip(' .,:"') for piece in re.split(r"[0-9][0-9,]*|…|[.:;,] |, or ", sentence))
    return [piece for piece in found if len(piece.split()) > 1]


@pytest.mark.parametrize("row", [row for row in ROWS if row[3][0].isupper()], ids=lambda row: row[0])
def test_the_sentence_is_what_the_code_says(row):
    assert pieces(row[3])
    assert [piece for piece in pieces(row[3]) if piece not in SAID] == []
