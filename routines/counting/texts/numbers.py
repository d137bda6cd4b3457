"""Ordinals and lists, the same for every sentence of a language."""

from collections.abc import Sequence
from functools import lru_cache

CONJUNCTIONS = {"en": "and", "es": "y"}


@lru_cache(maxsize=1024)
def ordinal(n: int, language: str = "en", *, feminine: bool = False, before_noun: bool = False) -> str:
    """Write the place `n` takes in a row, short: 1st, 22nd; in Spanish 1.º, 3.ª, and 1.er before a masculine noun.

    Source: Real Academia Española, "Ortografía de la lengua española" (2010), abbreviations of ordinals.
    >>> ordinal(22), ordinal(11), ordinal(6, "es"), ordinal(3, "es", before_noun=True), ordinal(1, "es", feminine=True)
    ('22nd', '11th', '6.º', '3.er', '1.ª')
    """
    if language == "es":
        if feminine:
            return f"{n}.ª"
        shortened = before_noun and (n % 10 == 3 or (n % 10 == 1 and n % 100 != 11))
        return f"{n}.er" if shortened else f"{n}.º"
    if n % 100 in (11, 12, 13):
        return f"{n}th"
    return f"{n}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(n % 10, 'th') }"


def series(items: Sequence[str]) -> str:
    """Write items one after the other: commas, or semicolons where a number has a comma of its own.

    >>> series(["0", "6", "2"]), series(["0,5", "1", "1,5"])
    ('0, 6, 2', '0,5; 1; 1,5')
    """
    return ("; " if any("," in item for item in items) else ", ").join(items)


def listing(items: Sequence[str], language: str = "en") -> str:
    """Write items as a list that ends in "and".

    >>> listing(["10", "40", "70"]), listing(["10", "40"], "es"), listing(["1,000", "1,050"])
    ('10, 40 and 70', '10 y 40', '1,000 and 1,050')
    """
    if len(items) < 2:
        return "".join(items)
    return f"{series(items[:-1])} {CONJUNCTIONS[language]} {items[-1]}"
