"""Every code that an error of the engine carries has its sentence, and every sentence its values; counting has no words."""

import ast
import re
from pathlib import Path

import pytest

from routines.counting import CountError
from routines.counting.claims import FAMILIES, LIES
from routines.counting.kinds.units import UNITS
from routines.counting.patterns.digit_sum import BeyondReach
from routines.errors import SENTENCES, SUBJECTS, say
from routines.errors.names import NAMES
from tests.bare_words import in_python
from tests.pseudo_locale import speak_in_brackets

ROOT = Path(__file__).parents[3]
# What a slip was found in is named as it was published.
COUNTING = sorted(set(ROOT.glob("routines/counting/**/*.py")) - {ROOT / "routines/counting/slips/sources.py"})
RAISING = {CountError.__name__, BeyondReach.__name__}
PLACEHOLDER = re.compile(r"%\((\w+)\)s")


def raised_in(source: str) -> list[tuple[str | None, set[str | None]]]:
    """The code and the names of the values of every error that is made; None for what is not written out."""
    calls = [node for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Call)]
    return [
        (node.args[1].value if isinstance(node.args[1], ast.Constant) else None, {word.arg for word in node.keywords})
        for node in calls
        if isinstance(node.func, ast.Name) and node.func.id in RAISING
    ]


def placeholders(code: str) -> set[str]:
    """What a sentence, in the singular and the plural where it has both, needs to be said."""
    asked: set[str] = set()

    class Values(dict):
        def __getitem__(self, name):
            asked.add(name)
            return 2

    assert SENTENCES[code] % Values()
    return asked


def faults(source: str) -> list[str]:
    found = []
    for code, values in raised_in(source):
        if code not in SENTENCES:
            found.append(f"{code} has no sentence")
        elif placeholders(code) != values:
            found.append(f"{code} gives {sorted(map(str, values))}, its sentence needs {sorted(placeholders(code))}")
    return found


@pytest.mark.parametrize("path", sorted(ROOT.glob("routines/**/*.py")), ids=lambda path: str(path.relative_to(ROOT)))
def test_every_error_has_a_sentence_for_its_values(path):
    if path.name != "errors.py" or path.parent.name != "counting":  # `on` makes an error again as it was
        assert faults(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "source",
    [
        'raise CountError("step", "Choose a step other than 0.")',
        'raise CountError("step", code)',
        'raise CountError("terms", "terms-out-of-range", least=2)',
        'raise CountError("terms", "terms-out-of-range", least=2, most=200, n=3)',
        'raise CountError("terms", "terms-out-of-range", **values)',
        'raise BeyondReach("family", "beyond")',
    ],
)
def test_an_error_that_could_not_be_said_is_found(source):
    assert faults(source)


def test_every_sentence_is_of_an_error_that_is_made():
    made = {code for path in ROOT.glob("routines/**/*.py") for code, _ in raised_in(path.read_text(encoding="utf-8"))}
    assert set(SENTENCES) <= made


def test_no_code_has_two_sentences():
    assert sum(len(subject.SENTENCES) for subject in SUBJECTS) == len(SENTENCES)


@pytest.mark.parametrize("code", SENTENCES)
def test_a_sentence_is_one(code):
    words = str(SENTENCES[code] % dict.fromkeys(placeholders(code), "X."))
    assert re.match(r"“?[A-Z]", words), words
    assert words.endswith("."), words


@pytest.mark.parametrize("path", COUNTING, ids=lambda path: str(path.relative_to(ROOT)))
def test_counting_has_no_sentence(path):
    assert [words for words in in_python(path.read_text(encoding="utf-8")) if words.endswith((".", "?", "!"))] == []


def test_what_stands_by_a_code_in_a_sentence_has_a_name():
    parameters = {name for claim in FAMILIES.values() for name in claim.__slots__}
    assert parameters <= set(NAMES["name"])
    assert set(NAMES["lie"]) == set(LIES)
    assert set(NAMES["measure"]) == set(NAMES["example"]) == {unit.measure for unit in UNITS.values()}
    assert set(NAMES["system"]) == {unit.system for unit in UNITS.values() if unit.system}


def test_numbers_and_lists_are_written_out():
    assert say(CountError("n", "position-too-far", most=10**9)).endswith("from 1 to 1,000,000,000.")
    assert say(CountError("kind", "unknown-kind", choices=("whole", "clock"))).endswith("from: whole, clock.")


@pytest.mark.parametrize(("needed", "said"), [(1, "1 decimal place,"), (3, "3 decimal places,")])
def test_one_is_said_in_the_singular(needed, said):
    assert said in say(CountError("style", "places-too-few", needed=needed))


def test_in_another_language_both_the_sentence_and_its_names_are_translated(monkeypatch):
    speak_in_brackets(monkeypatch)
    assert say(CountError("value", "other-system", system="metric", first="5 cm")) == (
        "⟦Write the value in ⟦metric⟧ units, as this count is: 5 cm.⟧"
    )
