"""Where a value is counted, found by saying the count term after term. Imports nothing of the engine."""

from fractions import Fraction
from itertools import count as naturals


def first_meeting(start: Fraction, step: Fraction, value: Fraction) -> int | None:
    """Say the count until it says `value` (give its number) or has gone past it (give None)."""
    said = start
    for n in naturals(1):
        if said == value:
            return n
        if (said > value) if step > 0 else (said < value):
            return None
        said += step
    return None


def first_meeting_on_clock(start: Fraction, step: Fraction, value: Fraction, wrap: int) -> int | None:
    """Say clock times until one shows `value`, or until the first time comes round again."""
    shown = start % wrap
    for n in naturals(1):
        if shown == value % wrap:
            return n
        shown = (shown + step) % wrap
        if shown == start % wrap:
            return None
    return None


def neighbours(start: Fraction, step: Fraction, value: Fraction) -> tuple[Fraction | None, Fraction]:
    """Give the last value said before `value` would be (None: none was) and the first one after it."""
    before = None
    said = start
    while (said < value) if step > 0 else (said > value):
        before, said = said, said + step
    return before, said + step if said == value else said


def place_by_writing(n: int, line_length: int, fill: str, lead: int) -> tuple[int, int]:
    """Write counts 1 to n into an empty page, cell after cell, and read off where the n-th stands."""
    lines: list[list[int | None]] = [[None] * lead]
    for term in range(1, n + 1):
        if len(lines[-1]) == line_length:
            lines.append([])
        lines[-1].append(term)
    if fill == "across-up":
        lines.reverse()
    for line, cells in enumerate(lines, start=1):
        if n in cells:
            at = cells.index(n) + 1
            return (at, line) if fill == "down" else (line, at)
    raise AssertionError("the n-th count was written")
