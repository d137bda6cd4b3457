"""What a heard or written text says as a number, if it says one."""

import re
from fractions import Fraction

from ..count import Count
from ..errors import CountError
from ..written_units import written_units

LONGEST = 200

_HALF_OF_DAY = re.compile(r"[ap]\.? ?m\b|noon|midnight|mediod|medianoche", re.IGNORECASE)
_MINUS = re.compile(r"^(?:minus|negative|menos) ?(?=[\d$€£.,])", re.IGNORECASE)
_WHOLE_WITH_A_MARK = re.compile(r"([-+]?\d+)[.,]0+$")
_MIXED = re.compile(r"(?:(\d+) )?(\d+) ?/ ?(\d+)$")


def plain(count: Count, text: str) -> str:
    """A text without what does not matter in reading.

    Capitals, thousands marks, hyphens inside words, a mark of exclamation, spaces but those between numbers.
    """
    folded = " ".join(text[:LONGEST].casefold().replace("\u2212", "-").split()).rstrip("!?¡¿")
    folded = re.sub(r"^minus (?=[a-z])", "negative ", re.sub(r"(?<=[^\W\d])-(?=[^\W\d])", "", folded))
    folded = re.sub(r"(?<!\d) | (?!\d)", "", folded)
    if count.kind == "clock":
        return folded.replace(".", "")
    mark = count.style.thousands
    return re.sub(rf"(?<=\d){re.escape(mark)}(?=\d{{3}}(?![\d/]))", "", folded) if mark else folded


def value_of(count: Count, text: str) -> Fraction | None:
    """The value of a text in this count's kind and style; None where nobody may write it so.

    Minutes of 60 or more on a clock and more than two digits of cents are refused by the kinds themselves.
    """
    typed = _MINUS.sub("-", text.strip().rstrip("!?"))
    if count.kind == "whole" and (found := _WHOLE_WITH_A_MARK.match(typed)):
        typed = found[1]
    try:
        return count.read(typed)
    except CountError:
        return None


def offset(count: Count, value: Fraction, text: str, n: int) -> Fraction:
    """How far `value` is from the n-th count; on a clock the short way round.

    A clock written without a.m. or p.m. goes round in `wrap` minutes; with them, in a day.
    """
    away = value - count.value(n)
    if count.wrap is None:
        return away
    turn = 1440 if _HALF_OF_DAY.search(text) else count.wrap
    away %= turn
    return away - turn if away > turn // 2 else away


def same_offset(count: Count, one: Fraction, other: Fraction) -> bool:
    """Whether two distances are the same, on a clock whatever the turns."""
    return one == other if count.wrap is None else (one - other) % count.wrap == 0


def names_the_same(count: Count, text: str, n: int) -> bool:
    """Whether a text reads as the n-th count, in whatever form."""
    value = value_of(count, text)
    return value is not None and offset(count, value, text, n) == 0


def is_renamed(count: Count, text: str) -> bool:
    """False where a full set of parts stands in a text that this count would write as a whole, or as a larger unit."""
    if count.kind == "clock":
        hour = re.match(r"\s*(\d+)", text)
        return hour is None or int(hour[1]) <= count.style.clock - (count.style.clock == 24)
    if count.kind == "fraction" and count.style.shape == "mixed":
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
