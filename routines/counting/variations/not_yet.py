"""Next counts for a class that is not there yet: the hard place again, a fold that shows it, friendlier numbers."""

from collections.abc import Iterator, Sequence

from ..audience import Audience
from ..claims import Claim
from ..grid import Grid
from ..locate.routes import landmark_multiples
from ..patterns import FAMILIES
from ..patterns.ranking import rank
from ..round_number import round_number
from ..slips.foreseeing import places, rules_for
from ..stops.hard_spots import hard_spots
from .changes import Change, changed, other_lengths, shown

# Counted before the hard place, and altogether, when it is practised.
BEFORE, SHORT, SHORT_LINE = 3, 8, 4
SELDOM = 2
IN_LINES = ("row", "column", "rows", "columns")


def changes(grid: Grid, slips: Sequence[int], unseen: Sequence[Claim], audience: Audience) -> Iterator[Change]:
    """slips: the counts where the class slipped. unseen: the patterns it did not see."""
    for n in slips[:1]:
        yield from hard_place_again(grid, n)
    yield from fold_that_shows(grid, unseen)
    yield from _friendlier_start(grid)
    if not slips:
        for n in _hardest(grid, audience):
            yield from hard_place_again(grid, n)
    yield from _fewer(grid)


def hard_place_again(grid: Grid, n: int) -> Iterator[Change]:
    """A short count in which the n-th count of this one comes early."""
    if n < 2:
        return
    count = grid.count
    first = max(1, n - BEFORE)
    new = changed(grid, start=count.value(first), terms=SHORT, line_length=SHORT_LINE)
    if new is not None:
        told = {"start": count.text(first), "before": count.text(n - 1), "hard": count.text(n), "terms": str(SHORT)}
        yield Change("hard place", new, told)


def _hardest(grid: Grid, audience: Audience) -> list[int]:
    """A landmark that is passed once or twice; else the place of a heavy slip that is seldom met."""
    spots = hard_spots(grid)
    if spots and spots[0].times <= SELDOM:
        return [spots[0].n]
    likely = [[jump.n for jump, _ in places(rule, grid, audience.language)] for rule in rules_for(grid, audience)]
    met = sorted((n <= BEFORE, len(at), n) for at in likely for n in at)
    return [met[0][2]] if met else [spot.n for spot in spots[:1]]


def fold_that_shows(grid: Grid, unseen: Sequence[Claim]) -> Iterator[Change]:
    """The line length nearest to this one in which the unseen pattern, or the landmarks, line up."""
    families = {claim.family for claim in unseen} - {"step", "neighbour"} or {"landmarks"}
    if _lined_up(grid, families):
        return
    folds = sorted(other_lengths(grid), key=lambda new: abs(new.line_length - grid.line_length))
    for new in folds:
        claims = _lined_up(new, families)
        if claims:
            best = min(claims, key=lambda claim: rank(claim, new))
            yield Change("fold", new, {"length": str(new.line_length)}, shown(new, best))
            return


def _lined_up(grid: Grid, families: set[str]) -> list[Claim]:
    """What of these families a grid shows in its lines: landmarks children know, blocks no longer than two."""
    known = landmark_multiples(grid.count)
    found = [one.claim for family in families for one in FAMILIES[family].find(grid)]
    return [
        claim
        for claim in found
        if (claim.get("lie") in IN_LINES and claim.get("multiple") in known if claim.family == "landmarks" else True)
        and (claim.length or 1) <= 2
        and claim.get("along") != "count"
    ]


def _fewer(grid: Grid) -> Iterator[Change]:
    """Half of the counts, in whole lines: less to look at."""
    lines = max(2, grid.terms // grid.line_length // 2)
    if lines * grid.line_length < grid.terms:
        new = changed(grid, terms=lines * grid.line_length)
        if new is not None:
            yield Change("fewer", new, {"terms": str(new.terms), "last": new.count.text(new.terms)})


def _friendlier_start(grid: Grid) -> Iterator[Change]:
    """Start at a multiple of the step, or at a full hour; from a multiple, start at the first jumps of all."""
    count = grid.count
    size = round_number(count) if count.wrap else abs(count.step)
    start = (count.start / size + (1 if count.start % size * 2 >= size else 0)) // 1 * size
    name = "full hour" if count.wrap else "multiples"
    if start == count.start and not count.wrap:
        start, name = (size if count.step > 0 else size * count.terms), "first jumps"
        if abs(start) >= abs(count.start):
            return
    new = changed(grid, start=start)
    if new is not None:
        claim = Claim("remainder", modulus=str(size), along="count", blocks=[["0"]])
        told = {"start": new.count.text(1), "size": count.difference_text(count.step)}
        yield Change(name, new, told, () if count.wrap else shown(new, claim))
