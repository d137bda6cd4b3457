"""What a grid is good for with a class: an idea to keep, one to lose, a crossing to stop at, a number to ask about."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from operator import itemgetter

from ..audience import Audience
from ..believed import worth_believing
from ..claims import (
    Claim,
    DigitClaim,
    HowManyClaim,
    LandmarksClaim,
    NeighbourClaim,
    PlaceClaim,
    RemainderClaim,
    TableClaim,
)
from ..count import Count
from ..ended import ended_runs
from ..grid import Fill, Grid
from ..kinds.names import Kind
from ..patterns import find_patterns
from ..patterns.first_to_say import first_to_say
from ..patterns.friendly import AS_MET, is_read_by, never_hidden
from ..patterns.ranking import COUNTED_BY_THE_YOUNGEST, FIRST_SIX, YOUNG, YOUNGEST
from ..probes import Probe, probes
from ..results import Pattern
from ..stops.hard_spots import WARM_UP, landmark_met
from .sorts import Sort

# How many points each thing adds: how soon a class of the level sees it, and how much there is to say of it. Common
# practice, no source; tests hold what comes before what, not the points.
IN_ONE_LINE, DOWN_A_DIAGONAL, WHOLE_LINES = 12, 10, 9
NEAR_MISSES = {"ends alike": 6, "alike": 6, "every multiple": 5, "multiple": 5, "odd": 4, "even": 4, "every": 3}
A_NUMBER_THAT_COMES, A_PLAIN_START = 2, 4
WAYS_TO_SEE_IT = 3
EASILY_LISTED = 6
EASY = ("1", "2", "5", "25")
# A step that is hard to count by is counted so many jumps from zero at most, if there is another count.
MANY_JUMPS, FAR_OFF = 30, 6
# Tens, hundreds and thousands, and what is counted by before the tables are learned.
FRIENDLIEST = AS_MET[:8]
LINES_OF_THE_YOUNGEST = (5, 10)
SELDOM, OFTEN = 2, 4
# What is foreseen past the end of the view is so near: within half the counts again (EXACT 29).
NEAR_THE_END = 2


@dataclass(frozen=True, slots=True)
class Crossing:
    """The n-th count reaches or passes a landmark, counting back it leaves it behind; past the end, where n is.

    times: how often a landmark of this sort is met. Units: landmark is in the base unit.
    """

    n: int
    landmark: Fraction
    times: int


@dataclass(frozen=True, slots=True)
class Goodness:
    """What to do with a grid in a class.

    lasting: what always holds. passing: what a class believes until it ends, as it is seen among the first `passing_upto`
    counts; None where there is none worth believing. crossing: the landmark to stop before; None where none is near.
    ask: a number that looks as if it came, or, where nothing else would, one that does. points: how good they are together.
    """

    lasting: Pattern
    passing: Pattern | None
    passing_upto: int
    crossing: Crossing | None
    ask: Probe
    points: int


def goodness_of(grid: Grid, sort: Sort, level: int) -> tuple[Goodness, ...]:
    """What a grid is good for with a class of this level, in up to three ways, each with another idea that lasts.

    The idea is one of the first six to say of the grid, as the plan's page and the board put them; () where none of these
    lasts and is worth seeing, or where there is no number to ask about.
    """
    ask = _to_ask(grid, sort)
    found = first_to_say(find_patterns(grid, audience=Audience(level)), grid, level)
    kept = [
        (points - 3 * _shows_nothing(one, grid), one)
        for one in found[:FIRST_SIX]
        if one.holds == "always" and (points := _kept_points(one.claim, grid, level))
    ]
    if ask is None or not kept:
        return ()
    crossing, passing = crossing_of(grid, sort), _passing(grid, found, level)
    others = _crossing_points(crossing, grid) + _asking_points(ask, grid) - _unusual(grid, sort) - sort.later
    others += 2 * (level <= YOUNGEST and grid.line_length in LINES_OF_THE_YOUNGEST)
    others -= FAR_OFF * _starts_far_off(grid)
    others += 5 * (grid.terms % grid.line_length == 0) + A_PLAIN_START * _starts_plainly(grid.count)
    pattern, upto, more = passing or (None, grid.terms, 0)
    best = sorted(kept, key=itemgetter(0), reverse=True)[:WAYS_TO_SEE_IT]
    return tuple(Goodness(lasting, pattern, upto, crossing, ask, points + more + others) for points, lasting in best)


def _shows_nothing(pattern: Pattern, grid: Grid) -> bool:
    """Whether there is no place in the grid to point at: it is so of every count alike."""
    return len(pattern.groups) == 1 and len(pattern.cells) == grid.terms


def _starts_plainly(count: Count) -> bool:
    """Whether a count by parts starts where a class meets it: at none, at one step, or at a whole (3.NF.A.2, 4.NF.B.4)."""
    return count.kind == Kind.FRACTION and (count.start == count.step or count.start.denominator == 1)


def _starts_far_off(grid: Grid) -> bool:
    """Whether a step that is hard to count by is counted far from zero, where long numbers hide what it does."""
    count = grid.count
    if count.kind not in (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION):
        return False
    least = min(abs(count.value(1)), abs(count.value(grid.terms)))
    return least > MANY_JUMPS * abs(count.step) and not _is_counted_by_with_ease(abs(count.step))


def _is_counted_by_with_ease(step: Fraction) -> bool:
    """Whether it is one, two, five or twenty-five of a place, as 1, 20, 500 and 0.25 are."""
    return str(int(1000 * step)).rstrip("0") in EASY


def _unusual(grid: Grid, sort: Sort) -> int:
    """How far down the step stands among those that a class of the level counts by."""
    steps = [step * sort.size for step in sort.steps]
    size = abs(grid.count.step)
    return min(steps.index(size) if size in steps else len(steps), 8) // 2


def _kept_points(claim: Claim, grid: Grid, level: int) -> int:
    """How much there is in an idea that always holds; 0 for the step itself, and for what says nothing."""
    across_fill = "row" if grid.fill is Fill.DOWN else "column"
    match claim:
        case LandmarksClaim(multiple=Fraction() as multiple, lie=lie) if lie != "scattered":
            return _landmark_points(multiple, str(lie), claim.every == grid.line_length, grid, level)
        case DigitClaim(along=along):
            length = claim.block_length or 0
            if along == across_fill:
                return {1: 9, 2: 3 if level <= YOUNGEST else 7}.get(length, 0)
            return 4 if along == "count" and length == 1 else 5 if along == "count" and length <= 5 else 0
        case RemainderClaim(modulus=modulus, along=along):
            if modulus != never_hidden(grid.count) or (modulus == 1 and claim.block_length == 1 and along == "count"):
                return 0
            stays = claim.block_length == 1 and along == across_fill
            plain = level > YOUNGEST and grid.line_length <= EASILY_LISTED
            return (8 if plain else 4) if stays else 3 if along == "count" else 0
        case HowManyClaim(block=block):
            if grid.count.kind == Kind.WHOLE and abs(grid.count.step) == 1:
                return 0  # a ten is ten ones in every count
            return 6 if is_read_by(claim.multiple, grid.count) and block and max(block) > 1 and len(block) <= 3 else 0
        case TableClaim():
            return 6 if level >= YOUNG else 0
        case NeighbourClaim(direction=direction):
            return 0 if direction not in ("down", "right") else 6 if level <= YOUNGEST else 5 if level <= YOUNG else 3
    return 0


def _landmark_points(multiple: Fraction, lie: str, fills: bool, grid: Grid, level: int) -> int:
    """Where the landmarks fill their line, and nothing else stands in it, a class reads them off."""
    unit = is_read_by(multiple, grid.count)
    if grid.count.kind == Kind.WHOLE and level <= YOUNGEST and multiple not in COUNTED_BY_THE_YOUNGEST:
        return 0
    less = 0 if unit else 5 if multiple in FRIENDLIEST or multiple == abs(grid.count.step) else 7
    if lie in ("row", "column"):
        return (IN_ONE_LINE if fills else IN_ONE_LINE - 4) - less
    return (WHOLE_LINES if lie in ("rows", "columns") else DOWN_A_DIAGONAL) - less


def _passing(grid: Grid, found: list[Pattern], level: int) -> tuple[Pattern, int, int] | None:
    """What a class believes until it ends, in how much of the view it can be seen, and how good that is."""
    shown = [(idea.pattern, idea.lasts) for idea in ended_runs(grid)] + [(one, grid.terms) for one in found]
    believed = ((one, upto, _passing_points(one, grid)) for one, upto in shown if worth_believing(one, grid, level))
    return max(believed, key=itemgetter(2), default=None)


def _passing_points(passing: Pattern, grid: Grid) -> int:
    """Runs before what stays before landmarks; coarser places; what lasts until the class is at home in it."""
    claim, end = passing.claim, passing.breaks_at or 0
    points = 4 if isinstance(claim, LandmarksClaim) else 6
    if isinstance(claim, PlaceClaim):
        last = -grid.count.form.places_written(grid.count.start)
        points += 2 if claim.part or (claim.place or 0) > last else 0
    return points + (2 if 2 * end > grid.terms else 0)


def crossing_of(grid: Grid, sort: Sort) -> Crossing | None:
    """The landmark to stop before: zero where both sides are counted; else the one met least often, once the class has
    found its step; else one that is met soon after the end; and where there is none, one that is met again and again.
    """
    view = range(2, grid.terms + 1)
    if sort.goes_below_zero and (zero := next((n for n in view if _passes_zero(grid.count, n)), None)):
        return Crossing(zero, Fraction(0), 1)
    marks = [mark * sort.size for mark in sort.crossed]
    met = {mark: found for mark in marks if (found := _met(grid, sort, view, mark))}
    again = [spots for spots in met.values() if 2 * len(spots) <= grid.terms]
    # Whole numbers come to a ten too often to stop there each time; with others it is the whole that they are counted for.
    tens = grid.count.kind == Kind.WHOLE
    seldom = [spots for spots in again if not tens or (len(spots) <= OFTEN and 3 * len(spots) <= grid.terms)]
    if not seldom:
        ahead = range(grid.terms + 1, grid.terms + grid.terms // NEAR_THE_END + 1)
        past = (_met(grid, sort, ahead, mark) for mark in marks if mark not in met)
        if soon := next((spots for spots in past if spots), None):
            return soon[0]
    spots = min(seldom or again, key=lambda spots: (spots[-1].n <= WARM_UP, len(spots)), default=[])
    return next((spot for spot in spots if spot.n > WARM_UP), spots[0] if spots else None)


def _passes_zero(count: Count, n: int) -> bool:
    before, here = count.scaled(n - 1), count.scaled(n)
    return before < 0 <= here or before > 0 >= here


def _met(grid: Grid, sort: Sort, terms: range, multiple: Fraction) -> list[Crossing]:
    """Where the count comes to a multiple, or over it, or leaves one counting back, among the numbers the class knows."""
    count = grid.count
    known = (n for n in terms if sort.goes_below_zero or count.scaled(n) >= 0)
    found = [(n, landmark) for n in known if (landmark := landmark_met(count, n, multiple)) is not None]
    return [Crossing(n, landmark, len(found)) for n, landmark in found]


def _crossing_points(crossing: Crossing | None, grid: Grid) -> int:
    if crossing is None or crossing.n <= WARM_UP:
        return 0
    by_parts = grid.count.kind == Kind.FRACTION  # what a class counts by parts for is the whole, each time
    points = 5 if crossing.times <= SELDOM or by_parts else 3 if crossing.times <= OFTEN else 1
    return points + (2 if grid.terms < 4 * crossing.n < 4 * grid.terms else 0)


def _to_ask(grid: Grid, sort: Sort) -> Probe | None:
    """The number that looks most as if it came, among those this class knows; else one that comes, else one behind."""
    size, count = sort.size, grid.count
    known = [one for one in probes(grid) if count.wrap or sort.least * size <= one.value <= sort.largest * size]
    return max(
        (one for one in known if _asking_points(one, grid)), key=lambda one: _asking_points(one, grid), default=None
    )


def _asking_points(probe: Probe, grid: Grid) -> int:
    """A multiple is a near miss where the class reads by it: 7:00, $8.00, not 102 for its threes."""
    if probe.appears:
        return A_NUMBER_THAT_COMES
    if probe.sort == "multiple" and not is_read_by(probe.multiple, grid.count):
        return 0
    by_tens = grid.count.kind == Kind.WHOLE and grid.count.step % 10 == 0
    return 1 if by_tens and probe.sort in ("odd", "even", "every") else NEAR_MISSES.get(probe.sort, 1)
