"""Turns of the clock, halves and parts of the day."""

from __future__ import annotations

from fractions import Fraction

from ..count import Count

DAY = 1440
NOON = 720
SCHOOL_DAY = 7 * 60
"""A 12-hour count that starts before it without a.m. or p.m. starts in the afternoon: 1:50 is 1:50 p.m."""

# From which minute of the day each part runs. Common practice, no source.
PARTS_OF_DAY = (
    (0, "night"),
    (5 * 60, "morning"),
    (NOON, "afternoon"),
    (17 * 60, "evening"),
    (21 * 60, "night"),
)


def since_midnight(count: Count, value: Fraction) -> Fraction:
    """Say how many minutes after midnight of its first day a count on a clock shows `value`.

    That is the value itself, but for a bare 12-hour start outside 7:00 to 11:59, which is p.m.
    """
    bare = count.style.clock == 12 and not count.style.halves
    return value + NOON if bare and count.start % DAY < SCHOOL_DAY else value


def part_of_day(value: Fraction) -> str:
    """Name the part of the day at a number of minutes after midnight, on whatever day it falls.

    >>> part_of_day(Fraction(21 * 60 + 30)), part_of_day(Fraction(-60)), part_of_day(Fraction(720))
    ('night', 'night', 'noon')
    """
    minute = value % DAY
    if minute == 0:
        return "midnight"
    if minute == NOON:
        return "noon"
    return [name for start, name in PARTS_OF_DAY if start <= minute][-1]


def turn_of(count: Count, n: int) -> int:
    """Say which time round the clock the n-th term is on: 1 until the clock first passes 12 (or midnight on 24 h)."""
    assert count.wrap is not None
    rounds = count.value(n) // count.wrap - count.start // count.wrap
    return abs(rounds) + 1
