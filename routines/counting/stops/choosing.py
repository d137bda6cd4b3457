"""Which counts to stop after: where there is something to see, to predict or to settle, well apart."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any

from ..audience import Audience
from ..checking import judge
from ..claims import Claim, DigitClaim, DigitSumClaim, LandmarksClaim, OppositesClaim, RemainderClaim
from ..errors import CountError
from ..grid import Grid
from ..patterns import find_patterns
from ..patterns.first_to_say import first_to_say
from .dying import claim_of_idea, dying_ideas
from .hard_spots import HardSpot, hard_spots

# There is nothing to look at before the third count.
FIRST = 3
# Two stops closer than this many counts, or than this part of the whole count, are one.
APART, PART = 3, 6
# So long a stretch without a stop asks for one more.
STRETCH = 11
MOST, MOST_FOR_THE_YOUNGEST = 4, 3
YOUNGEST = 1
# A landmark that is met more often is nothing special.
SELDOM = 2
COMMON = 3
# The level at which a class looks at digits. Source: Common Core State Standards 1.NBT.B.2.
DIGITS_FROM = 1
# What everybody sees from the second count on needs no stop.
PLAIN = ("step", "table")


@dataclass(frozen=True, slots=True)
class Choice:
    """Stop after the n-th count. claim: the target to see, or the idea that dies next. spot: what makes it hard."""

    after: int
    reason: str
    claim: Claim | None = None
    spot: HardSpot | None = None

    @property
    def plainness(self) -> int:
        """How little there is to predict: least at zero, then at an idea that dies, a seldom landmark or the first whole."""
        if self.spot is not None and self.spot.is_zero:
            return 0
        if self.reason == "dies":
            return 1
        if self.spot is not None:
            return 2 if self.spot.times <= SELDOM or self.spot.is_first_whole else COMMON
        return COMMON + 1


def choose(grid: Grid, wanted: Sequence[Claim], level: int = 3) -> list[Choice]:
    """Two to four stops; the last one is the end.

    The first target where it can be seen, together with something to predict if that follows at once; the best place
    to predict, if it is better than that; one more in each long stretch. A short count has its end only.
    """
    claims = wanted or _what_shows(grid, level)
    end = Choice(grid.terms, "end", claims[0] if claims else None)
    seen = [choice for i, claim in enumerate(claims) if (choice := _seen(grid, claim, at_length=i > 0)) is not None]
    predictions = _predictions(grid, level)
    chosen = [_with_something_to_predict(target, predictions, apart(grid)) for target in seen[:1]]
    # What the teacher wants seen keeps its stop; what only shows gives way to something better close by.
    better = _better([one for one in predictions if not wanted or _fits(one, chosen, grid)], chosen)
    if better is not None:
        chosen = [better, *(choice for choice in chosen if _fits(choice, [better], grid))]
    most = MOST_FOR_THE_YOUNGEST if level <= YOUNGEST else MOST
    while len(chosen) + 1 < most and (one := _in_the_longest_stretch(grid, [*chosen, end], [*predictions, *seen])):
        chosen.append(one)
    return [*sorted(chosen, key=lambda choice: choice.after), end]


def apart(grid: Grid) -> int:
    """How many counts lie between two stops at least."""
    return max(APART, grid.terms // PART)


def claim_of(given: Any, field: str) -> Claim:
    """The claim that is given as a claim, as its data, or by anything that carries one.

    Raises: CountError on the field for what is no claim; of a claim's data, on the parameter at fault.
    """
    if isinstance(given, Mapping):
        return Claim.from_dict(given)
    claim = given if isinstance(given, Claim) else getattr(given, "claim", None)
    if not isinstance(claim, Claim):
        raise CountError(field, "no-claims", name=field)
    return claim


def _what_shows(grid: Grid, level: int) -> list[Claim]:
    found = first_to_say(find_patterns(grid, audience=Audience(level)), grid, level)
    return [one.claim for one in found if one.claim.family not in PLAIN][:2]


def seen_at(claim: Claim, grid: Grid) -> int | None:
    """After how many counts a claim, or its like in the lines begun by then, is true and can be seen."""
    like = _less_particular(claim)
    for n in range(2, grid.terms + 1):
        try:
            _, judged = judge(like, grid.cut(n))
        except CountError:
            continue
        if judged.true and judged.seen:
            return n
    return None


def _less_particular(claim: Claim) -> Claim:
    """The claim without what depends on how many lines or pairs are on the board."""
    match claim:
        case LandmarksClaim():
            return replace(claim, lie=None, lines=None, first=None)
        case OppositesClaim():
            return OppositesClaim()
        case DigitClaim() | DigitSumClaim() | RemainderClaim() if claim.blocks is not None:
            return replace(claim, blocks=None, lines=None, length=claim.block_length)
    return claim


def _seen(grid: Grid, claim: Claim, *, at_length: bool) -> Choice | None:
    """Where a target can be seen, but not before the first line is full; at_length: with one landmark more."""
    n = seen_at(claim, grid)
    if n is None:
        return None
    last = grid.terms - APART
    after = max(n, FIRST, min(grid.line_length - grid.lead, last))
    every = claim.every or 0 if isinstance(claim, LandmarksClaim) else 0
    if at_length and after + every <= last:
        after += every
    return Choice(after, "target", claim) if after <= last else None


def _predictions(grid: Grid, level: int) -> list[Choice]:
    """Places to predict, best first: just before an idea dies, then before the landmarks met least often.

    Nobody adds digits who has not met them.
    """
    dying = [
        Choice(idea.dies_at - 1, "dies", claim_of_idea(idea))
        for idea in dying_ideas(grid)
        if idea.dies_at and (level >= DIGITS_FROM or not isinstance(idea.claim, DigitSumClaim))
    ]
    hard = [Choice(spot.n - 1, "hard", None, spot) for spot in hard_spots(grid)]
    return [
        one for one in (*dying, *hard) if FIRST <= one.after <= grid.terms - APART or _is_zero_near_the_end(one, grid)
    ]


def _is_zero_near_the_end(choice: Choice, grid: Grid) -> bool:
    """Zero is stopped at however soon the count ends behind it: what lies beyond is another kind of number."""
    return choice.spot is not None and choice.spot.is_zero and FIRST <= choice.after < grid.terms


def _with_something_to_predict(target: Choice, predictions: list[Choice], within: int) -> Choice:
    """The target's stop, moved on to the best place to predict that follows before another stop could."""
    ranked = sorted(predictions, key=lambda one: one.plainness)
    for one in ranked:
        # A common landmark must not push out the best place of all.
        in_the_way = one.plainness == COMMON and abs(one.after - ranked[0].after) < within and one != ranked[0]
        if 0 <= one.after - target.after < within and not in_the_way:
            return Choice(one.after, one.reason, one.claim or target.claim, one.spot)
    return target


