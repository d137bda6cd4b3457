"""Words of a lesson go through the translation in scripts and Python too; templates are held by tests/test_template_words.py."""

import re
from pathlib import Path

import pytest

from routines.lessons.words import board_words, lectern_words, log_words, replay_words, status_words
from tests.bare_words import in_python, in_script

ROOT = Path(__file__).parents[3]
SCRIPTS = [
    *sorted(ROOT.glob("static/js/lesson/**/*.js")),
    ROOT / "static/js/theme.js",
    ROOT / "static/js/text_limits.js",
    ROOT / "static/js/await_pairing.js",
]
# What the engine is told and the spoken title are in the count's language, not the page's.
IN_THE_COUNTS_LANGUAGE = {
    "By {step} from {start}",
    "Back by {step} from {start}",
    "De {step} en {step} desde {start}",
    "Hacia atrás de {step} en {step} desde {start}",
}
PYTHON = [
    *sorted(ROOT.glob("routines/lessons/**/*.py")),
    ROOT / "accounts/names_asked.py",
    ROOT / "routines/plans/forms/claim.py",
    ROOT / "routines/plans/suggestions/counted_before.py",
]


def named(path: Path) -> str:
    return str(path.relative_to(ROOT))


@pytest.mark.parametrize("path", SCRIPTS, ids=named)
def test_no_bare_words_in_a_script(path):
    assert in_script(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("path", PYTHON, ids=named)
def test_no_bare_sentence_in_python(path):
    found = in_python(path.read_text(encoding="utf-8"))
    assert [words for words in found if words not in IN_THE_COUNTS_LANGUAGE] == []


@pytest.mark.parametrize(
    "source",
    [
        'part.textContent = "Think";',
        'button.textContent = "stop";',
        'tell("nothing to undo");',
        "tell(`${n} counts wait here`);",
        'cell.setAttribute("aria-label", "next count");',
    ],
)
def test_bare_words_in_a_script_are_found(source):
    assert in_script(source)


@pytest.mark.parametrize(
    "source",
    [
        'part.textContent = say("nothing-yet");',
        'made("p", { className: "quiet plain", text: say("stop-now") });',
        'root.querySelector(".b-entry:last-child > .numeral, .b-guess > .numeral");',
        'if (event.key === "PageDown") act(); // Page Down counts on',
        'import { Fold } from "./folding.js";',
    ],
)
def test_names_of_things_in_a_script_are_not(source):
    assert in_script(source) == []


def test_a_bare_sentence_in_python_is_found():
    assert in_python('raise EventRefused("text", f"That is {n} characters long.")') == ["That is "]
    assert in_python('"""Says so."""\nwords = _("That is long.")\nraise ValueError("A fault of ours")') == []


def test_every_word_that_a_script_asks_for_is_there():
    """`say("name")` of a literal name; names that are put together are held by the browser tests."""
    known = {**status_words(), **board_words(), **lectern_words(), **log_words(), **replay_words()}
    asked = {name for path in SCRIPTS for name in re.findall(r'\bsay\("([a-z.-]+)"', path.read_text(encoding="utf-8"))}
    assert len(asked) > 40
    assert asked - set(known) == set()
