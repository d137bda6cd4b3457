"""Whole numbers out of a request: a place, a version, somebody's id. The one door for text that becomes a number."""

from collections.abc import Iterable

LARGEST_ID = 2**63 - 1
"""The largest primary key that both databases hold."""


def typed_whole(text: str, low: int, high: int) -> int | None:
    """The whole number that was typed, None where there is none from `low` (0 or more) to `high`.

    Only the digits 0 to 9 are read, so that nothing is taken for a number that a database or a sentence writes otherwise;
    a number too long to lie within is refused by its length, before it is read.

    >>> typed_whole(" 12 ", 1, 40), typed_whole("41", 1, 40), typed_whole("²", 1, 40), typed_whole("9" * 5000, 1, 40)
    (12, None, None, None)
    """
    digits = text.strip().lstrip("0") or text.strip()[-1:]
    if len(digits) > len(str(high)) or not (digits.isascii() and digits.isdigit()):
        return None
    number = int(digits)
    return number if low <= number <= high else None


def typed_id(text: str) -> int:
    """Somebody's or something's id; 0, which nothing has, where it is none."""
    return typed_whole(text, 1, LARGEST_ID) or 0


def typed_ids(texts: Iterable[str]) -> list[int]:
    """Those that are ids, in their order."""
    return [number for number in map(typed_id, texts) if number]
