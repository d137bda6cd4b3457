"""Next counts for a class that saw what was planned: what stays when one thing changes."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from ..claims import Claim, RemainderClaim
from ..count import Count
from ..grid import Grid
from ..kinds.names import Kind
from ..patterns import find_patterns
from ..written_units import in_larger_unit
from . import not_yet
from .changes import Change, across_the_fill, back_again, changed, shown, small_unit

# K-1 count by ones, twos, fives and tens.
YOUNGEST = 1
# Source: Common Core State Standards 2.MD.C.7.
MINUTES_BY_FIVES = 2
HALF_DAY = 720
FEWEST, LINES = 6, 2
TEN = 10
HUNDRED = 100
# With longer jumps a count of amounts is cut to so many where it would go more than twice as far, and not proposed where even
# these do. Common practice.
AMOUNTS_SHOWN = 8
# Of a jump, in fifths: how far another start lies from the first.
SHIFTS = (2, 3, 4)


def changes(grid: Grid, slips: Sequence[not_yet.SlippedAt], unseen: Sequence[Claim], level: int) -> Iterator[Change]:
    """slips: where the class slipped. unseen: the patterns it did not see."""
    if unseen:
        yield from not_yet.fold_that_shows(grid, unseen)
    for slip in slips[:1]:
        yield from not_yet.hard_place_again(grid, slip)
    # An hour and some minutes are no next jump for a class that learns to tell the time to five minutes: see MINUTES_BY_FIVES.
    if level > (MINUTES_BY_FIVES if grid.count.kind == Kind.CLOCK else YOUNGEST):
        yield from _step_and_a_round_number(grid)
    # K counts tens from a ten only. Source: Common Core State Standards K.CC.A.1.
    if level > 0 or abs(grid.count.step) != TEN:
        yield from _other_start(grid)
    # To count back is for a class in K that is ready for more; of a count that went back the way forwards is the easier one.
    if level > 0 and grid.count.step > 0:
        yield from back_again(grid, grid.terms)
    # Jumps of ten are for a class that is ready for more.
    if level > YOUNGEST or (level > 0 and 2 * abs(grid.count.step) != TEN):
        yield from _two_jumps_in_one(grid)


def _step_and_a_round_number(grid: Grid) -> Iterator[Change]:
    """16 after 6, 80 min after 20 min: what is left past the tens, or past the hour, is as before in every cell."""
    count = grid.count
    size = _kept_past(count)
    longer = count.step + (size if count.step > 0 else -size)
    new = changed(grid, step=longer, terms=_few_enough(grid, longer), keeps_cells=True)
    if (
        new is None
        or (size == HUNDRED != abs(count.step) and count.step % size == 0)
        or min(count.start, new.count.value(grid.terms)) < 0
        or _goes_far(grid, longer, new.terms)
    ):
        return
    kept = [
        found.claim
        for found in find_patterns(grid, implied=True)
        if isinstance(found.claim, RemainderClaim) and found.claim.modulus == size
    ]
    told = {"size": count.difference_text(new.count.step), "round": count.difference_text(size)}
    name = _name_of_what_is_kept(count, size)
    if name == "round number more":
        told |= _one_that_keeps(new, count, size)
    # Of digits and minutes is spoken as such, not as what is left.
    yield Change(name, new, told, shown(new, *kept)[:1] if name == "round number more" else ())


def _one_that_keeps(new: Grid, old: Count, size: Fraction) -> dict[str, str]:
    """A count and the one that stood in its cell, with something left past what is round: 1 3/4, which was 3/4."""
    n = next((n for n in range(2, new.terms + 1) if old.value(n) % size), 2)
    return {name: _in_both(count, n) for name, count in (("now", new.count), ("then", old))}


def _in_both(count: Count, n: int) -> str:
    """A count as written, and in the larger unit where it fills one."""
    larger = in_larger_unit(count, count.value(n))
    return f"{count.text(n)} ({larger})" if larger else count.text(n)


def _kept_past(count: Count) -> Fraction:
    """The round number past which something is worth keeping: a hundred where the ones digits are all alike anyway, and
    where the last two digits are quarters of a hundred."""
    step = abs(count.step)
    if count.kind == Kind.WHOLE and (step % TEN == 0 or step % 25 == 0):
        return Fraction(HUNDRED)
    return count.form.round_number()


def _few_enough(grid: Grid, step: Fraction) -> int:
    """How many counts to show of an amount with longer jumps: all, or whole lines of about eight."""
    if not _goes_far(grid, step, grid.terms):
        return grid.terms
    length = grid.line_length
    return min(grid.terms, max(AMOUNTS_SHOWN - AMOUNTS_SHOWN % length, 2 * length))


def _goes_far(grid: Grid, step: Fraction, terms: int) -> bool:
    """Whether so many counts of an amount go more than twice as far as those in view."""
    count = grid.count
    if count.kind in (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION) or count.wrap:
        return False
    return abs(count.start + step * (terms - 1)) > 2 * max(abs(count.start), abs(count.value(grid.terms)))


def _name_of_what_is_kept(count: Count, size: Fraction) -> str:
    if count.kind == Kind.WHOLE:
        return "ones digit kept" if size == TEN else "two digits kept"
    return "minutes kept" if count.kind == Kind.CLOCK else "round number more"


def _other_start(grid: Grid) -> Iterator[Change]:
    """Starts that lie between two counts of before where the jump has room for one; else the count goes on."""
    count = grid.count
    unit = small_unit(count)
    shifts = [abs(count.step) * Fraction(part, 5) / unit // 1 * unit for part in SHIFTS]
    for shift in dict.fromkeys(shifts if shifts[0] else shifts[:1]):
        start = count.start + shift if shift else count.value(grid.terms + 1)
        terms = grid.terms if shift else _up_to_noon(grid)
        new = changed(grid, start=start, terms=terms) if terms else None
        if new is not None:
            told = {"start": new.count.text(1), "kept": _across(grid), "end": count.text(grid.terms)}
            yield Change("other start" if shift else "going on", new, told, shown(new, across_the_fill(grid)))


def _up_to_noon(grid: Grid) -> int:
    """How far a count goes on: of times no further than noon or midnight, which a class passes that is ready for more."""
    count, terms = grid.count, grid.terms
    if count.wrap is None:
        return terms
    first, size = count.value(terms + 1), abs(count.step)
    left = -first % HALF_DAY if count.step > 0 else first % HALF_DAY
    if left // size + 1 >= terms:
        return terms
    lines = int(left // size + 1) // grid.line_length
    return lines * grid.line_length if lines >= LINES and lines * grid.line_length >= FEWEST else 0


def _two_jumps_in_one(grid: Grid) -> Iterator[Change]:
    """Twice the step in lines half as long: from line to line it is as far as before."""
    if grid.line_length % 2 or grid.line_length < 4:
        return
    count = grid.count
    new = changed(grid, step=2 * count.step, line_length=grid.line_length // 2)
    if new is not None:
        told = {"size": count.difference_text(new.count.step), "length": str(new.line_length), "kept": _across(grid)}
        yield Change("two in one", new, told, shown(new, across_the_fill(grid)))


def _across(grid: Grid) -> str:
    return grid.count.difference_text(grid.count.step * grid.line_length)
