"""What is said in Spanish about each slip, and about forms that nobody may write."""

from collections.abc import Mapping

from ...language import SlipWords
from . import (
    beyond_the_table,
    decimals,
    forms,
    fractions,
    integers,
    measurement,
    money,
    spanish_words,
    time,
    whole_numbers,
)

WORDS: Mapping[str, SlipWords] = {
    **whole_numbers.WORDS,
    **beyond_the_table.WORDS,
    **integers.WORDS,
    **decimals.WORDS,
    **fractions.WORDS,
    **money.WORDS,
    **time.WORDS,
    **measurement.WORDS,
    **spanish_words.WORDS,
    **forms.FORMS,
}
