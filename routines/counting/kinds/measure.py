"""Length, mass, capacity and elapsed time, in one unit or two."""

import re
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from math import lcm
from typing import ClassVar

from ..errors import CountError
from ..style import LARGEST_DENOMINATOR, Style
from .fraction import kept_denominator
from .fraction_forms import write_fraction
from .kind import NumberKind, Parsed, Ringed, keep_over
from .measure_parsing import read_measure
from .names import Kind
from .number_words import negative
from .numerals import places_needed, split_sign, tidy, write_decimal, write_whole
from .piece import Piece
from .said import SAID
from .unit_names import NAMES, WRITTEN_BY_NAME, say_units
from .units import BASE_UNITS, LARGER_BESIDE, SMALLER_BESIDE, UNITS, Unit

_MULTIPLES: dict[str, tuple[int, ...]] = {
    "in": (1, 6, 12, 36),
    "cm": (1, 10, 50, 100),
    "oz": (8, 16),
    "g": (100, 500, 1000),
    "fl oz": (8, 16, 32, 128),
    "mL": (100, 250, 500, 1000),
    "min": (15, 30, 60),
}
# The friendliest, then the others.
_RINGED: dict[str, tuple[tuple[int, ...], tuple[int, ...]]] = {
    "in": ((12, 6), (36, 1)),
    "cm": ((100, 50), (10, 1)),
    "oz": ((16, 8), ()),
    "g": ((1000, 500), (100,)),
    "fl oz": ((8, 16, 32, 128), ()),
    "mL": ((1000, 500), (250, 100)),
    "min": ((60, 30), (15,)),
}
_READ_OFF = {"in": 12, "cm": 100, "oz": 16, "g": 1000, "fl oz": 8, "mL": 1000, "min": 60}
# Of the small unit where nothing larger is written, in the base unit.
_ROUND = {"in": 12, "oz": 16, "fl oz": 8, "mm": 1, "cm": 100, "g": 1000, "mL": 1000}
MOST_PLACES_WRITTEN = 3


