"""Counts in words, in whatever way they are said: "thirty tenths", "seventy six", "minus four"."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from ..count import Count
from ..kinds.kind import NumberKind
from ..kinds.names import Kind
from ..kinds.registry import number_kind
from ..languages import LANGUAGES
from .reading import plain

SAYINGS = ("written", "counted", "renamed")

# Hundreds are counted on past a thousand, as far as anybody does.
_HUNDREDS = {"en": "hundred", "es": "cientos"}
IN_HUNDREDS = range(1000, 10_000)

# A class that says a count in words is near the one that is due.
NEAR = 12


def said_as(count: Count, value: Fraction, text: str) -> bool:
    """Whether a text says a value in words, in any style of saying it."""
    return any(plain(count, words) == plain(count, text) for words in _all_words(count, value))


def value_in_words(count: Count, text: str, n: int) -> Fraction | None:
    """The value of the count near the n-th that a text says in words; None where it says none of them."""
    if not any(sign.isalpha() for sign in text):
        return None
    heard = plain(count, text)
    for at in sorted(range(max(1, n - NEAR), n + NEAR + 1), key=lambda at: abs(at - n)):
        said = (form for language in LANGUAGES for form in _long_and_short(count.words(at, language)))
        if any(plain(count, words) == heard for words in said):
            return count.value(at)
    return None


def _long_and_short(words: str) -> tuple[str, str]:
    """A full hour may be said by its number alone: nine for nine o'clock, nueve for las nueve."""
    return words, words.removesuffix(" o'clock").removeprefix("la ").removeprefix("las ")


def _all_words(count: Count, value: Fraction) -> Iterator[str]:
    for form in _forms(count):
        for language in LANGUAGES:
            yield from _long_and_short(form.words(value, language))
    if count.kind == Kind.WHOLE and value in IN_HUNDREDS:
        yield from (in_hundreds(count, value, language) for language in LANGUAGES)


def in_hundreds(count: Count, value: Fraction, language: str) -> str:
    """A whole number past a thousand said by its hundreds: ten hundred forty, fourteen hundred; "" where nobody says it so."""
    if value not in IN_HUNDREDS:
        return ""
    hundreds, rest = (Fraction(part) for part in divmod(int(value), 100))
    said = f"{count.words_of(hundreds, language)} {_HUNDREDS[language]}"
    return f"{said} {count.words_of(rest, language)}" if rest else said


def _forms(count: Count) -> Iterator[NumberKind]:
    for saying in SAYINGS:
        style = count.style
        yield (
            count.form
            if saying == style.saying
            else number_kind(count.kind, replace(style, saying=saying), count.form.grain)
        )