def _better(predictions: list[Choice], chosen: list[Choice]) -> Choice | None:
    """The best place to predict, if it is better than the stop chosen; one that comes after it before one ahead."""
    best = min(
        predictions, key=lambda one: (one.plainness, any(one.after < stop.after for stop in chosen)), default=None
    )
    return best if best and all(best.plainness < stop.plainness for stop in chosen) else None


def _fits(choice: Choice, stops: list[Choice], grid: Grid) -> bool:
    return all(abs(choice.after - stop.after) >= apart(grid) for stop in stops)


def _in_the_longest_stretch(grid: Grid, stops: list[Choice], candidates: list[Choice]) -> Choice | None:
    """One more stop in the longest stretch without one, as near to its middle as can be."""
    for first, last in _long_stretches(stops):
        inside = [one for one in candidates if first < one.after < last and _fits(one, stops, grid)]
        if inside:
            return min(inside, key=lambda one: (one.plainness == COMMON, abs(2 * one.after - first - last)))
    return None


def _long_stretches(stops: list[Choice]) -> Iterator[tuple[int, int]]:
    places = sorted({0, *(stop.after for stop in stops)})
    long = (one for one in pairwise(places) if one[1] - one[0] >= STRETCH)
    yield from sorted(long, key=lambda one: one[0] - one[1])
