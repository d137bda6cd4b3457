"""What is said about each slip: why it happens, for the teacher, and a question for the children."""

from collections.abc import Mapping

from . import beyond_the_table, decimals, fractions, integers, measurement, money, spanish_words, time, whole_numbers
from .slip_words import SlipWords

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
}