class Measure(NumberKind):
    """Amounts of one measure.

    Parts of a unit are written as they were typed; else customary ones as fractions, all others as decimals.
    """

    goes_below_zero = False
    bare: ClassVar[str | None] = None

    def __init__(self, style: Style, grain: Fraction) -> None:
        super().__init__(style, grain)
        small = UNITS[style.small] if style.small else self._smallest_given(style)
        self.small = self._checked(small, style.small)
        two = style.units == "two" or (style.units is None and style.large is not None)
        self.large = self._larger(style) if two else None
        self.system = small.system
        self.base_unit = BASE_UNITS[self.name, small.system]
        self.over = kept_denominator(grain / small.size, replace(style, over=1) if style.decimals else style)
        self.places = self._places(style, (grain / small.size).denominator)
        self.part_names = self._part_names()

    def _smallest_given(self, style: Style) -> Unit:
        if style.large is not None and style.large in SMALLER_BESIDE:
            return UNITS[SMALLER_BESIDE[style.large]]
        return UNITS[BASE_UNITS.get((self.name, "customary")) or BASE_UNITS[self.name, None]]

    def _checked(self, unit: Unit, named: str | None) -> Unit:
        if unit.measure != self.name:
            raise CountError(
                "style", "style-of-another-measure", measure=self.name, unit=named or unit.symbol, other=unit.measure
            )
        return unit

    def _larger(self, style: Style) -> Unit:
        named = style.large or LARGER_BESIDE.get(self.small.symbol)
        if named is None:
            raise CountError("style", "no-larger-unit", unit=self.small.symbol)
        large = self._checked(UNITS[named], style.large)
        if large.system != self.small.system or large.size <= self.small.size:
            raise CountError("style", "larger-unit-of-another-system", unit=self.small.symbol)
        return large

    def _places(self, style: Style, denominator: int) -> int | None:
        """Decimal places of the small unit; None where its parts are written as fractions."""
        needed = places_needed(denominator)
        if style.places is not None:
            if needed is None:
                raise CountError("style", "no-decimals-write-this")
            if needed > style.places:
                raise CountError("style", "places-too-few", needed=needed)
            return style.places
        decimals = self.system != "customary" if style.decimals is None else style.decimals
        if not decimals or needed is None or needed > MOST_PLACES_WRITTEN:
            if denominator > LARGEST_DENOMINATOR:
                raise CountError("style", "parts-too-fine", unit=self.small.symbol)
            return None if denominator > 1 else 0
        typed = places_needed(style.over) if style.decimals and style.fractions == "kept" else 0
        return max(needed, typed or 0)

    def _part_names(self) -> tuple[str, ...]:
        small = () if self.places else (self.small.part,)
        stacked = ("top", "bottom") if self.places is None else ()
        names = (*((self.large.part,) if self.large else ()), *small, *stacked)
        return names if len(names) > 1 else ()

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        return read_measure(text, cls.name, style, field, bare=cls.bare)

    @classmethod
    def settle(cls, start: Parsed, step: Parsed, style: Style) -> Style:
        systems = {typed.system for typed in (start, step) if typed.units}
        if len(systems) > 1:
            raise CountError("step", "two-systems")
        units = sorted({UNITS[name] for name in (*start.units, *step.units)}, key=lambda unit: unit.size)
        named = style.small or style.large
        if named and units and UNITS[named].system != units[0].system:
            raise CountError("style", "style-of-another-system", unit=named)
        return _with_parts(_with_units(style, [unit.symbol for unit in units]), (start, step)) if units else style

    def friendly_multiples(self) -> tuple[Fraction, ...]:
        return tuple(map(Fraction, _MULTIPLES[self.base_unit]))

    def ringed_multiples(self) -> Ringed:
        friendliest, others = _RINGED[self.base_unit]
        return Ringed(tuple(map(Fraction, friendliest)), tuple(map(Fraction, others)))

    def read_off(self) -> Fraction:
        return Fraction(_READ_OFF[self.base_unit])

    def round_number(self) -> Fraction:
        size = self.small.size
        if self.large is not None:
            return self.large.size
        if self.counted_parts() > 1:
            return size
        return Fraction(_ROUND.get(self.small.symbol) or 10 * size)

    def counted_parts(self) -> int:
        return (self.grain / self.small.size).denominator

    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        size = abs(value)
        pieces: tuple[Piece, ...] = (Piece("sign", "-"),) if value < 0 else ()
        if self.large is not None:
            whole, size = divmod(size, self.large.size)
            if whole:
                number = Piece("number", write_whole(whole, self.style), self.large.part)
                pieces = (*pieces, number, self._symbol(self.large, Fraction(whole)))
                if not size:
                    return pieces
        amount = size / self.small.size
        return (*pieces, *self._small_number(amount), self._symbol(self.small, amount))

    def _small_number(self, amount: Fraction) -> tuple[Piece, ...]:
        places = self._places_of(amount)
        if places is None:
            return write_fraction(amount, self._over(amount), self.style, wholes="number", part=self.small.part)
        scaled = amount.numerator * (10**places // amount.denominator)
        return (Piece("number", write_decimal(scaled, places, self.style), "" if self.places else self.small.part),)

    def _places_of(self, amount: Fraction) -> int | None:
        """Decimal places to write an amount of the small unit with; None where a fraction is written."""
        needed = places_needed(amount.denominator)
        if needed is None or self.places is None or (needed and not self.places and self.system == "customary"):
            return None
        trimmed = self.style.fractions == "simplified" and self.style.places is None
        return needed if trimmed else max(self.places, needed)

    def _over(self, amount: Fraction) -> int:
        simplified = self.style.fractions == "simplified" or amount.denominator == 1
        return amount.denominator if simplified else lcm(self.over, amount.denominator)

    def _symbol(self, unit: Unit, amount: Fraction) -> Piece:
        if unit.symbol not in WRITTEN_BY_NAME:
            return Piece("unit", unit.symbol)
        name = NAMES[unit.symbol, self.style.language]
        part = amount.denominator > 1 and self._places_of(amount) is None
        if part and (amount < 1 or self.style.shape == "top-heavy"):
            return Piece("unit", SAID[self.style.language].part_written_of.format(name.one))
        return Piece("unit", name.one if 0 < amount <= 1 else name.several)

    def parts(self, value: Fraction) -> dict[str, int]:
        size = abs(value)
        parts: dict[str, int] = {}
        if self.large is not None:
            parts[self.large.part], size = divmod(size, self.large.size)
        if self.places:
            return parts
        amount = size / self.small.size
        number = self._small_number(amount)
        parts[self.small.part] = int(amount) if number[0].kind == "number" else 0
        return parts | {piece.kind: int(piece.text) for piece in number if piece.kind != "number"}

    def words(self, value: Fraction, language: str) -> str:
        size = abs(value)
        whole = 0
        if self.large is not None:
            whole, size = divmod(size, self.large.size)
        said = []
        if self.large is not None and whole:
            said.append(say_units(Fraction(whole), self.large.symbol, language, over=1, places=None, mixed=True))
        if size or not said:
            amount = size / self.small.size
            places, over = self._places_of(amount), self._over(amount)
            mixed = self.style.shape == "mixed"
            said.append(say_units(amount, self.small.symbol, language, over=over, places=places, mixed=mixed))
        words = SAID[language].joints.units.format(*said) if len(said) == 2 else said[0]
        return negative(words, language) if value < 0 else words


def _with_units(style: Style, typed: list[str]) -> Style:
    """The style with the units that were typed, smallest first, where it leaves them open."""
    units = style.units or ("two" if len(typed) > 1 or style.large else "one")
    if units == "one":
        return replace(style, units=units, small=style.small or typed[0])
    small, large = style.small, style.large
    if small is None and large is None and len(typed) == 1:
        small = typed[0] if typed[0] in LARGER_BESIDE else SMALLER_BESIDE.get(typed[0])
    small = small or next((name for name in typed if name != large), None) or SMALLER_BESIDE.get(large or "")
    if small is None:
        raise CountError("style", "no-smaller-unit", unit=typed[0])
    if large is None:
        larger = [name for name in typed if UNITS[name].size > UNITS[small].size]
        large = larger[0] if larger else LARGER_BESIDE.get(small)
    return replace(style, units=units, small=small, large=large)


def _with_parts(style: Style, typed: Sequence[Parsed]) -> Style:
    """The style with parts of the small unit as they were typed: fractions with their denominator, or decimals."""
    with_parts = [one for one in typed if one.over > 1 and one.units[-1:] == (style.small,)]
    if not with_parts:
        return style
    decimals = all(one.decimal for one in with_parts) if style.decimals is None else style.decimals
    # A decimal beside a fraction is written as one, in simplest form: 0.5 ft by 1/8 ft.
    size = UNITS[with_parts[0].units[-1]].size
    overs = [one.over if one.decimal == decimals else (one.value / size).denominator for one in with_parts]
    return replace(style, decimals=decimals, over=lcm(style.over, keep_over(*overs)))


class Length(Measure):
    name = Kind.LENGTH


class Mass(Measure):
    name = Kind.MASS


class Capacity(Measure):
    name = Kind.CAPACITY


class Elapsed(Measure):
    """Elapsed time; a number without a unit is in minutes, and 1:20 is 1 h 20 min."""

    name = Kind.ELAPSED
    bare = "min"

    def round_number(self) -> Fraction:
        return Fraction(60)

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        sign, rest = split_sign(tidy(text, field))
        hours_and_minutes = re.fullmatch("([01]?[0-9]|2[0-3]):([0-5][0-9])", rest)
        if hours_and_minutes is None:
            return super().read(text, style, field)
        hours, minutes = map(int, hours_and_minutes.groups())
        return Parsed(sign * Fraction(60 * hours + minutes), units=("h", "min"))
