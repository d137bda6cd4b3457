"""A made-up language, in which every translated sentence stands in brackets: what stands outside was not translated."""

import json
import re
from collections.abc import Iterable
from html.parser import HTMLParser

from babel.dates import get_day_names, get_month_names
from django.utils import translation

from tests.bare_words import SAID_IN

OPEN, CLOSE = "⟦", "⟧"
INNERMOST = re.compile(rf"{OPEN}[^{OPEN}{CLOSE}]*{CLOSE}")
LETTERS = re.compile(r"[A-Za-zÀ-ÿ]+")
# Days are written from the CLDR, which has them in every language.
NAMES_OF_DAYS = "|".join(
    name
    for width in ("wide", "abbreviated")
    for names in (get_month_names(width, locale="en"), get_day_names(width, locale="en"))
    for name in names.values()
)
# Not words: ordinals, a key's letter, an address, the product's own name.
AS_IN_EVERY_LANGUAGE = re.compile(
    r"\b\d+(?:st|nd|rd|th)\b|\b[A-Z]\b|\btestserver\b|\blocalhost(?::\d+)?\b|\bCountfold\b|/board/"
    rf"|\b(?:{NAMES_OF_DAYS})\b"
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
