"""Decimals: places kept or trimmed, with a point or a comma."""

from fractions import Fraction
from math import lcm

from ..errors import CountError
from ..style import Style
from .fraction import with_kept_denominator
from .fraction_forms import say_fraction, write_fraction
from .kind import NumberKind, Parsed, Ringed
from .names import Kind
from .number_words import cardinal, decimal_parts, joined, negative
from .numerals import places_needed, read_numeral, split_sign, tidy, write_decimal
from .piece import Piece

_MULTIPLES = tuple(map(Fraction, ("1/10", "1/2", "1", "2", "5", "10", "100")))
_RINGED = Ringed((Fraction(1), Fraction(1, 2)), (Fraction(10), Fraction(1, 10)))
FINEST_PLACES = 3


class DecimalNumber(NumberKind):
    name = Kind.DECIMAL

    def __init__(self, style: Style, grain: Fraction) -> None:
        super().__init__(style, grain)
        needed = places_needed(grain.denominator) or 0
        if style.places is not None and style.places < needed:
            raise CountError("style", "places-too-few", needed=needed)
        self.trimmed = style.places is None and style.fractions == "simplified"
        kept = needed if self.trimmed else places_needed(lcm(grain.denominator, style.over))
        self.places_shown = style.places if style.places is not None else (needed if kept is None else kept)

    @classmethod
    def check(cls, value: Fraction, field: str) -> None:
        needed = places_needed(value.denominator)
        if needed is None or needed > FINEST_PLACES:
            raise CountError(field, "decimal-too-fine")

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        plain = tidy(text, field)
        sign, rest = split_sign(plain)
        numeral = read_numeral(rest, style, field, plain)
        cls.check(numeral.value, field)
        return Parsed(sign * numeral.value, numeral.over)

    @classmethod
    def settle(cls, start: Parsed, step: Parsed, style: Style) -> Style:
        return with_kept_denominator(start, step, style)

    def friendly_multiples(self) -> tuple[Fraction, ...]:
        return _MULTIPLES

    def ringed_multiples(self) -> Ringed:
        return _RINGED

    def read_off(self) -> Fraction:
        return Fraction(1)

    def round_number(self) -> Fraction:
        return Fraction(1)

    def _places(self, value: Fraction) -> int | None:
        needed = places_needed(value.denominator)
        return needed if needed is None or self.trimmed else max(needed, self.places_shown)

    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        places = self._places(value)
        if places is None:
            return write_fraction(value, value.denominator, self.style)
        scaled = abs(value.numerator) * (10**places // value.denominator)
        number = Piece("number", write_decimal(scaled, places, self.style))
        return (Piece("sign", "-"), number) if value < 0 else (number,)

    def places_written(self, value: Fraction) -> int:
        return self._places(value) or 0

    def words(self, value: Fraction, language: str) -> str:
        needed = places_needed(value.denominator)
        if needed is None:
            return say_fraction(value, value.denominator, mixed=True, language=language)
        saying = self.style.saying
        places = needed if saying == "renamed" else self._places(value) or 0
        scaled = abs(value.numerator) * (10**places // value.denominator)
        whole, rest = (0, scaled) if saying == "counted" else divmod(scaled, 10**places)
        if places == 0 or rest == 0:
            said = cardinal(whole or rest, language)
        elif whole == 0:
            said = decimal_parts(rest, places, language)
        else:
            said = joined(cardinal(whole, language), decimal_parts(rest, places, language), language)
        return negative(said, language) if value < 0 else said
