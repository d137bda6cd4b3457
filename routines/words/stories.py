"""What landmarks are called where they are ringed."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

from routines.counting.count import Count
from routines.counting.grid import Grid
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.names import Kind
from routines.counting.stories import Landmarks
from routines.counting.stories import proposed_landmarks as proposed

from .languages import LANGUAGES


class NamedLandmarks(NamedTuple):
    """Landmarks to ring, with what they are called in the language of the count's style."""

    multiple: Fraction
    terms: tuple[int, ...]
    name: str


def proposed_landmarks(grid: Grid) -> list[NamedLandmarks]:
    """Which multiples to ring, best first, by name: see `routines.counting.proposed_landmarks`."""
    return [NamedLandmarks(marks.multiple, marks.terms, _name(grid.count, marks)) for marks in proposed(grid)]


def _name(count: Count, marks: Landmarks) -> str:
    """What they are called; of those that are crossed, that they are passed."""
    if not marks.crossed:
        return _plural_name(count, marks.multiple)
    language = LANGUAGES[count.style.language]
    passed = language.below if count.step < 0 else language.past
    return passed.format(amount=_one_name(count, marks.multiple))


def _one_name(count: Count, multiple: Fraction) -> str:
    """What one of them is called: "hundred", "dollar"; as it is written where it has no name."""
    language = LANGUAGES[count.style.language]
    if count.kind == Kind.MONEY:
        currency = currency_named(count.style.currency, language.code)
        return currency.main.one if multiple == 10**currency.digits else count.text_of(multiple)
    unit = count.base_unit or count.kind.value
    noun = language.landmark_nouns.get((unit, str(multiple)))
    return noun.one if noun else count.text_of(multiple)


def _plural_name(count: Count, multiple: Fraction) -> str:
    language = LANGUAGES[count.style.language]
    if count.kind != Kind.MONEY:
        return language.ringed[count.kind, count.base_unit][multiple]
    currency = currency_named(count.style.currency, language.code)
    if multiple == 10**currency.digits:
        return currency.main.several
    coins = language.ringed_coins.get(currency.code, {})
    return coins.get(multiple) or language.multiple(count.difference_text(multiple)).many
