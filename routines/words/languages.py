"""The languages that there are."""

from collections.abc import Sequence
from functools import lru_cache

from .en import ENGLISH
from .es import SPANISH
from .language import Language

LANGUAGES: dict[str, Language] = {language.code: language for language in (ENGLISH, SPANISH)}


@lru_cache(maxsize=1024)
def ordinal(n: int, language: str = "en", *, feminine: bool = False, before_noun: bool = False) -> str:
    """Write the place `n` takes in a row, short: 1st, 22nd; in Spanish 1.º, 3.ª, and 1.er before a masculine noun.

    Source: Real Academia Española, "Ortografía de la lengua española" (2010), abbreviations of ordinals.
    >>> ordinal(22), ordinal(11), ordinal(6, "es"), ordinal(3, "es", before_noun=True), ordinal(1, "es", feminine=True)
    ('22nd', '11th', '6.º', '3.er', '1.ª')
    """
    return LANGUAGES[language].ordinal(n, feminine=feminine, before_noun=before_noun)


def listing(items: Sequence[str], language: str = "en") -> str:
    """Write items as a list that ends in "and".

    >>> listing(["10", "40", "70"]), listing(["10", "40"], "es"), listing(["1,000", "1,050"])
    ('10, 40 and 70', '10 y 40', '1,000 and 1,050')
    """
    return LANGUAGES[language].listing(items)
