"""Words of a lesson go through the translation in scripts too; templates and Python are held beside these folders."""

import re
from pathlib import Path

import pytest

from routines.lessons.words import board_words, lectern_words, log_words, replay_words, status_words
from tests.bare_words import in_script

ROOT = Path(__file__).parents[3]
SCRIPTS = [
    *sorted(ROOT.glob("static/js/lesson/**/*.js")),
    ROOT / "static/js/theme.js",
    ROOT / "static/js/text_limits.js",
    ROOT / "static/js/await_pairing.js",
]


def named(path: Path) -> str:
    return str(path.relative_to(ROOT))


@pytest.mark.parametrize("path", SCRIPTS, ids=named)
def test_no_bare_words_in_a_script(path):
    assert in_script(path.read_text(encoding="utf-8")) == []


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


def test_every_word_that_a_script_asks_for_is_there():
    """`say("name")` of a literal name; names that are put together are held by the browser tests."""
    known = {**status_words(), **board_words(), **lectern_words(), **log_words(), **replay_words()}
    asked = {name for path in SCRIPTS for name in re.findall(r'\bsay\("([a-z.-]+)"', path.read_text(encoding="utf-8"))}
    assert len(asked) > 40
    assert asked - set(known) == set()
