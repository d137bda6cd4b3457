"""The two languages say the same things, each in several ways, and the same claim is said the same way every time."""

import re
import subprocess
import sys
from string import Formatter

import pytest

from routines.counting import Audience, Claim, Count, Grid
from routines.counting.claims import FAMILIES
from routines.words import LANGUAGES, describe
from routines.words.families import PHRASES
from routines.words.language import Language
from tests.counting.claims import a_claim

ENGLISH, SPANISH = LANGUAGES["en"], LANGUAGES["es"]
TENS = Grid(Count.parse(kind="whole", start="10", step="6", terms=25), line_length=5)


def holes(template: str) -> set[str]:
    return {name for _, name, _, _ in Formatter().parse(template) if name}


def test_every_family_has_its_phrases() -> None:
    assert set(PHRASES) == set(FAMILIES.values())


def test_both_languages_have_every_sentence() -> None:
    assert set(ENGLISH.patterns) == set(SPANISH.patterns)


def test_both_languages_name_the_same_landmarks_and_places() -> None:
    assert set(ENGLISH.landmark_nouns) == set(SPANISH.landmark_nouns)
    assert set(ENGLISH.part_features) == set(SPANISH.part_features)


@pytest.mark.parametrize("language", LANGUAGES.values(), ids=LANGUAGES)
def test_no_sentence_holds_a_capital_or_a_full_stop_of_its_own(language: Language) -> None:
    """The frame of the level sets capitals and full stops."""
    for key, variants in language.patterns.items():
        if key.startswith(("student.", "yes", "no")):
            continue
        for template in variants:
            assert not template.endswith("."), key
            own = template.startswith("I ")  # which English always writes with a capital
            assert own or template[0] == "{" or template[0] in ", " or not template[0].isupper(), key


def test_the_same_claim_is_said_the_same_way_in_another_process() -> None:
    claim = a_claim("digit", place=0, along="column", blocks=[[0], [6], [2], [8], [4]])
    here = describe(claim, TENS, "always", None, Audience(5, "es"))
    code = (
        "from routines.counting import *; from routines.words import describe;"
        "g = Grid(Count.parse(kind='whole', start='10', step='6', terms=25), line_length=5);"
        "c = Claim.from_dict(dict(family='digit', place=0, along='column', blocks=[[0], [6], [2], [8], [4]]));"
        "w = describe(c, g, 'always', None, Audience(5, 'es'));"
        "print(w.statement, w.student_words, w.because, sep='|')"
    )
    run = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, env={"PYTHONHASHSEED": "7"}
    )
    assert run.stdout.strip() == "|".join([here.statement, here.student_words, here.because])


@pytest.mark.parametrize("language", ["en", "es"])
def test_different_counts_are_told_in_different_ways(language: str) -> None:
    said = set()
    for start in range(1, 13):
        grid = Grid(Count.parse(kind="whole", start=str(start), step="6", terms=25), line_length=5)
        words = describe(
            a_claim("neighbour", direction="down", difference="30"), grid, "always", None, Audience(1, language)
        )
        said.add(words.student_words)
    assert len(said) > 1


def test_describing_loads_neither_babel_nor_sympy() -> None:
    code = (
        "import sys; from routines.counting import *; from routines.words import describe;"
        "g = Grid(Count.parse(kind='whole', start='10', step='6', terms=25), line_length=5);"
        "describe(Claim.from_dict(dict(family='step', difference='6')), g, 'always', None);"
        "assert not {'babel', 'sympy', 'django'} & set(sys.modules)"
    )
    subprocess.run([sys.executable, "-c", code], check=True)


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize("language", ["en", "es"])
def test_a_claim_that_leaves_everything_open_still_has_words(family: str, language: str) -> None:
    words = describe(a_claim(family), TENS, None, None, Audience(3, language))
    assert words.statement
    assert words.student_words
    assert words.because


@pytest.mark.parametrize(
    ("claim", "statement", "spanish"),
    [
        (
            a_claim("landmarks", multiple="10", every=5, first=1, lie="column", lines=[1]),
            {"The tens are in column 1", "All the tens are in column 1"},
            {"Las decenas completas están en la columna 1", "En la columna 1 están las decenas completas"},
        ),
        (
            a_claim("remainder", modulus="2", along="count", blocks=[["0"]]),
            {"Every count is even"},
            {"Todos los números son pares"},
        ),
        (
            a_claim("digit", place=0, along="column", length=1),
            {"Ones digits stay in their column", "Each column keeps its ones digit"},
            {"Las cifras de las unidades se quedan en su columna", "Cada columna conserva la cifra de las unidades"},
        ),
        (
            a_claim("digit", place=0, along="column", length=1, lines=[4, 5]),
            {
                "Ones digits stay in their column (columns 4 and 5)",
                "Each column keeps its ones digit (columns 4 and 5)",
            },
            {
                "Las cifras de las unidades se quedan en su columna (columnas 4 y 5)",
                "Cada columna conserva la cifra de las unidades (columnas 4 y 5)",
            },
        ),
    ],
)
def test_statements_a_teacher_would_write(claim: Claim, statement: set[str], spanish: set[str]) -> None:
    assert describe(claim, TENS, "always", None, Audience(3, "en")).statement in statement
    assert describe(claim, TENS, "always", None, Audience(3, "es")).statement in spanish


def test_holes_are_filled_by_name() -> None:
    assert all(name.isidentifier() for variants in ENGLISH.patterns.values() for t in variants for name in holes(t))
    assert all(name.isidentifier() for variants in SPANISH.patterns.values() for t in variants for name in holes(t))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("level", range(9))
def test_what_takes_turns_in_lines_that_begin_otherwise_is_told_without_a_line(level: int, language: str) -> None:
    back = Grid(Count.parse(kind="whole", start="20", step="-1", terms=20), line_length=5)
    turns = a_claim("remainder", modulus="2", along="column", blocks=[["0", "1"], ["1", "0"]] * 2 + [["0", "1"]])
    for words in describe(turns, back, "always", None, Audience(level, language)).ways_to_say_it:
        assert not re.search("even, odd|odd, even|par, impar|impar, par", words), words
