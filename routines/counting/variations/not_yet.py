"""Next counts for a class that is not there yet: the hard place again, a fold that shows it, friendlier numbers."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from ..audience import Audience
from ..claims import (
    BlockClaim,
    Claim,
    DigitRunClaim,
    LandmarksClaim,
    NeighbourClaim,
    RemainderClaim,
    StepClaim,
)
from ..count import Count
from ..grid import Grid
from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind
from ..locate.routes import landmark_multiples
from ..patterns import MODULES
from ..patterns.ranking import rank
from ..slips.checked import count_number
from ..slips.foreseeing import jumps_of, places, rules_for
from ..slips.hearings import Heard
from ..slips.known_facts import is_known_multiple, knows_multiples_of
from ..slips.slip import Slip
from ..stops.hard_spots import hard_spots, landmark_met
from .changes import Change, back_again, changed, finest, other_lengths, shown

# Counted before the hard place, and altogether at least, when it is practised; in lines no longer than this, or in the last
# length where no part of the line fits.
BEFORE, SHORT, LONGEST_LINE, SHORT_LINE = 3, 8, 6, 4
# What comes so early is met in the same count cut short.
EARLY = BEFORE + 1
SELDOM, HEAVY = 2, 3
SLIPS_PRACTISED = 2
SMALLEST_TO_SHRINK = 100
# In place of ten, past which nothing is hard, the same kind of crossing; with longer jumps it is of no such kind.
SMALL_TEN, SMALL_STEP = 30, 2
YOUNGEST = 1
FEWEST = 6
# Source: Common Core State Standards 3.OA.C.7 (the tables), 2.NBT.A.2 (by fives, tens and hundreds), 2.OA.C.3 (by twos).
TABLES_FROM, COUNTED_BEFORE_TABLES = 3, ("1", "2", "5")
# Of these and their tens and hundreds the endings come round again, so that all multiples are known. Common practice.
KNOWN_BY_THEIR_ENDINGS = ("1", "2", "5", "25")
IN_LINES = ("row", "column", "rows", "columns")


@dataclass(frozen=True, slots=True)
class SlippedAt:
    """Where a class slipped; of_writing: in how the count is written or named, not in the jump to it."""

    n: int
    of_writing: bool = False


def slipped_at(one: Any) -> SlippedAt:
    """Where a slip lies that is given as a term number, as a slip, or as what was heard. Raises: CountError on `slips`."""
    if not isinstance(one, (Slip, Heard)):
        return SlippedAt(count_number(one, "slips"))
    slip = one if isinstance(one, Slip) else getattr(one, "slip", None)
    return SlippedAt(one.n, slip is not None and slip.of_writing)


def changes(grid: Grid, slips: Sequence[SlippedAt], unseen: Sequence[Claim], audience: Audience) -> Iterator[Change]:
    """slips: where the class slipped. unseen: the patterns it did not see."""
    for slip in slips[:SLIPS_PRACTISED]:
        yield from hard_place_again(grid, slip)
    for slip in slips[:SLIPS_PRACTISED]:
        yield from _smaller_place(grid, slip)
    yield from fold_that_shows(grid, unseen)
    hardest = [] if slips else [SlippedAt(n) for n in _hardest(grid, audience) if _is_worth_practice(grid, n)]
    friendlier = list(_friendlier_start(grid, audience.level))
    hard = [change for slip in hardest for change in (*hard_place_again(grid, slip), *_smaller_place(grid, slip))]
    # Counting by ones from 1 is far from where the class was; the hard place is not.
    yield from (*hard, *friendlier) if abs(grid.count.step) == 1 else (*friendlier, *hard)
    if grid.count.step < 0:  # forwards is the easier way
        yield from back_again(grid, grid.terms)
    yield from _fewer(grid)
    if audience.level > YOUNGEST:  # jumps of ten are for a class that is ready for more
        yield from _friendlier_jump(grid)


def hard_place_again(grid: Grid, slip: SlippedAt) -> Iterator[Change]:
    """A short count in which the n-th count of this one comes early."""
    n = slip.n
    if n < 2:
        return
    count = grid.count
    first = max(1, n - (BEFORE if n > EARLY or not _passes_zero(grid, n) else BEFORE - 1))
    terms, length = _short_fold(grid)
    new = changed(grid, start=count.value(first), terms=terms, line_length=length)
    if new is not None:
        told = {"start": count.text(first), "before": count.text(n - 1), "hard": count.text(n), "terms": str(terms)}
        yield Change("hard to write" if slip.of_writing else "hard place", new, told)


def _short_fold(grid: Grid) -> tuple[int, int]:
    """How many counts are short, and in which lines: the class's own, for what lines up there is known, or even parts of them."""
    own = grid.line_length
    length = max((part for part in range(2, LONGEST_LINE + 1) if own % part == 0), default=SHORT_LINE)
    terms = -(-SHORT // length) * length
    fits = (length > 2 or length == own) and terms < max(grid.terms, SHORT + 1)
    return (terms, length) if fits else (SHORT, SHORT_LINE)


def _smaller_place(grid: Grid, slip: SlippedAt) -> Iterator[Change]:
    """The same jump at a smaller landmark: past 30 in place of 100, 100 in place of 1,000, 1,000 in place of 5,000."""
    count, n = grid.count, slip.n
    spot = next((spot for spot in hard_spots(grid) if spot.n == n), None)
    if count.kind != Kind.WHOLE or spot is None or slip.of_writing or spot.landmark < SMALLEST_TO_SHRINK:
        return
    power = 10 ** (len(str(spot.landmark)) - 1)
    smaller = Fraction(power if spot.landmark != power else max(power // 10, SMALL_TEN))
    first = max(1, n - BEFORE)
    start = count.value(first) - spot.landmark + smaller
    terms, length = _short_fold(grid)
    new = changed(grid, start=start, terms=terms, line_length=length) if start >= 0 else None
    longest = SMALL_STEP if smaller == SMALL_TEN else smaller / 2
    if new is not None and abs(count.step) <= longest:
        at = n - first
        told = {
            "start": new.count.text(1),
            "before": new.count.text(at),
            "hard": new.count.text(at + 1),
            "landmark": count.text_of(smaller),
            "larger": count.text_of(spot.landmark),
        }
        reached = new.count.value(at + 1) == smaller
        yield Change("smaller place reached" if reached else "smaller place", new, told)


def _hardest(grid: Grid, audience: Audience) -> list[int]:
    """Zero; of parts and measures the first round number that is passed; else a landmark that is passed once or twice, or
    the place of a heavy slip that is seldom met."""
    count = grid.count
    if min(count.start, count.value(grid.terms)) < 0 < max(count.start, count.value(grid.terms)):
        # Counting back is hard on leaving zero.
        return [next(n for n in range(2, grid.terms + 1) if (count.value(n) < 0) is (count.step < 0))]
    if count.wrap is None and count.kind not in (Kind.WHOLE, Kind.MONEY):
        size = count.form.round_number()
        passed = [n for n in range(2, grid.terms + 1) if landmark_met(count, n, size) is not None]
        return passed[:1] if len(passed) < grid.terms - 1 else []
    spots = hard_spots(grid)
    if spots and spots[0].times <= SELDOM:
        return [next((spot.n for spot in spots if spot.n > EARLY), spots[0].n)]
    heavy = [rule for rule in rules_for(grid, audience) if rule.weight == HEAVY]
    jumps = jumps_of(grid)
    likely = [[jump.n for jump, _ in places(rule, jumps, audience.language)] for rule in heavy]
    met = sorted((n <= EARLY, len(at), n) for at in likely for n in at)
    return [met[0][2]] if met else [spot.n for spot in spots if spot.n > EARLY][:1]


def _is_worth_practice(grid: Grid, n: int) -> bool:
    """Whether a hard place comes late enough, and no later than the table of a count that began in its table."""
    count = grid.count
    in_the_table = count.kind == Kind.WHOLE and count.start % count.step == 0 and _is_known(count, count.start)
    return (n > EARLY or _passes_zero(grid, n)) and (not in_the_table or _is_known(count, count.value(n)))


def _passes_zero(grid: Grid, n: int) -> bool:
    """Whether the jump to the n-th count leads out of or into what lies below zero."""
    return EARLY <= n <= grid.terms and (grid.count.value(n - 1) < 0) is not (grid.count.value(n) < 0)


def fold_that_shows(grid: Grid, unseen: Sequence[Claim]) -> Iterator[Change]:
    """The line length nearest to this one in which the unseen pattern, or the landmarks, line up."""
    families = {type(claim) for claim in unseen} - {StepClaim, NeighbourClaim}
    # Without a pattern that was missed, only what children go round by is worth another fold.
    known = landmark_multiples(grid.count) if families else [grid.count.form.round_number()]
    families = families or {LandmarksClaim}
    if _lined_up(grid, families, known):
        return
    folds = sorted(other_lengths(grid), key=lambda new: abs(new.line_length - grid.line_length))
    for new in folds:
        claims = _lined_up(new, families, known)
        if claims:
            best = min(claims, key=lambda claim: rank(claim, new))
            yield Change("fold", new, {"length": str(new.line_length)}, shown(new, best))
            return


def _lined_up(grid: Grid, families: set[type[Claim]], known: Sequence[Fraction]) -> list[Claim]:
    """What of these families a grid shows in its lines: landmarks among those known, blocks no longer than two."""
    found = [one.claim for family in families for one in MODULES[family].find(grid)]
    return [claim for claim in found if _is_in_lines(claim, known)]


def _is_in_lines(claim: Claim, known: Sequence[Fraction]) -> bool:
    match claim:
        case LandmarksClaim():
            return claim.lie in IN_LINES and claim.multiple in known
        case BlockClaim():
            return claim.along != "count" and (claim.block_length or 1) <= 2
        case DigitRunClaim():
            return claim.along != "count"
    return True


def _fewer(grid: Grid) -> Iterator[Change]:
    """Half of the counts, in whole lines: less to look at."""
    lines = max(2, grid.terms // grid.line_length // 2)
    if lines * grid.line_length < grid.terms:
        new = changed(grid, terms=lines * grid.line_length)
        if new is not None:
            yield Change("fewer", new, {"terms": str(new.terms), "last": new.count.text(new.terms)})


def _friendlier_jump(grid: Grid) -> Iterator[Change]:
    """Jumps that fit evenly into what is round, begun at one of them, so that all that is round is landed on.

    Only where the board comes to something round: 10560 jumps that make a mile are no help on any."""
    count, size, landmark = grid.count, abs(grid.count.step), grid.count.form.round_number()
    fits = landmark % size == 0  # what fits already is made longer, never shorter
    fitting = [one for one in _friendly_sizes(count) if landmark % one == 0 and landmark >= 2 * one]
    sizes = [one for one in fitting if one > size or (one != size and not fits)]
    if size >= landmark or not sizes:
        return
    friendly = min(sizes, key=lambda one: (abs(one - size), -one))
    first = friendly if count.start == count.step else count.start // friendly * friendly
    new = changed(grid, start=first, step=friendly if count.step > 0 else -friendly)
    if new is not None and any(
        new.count.value(n) and new.count.value(n) % landmark == 0 for n in range(1, new.terms + 1)
    ):
        told = {
            "size": count.difference_text(friendly),
            "old": count.difference_text(size),
            "many": str(landmark / friendly),
            "round": count.difference_text(landmark),
            "start": new.count.text(1),
        }
        yield Change("friendlier jump", new, told)


def _friendly_sizes(count: Count) -> tuple[Fraction, ...]:
    """What a count of this kind jumps by most easily: one part of a fraction, two in place of one; else friendly amounts."""
    if count.kind == Kind.FRACTION:
        part = Fraction(1, count.step.denominator)
        return (part,) if part != abs(count.step) else (2 * part,)
    if count.kind == Kind.WHOLE:
        return tuple(map(Fraction, (2, 5)))
    return tuple(count.form.friendly_multiples())


def _friendlier_start(grid: Grid, level: int) -> Iterator[Change]:
    """Start where every count is a known multiple of the step, or at what is round; from there, start with smaller numbers."""
    count = grid.count
    if not _multiples_are_known(count, level):
        yield from _round_start(grid, level)
        return
    size = abs(count.step)
    start = (count.start / size + (1 if count.start % size * 2 >= size else 0)) // 1 * size
    if start == count.start:
        yield from _smaller_numbers(grid, level)
        return
    for first in dict.fromkeys((start, size if count.step > 0 else start)):
        new = changed(grid, start=first, terms=_known_terms(grid, first))
        if new is not None and _are_known(new) and _has_other_numbers(new.count, count):
            claim = RemainderClaim(size, "count", ((Fraction(0),),))
            # Every count is a multiple of what all are made of, wherever it starts.
            says_something = size != finest(count)
            told = {"start": new.count.text(1), "size": count.difference_text(count.step)}
            yield Change("multiples", new, told, shown(new, claim) if says_something else ())
            return


def _round_start(grid: Grid, level: int) -> Iterator[Change]:
    """Start at what is round; a class that has not met the table of the step starts with smaller numbers."""
    count = grid.count
    size = count.form.round_number()
    if count.kind == Kind.WHOLE and level < TABLES_FROM and abs(count.step) < size:
        if count.start > count.step > 0:
            yield from _with_smaller_numbers(grid, count.step, grid.terms)
        return
    new = changed(grid, start=(count.start / size + (1 if count.start % size * 2 >= size else 0)) // 1 * size)
    if new is not None and _has_other_numbers(new.count, count):
        yield Change("round start", new, {"start": new.count.text(1), "size": count.difference_text(count.step)})


def _smaller_numbers(grid: Grid, level: int) -> Iterator[Change]:
    """The first jumps of all, and back from there, as far as the numbers are known."""
    count = grid.count
    size = abs(count.step)
    counted_long_ago = count.kind == Kind.WHOLE and size == 1 and level > YOUNGEST
    if min(count.start, count.value(grid.terms)) < 0 or counted_long_ago:
        return
    terms = _known_terms(grid, size) or 0
    start = size if count.step > 0 else size * terms
    if terms and start < count.start:
        yield from _with_smaller_numbers(grid, start, terms)


def _with_smaller_numbers(grid: Grid, start: Fraction, terms: int) -> Iterator[Change]:
    new = changed(grid, start=start, terms=terms)
    if new is not None and _has_other_numbers(new.count, grid.count):
        told = {"start": new.count.text(1), "size": new.count.difference_text(new.count.step)}
        yield Change("first jumps", new, told)


def _known_terms(grid: Grid, first: Fraction) -> int | None:
    """How many counts from here are known multiples: all, or whole lines; None for too few."""
    count = grid.count
    step = count.step if first != abs(count.step) else abs(count.step)
    known = 0
    while known < grid.terms and _is_known(count, first + known * step):
        known += 1
    if known < grid.terms:
        known -= known % grid.line_length
    return known if known >= min(grid.terms, max(FEWEST, 2 * grid.line_length)) else None


def _are_known(new: Grid) -> bool:
    return all(_is_known(new.count, new.count.value(n)) for n in range(1, new.terms + 1))


def _is_known(count: Count, value: Fraction) -> bool:
    """Whether a value is one of the step's multiples that are known by heart."""
    if count.kind not in (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION):
        return value % count.step == 0
    parts = _parts(count)
    if _digits(abs(count.step) * parts) in KNOWN_BY_THEIR_ENDINGS:
        return True
    # By ones everything is known that is counted at all.
    return abs(count.step) == 1 or is_known_multiple(abs(value) * parts, abs(count.step) * parts)


def _digits(size: Fraction) -> str:
    """The digits of a size without the zeros at its end."""
    return str(size).rstrip("0")


def _parts(count: Count) -> int:
    places = count.form.places_shown if isinstance(count.form, DecimalNumber) else None
    return count.scale if places is None else 10**places


def _has_other_numbers(new: Count, old: Count) -> bool:
    """Whether fewer than half of the numbers are those of before: else nothing has become easier."""
    same = {old.value(n) for n in range(1, old.terms + 1)} & {new.value(n) for n in range(1, new.terms + 1)}
    return 2 * len(same) < new.terms


def _multiples_are_known(count: Count, level: int) -> bool:
    """Whether a class knows the multiples of the step by heart: the tables, the tens, what fills a dollar or a foot."""
    size = abs(count.step)
    if count.kind in (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION):
        many = size * _parts(count)
        counted = level >= TABLES_FROM or _digits(many) in COUNTED_BEFORE_TABLES
        return knows_multiples_of(many) and counted
    return count.wrap is None and count.form.round_number() % size == 0
