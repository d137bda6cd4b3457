"""How far a class of a level may count: a next count that would go further is cut, or not proposed."""

from dataclasses import replace
from fractions import Fraction

from ..grid import Grid
from ..slips.integers import BELOW_ZERO_FROM
from .changes import Change, changed, shown

# The largest number that a level counts to. Source: Common Core State Standards K.CC.A.1, 1.NBT.A.1 (to 120),
# 2.NBT.A.2, 4.NBT (domain note). That K looks on to 120 and grade 2 past a thousand, and grade 3 as grade 4: common
# practice.
LARGEST = (120, 120, 1200, 1_000_000)
LINES = 2
FEWEST = 6


def within_reach(change: Change, old: Grid, level: int) -> Change | None:
    """The change, with fewer counts where it would go past what the class knows; None where too few would be left.

    What the class has counted already is known to it.
    """
    new = change.grid
    lowest, largest = _lowest(old, level), _largest(old, level)
    terms = 0
    while terms < new.terms and lowest <= new.count.value(terms + 1) <= largest:
        terms += 1
    if terms == new.terms:
        return change
    terms -= terms % new.line_length
    if terms < max(FEWEST, LINES * new.line_length):
        return None
    grid = changed(new, terms=terms)
    return None if grid is None else replace(change, grid=grid, shows=shown(grid, *change.shows))


def _lowest(old: Grid, level: int) -> Fraction:
    """Nothing below zero for a class that does not know of it; clocks turn."""
    count = old.count
    already = min(count.value(1), count.value(old.terms)) < 0
    return Fraction(-(10**9)) if already or count.wrap is not None or level >= BELOW_ZERO_FROM else Fraction(0)


def _largest(old: Grid, level: int) -> Fraction:
    count = old.count
    if count.kind != "whole":
        return Fraction(10**9)
    return max(Fraction(LARGEST[min(level, len(LARGEST) - 1)]), count.value(1), count.value(old.terms))
