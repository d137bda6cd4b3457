"""The languages of one print, and what it says in them."""

from collections.abc import Callable

from django.utils.html import format_html
from django.utils.safestring import SafeString

from routines.drawing.typesetting import typeset
from routines.words import LANGUAGES as SPOKEN

LANGUAGES = {**{language: (language,) for language in SPOKEN}, "both": ("en", "es")}


class PrintLanguages:
    """Says the fixed words of a print in its languages, the first one first; the second is marked as what it is.

    In templates: {{ say.stops }}.
    """

    def __init__(self, languages: tuple[str, ...]) -> None:
        self.languages = languages

    @property
    def main(self) -> str:
        return self.languages[0]

    def __getitem__(self, key: str) -> SafeString:
        return self.tell(key)

    def tell(self, key: str, **facts: object) -> SafeString:
        """A phrase with its blanks filled; a fact that differs by language is a function of the language."""
        return self.each(lambda language: phrase(key, language, **facts))

    def each(self, make: Callable[[str], str]) -> SafeString:
        """What `make` says in each language of the print. Where both say the same, once."""
        first, *others = (typeset(make(language)) for language in self.languages)
        told = format_html("{}", first)
        for language, text in zip(self.languages[1:], others, strict=True):
            if text and text != first:
                told += format_html(' <span class="also" lang="{}">{}</span>', language, text)
        return told


def phrase(key: str, language: str, **facts: object) -> str:
    filled = {name: fact(language) if callable(fact) else fact for name, fact in facts.items()}
    return SPOKEN[language].paper[key].format_map(filled)
