"""Turns of the clock, halves and parts of the day."""

from __future__ import annotations

from fractions import Fraction

from ..count import Count
from ..kinds.clock import DAY
from ..kinds.clock_words import NOON
from ..kinds.clock_words import part_of_day as ordinary_part_of_day

SCHOOL_DAY = 7 * 60
"""A 12-hour count that starts before it without a.m. or p.m. starts in the afternoon: 1:50 is 1:50 p.m."""


def since_midnight(count: Count, value: Fraction) -> Fraction:
    """Say how many minutes after midnight of its first day a count on a clock shows `value`.

    That is the value itself, but for a bare 12-hour start outside 7:00 to 11:59, which is p.m.; for what is no clock too.
    """
    bare = count.wrap == NOON and not count.style.halves
    return value + NOON if bare and count.start % DAY < SCHOOL_DAY else value


def part_of_day(value: Fraction, language: str = "en") -> str:
    """Name the part of the day at a number of minutes after midnight, on whatever day it falls, as the language does.

    Noon and midnight are parts of their own.

    >>> part_of_day(Fraction(21 * 60 + 30)), part_of_day(Fraction(-60)), part_of_day(Fraction(720))
    ('night', 'night', 'noon')
    """
    minute = value % DAY
    if minute == 0:
        return "midnight"
    if minute == NOON:
        return "noon"
    return ordinary_part_of_day(minute, language)


def turn_of(count: Count, n: int) -> int:
    """Say which time round the clock the n-th term is on: 1 until the hands have gone all the way round once."""
    assert count.wrap is not None
    return int(abs(count.value(n) - count.start) // count.wrap) + 1
