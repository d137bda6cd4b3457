"""What CLDR and everyday school speech say about a currency.

Source: CLDR, read through Babel (decimal digits, symbols, where the symbol stands, plural names); the names of the
smallest coins are from memory, CLDR has none. CLDR has no genders either, but its adjectives agree (rupia india, naira
nigeriano); those of dobra, kuna and unidad are from memory.
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from ..errors import CountError

if TYPE_CHECKING:
    from babel import Locale


@dataclass(frozen=True, slots=True)
class CoinName:
    """The name of a currency's main or smallest unit: one, several, and its Spanish gender ("" in English)."""

    one: str
    several: str
    gender: str = "masculine"


@dataclass(frozen=True, slots=True)
class Currency:
    """digits: 10**digits smallest units make one main unit. symbol, small_symbol: "" when there is none.

    symbols: how the main unit may be typed: as at home, as abroad (US$, MX$), by its code.
    """

    code: str
    digits: int
    symbol: str
    symbols: tuple[str, ...]
    symbol_first: bool
    small_symbol: str
    main: CoinName
    small: CoinName


_DOLLARS = (CoinName("dollar", "dollars"), CoinName("cent", "cents"))
_DOLARES = (CoinName("dólar", "dólares"), CoinName("centavo", "centavos"))
_PESOS = (CoinName("peso", "pesos"), CoinName("centavo", "centavos"))
_DOLLAR_CODES = ("USD", "CAD", "AUD", "NZD")
_PESO_CODES = ("MXN", "COP", "ARS", "DOP", "UYU", "CUP", "CLP", "PHP")

_NAMES: dict[tuple[str, str], tuple[CoinName, CoinName]] = {
    **{(code, "en"): _DOLLARS for code in _DOLLAR_CODES},
    **{(code, "es"): _DOLARES for code in _DOLLAR_CODES},
    **{(code, language): _PESOS for code in _PESO_CODES for language in ("en", "es")},
    ("EUR", "en"): (CoinName("euro", "euros"), CoinName("cent", "cents")),
    ("EUR", "es"): (CoinName("euro", "euros"), CoinName("céntimo", "céntimos")),
    ("GBP", "en"): (CoinName("pound", "pounds"), CoinName("penny", "pence")),
    ("GBP", "es"): (CoinName("libra", "libras", "feminine"), CoinName("penique", "peniques")),
}
_SMALL_SYMBOLS = {**dict.fromkeys((*_DOLLAR_CODES, *_PESO_CODES), "¢"), "EUR": "c", "GBP": "p"}
# The first words of CLDR's Spanish currency names that are feminine.
_FEMININE = (
    *("corona", "dobra", "grivna", "kuna", "leona", "leva", "libra", "lira", "litas"),
    *("pataca", "peseta", "plata", "rufiya", "rupia", "talonas", "unidad"),
)
# A currency of several countries is written as in the one that speaks the language.
_SEVERAL_LANDS = {("EUR", "en"): "IE", ("EUR", "es"): "ES"}


@lru_cache(maxsize=64)
def currency_named(code: str, language: str) -> Currency:
    """The currency of a three-letter code, named in "en" or "es".

    Raises: CountError on `style` when CLDR knows no such currency.
    """
    from babel import Locale, UnknownLocaleError
    from babel.numbers import get_currency_name, get_currency_precision, get_currency_symbol, is_currency

    if not is_currency(code):
        raise CountError("style", "unknown-currency", code=code)
    digits = get_currency_precision(code)
    land = _SEVERAL_LANDS.get((code, language), code[:2])
    try:
        home = Locale.parse(f"und_{land}")
    except (UnknownLocaleError, ValueError):
        home = Locale.parse("en_US")
    try:
        spoken = Locale.parse(f"{language}_{land}")
    except (UnknownLocaleError, ValueError):
        spoken = Locale.parse(language)
    one, several = str(get_currency_name(code, 1, spoken)), str(get_currency_name(code, 2, spoken))
    gender = "feminine" if language == "es" and one.split()[0] in _FEMININE else "masculine"
    main, small = _NAMES.get((code, language)) or (CoinName(one, several, gender), CoinName("", ""))
    symbol = _symbol(code, home)
    abroad = {str(get_currency_symbol(code, Locale.parse(locale))) for locale in ("en", "en_001")}
    pattern = str(spoken.currency_formats["standard"].pattern)
    return Currency(
        code=code,
        digits=digits,
        symbol=symbol,
        symbols=tuple(sorted({symbol, code, *abroad}, key=len, reverse=True)),
        symbol_first=pattern.index("¤") < pattern.index("0"),
        small_symbol=_SMALL_SYMBOLS.get(code, "") if digits else "",
        main=main,
        small=small,
    )


def _symbol(code: str, home: "Locale") -> str:
    """One sign if English has one; else as its own country writes it, if in Latin letters; else the code."""
    from babel import Locale
    from babel.numbers import get_currency_symbol

    english = str(get_currency_symbol(code, Locale.parse("en")))
    if len(english) == 1:
        return english
    local = str(get_currency_symbol(code, home))
    return local if all(ord(sign) < 0x250 or 0x20A0 <= ord(sign) < 0x20D0 for sign in local) else code
