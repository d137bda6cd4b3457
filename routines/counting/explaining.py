"""What tapped cells have in common."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from functools import partial
from math import gcd

from .audience import Audience, level_of
from .claims import (
    LINES_ALONG,
    Claim,
    DigitClaim,
    Direction,
    HowManyClaim,
    LandmarksClaim,
    LineAlong,
    NeighbourClaim,
    OppositesClaim,
    RemainderClaim,
    stated,
)
from .errors import CountError
from .grid import Grid
from .patterns import blocks, digit, everything, landmarks, neighbour
from .patterns.lines import lines_of
from .patterns.ranking import Key, rank
from .patterns.readings import Reading
from .patterns.remainder import Remainder
from .results import Pattern

MOST_EXPLANATIONS = 3

EXPLAINING = (LandmarksClaim, OppositesClaim, DigitClaim, RemainderClaim, HowManyClaim, NeighbourClaim)
"""What says most about cells that are alike comes first; that they lie beside each other says least."""

Cells = frozenset[int]


def explain_cells(grid: Grid, cells: Iterable[int], *, audience: Audience | None = None) -> list[Pattern]:
    """Say what these terms have in common: at most three patterns of different families, best first.

    Each pattern's `cells` are all those in view that share it, the tapped ones among them. Best is what fits the tapped
    cells most closely; what fits equally is ranked by how noticeable it is.
    Raises: CountError on `n` for what is no term in view.

    >>> from .count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="58", step="6", terms=20), line_length=5)
    >>> explain_cells(grid, [3, 8, 13])[0].claim
    LandmarksClaim(multiple=Fraction(10, 1), every=5, first=3, lie='column', lines=(3,))
    """
    tapped = _terms_in_view(grid, cells)
    if not tapped:
        return []
    sharing = [
        (found, shared)
        for found, shared in _candidates(grid, tapped)
        if tapped <= shared and _is_written(grid, found.claim, tapped)
    ]
    best: list[tuple[Pattern, Cells]] = []
    level, alone = level_of(audience), len(tapped) == 1
    for found, shared in sorted(sharing, key=lambda pair: _closeness(grid, *pair, level=level, alone=alone)):
        if all(found.claim.family != chosen.claim.family for chosen, _ in best):
            best.append((found, shared))
    return [replace(found, groups=(tuple(sorted(shared)),)) for found, shared in best[:MOST_EXPLANATIONS]]


def _terms_in_view(grid: Grid, cells: Iterable[int]) -> Cells:
    if not isinstance(cells, Iterable) or isinstance(cells, str):
        raise CountError("n", "no-tapped-counts")
    tapped = list(cells)
    for n in tapped:
        if isinstance(n, bool) or not isinstance(n, int) or not 1 <= n <= grid.terms:
            raise CountError("n", "tapped-out-of-range", most=grid.terms)
    return frozenset(tapped)


def _closeness(grid: Grid, found: Pattern, shared: Cells, *, level: int, alone: bool) -> tuple[int, int, Key]:
    """How closely a find fits the tapped cells; one alone fits everything, and is told by what is most noticeable."""
    return 0 if alone else len(shared), EXPLAINING.index(type(found.claim)), rank(found.claim, grid, level)


def _is_written(grid: Grid, claim: Claim, tapped: Cells) -> bool:
    """Whether the digit that cells are to have in common stands in each: nobody sees the hundreds of 40."""
    place = claim.place or 0 if isinstance(claim, DigitClaim) else 0
    return place <= 0 or all(abs(grid.count.scaled(n)) >= 10**place * grid.count.scale for n in tapped)


def _candidates(grid: Grid, tapped: Cells) -> Iterator[tuple[Pattern, Cells]]:
    """Finds that may explain, each with the cells that share it."""
    for found in everything(grid):
        yield from ((found, shared) for shared in _shares(grid, found, tapped))
    if len(tapped) >= 2:
        yield from _common_multiple(grid, tapped)
        yield from _every_so_many(grid, tapped)
        yield from _within_one_line(grid, tapped)


def _shares(grid: Grid, found: Pattern, tapped: Cells) -> Iterator[Cells]:
    """The sets of cells that a find makes alike."""
    match found.claim:
        case LandmarksClaim():
            yield frozenset(found.cells)
        case DigitClaim() as claim:
            yield _alike(digit.reading_of(claim, grid), grid.terms, tapped)
        case RemainderClaim(modulus=modulus):
            yield _alike(Remainder(grid.count, stated(modulus)), grid.terms, tapped)
        case NeighbourClaim(direction=direction) if len(tapped) >= 2:
            yield _chain(grid, stated(direction), tapped)
        case HowManyClaim():
            yield from map(frozenset, found.groups)
        case OppositesClaim():
            yield frozenset(n for pair in found.groups if tapped & set(pair) for n in pair)


def _alike(reading: Reading, terms: int, tapped: Cells) -> Cells:
    """All terms that read the same as the first tapped one."""
    value = reading.at(min(tapped))
    return frozenset(n for n in range(1, terms + 1) if reading.at(n) == value)


def _chain(grid: Grid, direction: Direction, tapped: Cells) -> Cells:
    """The cells that lie one after the other in a direction of the page, through the first tapped one."""
    pairs = neighbour.neighbours(grid, direction, grid.terms)
    later, earlier = dict(pairs), {b: a for a, b in pairs}
    chain = {min(tapped)}
    for step in (later, earlier):
        n = min(tapped)
        while n in step:
            n = step[n]
            chain.add(n)
    return frozenset(chain)


def _common_multiple(grid: Grid, tapped: Cells) -> Iterator[tuple[Pattern, Cells]]:
    """Landmarks of the largest number of which all tapped values are multiples; on a clock, all times round too."""
    values = [grid.count.scaled(n) for n in tapped]
    multiple = Fraction(gcd(*values, grid.count.wrap or 0), grid.count.scale)
    if multiple:
        found = landmarks.found_for(grid, multiple)
        if found is not None:
            yield found, frozenset(found.cells)


def _every_so_many(grid: Grid, tapped: Cells) -> Iterator[tuple[Pattern, Cells]]:
    """Every k-th count: the same remainder by what k jumps make."""
    first = min(tapped)
    k = gcd(*(n - first for n in tapped))
    modulus = abs(grid.count.step) * k
    if 2 <= k <= grid.terms // 2 and (grid.count.wrap is None or (grid.count.wrap / modulus).denominator == 1):
        reading = Remainder(grid.count, modulus)
        found = blocks.find(partial(RemainderClaim, modulus), reading, grid, "count")
        if found is not None:
            yield found, frozenset(range(first - (first - 1) // k * k, grid.terms + 1, k))


def _within_one_line(grid: Grid, tapped: Cells) -> Iterator[tuple[Pattern, Cells]]:
    """What one row or column keeps, whether or not the others do."""
    for along in LINES_ALONG:
        lines = lines_of(grid, along)
        line = next((line for line in lines.in_view if tapped <= set(line)), None)
        if line is None or len(line) < 2:
            continue
        number = grid.place(line[0])[0 if along == "row" else 1]
        for named, reading in digit.readings(grid):
            yield from _kept_by_line(grid, named, reading, along, line, number)


def _kept_by_line(
    grid: Grid, named: digit.Named, reading: Reading, along: LineAlong, line: Sequence[int], number: int
) -> Iterator[tuple[Pattern, Cells]]:
    value = reading.at(line[0])
    if value is None or any(reading.at(n) != value for n in line):
        return
    claim = DigitClaim(*named, along=along, blocks=((value,),), lines=(number,))
    judged = blocks.judge(claim, reading, grid)
    yield Pattern(claim, (tuple(line),), judged.breaks_at, judged.holds or "shown"), frozenset(line)
