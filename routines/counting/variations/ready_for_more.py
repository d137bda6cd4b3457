"""Next counts for a class that is ready for more: past a larger landmark, a step that is less friendly, a fold that
lets the pattern slide."""

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import islice, pairwise
from math import gcd

from ..claims import Claim, DigitClaim, LandmarksClaim
from ..count import Count
from ..grid import Fill, Grid
from ..kinds.names import Kind
from ..locate.routes import landmark_multiples
from ..outcome import Outcome
from ..patterns import digit, landmarks
from ..slips.integers import BELOW_ZERO_FROM
from ..written_units import written_units
from .as_planned import YOUNGEST
from .changes import Change, across_the_fill, back_again, changed, shown, small_unit
from .not_yet import IN_LINES
from .reach import largest_measured, lowest_allowed, within_reach

# The largest landmark among whole numbers that a level counts past; see `reach`.
LARGEST = (100, 100, 1000, 10_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000, 1_000_000)
TEN = 10
# Steps below this are made ten times as long; a step just short of a round one is for grade 3 and up. Common practice.
SMALL, NEARLY_FROM = 6, 3
# Source: Common Core State Standards 5.NBT.A.3 (decimals to thousandths), 4.NF.C.6 (to hundredths).
THOUSANDTHS_FROM = 5
AMOUNTS_TRIED = 12
UNFRIENDLY = {Kind.MONEY: (35, 15, 45, 65), Kind.CLOCK: (25, 35, 40, 55), Kind.ELAPSED: (25, 35, 40, 55)}
BEFORE = 4
# How many numbers K counts back at first. Common practice, no source.
BACK_IN_K = 10
# A landmark of a measure is looked for so many times as far as the board went. Common practice, no source.
TIMES_AS_FAR = 2
# What the first grades count by next: tens, of coins also quarters. Common practice, no source.
BY_TENS: dict[Kind, tuple[int, ...]] = {Kind.WHOLE: (10,), Kind.MONEY: (10, 25)}
HALF_DAY = 720
BELOW_ZERO = (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION)


def changes(grid: Grid, level: int) -> Iterator[Change]:
    yield from _past_a_landmark(grid, level)
    if (level <= YOUNGEST and grid.count.kind in BY_TENS) or (
        grid.count.kind == Kind.WHOLE and abs(grid.count.step) == 1
    ):
        yield from _by_tens(grid, level)
    else:
        yield from _harder_step(grid, level)
    if level == 0 and grid.count.step > 0:
        yield from back_again(grid, min(grid.terms, BACK_IN_K))
    yield from _one_more_in_a_line(grid)


