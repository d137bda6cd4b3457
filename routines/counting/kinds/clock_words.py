"""Times of the day as they are said, in each language in which numbers are said."""

from fractions import Fraction

from .said import SAID
from .said.saying import NOON

__all__ = ["NOON", "half_of_day", "part_of_day", "say_time"]


def part_of_day(minute_of_day: Fraction | int, language: str) -> str:
    """The name of the part of the day at a number of minutes after midnight.

    >>> part_of_day(260, "en"), part_of_day(260, "es"), part_of_day(17 * 60 + 30, "en")
    ('morning', 'madrugada', 'afternoon')
    """
    return SAID[language].part_of_day(minute_of_day)


def half_of_day(minute_of_day: int, language: str) -> str:
    """What is written after a time on a 12-hour clock."""
    return SAID[language].half_of_day(minute_of_day)


def say_time(hour: int, minute: int, language: str, saying: str, clock: int, minute_of_day: int | None) -> str:
    """A written time in words: "half past two", "seven fifty p.m.", "las dos y media".

    hour: as written. saying: "counted" reads the digits, "renamed" also uses quarters of an hour.
    minute_of_day: minutes after midnight where the half of the day is said, else None.
    """
    if clock == 24 and hour == minute == 0:
        return half_of_day(0, language)
    if minute_of_day in (0, NOON):
        return half_of_day(minute_of_day, language)
    halves, quarters = saying != "counted" and clock == 12, saying == "renamed" and clock == 12
    return SAID[language].time(hour, minute, halves=halves, quarters=quarters, minute_of_day=minute_of_day)
