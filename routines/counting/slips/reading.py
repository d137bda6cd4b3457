"""What a heard or written text says as a number, if it says one."""

import re
from fractions import Fraction
from functools import lru_cache

from ..count import Count
from ..errors import CountError
from ..kinds.clock import DAY
from ..kinds.currency import currency_named
from ..kinds.names import Kind
from ..languages import LANGUAGES
from ..locate.clock import since_midnight
from ..written_units import written_units

LONGEST = 200
MOST_DIGITS = 9

# What names the half of the day: a.m. and its like, noon and midnight, and the hours of a 24-hour clock beyond twelve.
_HALF_OF_DAY = re.compile(
    r"[ap]\.? ?m\b|noon|midnight|mediod|medianoche|^\s*(?:0{1,2}|1[3-9]|2[0-4])(?::|\s*$)", re.IGNORECASE
)
_MINUS = re.compile(r"^(?:minus|negative|menos) ?(?=[\d$€£.,])", re.IGNORECASE)
_WHOLE_WITH_A_MARK = re.compile(r"([-+]?\d+)([.,])(0+)$")
_CENT_SIGNS = ("¢", "c")
_WHOLE_OVER_PARTS = re.compile(r"([-+]?)(\d{1,9})/(\d{1,4})$")
_PLAIN_FRACTION = re.compile(r"[0-9]{1,3}/[1-9][0-9]?")
_MIXED = re.compile(r"(?:(\d+) )?(\d+) ?/ ?(\d+)$")

_HYPHEN_IN_A_WORD = re.compile(r"(?<=[^\W\d])-(?=[^\W\d])")
_MINUS_IN_WORDS = re.compile(r"^minus (?=[a-z])")
_SPACE_BUT_BETWEEN_NUMBERS = re.compile(r"(?<!\d) | (?!\d)")


@lru_cache(maxsize=16)
def _thousands(mark: str) -> re.Pattern[str]:
    """A thousands mark where it stands as one."""
    return re.compile(rf"(?<=\d){re.escape(mark)}(?=\d{{3}}(?![\d/]))")


def plain(count: Count, text: str) -> str:
    """A text without what does not matter in reading.

    Capitals, thousands marks, hyphens inside words, a mark of exclamation, spaces but those between numbers.
    """
    if len(text) <= LONGEST and text.isascii() and text.isdigit():
        return text  # nothing to fold in 404
    folded = " ".join(text[:LONGEST].casefold().replace("\u2212", "-").split()).rstrip("!?¡¿")
    if "-" in folded:
        folded = _HYPHEN_IN_A_WORD.sub("", folded)
    if " " in folded:
        folded = _SPACE_BUT_BETWEEN_NUMBERS.sub("", _MINUS_IN_WORDS.sub("negative ", folded))
    if count.kind == Kind.CLOCK:
        return folded.replace(".", "")
    if count.kind == Kind.MONEY:
        folded = _with_small_sign(
            f"0{folded}" if folded[:1] == count.style.decimal_mark else folded, count.style.currency
        )
    mark = count.style.thousands
    return _thousands(mark).sub("", folded) if mark and mark in folded else folded


def value_of(count: Count, text: str) -> Fraction | None:
    """The value of a text in this count's kind and style; None where nobody may write it so.

    Minutes of 60 or more on a clock and more than two digits of cents are refused by the kinds themselves.
    """
    if count.kind == Kind.WHOLE and text.isascii() and text.isdigit() and text[0] != "0" and len(text) <= MOST_DIGITS:
        return Fraction(int(text))  # nothing to read in 404
    if count.kind == Kind.FRACTION and _PLAIN_FRACTION.fullmatch(text):
        return Fraction(text)
    typed = _MINUS.sub("-", text.strip().rstrip("!?"))
    if count.kind == Kind.WHOLE:
        typed = _as_whole(typed, count.style.decimal_mark)
    if count.kind == Kind.CLOCK and re.fullmatch(r"\d{1,2}", typed):
        typed = f"{typed}:00"
    try:
        return count.read(typed)
    except CountError:
        return None


def _as_whole(typed: str, decimal_mark: str) -> str:
    """A whole number in another form as a plain one: 70.0 and 140/2 as 70; any other text, as 3,000 is, as it is."""
    found = _WHOLE_WITH_A_MARK.match(typed)
    if found and (found[2] == decimal_mark or len(found[3]) != 3):
        return found[1]
    over = _WHOLE_OVER_PARTS.match(typed)
    if over and int(over[3]) and int(over[2]) % int(over[3]) == 0:
        return f"{over[1]}{int(over[2]) // int(over[3])}"
    return typed


@lru_cache(maxsize=64)
def _small_unit(code: str) -> tuple[str, re.Pattern[str]] | None:
    """The sign of a currency's small unit, and what may stand for it behind a number; None where it has no sign."""
    named = [currency_named(code, language) for language in LANGUAGES]
    sign = named[0].small_symbol
    signs = _CENT_SIGNS if sign in _CENT_SIGNS else (sign,)
    words = {word for each in named for word in (each.small.one, each.small.several)} | {*signs}
    longest_first = sorted(filter(None, words), key=len, reverse=True)
    return (sign, re.compile(rf"(?<=\d) ?(?:{'|'.join(map(re.escape, longest_first))})$")) if sign else None


def _with_small_sign(folded: str, code: str) -> str:
    """65c and 65 cents as 65¢, where the currency has a sign for its small unit."""
    small = _small_unit(code)
    return small[1].sub(small[0], folded) if small else folded


def offset(count: Count, value: Fraction, text: str, n: int) -> Fraction:
    """How far `value` is from the n-th count; on a clock the short way round.

    A text that names the half of the day (a.m., noon, 13:10, 0:10) means it: it is held to the time of the day, which
    a bare start tells by its hour. 10:50 is 10:50 a.m., so that neither 11:10 p.m. nor 23:10 comes next.
    """
    if count.wrap is None:
        return value - count.value(n)
    away = value - since_midnight(count, count.value(n))
    turn = DAY if _HALF_OF_DAY.search(text) else count.wrap
    away %= turn
    return away - turn if away > turn // 2 else away


def same_offset(count: Count, one: Fraction, other: Fraction) -> bool:
    """Whether two distances are the same, on a clock whatever the turns."""
    return one == other if count.wrap is None else (one - other) % count.wrap == 0


def is_renamed(count: Count, text: str) -> bool:
    """False where a full set of parts stands in a text that this count would write as a whole, or as a larger unit."""
    if count.kind == Kind.CLOCK:
        hour = re.match(r"\s*(\d+)", text)
        return hour is None or int(hour[1]) <= count.style.clock - (count.style.clock == 24)
    if count.kind == Kind.FRACTION and count.style.shape == "mixed":
        found = _MIXED.search(text.strip())
        return found is None or int(found[2]) < int(found[3])
    units = written_units(count)
    if units and units.large:
        large, small = units.large, units.small
        last = re.search(r"(\d+)[^\d/]*$", text)
        ends_small = any(
            text.rstrip().casefold().endswith(name) for name in (small.symbol.casefold(), *small.spellings)
        )
        return not (ends_small and last and int(last[1]) * small.size >= large.size)
    return True
