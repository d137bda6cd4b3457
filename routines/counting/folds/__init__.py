"""The same count in every line length side by side: what lines up, slides or vanishes with one more cell in a line."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from ..claims import Claim, DigitClaim, LandmarksClaim, LineAlong, RemainderClaim, stated
from ..count import Count
from ..errors import CountError
from ..grid import Fill, Grid
from ..patterns import find_patterns
from ..patterns.lie import Lie
from ..results import Pattern
from .features import Feature, features

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
    vanishes: what lined up or slid in the strip's fold before this one, of the same fill, and does neither here.
    now_line_up, now_slide: those of them that did not in the fold before; `before` is its line length, None in the first
    fold, where nothing is new.
    """

    grid: Grid
    lines_up: tuple[Sight, ...]
    slides: tuple[Sight, ...]
    vanishes: tuple[Sight, ...]
    before: int | None = None
    now_line_up: tuple[Sight, ...] = ()
    now_slide: tuple[Sight, ...] = ()

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
) -> list[FoldReport]:
    """Fold the count in every way and say what each fold does; line lengths over the number of terms are left out.

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
    readable = features(count)
    for fill in fills:
        before: _Seen | None = None
        for length in lengths:
            grid = Grid(count, length, fill)
            seen = _Seen.in_fold(grid, readable)
            reports.append(_report(grid, seen, before))
            before = seen
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


def _report(grid: Grid, seen: _Seen, before: _Seen | None) -> FoldReport:
    lines_up, slides = (tuple(_not_said_by_others(found, grid.line_length)) for found in (seen.lines_up, seen.slides))
    if before is None:
        return FoldReport(grid, lines_up, slides, ())
    there_before = _not_said_by_others([*before.lines_up, *before.slides], before.grid.line_length)
    there = {sight.of for sight in there_before}
    lined_up, slid = ({sight.of for _, sight in sights} for sights in (before.lines_up, before.slides))
    return FoldReport(
        grid,
        lines_up,
        slides,
        vanishes=tuple(sight for _, sight in seen.sights if not sight.way and sight.of in there),
        before=before.grid.line_length,
        now_line_up=tuple(sight for sight in lines_up if sight.of not in lined_up),
        now_slide=tuple(sight for sight in slides if sight.of not in slid),
    )


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
    way = lie.name if lie.name in ("down-right", "down-left") else ""
    return Sight(feature.claim, way, claim, feature.plain)


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