def _past_a_landmark(grid: Grid, level: int) -> Iterator[Change]:
    """The same count further on (or begun so that it goes below zero), a few jumps before a landmark."""
    count = grid.count
    landmark = _next_landmark(grid, level)
    # At least one count past the landmark must be in view.
    before = min(BEFORE, count.terms - 2)
    if landmark is None or before < 1:
        return
    step = count.step
    jumps = -((count.start - landmark) // step) if step > 0 else (count.start - landmark) // -step
    first = count.start + (jumps - before) * step
    new = changed(grid, start=first)
    if new is None or not _looks_change(new.count, landmark):
        return
    told = {"start": new.count.text(1), "landmark": count.text_of(landmark), "size": count.difference_text(step)}
    name = "landmark" if (first - landmark) % step else "landmark reached"
    yield Change(name, new, told, shown(new, across_the_fill(grid)))


def _looks_change(count: Count, landmark: Fraction) -> bool:
    """Whether the jumps to or over a landmark change what is written: a new digit, another part, a sign, half a day."""
    if count.wrap:
        return True
    values = [(count.value(n), _look(count, n)) for n in range(1, count.terms + 1)]
    return any(
        look != other and min(value, after) <= landmark <= max(value, after)
        for (value, look), (after, other) in pairwise(values)
    )


def _look(count: Count, n: int) -> tuple[tuple[str, str | None, int], ...]:
    """The pieces of a count with how long each is written; the parts of a fraction tell no landmark."""
    pieces = () if count.kind == Kind.FRACTION else count.pieces(n)
    return (("sign", None, count.value(n) < 0), *((piece.kind, piece.part, len(piece.text)) for piece in pieces))


def _next_landmark(grid: Grid, level: int) -> Fraction | None:
    """A round number ten times as large, beyond every count in view; zero for older classes that count back."""
    count = grid.count
    values = (count.start, count.value(grid.terms))
    if count.kind in BELOW_ZERO and count.step < 0 and level >= BELOW_ZERO_FROM and min(values) >= 0:
        return Fraction(0)
    if count.wrap:
        passed = (max(values) // HALF_DAY) != (min(values) // HALF_DAY)
        return None if passed else (max(values) // HALF_DAY + 1) * Fraction(HALF_DAY)
    if min(values) < 0:
        return -_ten_times_as_large(count.form.round_number(), -min(values))
    landmark = _ten_times_as_large(count.form.round_number(), max(values))
    if written_units(count) and landmark > TIMES_AS_FAR * max(values):
        return None  # 10,000 g is no more of a landmark than 5 kg, and out of the sight of who weighed 4
    counts_alike = count.kind == Kind.WHOLE or (count.kind == Kind.MONEY and level <= YOUNGEST)
    largest = Fraction(LARGEST[level]) if counts_alike else largest_measured(count)
    return landmark if largest is None or landmark <= largest else None


def _ten_times_as_large(landmark: Fraction, than: Fraction) -> Fraction:
    """The first of 10, 100, 1000 ... times a landmark that lies beyond a value."""
    landmark *= 10
    while landmark <= than:
        landmark *= 10
    return landmark


def _by_tens(grid: Grid, level: int) -> Iterator[Change]:
    """Jumps of ten, which do at once what several jumps did; in K from a ten on, as far as a hundred."""
    count = grid.count
    size = abs(count.step)
    for ten in BY_TENS[count.kind]:
        if size >= ten or ten % size:
            continue
        step = Fraction(ten if count.step > 0 else -ten)
        from_a_ten = level == 0 and ten == TEN
        start = None if not from_a_ten else step if step > 0 else Fraction(LARGEST[0])
        new = changed(grid, start=start, step=step, terms=LARGEST[0] // TEN if from_a_ten else None)
        if new is not None:
            told = {
                "size": count.difference_text(step),
                "old": count.difference_text(size),
                "many": str(ten // size),
                "start": new.count.text(1),
            }
            yield Change("by tens from" if from_a_ten else "by tens", new, told, shown(new, across_the_fill(new)))


def _harder_step(grid: Grid, level: int) -> Iterator[Change]:
    count = grid.count
    found: list[Change] = []
    for name, size, round_by in _harder(count, level):
        # Patterns come back in another place only where the start is so many times as large too.
        start = {"ten times": count.start * TEN, "finer": count.start / TEN}.get(name)
        step = size if count.step > 0 else -size
        new = changed(grid, start=start, step=step, style=replace(count.style, places=None))
        # What is said of a step is said of the counts that the class will come to.
        reached = new and within_reach(
            Change(name, new), grid, level, lowest_allowed(grid, Outcome.READY_FOR_MORE, level)
        )
        if not reached:
            continue
        new = reached.grid
        told = reached.written | {
            "size": new.count.difference_text(size),
            "round": new.count.difference_text(round_by),
            "old": count.difference_text(count.step),
            "start": new.count.text(1),
        }
        if start is not None and min(new.count.value(1), new.count.value(new.terms)) < 0:
            name += " from zero"
        if name == "unfriendly":
            name = _how_it_meets(new, count, round_by, told)
        if name:
            found.append(Change(name, new, told, shown(new, across_the_fill(new))))
    yield from sorted(found, key=_worth)[:1]


def _worth(change: Change) -> int:
    """What meets a round number early and again comes before what never does, and that before what does so only once."""
    if change.name == "unfriendly landing":
        again = _landings(change.grid, change.grid.count.form.round_number())[0]
        return 0 if 2 * again <= change.grid.terms else 1
    return {"unfriendly": 1, "unfriendly seldom": 2, "unfriendly once": 3}.get(change.name, 0)


def _how_it_meets(grid: Grid, old: Count, round_by: Fraction, told: dict[str, str]) -> str:
    """How a harder step meets what is round: it is crossed only; it is met and crossed; or it comes back more seldom.

    Empty where the step is no harder in this. Source: proof - multiples of r come back every r / gcd(r, step) jumps.
    """
    count = grid.count
    values = [count.value(n) for n in range(1, grid.terms + 1)]
    met = any(value % round_by == 0 for value in values)
    landed = _landings(grid, round_by)
    low, high = sorted((values[0], values[-1]))
    inside = range(int(low // round_by) + 1, int(-(-high // round_by)))
    crossed = any((many * round_by - count.start) % count.step for many in inside)
    if not crossed:
        return ""
    if landed:
        return "unfriendly landing" if len(landed) > 1 else "unfriendly once"
    if not met and round_by % old.step == 0:
        return "unfriendly"
    seldom, often = _comes_back(round_by, count.step), _comes_back(round_by, old.step)
    told |= {"every": str(seldom), "often": str(often)}
    # Some multiple is met at all, and soon enough to be looked for: gcd(r, step) is r / seldom.
    comes = count.start % (round_by / seldom) == 0 and seldom <= 2 * grid.terms
    return "unfriendly seldom" if seldom > often > 1 and comes else ""


def _landings(grid: Grid, round_by: Fraction) -> list[int]:
    """The counts in view to which a jump leads and which are multiples of what is round."""
    return [n for n in range(2, grid.terms + 1) if grid.count.value(n) % round_by == 0]


def _comes_back(round_by: Fraction, step: Fraction) -> int:
    """After how many jumps what is left past a multiple is the same again."""
    return (abs(step) / round_by).denominator


def _harder(count: Count, level: int) -> Iterator[tuple[str, Fraction, Fraction]]:
    """What may make the step harder, best first: how, the step, and what it is nearly or does not fill."""
    size, round_by = abs(count.step), count.form.round_number()
    if count.kind == Kind.WHOLE:
        if size < SMALL or (size == TEN and level < NEARLY_FROM):
            yield "ten times", TEN * size, round_by
            return
        if size % 5 == 0:
            yield "nearly round", size - 1, size
            return
        nine = Fraction(size // TEN * TEN + TEN - 1)
        # The step and ten more is proposed after a lesson as planned.
        nine += 0 if nine > size else 2 * TEN
        yield "nearly round", nine, nine + 1
    elif count.kind == Kind.DECIMAL:
        places = 2 if level < THOUSANDTHS_FROM else 3
        if all((amount / TEN * 10**places).denominator == 1 for amount in (size, count.start)):
            yield "finer", size / TEN, round_by
        nine_parts = Fraction(9, 10**places)
        if size != nine_parts:
            yield "nearly round", nine_parts, nine_parts / 9 * TEN
    elif count.kind == Kind.FRACTION:
        parts = count.scale
        tops = (top for top in range(2, parts) if gcd(top, parts) == 1 and Fraction(top, parts) != size)
        yield from (("several parts", Fraction(top, parts), round_by) for top in islice(tops, 1))
    else:
        own = UNFRIENDLY.get(count.kind)
        amounts = map(Fraction, own) if own else _unfriendly_amounts(count, round_by)
        yield from (("unfriendly", step, round_by) for step in islice(amounts, AMOUNTS_TRIED) if step != size)


def _unfriendly_amounts(count: Count, round_by: Fraction) -> Iterator[Fraction]:
    """Amounts that do not fill what is round; in whole units without a larger one, little more than the step."""
    unit, size = small_unit(count), abs(count.step)
    many = int(round_by / unit)
    parts, units = count.form.counted_parts(), written_units(count)
    if parts == 1 and units and round_by == 10 * units.small.size:
        yield from (step * unit for step in range(int(size / unit) + 1, many) if many % step)
        return
    nearly_apart = max(1, many // 20)
    yield from (step * unit for step in range(many // 2 + 1, many) if gcd(step, many) <= nearly_apart)
    yield from (step * unit for step in range(many // 2 + 1, many) if gcd(step, many) > nearly_apart and many % step)
    if parts > 1:
        yield from (share for share in (size / 2, size * 2) if share < round_by and round_by % share)


def _one_more_in_a_line(grid: Grid) -> Iterator[Change]:
    """One more in each line: what stood under each other now slides."""
    new = changed(grid, line_length=grid.line_length + 1)
    if new is None or new.terms <= new.line_length:
        return
    # A fold in which more lines up is for a class that is not there yet.
    if not lined_up(grid).keys() - lined_up(new).keys():
        return
    known = landmark_multiples(grid.count)
    slid = [
        found.claim
        for found in landmarks.find(new)
        if isinstance(found.claim, LandmarksClaim)
        and found.claim.lie in ("down-right", "down-left")
        and found.claim.multiple in known
    ]
    told = {"length": str(new.line_length), "across": grid.count.difference_text(grid.count.step * new.line_length)}
    yield Change("one more", new, told, shown(new, *slid[:1]) or shown(new, across_the_fill(new)))


def lined_up(grid: Grid) -> dict[tuple[str, Fraction | int | None], Claim]:
    """What stands in line in a fold, by what it is: the friendly multiples, and the digits that a line across keeps."""
    known = landmark_multiples(grid.count)
    across = "row" if grid.fill is Fill.DOWN else "column"
    lines: dict[tuple[str, Fraction | int | None], Claim] = {}
    for found in landmarks.find(grid):
        claim = found.claim
        if isinstance(claim, LandmarksClaim) and claim.lie in IN_LINES and claim.multiple in known:
            lines["landmarks", claim.multiple] = claim
    for found in digit.find(grid):
        claim = found.claim
        if isinstance(claim, DigitClaim) and claim.part is None and claim.along == across and claim.block_length == 1:
            lines["digit", claim.place] = claim
    return lines
