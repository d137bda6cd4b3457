"""The same count in every line length side by side: what lines up, slides or vanishes with one more cell in a line."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from ..claims import Claim, DigitClaim, LandmarksClaim, LineAlong, RemainderClaim, stated
from ..count import Count
from ..errors import CountError
from ..grid import Fill, Grid
from ..patterns import find_patterns
from ..patterns.lie import Lie
from ..results import Pattern
from .features import Feature, features, something_is_shared

__all__ = ["FoldReport", "Sight", "compare_folds"]


@dataclass(frozen=True, slots=True)
class Sight:
    """Something that lines up or slides in a fold, or no longer does.

    `of` is the claim that names it, with all else left out. `claim` says that it stays the same in every line across the
    fill: true of what lines up, false of what slides or vanishes; for landmarks it says how they lie. `way`: "column" or
    "row" it lines up in; "down-right" or "down-left" it slides along; "" where it does neither. plain: read off at a
    glance, so that it is named first.
    """

    of: Claim
    way: str
    claim: Claim
    plain: bool


@dataclass(frozen=True)
class FoldReport:
    """One fold of the strip.

    lines_up: what stays in its column (row, where columns are filled down). slides: what stays on diagonals instead.
    within: where neither is, what stays the same in each line along the fill, and landmarks that all lie in one such line.
    shared: whether something that changes in no count (all are odd) stands in every line, so that nothing else need.
    vanishes: what lined up or slid in the fold this one is compared with, and is nowhere in line here, not even on two
    cells of a diagonal. now_line_up, now_slide: those of them that did not there. `before` is the line length of that
    fold, None where there is none, or it is this one, and nothing is new. nothing_before: nothing lined up or slid there.
    """

    grid: Grid
    lines_up: tuple[Sight, ...]
    slides: tuple[Sight, ...]
    vanishes: tuple[Sight, ...]
    before: int | None = None
    now_line_up: tuple[Sight, ...] = ()
    now_slide: tuple[Sight, ...] = ()
    within: tuple[Sight, ...] = ()
    shared: bool = False
    nothing_before: bool = False

    @property
    def line_length(self) -> int:
        return self.grid.line_length

    @property
    def fill(self) -> str:
        return self.grid.fill

    @cached_property
    def patterns(self) -> tuple[Pattern, ...]:
        """Everything that can be seen in the fold; worked out when it is first asked for."""
        return tuple(find_patterns(self.grid))


def compare_folds(
    count: Count,
    line_lengths: Iterable[int] = range(2, 13),
    fills: Sequence[Fill] = (Fill.ACROSS, Fill.DOWN),
    against: Grid | None = None,
) -> list[FoldReport]:
    """Fold the count in every way and say what each fold does; line lengths over the number of terms are left out.

    against: a fold of the same count that all of its own fill are compared with; None: each with the one before it.
    Raises: CountError on `line_length` or `fill`.

    >>> count = Count.parse(kind="whole", start="58", step="6", terms=20)
    >>> four, five = compare_folds(count, line_lengths=(4, 5), fills=(Fill.ACROSS,))
    >>> [sight.of.family for sight in five.lines_up]
    ['landmarks', 'digit']
    >>> [(sight.of.place, sight.way) for sight in four.slides if sight.plain]
    [(0, 'down-right')]
    """
    lengths = list(line_lengths) if isinstance(line_lengths, Iterable) else [line_lengths]
    if any(isinstance(length, bool) or not isinstance(length, int) for length in lengths):
        raise CountError("line_length", "no-line-lengths")
    if not isinstance(fills, (list, tuple)):
        raise CountError("fill", "no-fills")
    lengths = [length for length in lengths if length <= count.terms]
    reports: list[FoldReport] = []
    readable, shared = features(count), something_is_shared(count)
    given = None if against is None else _Seen.in_fold(against, readable)
    for fill in fills:
        before = given if given is not None and given.grid.fill == fill else None
        for length in lengths:
            grid = Grid(count, length, fill)
            seen = _Seen.in_fold(grid, readable)
            reports.append(_report(seen, before if before is None or before.grid != grid else None, shared))
            before = seen if against is None else before
    return reports


@dataclass(frozen=True, slots=True)
class _Seen:
    """Every feature with how it stands in one fold."""

    grid: Grid
    sights: tuple[tuple[Feature, Sight], ...]

    @classmethod
    def in_fold(cls, grid: Grid, readable: Sequence[Feature]) -> _Seen:
        return cls(grid, tuple((feature, _sight(feature, grid)) for feature in readable))

    @property
    def lines_up(self) -> list[tuple[Feature, Sight]]:
        return [(feature, sight) for feature, sight in self.sights if sight.way in ("row", "column")]

    @property
    def slides(self) -> list[tuple[Feature, Sight]]:
        return [(feature, sight) for feature, sight in self.sights if sight.way in ("down-right", "down-left")]


def _report(seen: _Seen, before: _Seen | None, shared: bool) -> FoldReport:
    grid = seen.grid
    lines_up, slides = (tuple(_not_said_by_others(found, grid.line_length)) for found in (seen.lines_up, seen.slides))
    within: tuple[Sight, ...] = ()
    if not lines_up and not slides:
        within = tuple(_not_said_by_others(list(_within(seen)), grid.line_length))
    if before is None:
        return FoldReport(grid, lines_up, slides, (), within=within, shared=shared)
    there_before = list(_not_said_by_others([*before.lines_up, *before.slides], before.grid.line_length))
    there = {sight.of for sight in there_before}
    lined_up, slid = ({sight.of for _, sight in sights} for sights in (before.lines_up, before.slides))
    return FoldReport(
        grid,
        lines_up,
        slides,
        vanishes=tuple(
            sight for feature, sight in seen.sights if sight.of in there and not sight.way and _is_gone(feature, grid)
        ),
        before=before.grid.line_length,
        now_line_up=tuple(sight for sight in lines_up if sight.of not in lined_up),
        now_slide=tuple(sight for sight in slides if sight.of not in slid),
        within=within,
        shared=shared,
        nothing_before=not there_before,
    )


def _within(seen: _Seen) -> Iterator[tuple[Feature, Sight]]:
    """What stays along the fill instead of across it, in each line."""
    along: LineAlong = "column" if seen.grid.fill is Fill.DOWN else "row"
    for feature, sight in seen.sights:
        if isinstance(feature.claim, LandmarksClaim):
            if _lies_along(sight.claim, along):
                yield feature, replace(sight, way=along)
        elif _stays_within(feature, seen.grid):
            yield feature, Sight(feature.claim, along, _staying(feature.claim, along), feature.plain)


def _lies_along(claim: Claim, along: LineAlong) -> bool:
    return isinstance(claim, LandmarksClaim) and claim.lie in (along, f"{along}s")


def _stays_within(feature: Feature, grid: Grid) -> bool:
    """Whether neighbours in a line along the fill read the same, and two can be seen."""
    pairs = [n for n in range(1, grid.terms) if (n + grid.lead) % grid.line_length]
    return bool(pairs) and feature.agrees(pairs, 1)


def _is_gone(feature: Feature, grid: Grid) -> bool:
    """Whether nothing in the picture is in line: no column, no row, and no diagonal of two cells or more."""
    along: LineAlong = "column" if grid.fill is Fill.DOWN else "row"
    length, terms = grid.line_length, grid.terms
    if isinstance(feature.claim, LandmarksClaim):
        lie = Lie.seen_in(grid, feature.period, stated(feature.claim.first))
        if lie.name in (along, f"{along}s"):
            return False
    elif _stays_within(feature, grid):
        return False
    for distance, cells in ((length - 1, range(1, length)), (length, range(length)), (length + 1, range(length - 1))):
        pairs = [n for n in range(1, terms - distance + 1) if (n + grid.lead - 1) % length in cells]
        if distance and pairs and feature.agrees(pairs, distance):
            return False
    return True


def _sight(feature: Feature, grid: Grid) -> Sight:
    across_fill: LineAlong = "row" if grid.fill is Fill.DOWN else "column"
    if isinstance(feature.claim, LandmarksClaim):
        return _landmark_sight(feature, feature.claim, grid, across_fill)
    claim = _staying(feature.claim, across_fill)
    length, terms = grid.line_length, grid.terms
    if length < terms and feature.stays(length):
        return Sight(feature.claim, across_fill, claim, feature.plain)
    # One cell on in the next line is length + 1 terms on, one cell back length - 1; three cells make a diagonal.
    onward, backward = ("down-left", "down-right") if grid.fill is Fill.ACROSS_UP else ("down-right", "down-left")
    for distance, way in ((length + 1, onward), (length - 1, backward)):
        if length >= 3 and terms > 2 * distance and feature.stays(distance):
            return Sight(feature.claim, way, claim, feature.plain)
    return Sight(feature.claim, "", claim, feature.plain)


def _staying(claim: DigitClaim | RemainderClaim, along: LineAlong) -> Claim:
    """The claim that what is read stays the same in every line."""
    if isinstance(claim, RemainderClaim):
        return RemainderClaim(claim.modulus, along, length=1)
    return DigitClaim(claim.place, claim.part, along, length=1)


def _landmark_sight(feature: Feature, landmarks: LandmarksClaim, grid: Grid, across_fill: str) -> Sight:
    lie = Lie.seen_in(grid, feature.period, stated(landmarks.first))
    claim = LandmarksClaim(landmarks.multiple, landmarks.every, landmarks.first, lie.name, lie.lines)
    if lie.name in (across_fill, f"{across_fill}s"):
        return Sight(feature.claim, across_fill, claim, feature.plain)
    way = lie.name if lie.name in ("down-right", "down-left") else _stripes(feature, grid)
    return Sight(feature.claim, way, claim, feature.plain)


def _stripes(feature: Feature, grid: Grid) -> str:
    """The way of the diagonals on which landmarks stand where there are several side by side, three on one at least; else ""."""
    onward, backward = ("down-left", "down-right") if grid.fill is Fill.ACROSS_UP else ("down-right", "down-left")
    length = grid.line_length
    for distance, way, cells in ((length + 1, onward, range(length - 2)), (length - 1, backward, range(2, length))):
        if distance and feature.stays(distance):
            firsts = range(stated(feature.first), grid.terms - 2 * distance + 1, feature.period)
            if any((n + grid.lead - 1) % length in cells for n in firsts):
                return way
    return ""


def _not_said_by_others(found: Sequence[tuple[Feature, Sight]], length: int) -> Iterator[Sight]:
    """Leave out what another one says.

    That are remainders that stay because another's modulus, a multiple of theirs, stays, and landmarks that stand in a
    line with gaps between them where those of a divisor fill it: in rows of 3 the multiples of 9 where all those of 3 are.
    """
    filling = [
        feature for feature, _ in found if isinstance(feature.claim, LandmarksClaim) and length % feature.period == 0
    ]
    for feature, sight in found:
        if isinstance(feature.claim, LandmarksClaim) and sight.way in ("row", "column"):
            said = length % feature.period != 0 and any(_is_multiple(feature, other) for other in filling)
        else:
            said = isinstance(feature.claim, RemainderClaim) and any(
                other is not feature and _is_multiple(other, feature) for other, _ in found
            )
        if not said:
            yield sight


def _is_multiple(feature: Feature, other: Feature) -> bool:
    """Say whether what one feature covers is a multiple of what the other covers."""
    if feature.covers is None or other.covers is None:
        return False
    return (feature.covers / other.covers).denominator == 1
