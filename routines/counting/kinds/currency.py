"""What CLDR and everyday school speech say about a currency.

Source: CLDR, read through Babel (decimal digits, symbols, where the symbol stands, plural names); the names of the
smallest coins are from memory, CLDR has none.
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from ..errors import CountError
from .said import SAID, CoinName
from .said.saying import DOLLAR_CODES, PESO_CODES

if TYPE_CHECKING:
    from babel import Locale


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


_SMALL_SYMBOLS = {**dict.fromkeys((*DOLLAR_CODES, *PESO_CODES), "¢"), "EUR": "c", "GBP": "p"}


@lru_cache(maxsize=64)
def currency_named(code: str, language: str) -> Currency:
    """The currency of a three-letter code, named in a language.

    Raises: CountError on `style` when CLDR knows no such currency.
    """
    from babel import Locale, UnknownLocaleError
    from babel.numbers import get_currency_name, get_currency_precision, get_currency_symbol, is_currency

    if not is_currency(code):
        raise CountError("style", "unknown-currency", code=code)
    digits = get_currency_precision(code)
    land = SAID[language].lands.get(code, code[:2])
    try:
        home = Locale.parse(f"und_{land}")
    except (UnknownLocaleError, ValueError):
        home = Locale.parse("en_US")
    try:
        spoken = Locale.parse(f"{language}_{land}")
    except (UnknownLocaleError, ValueError):
        spoken = Locale.parse(language)
    one, several = str(get_currency_name(code, 1, spoken)), str(get_currency_name(code, 2, spoken))
    of_cldr = CoinName(one, several, SAID[language].coin_gender(one)), CoinName("", "")
    main, small = SAID[language].coins.get(code, of_cldr)
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
