"""What is said in Spanish about each slip, and about forms that nobody may write."""

from collections.abc import Mapping

from ...language import SlipWords
from . import (
    beyond_the_table,
    crossings,
    decimals,
    forms,
    fractions,
    integers,
    larger_units,
    measurement,
    money,
    spanish_words,
    time,
    whole_numbers,
    wrong_jumps,
    zeros_and_digits,
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
    **larger_units.WORDS,
    **crossings.WORDS,
    **wrong_jumps.WORDS,
    **zeros_and_digits.WORDS,
    **forms.FORMS,
}
