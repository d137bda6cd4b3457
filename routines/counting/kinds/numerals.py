"""Numbers as teachers type them, and as they are written: signs, thousands, decimals, fractions."""

import re
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from ..errors import CountError
from ..style import Style

LONGEST_TEXT = 60

# What keyboards, phones and word processors put in place of the plain signs.
_PLAIN = str.maketrans(
    {
        "\u2212": "-",
        "\u2013": "-",
        "\u2010": "-",
        "\u2011": "-",
        "\u2018": "'",
        "\u2019": "'",
        "\u2032": "'",
        "\u201c": '"',
        "\u201d": '"',
        "\u2033": '"',
        "\u2044": "/",
        "\u2215": "/",
        "\uffe5": "¥",
        "\u00a0": " ",
        "\u2007": " ",
        "\u2009": " ",
        "\u202f": " ",
        "\t": " ",
        "½": " 1/2",
        "⅓": " 1/3",
        "⅔": " 2/3",
        "¼": " 1/4",
        "¾": " 3/4",
        "⅕": " 1/5",
        "⅖": " 2/5",
        "⅗": " 3/5",
        "⅘": " 4/5",
        "⅙": " 1/6",
        "⅚": " 5/6",
        "⅛": " 1/8",
        "⅜": " 3/8",
        "⅝": " 5/8",
        "⅞": " 7/8",
    }
)


class Numeral(NamedTuple):
    """A typed number: its value, the denominator it was written over (10 for 0.5, 8 for 2/8), and whether as a decimal."""

    value: Fraction
    over: int
    decimal: bool = False


def tidy(text: object, field: str) -> str:
    """The typed text in plain signs and single spaces.

    Raises: CountError when it is no text, empty or too long to be a number.
    """
    if not isinstance(text, str):
        raise CountError(field, "number-not-text")
    if len(text) > LONGEST_TEXT:
        raise CountError(field, "number-too-long", most=LONGEST_TEXT)
    plain = re.sub(" +", " ", text.translate(_PLAIN)).strip().replace("''", '"')
    if not plain:
        raise CountError(field, "nothing-typed")
    return plain


def split_sign(text: str) -> tuple[int, str]:
    """The sign of a tidy text, and the rest of it."""
    if text[:1] in ("-", "+"):
        return (-1 if text[0] == "-" else 1), text[1:].strip()
    return 1, text


@lru_cache(maxsize=8)
def _patterns(mark: str) -> tuple[re.Pattern[str], re.Pattern[str], re.Pattern[str]]:
    groups = "".join(sign for sign in ",. '" if sign != mark)
    whole = rf"(?:[0-9]+|[1-9][0-9]{{0,2}}(?:(?P<group>[{groups}])[0-9]{{3}})(?:(?P=group)[0-9]{{3}})*)"
    return (
        re.compile(rf"(?P<whole>{whole})"),
        re.compile(rf"(?P<whole>{whole})?{re.escape(mark)}(?P<decimals>[0-9]+)"),
        re.compile(rf"(?:(?P<whole>{whole})(?: and | y |[ -]))?(?P<top>[0-9]+) ?/ ?(?P<bottom>[0-9]+)"),
    )


def read_numeral(text: str, style: Style, field: str, typed: str | None = None) -> Numeral:
    """Read a number without a sign: 1,325 or .8 or 2/3 or 2 1/3 or 2-1/3.

    typed: all that was typed, to quote where it cannot be read.
    Raises: CountError when the text is no such number.
    """
    whole, decimal, fraction = _patterns(style.decimal_mark)
    if found := whole.fullmatch(text):
        return Numeral(Fraction(_digits(found["whole"])), 1)
    if found := decimal.fullmatch(text):
        over: int = 10 ** len(found["decimals"])
        return Numeral(_digits(found["whole"]) + Fraction(int(found["decimals"]), over), over, decimal=True)
    if found := fraction.fullmatch(text):
        bottom = int(found["bottom"])
        if bottom == 0:
            raise CountError(field, "bottom-is-zero")
        return Numeral(_digits(found["whole"]) + Fraction(int(found["top"]), bottom), bottom)
    raise _not_a_number(text, style, field, typed or text)


def _digits(text: str | None) -> int:
    return int(re.sub("[^0-9]", "", text)) if text else 0


def _not_a_number(text: str, style: Style, field: str, typed: str) -> CountError:
    mark = style.decimal_mark
    other = "," if mark == "." else "."
    swapped = text.replace(other, mark)
    if text.count(other) == 1 and re.fullmatch(rf"[0-9]*{re.escape(mark)}[0-9]+", swapped):
        if mark == ".":
            return CountError(field, "not-a-decimal-point", instead=swapped)
        return CountError(field, "not-a-decimal-comma", instead=swapped)
    return CountError(field, "no-number", decimal=f"0{mark}5", typed=typed)


def write_whole(value: int, style: Style) -> str:
    """A whole number of 0 or more, with its thousands marked."""
    return f"{value:,}".replace(",", style.thousands) if value >= 1000 else str(value)


def write_decimal(scaled: int, places: int, style: Style) -> str:
    """`scaled` / 10**places, of 0 or more, with that many places."""
    if places == 0:
        return write_whole(scaled, style)
    whole, rest = divmod(scaled, 10**places)
    return f"{write_whole(whole, style)}{style.decimal_mark}{rest:0{places}d}"


def places_needed(denominator: int) -> int | None:
    """How many decimal places write every multiple of 1/denominator, or None if none do.

    Source: proof - k places do iff the denominator divides 10**k, so it is 2**a * 5**b and k = max(a, b).
    """
    twos = fives = 0
    while denominator % 2 == 0:
        denominator //= 2
        twos += 1
    while denominator % 5 == 0:
        denominator //= 5
        fives += 1
    return max(twos, fives) if denominator == 1 else None
