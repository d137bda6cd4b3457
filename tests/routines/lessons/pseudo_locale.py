"""A made-up language, in which every translated sentence stands in brackets: what stands outside was not translated."""

import json
import re
from collections.abc import Iterable
from html.parser import HTMLParser

from django.utils import translation

from routines.lessons.next_count import next_grids
from routines.lessons.shown_count import lectern_count, shown_of
from routines.lessons.slips_said import said_otherwise
from tests.bare_words import SAID_IN

OPEN, CLOSE = "⟦", "⟧"
INNERMOST = re.compile(rf"{OPEN}[^{OPEN}{CLOSE}]*{CLOSE}")
LETTERS = re.compile(r"[A-Za-zÀ-ÿ]+")
# Not words: ordinals, a key's letter, an address, the product's own name.
AS_IN_EVERY_LANGUAGE = re.compile(
    r"\b\d+(?:st|nd|rd|th)\b|\b[A-Z]\b|\btestserver\b|\blocalhost(?::\d+)?\b|\bCountfold\b|/board/"
)


def speak_in_brackets(monkeypatch) -> None:
    """Every word that goes through gettext comes back in brackets."""
    speaking = translation._trans

    def bracketed(words: str) -> str:
        return f"{OPEN}{words}{CLOSE}" if words else ""

    monkeypatch.setattr(speaking, "gettext", bracketed)
    monkeypatch.setattr(speaking, "pgettext", lambda _context, words: bracketed(words))
    monkeypatch.setattr(speaking, "ngettext", lambda one, many, n: bracketed(one if n == 1 else many))
    monkeypatch.setattr(speaking, "npgettext", lambda _context, one, many, n: bracketed(one if n == 1 else many))


def untranslated(words: str, peoples: Iterable[str]) -> str:
    """What is left of words once brackets, numbers and what people (or the engine, in the count's language) said are out."""
    for said in sorted(filter(None, peoples), key=len, reverse=True):
        words = words.replace(said, " ")
    while INNERMOST.search(words):
        words = INNERMOST.sub(" ", words)
    words = AS_IN_EVERY_LANGUAGE.sub(" ", words)
    return words.strip() if LETTERS.search(words) else ""


def people_and_plan(lesson, state) -> set[str]:
    """All that a lesson's pages show in words that are not the page's: of people, and of the count in its language."""
    shown = shown_of(lesson)
    said = said_otherwise(state, shown.grid, shown.audience)
    words = set(_texts(lectern_count(lesson, shown)))
    words |= {note for one in said for note in (one.note, one.text, *(later.text for later in one.carried))}
    words |= {item.why for item in next_grids(shown)}
    words |= set(
        _texts([list(state.notices), list(state.phrases), {str(n): one for n, one in state.predictions.items()}])
    )
    words |= {text for entries in state.entries.values() for entry in entries for text in (entry.text, *entry.struck)}
    words |= {lesson.routine.title, lesson.class_group.name, lesson.teacher.display_name, lesson.year.name}
    words |= {"Larkfield School"}
    return words | {text.replace("-", "\u2212") for text in words}


def _texts(value) -> Iterable[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for one in value.values():
            yield from _texts(one)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from _texts(one)


class ReadAloud(HTMLParser):
    """Texts and named attributes of a page, its drawings aside: their few words are in the count's language."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.texts: list[str] = []
        self.words: dict[str, dict[str, str]] = {}
        self._silent = 0
        self._reading = ""
        self.feed(page)

    def handle_starttag(self, tag, attributes) -> None:
        named = dict(attributes)
        if tag == "script" and named.get("type") == "application/json":
            self._reading = named.get("id", "")
        self._silent += tag in ("script", "style", "svg")
        if not self._silent:
            self.texts += [value for name, value in attributes if name in SAID_IN and value]

    def handle_endtag(self, tag) -> None:
        self._silent -= tag in ("script", "style", "svg")
        self._reading = ""

    def handle_data(self, data) -> None:
        if self._reading in ("words", "page-words"):
            self.words[self._reading] = json.loads(data)
        elif not self._silent and data.strip():
            self.texts.append(" ".join(data.split()))
