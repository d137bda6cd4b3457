"""Money in a CLDR currency, counted in its smallest unit."""

import re
import unicodedata
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache

from ..errors import CountError
from ..style import Style
from .currency import Currency, currency_named
from .fraction_forms import write_fraction
from .kind import NumberKind, Parsed, Ringed
from .names import Kind
from .number_words import counted, equal_parts, negative
from .numerals import Numeral, read_numeral, split_sign, tidy, write_whole
from .piece import Piece
from .said import SAID, CoinName

_MULTIPLES = tuple(map(Fraction, (5, 10, 25, 50, 100, 500, 1000)))
_RINGED = Ringed(tuple(map(Fraction, (100, 50))), tuple(map(Fraction, (1000, 25, 10, 500))))
_CENT_SIGNS = ("¢", "c", "ct", "cts")
_IN_BOTH_UNITS = re.compile(r"(?P<main>.*?\S),? (?:(?:and|y|con) )?(?P<small>[0-9]+ ?(?:¢|[^\W\d_]+))")


class Money(NumberKind):
    name = Kind.MONEY
    goes_below_zero = False
    base_unit = "cent"

    def __init__(self, style: Style, grain: Fraction) -> None:
        super().__init__(style, grain)
        self.currency = currency_named(style.currency, style.language)
        english = currency_named(style.currency, "en")
        self.main_part = english.main.several
        self.small_part = english.small.several or "small"
        self.in_small_units = style.units == "one" and self.currency.digits > 0
        if self.in_small_units and not self.currency.small_symbol:
            raise CountError("style", "no-sign-of-small-unit", code=style.currency)
        if self.currency.digits and not self.in_small_units:
            self.part_names = (self.main_part, self.small_part)

    @classmethod
    def check(cls, value: Fraction, field: str) -> None:
        if value.denominator != 1:
            raise CountError(field, "coin-with-parts")

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        currency = currency_named(style.currency, style.language)
        plain = tidy(text, field)
        sign, rest = split_sign(plain)
        both = _IN_BOTH_UNITS.fullmatch(rest)
        if both is not None and _without_symbols(both["main"], currency)[1] == "main":
            return Parsed(sign * _in_both_units(both["main"], both["small"], currency, style, field), units=("main",))
        amount, unit = _without_symbols(rest, currency)
        if rest == plain:  # the sign may stand behind the symbol: $-5
            sign, amount = split_sign(amount)
        _refuse_other_currency(amount, currency, plain, field)
        numeral = read_numeral(amount, style, field, plain)
        _refuse_parts(numeral, unit, currency, plain, field)
        value = numeral.value if unit == "small" else numeral.value * 10**currency.digits
        return Parsed(sign * value, units=(unit or "main",))

    @classmethod
    def settle(cls, start: Parsed, step: Parsed, style: Style) -> Style:
        if style.units is None and {*start.units, *step.units} == {"small"}:
            return replace(style, units="one") if currency_named(style.currency, "en").small_symbol else style
        return style

    def friendly_multiples(self) -> tuple[Fraction, ...]:
        return _MULTIPLES

    def ringed_multiples(self) -> Ringed:
        return _RINGED

    def read_off(self) -> Fraction:
        return Fraction(100)

    def round_number(self) -> Fraction:
        return Fraction(10**self.currency.digits if self.currency.digits else 100)

    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        sign = (Piece("sign", "-"),) if value < 0 else ()
        size = abs(value)
        if self.in_small_units or size.denominator != 1:
            written = write_fraction(size, size.denominator, self.style, part=self.small_part)
            return (*sign, *written, Piece("symbol", self.currency.small_symbol or self.currency.code))
        main, small = divmod(size.numerator, 10**self.currency.digits)
        amount: tuple[Piece, ...] = (Piece("number", write_whole(main, self.style), self.main_part),)
        if self.currency.digits:
            rest = f"{small:0{self.currency.digits}d}"
            amount += (Piece("symbol", self.style.decimal_mark), Piece("number", rest, self.small_part))
        symbol = self.currency.symbol
        if not self.currency.symbol_first:
            return (*sign, *amount, Piece("unit", symbol))
        return (*sign, Piece("symbol", f"{symbol} " if symbol[-1].isalpha() else symbol), *amount)

    def parts(self, value: Fraction) -> dict[str, int]:
        size = abs(value)
        if self.in_small_units or not self.currency.digits:
            return {self.small_part if self.currency.digits else self.main_part: int(size)}
        main, small = divmod(int(size), 10**self.currency.digits)
        return {self.main_part: main, self.small_part: small}

    def words(self, value: Fraction, language: str) -> str:
        currency = currency_named(self.style.currency, language)
        size = abs(value)
        main, small = divmod(int(size), 10**currency.digits)
        all_in_small = self.style.saying == "counted" or self.in_small_units
        if all_in_small and currency.small.one:
            main, small = 0, int(size)
        if currency.digits and not currency.small.one:
            said = _main_only(main, small, currency, language)
        elif main and small:
            both = _said(main, currency.main, language), _said(small, currency.small, language)
            said = SAID[language].joints.coins.format(*both)
        elif main or not all_in_small:
            said = _said(small, currency.small, language) if small else _said(main, currency.main, language)
        else:
            said = _said(small, currency.small, language)
        return negative(said, language) if value < 0 else said


