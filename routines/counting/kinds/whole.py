"""Whole numbers, below zero too."""

from fractions import Fraction

from ..errors import CountError
from ..style import Style
from .fraction_forms import say_fraction, write_fraction
from .kind import NumberKind, Parsed, Ringed
from .names import Kind
from .number_words import cardinal, negative
from .numerals import read_numeral, split_sign, tidy, write_whole
from .piece import Piece

_MULTIPLES = tuple(map(Fraction, (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 20, 25, 50, 100, 1000)))

_RINGED = Ringed(tuple(map(Fraction, (10, 100, 1000))), tuple(map(Fraction, (50, 25, 5))))


class Whole(NumberKind):
    name = Kind.WHOLE

    @classmethod
    def check(cls, value: Fraction, field: str) -> None:
        if value.denominator != 1:
            raise CountError(field, "not-whole")

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        plain = tidy(text, field)
        sign, rest = split_sign(plain)
        numeral = read_numeral(rest, style, field, plain)
        if numeral.over != 1:
            raise CountError(field, "typed-not-whole", typed=plain)
        return Parsed(sign * numeral.value)

    def friendly_multiples(self) -> tuple[Fraction, ...]:
        return _MULTIPLES

    def ringed_multiples(self) -> Ringed:
        return _RINGED

    def read_off(self) -> Fraction:
        return Fraction(10)

    def round_number(self) -> Fraction:
        return Fraction(10)

    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        if value.denominator != 1:
            return write_fraction(value, value.denominator, self.style)
        number = Piece("number", write_whole(abs(value.numerator), self.style))
        return (Piece("sign", "-"), number) if value < 0 else (number,)

    def words(self, value: Fraction, language: str) -> str:
        if value.denominator != 1:
            return say_fraction(value, value.denominator, mixed=True, language=language)
        said = cardinal(abs(value.numerator), language)
        return negative(said, language) if value < 0 else said
