"""How far a class of a level may count: a next count that would go further is cut, or not proposed."""

from dataclasses import replace
from fractions import Fraction

from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..locate.clock import since_midnight
from ..outcome import Outcome
from ..slips.integers import BELOW_ZERO_FROM
from .changes import Change, changed, shown

# The largest number that a level counts to. Source: Common Core State Standards K.CC.A.1, 1.NBT.A.1 (to 120),
# 2.NBT.A.2, 4.NBT (domain note). That grade 2 looks on past a thousand, and grade 3 as grade 4: common practice.
LARGEST = (100, 120, 1200, 1_000_000)
# The most that a class measures, in the base unit: a hallway, a full bag, a bucket, the hours of a day. Common practice.
MEASURED = {
    "in": Fraction(60 * 12),
    "cm": Fraction(2_500),
    "oz": Fraction(50 * 16),
    "g": Fraction(25_000),
    "fl oz": Fraction(2 * 128),
    "mL": Fraction(20_000),
    "min": Fraction(12 * 60),
}
# Between these times children are up, in minutes after midnight. Common practice.
UP_AT, IN_BED_AT = Fraction(6 * 60), Fraction(21 * 60)
DAY = Fraction(24 * 60)
FARTHEST = Fraction(10**9)
LINES = 2
YOUNGEST = 1
FEWEST = 6


def within_reach(change: Change, old: Grid, level: int, lowest: Fraction) -> Change | None:
    """The change, with fewer counts where it would go past what the class knows; None where too few would be left.

    What the class has counted already is known to it, but for what lies below `lowest`. Cut short, a change has
    `cut` and `until` among what is written: how many counts are left, and the last of them; or as `terms` how many it has.
    """
    new = change.grid
    if new.terms < min(FEWEST, old.terms):
        return None
    earliest, largest = _range(old, level)
    lowest = max(lowest, earliest)
    late = not _is_the_same_day(old, old.terms)
    terms = 0
    while (
        terms < new.terms
        and lowest <= _place(new.count, terms + 1) <= largest
        and (late or _is_the_same_day(new, terms + 1))
    ):
        terms += 1
    if terms == new.terms:
        return change
    if "last" in change.written:  # it says where it ends
        return None
    terms -= terms % new.line_length
    if terms < max(FEWEST, LINES * new.line_length):
        return None
    grid = changed(new, terms=terms)
    if grid is None:
        return None
    told = {"terms": str(terms)} if "terms" in change.written else {"cut": str(terms), "until": grid.count.text(terms)}
    return replace(change, grid=grid, shows=shown(grid, *change.shows), written=change.written | told)


def lowest_allowed(old: Grid, outcome: Outcome, level: int) -> Fraction:
    """The least that an outcome leads a class to.

    After a hard lesson nothing below zero before a class learns of it, unless half of the count lay there.
    """
    count = old.count
    below = sum(count.value(n) < 0 for n in range(1, old.terms + 1))
    stays = outcome is Outcome.NOT_YET and level < BELOW_ZERO_FROM and count.wrap is None
    return Fraction(0) if stays and 2 * below < old.terms else -FARTHEST


def _is_the_same_day(grid: Grid, n: int) -> bool:
    """Whether a time lies in the day of the first count; true of all that is no time."""
    count = grid.count
    return count.wrap is None or 0 <= _place(count, 1) % DAY + (n - 1) * count.step < DAY


def largest_measured(count: Count) -> Fraction | None:
    """The most of a measure that a class measures, in the base unit; None for kinds that are not measured."""
    return MEASURED.get(count.base_unit) if count.wrap is None else None


def _place(count: Count, n: int) -> Fraction:
    """The n-th count; on a clock by the time of the day."""
    return since_midnight(count, count.value(n))


def _range(old: Grid, level: int) -> tuple[Fraction, Fraction]:
    """From where to where a class may be led."""
    count = old.count
    counted = [_place(count, n) for n in (1, old.terms)]
    if count.wrap is not None:
        return min(UP_AT, *counted), max(IN_BED_AT, *counted)
    # Nothing below zero for a class that does not know of it.
    lowest = Fraction(0) if min(counted) >= 0 and level < BELOW_ZERO_FROM else -FARTHEST
    if count.kind == Kind.WHOLE:
        return lowest, max(Fraction(LARGEST[min(level, len(LARGEST) - 1)]), *counted)
    if count.kind == Kind.MONEY and level <= YOUNGEST:  # cents are counted as far as numbers are
        return lowest, max(Fraction(LARGEST[level]), *counted)
    return lowest, max(largest_measured(count) or FARTHEST, *counted)