def _without_symbols(text: str, currency: Currency) -> tuple[str, str]:
    """The bare amount, and the unit it is typed in: "main", "small", or "" where it names none."""
    for symbol in currency.symbols:
        if text.startswith(symbol):
            return text[len(symbol) :].strip(), "main"
        if text.endswith(symbol):
            return text[: -len(symbol)].strip(), "main"
    word = re.search(r"[^\W\d_]+$|¢$", text)
    if word is None:
        return text, ""
    main, small = _names(currency.code)
    typed = word[0].casefold()
    unit = "small" if typed in small else "main" if typed in main else ""
    return (text[: word.start()].strip(), unit) if unit else (text, "")


def _in_both_units(main: str, small: str, currency: Currency, style: Style, field: str) -> Fraction:
    """An amount such as $1 35¢ or 2 dollars and 35 cents, in the small unit."""
    (large, _), (rest, unit) = _without_symbols(main, currency), _without_symbols(small, currency)
    whole = read_numeral(large, style, field, main)
    if unit != "small" or whole.over != 1 or int(rest) >= 10**currency.digits:
        raise CountError(field, "main-and-small-unit", currency=currency.code, main=main, small=small)
    return whole.value * Fraction(10) ** currency.digits + int(rest)


def _refuse_other_currency(amount: str, currency: Currency, typed: str, field: str) -> None:
    if any(unicodedata.category(sign) == "Sc" for sign in amount):
        raise CountError(field, "other-currency", currency=currency.code, symbol=currency.symbol, typed=typed)


def _refuse_parts(numeral: Numeral, unit: str, currency: Currency, typed: str, field: str) -> None:
    """Raises: CountError on a fraction, or on decimals finer than the smallest coin."""
    if unit == "small" and numeral.over != 1:
        raise CountError(field, "cents-with-parts", currency=currency.code, typed=typed)
    if numeral.over != 1 and currency.digits == 0:
        raise CountError(field, "currency-without-decimals", currency=currency.code)
    if numeral.over != 1 and not numeral.decimal:
        raise CountError(field, "fraction-of-currency", currency=currency.code, typed=typed)
    if numeral.over > 10**currency.digits:
        raise CountError(field, "currency-too-fine", currency=currency.code, most=currency.digits)


@lru_cache(maxsize=64)
def _names(code: str) -> tuple[frozenset[str], frozenset[str]]:
    """What a teacher may type behind an amount in the main unit, and in the small one, in any language."""
    both = [currency_named(code, language) for language in SAID]
    main = {name for currency in both for name in (currency.main.one, currency.main.several)}
    small = {name for currency in both for name in (currency.small.one, currency.small.several)}
    sign = both[0].small_symbol
    small |= {sign, *(_CENT_SIGNS if sign in _CENT_SIGNS else ())}
    return frozenset(name.casefold() for name in main), frozenset(small - {""})


def _said(many: int, name: CoinName, language: str) -> str:
    return counted(many, name.one if many == 1 else name.several, language, name.gender)


def _main_only(main: int, small: int, currency: Currency, language: str) -> str:
    """An amount of a currency whose small coin has no name here: its parts are parts of the main unit."""
    if not small:
        return _said(main, currency.main, language)
    part = equal_parts(small, 10**currency.digits, language)
    if not main:
        return SAID[language].joints.part_of_one.format(part, currency.main.one)
    return SAID[language].part_of_coin(main, part, currency.main)
