"""Fractions: the denominator kept or simplified, mixed or top-heavy, wholes as number, fraction or both."""

from dataclasses import replace
from fractions import Fraction
from math import lcm

from ..errors import CountError
from ..style import LARGEST_DENOMINATOR, Style
from .fraction_forms import say_fraction, write_fraction
from .kind import NumberKind, Parsed, Ringed, keep_over
from .names import Kind
from .numerals import read_numeral, split_sign, tidy
from .piece import Piece
from .said import SAID

_MULTIPLES = (Fraction(1, 2), Fraction(1), Fraction(2), Fraction(5), Fraction(10))

_RINGED = Ringed((Fraction(1), Fraction(1, 2)), (Fraction(10),))


class FractionNumber(NumberKind):
    name = Kind.FRACTION

    def __init__(self, style: Style, grain: Fraction) -> None:
        super().__init__(style, grain)
        self.over = grain.denominator if style.fractions == "simplified" else kept_denominator(grain, style)
        self.part_names = ("top", "bottom") if style.shape == "top-heavy" else ("whole", "top", "bottom")

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        plain = tidy(text, field)
        sides = [side.strip() for side in plain.split("=")]
        values = [_read_side(side, style, field) for side in sides]
        if len(sides) > 2 or any(value.value != values[0].value for value in values):
            raise CountError(field, "several-numbers", typed=plain)
        return values[0]

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

    def _over(self, value: Fraction) -> int:
        whole_as_fraction = value.denominator == 1 and self.style.wholes != "number"
        if self.style.fractions == "simplified" and not whole_as_fraction:
            return value.denominator
        # A value that is no multiple of this count's fraction is not counted: it is written in its own.
        return self.over if self.over % value.denominator == 0 else value.denominator

    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        return write_fraction(value, self._over(value), self.style)

    def difference_pieces(self, size: Fraction) -> tuple[Piece, ...]:
        return write_fraction(size, self._over(size), self.style, wholes="number")

    def parts(self, value: Fraction) -> dict[str, int]:
        # As `write_fraction` writes them. "3/3 = 1" shows the whole twice; its parts are those of the fraction.
        over = self._over(value)
        top = abs(value.numerator) * (over // value.denominator)
        if over == 1 or (top % over == 0 and self.style.wholes == "number"):
            return {"whole": top // over}
        if self.style.shape == "top-heavy" or top < over or top % over == 0:
            return {"top": top, "bottom": over}
        return {"whole": top // over, "top": top % over, "bottom": over}

    def words(self, value: Fraction, language: str) -> str:
        saying = self.style.saying
        over = lcm(self.over, value.denominator)
        if saying == "counted":
            return say_fraction(value, over, mixed=False, language=language)
        if saying == "renamed":
            return say_fraction(value, value.denominator, mixed=True, language=language)
        if value.denominator == 1 and over > 1 and self.style.wholes != "number":
            said = say_fraction(value, over, mixed=False, language=language)
            if self.style.wholes == "fraction":
                return said
            whole = say_fraction(value, 1, mixed=True, language=language)
            return SAID[language].joints.or_as_well.format(said, whole)
        if value.denominator == 1:
            return say_fraction(value, 1, mixed=True, language=language)
        return say_fraction(value, self._over(value), mixed=self.style.shape == "mixed", language=language)


def kept_denominator(grain: Fraction, style: Style) -> int:
    """The denominator over which multiples of grain are kept: the style's too, unless that makes one nobody writes."""
    both = lcm(grain.denominator, style.over)
    return both if both <= LARGEST_DENOMINATOR else grain.denominator


def with_kept_denominator(start: Parsed, step: Parsed, style: Style) -> Style:
    """The style that keeps the denominator which start and step were typed over."""
    over = lcm(style.over, keep_over(start.over, step.over))
    return style if over == style.over else replace(style, over=over)


def _read_side(text: str, style: Style, field: str) -> Parsed:
    sign, rest = split_sign(text)
    numeral = read_numeral(rest, style, field, text)
    if numeral.over > LARGEST_DENOMINATOR:
        raise CountError(field, "denominator-too-large", most=LARGEST_DENOMINATOR)
    return Parsed(sign * numeral.value, numeral.over)
