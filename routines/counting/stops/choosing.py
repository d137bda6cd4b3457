"""Which counts to stop after: three or so, where there is something to see, to predict or to settle."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from ..checking import judge
from ..claims import Claim
from ..errors import CountError
from ..grid import Grid
from ..patterns import facts
from .hard_spots import HardSpot, hard_spots

# Two stops closer than this are one.
APART = 3
# An idea that lives for fewer counts than this is no idea yet.
ALIVE = 3
# What everybody sees from the second count on needs no stop.
PLAIN = ("step", "table")
RUNS = ("digit-run", "digit-sum")
EARLY_LINES = 6


@dataclass(frozen=True, slots=True)
class Choice:
    """Stop after the n-th count. claim: the target to see, or the idea that dies next. spot: what makes it hard."""

    after: int
    reason: str
    claim: Claim | None = None
    spot: HardSpot | None = None


def choose(grid: Grid, targets: Iterable[Any]) -> list[Choice]:
    """The end, where the first target can be seen, and one place to predict: where an idea dies, or a hard spot.

    A place to predict at most two counts after the target can be seen takes the place of both.
    """
    claims = [claim for target in targets if (claim := claim_of(target)) is not None] or _what_shows(grid)
    end = Choice(grid.terms, "end", claims[0] if claims else None)
    seen = _first_seen(grid, claims)
    predicted = _place_to_predict(grid, seen.after if seen else 1)
    if seen and predicted and 0 <= predicted.after - seen.after < APART:
        chosen = [Choice(predicted.after, predicted.reason, predicted.claim or seen.claim, predicted.spot)]
    else:
        chosen = [choice for choice in (seen, predicted) if choice]
    kept: list[Choice] = []
    for choice in sorted(chosen, key=lambda choice: choice.after):
        if choice.after < grid.terms and (not kept or choice.after - kept[-1].after >= APART):
            kept.append(choice)
    return [*kept, end]


def claim_of(target: Any) -> Claim | None:
    """The claim of a target, given as a claim, its data, or anything that carries one."""
    if isinstance(target, Claim):
        return target
    if isinstance(target, Mapping):
        return Claim.from_dict(target)
    return claim_of(target.claim) if hasattr(target, "claim") else None


def _what_shows(grid: Grid) -> list[Claim]:
    return [found.claim for found in facts(grid) if found.claim.family not in PLAIN][:2]


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
    changes: dict[str, Any] = {}
    if claim.get("blocks") is not None:
        changes = {"blocks": None, "lines": None, "length": claim.length}
    elif claim.family == "landmarks":
        changes = {"lie": None, "lines": None, "first": None}
    elif claim.family == "opposites":
        changes = {"pairs": None}
    return claim.with_(**changes)


def _first_seen(grid: Grid, claims: list[Claim]) -> Choice | None:
    for claim in claims:
        n = seen_at(claim, grid)
        if n is not None and n < grid.terms:
            return Choice(n, "target", claim)
    return None


def _place_to_predict(grid: Grid, from_n: int) -> Choice | None:
    """Where a run of digits dies; else the hardest spot that comes once or twice; else the next hard spot."""
    last = grid.terms - APART
    for claim, dies_at in _dying(grid):
        if dies_at - 1 <= last:
            return Choice(dies_at - 1, "dies", claim)
    spots = [spot for spot in hard_spots(grid) if spot.n - 1 <= last]
    rare = [spot for spot in spots if spot.times <= 2]
    later = [spot for spot in rare or spots if spot.n > from_n]
    spot = next(iter(later or rare or spots), None)
    return Choice(spot.n - 1, "hard", None, spot) if spot else None


def _dying(grid: Grid) -> Iterator[tuple[Claim, int]]:
    """Runs of digits and digit sums that can be seen at the end of an early line and die in view, most noticeable first."""
    first = max(grid.line_length - grid.lead, ALIVE + 1)
    for n in range(first, grid.terms, grid.line_length)[:EARLY_LINES]:
        for found in facts(grid.cut(n)):
            dies = found.breaks_at
            if found.claim.family in RUNS and dies is not None and ALIVE + 1 < dies <= grid.terms:
                yield found.claim, dies
