"""Counts worth teaching: for a standard, or for an area at a level, grids that differ, and what each is good for.

Bounded work: ways to count, and what each proposes, are counted by arithmetic (`MOST_CANDIDATES`); of these at most
`MOST_TRIED` are looked at in full. What was found is kept, because nothing but these facts decides it.
"""

from __future__ import annotations

from collections import Counter, deque
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import lru_cache
from itertools import chain, islice, zip_longest

from ..claims import Claim
from ..grid import Grid
from ..kinds.names import Kind
from ..standards.amounts import numbers_named
from ..standards.features import Features, read_features
from ..standards.fitting import RATIOS, takes_two_counts
from ..style import Style
from .goodness import Crossing, Goodness, goodness_of
from .sorts import Sort, below_zero, sorts_of
from .ways import Way

__all__ = [
    "MOST_SHOWN",
    "SHOWN_AT_ONCE",
    "Crossing",
    "Goodness",
    "Wanted",
    "WorthTeaching",
    "Worthwhile",
    "counts_worth_teaching",
]

SHOWN_AT_ONCE, MOST_SHOWN = 6, 18
# Standards of an area, ways to count, grids made of them, ways that take turns, grids looked at in full.
MOST_GROUNDS, MOST_WAYS, MOST_CANDIDATES, LEAST_EACH, AT_A_TIME, MOST_TRIED = 60, 600, 1000, 1, 16, 48
KEPT = 256
PLAIN_STYLE = Style()

# Why there are fewer than six.
TWO_COUNTS, NOT_YET, LITTLE_ROOM = "two-counts", "not-yet", "little-room"

_KINDS_NAMED: dict[str, tuple[str, ...]] = {
    "duration": ("elapsed",),
    "time": ("clock", "elapsed"),
}
_FEATURES_OF_AREA = {"integers": ("fit=direct; kind=integer; cross=0",)}
_KINDS_OF_AREA = {
    "whole": ("whole",),
    "integers": ("integer",),
    "decimals": ("decimal",),
    "fractions": ("fraction",),
    "measurement": ("length", "mass", "capacity"),
    "money": ("money",),
    "time": ("clock", "elapsed"),
}


@dataclass(frozen=True, slots=True)
class Wanted:
    """What counts are to be for: the features of standards of which they must serve one, or an area, or both.

    level: 0 (K) to 8. area: its own kinds of number alone, as `grade_bands` names it; ratios take two counts.
    style: the marks, currency and clock of the place. system: the units that come first.
    Raises: CountError on `count_features` for features that cannot be read, once they are looked at.
    """

    level: int
    features: tuple[str, ...] = ()
    area: str = ""
    style: Style = PLAIN_STYLE
    system: str = "customary"


@dataclass(frozen=True, slots=True)
class WorthTeaching:
    """A grid and what it is good for."""

    grid: Grid
    good_for: Goodness


@dataclass(frozen=True, slots=True)
class Worthwhile:
    """The counts, best first, the first six the most different; why_not: why they are fewer than six, "" where not.

    tried: how many grids were looked at in full.
    """

    counts: tuple[WorthTeaching, ...]
    why_not: str
    tried: int


@lru_cache(maxsize=KEPT)
def counts_worth_teaching(wanted: Wanted) -> Worthwhile:
    """Up to `MOST_SHOWN` grids, no two with the same step and fold.

    An area whose standards leave nothing that one count could serve is counted by itself.

    >>> found = counts_worth_teaching(Wanted(level=2, features=("fit=direct; step=5|10; max=1000; cross=10|100",)))
    >>> len(found.counts) >= SHOWN_AT_ONCE
    True
    """
    found = _found_for(wanted)
    alone = replace(wanted, features=()) if wanted.area else wanted
    return found if found.counts or alone == wanted else counts_worth_teaching(alone)


def _found_for(wanted: Wanted) -> Worthwhile:
    features = wanted.features or _FEATURES_OF_AREA.get(wanted.area, ())
    grounds: list[Features | None] = [read_features(text) for text in features] or [None]
    single = [ground for ground in grounds if ground is None or not takes_two_counts(ground)]
    if not single or wanted.area == RATIOS:
        return Worthwhile((), TWO_COUNTS, 0)
    ways = _ways(wanted, single)
    if not ways:
        return Worthwhile((), NOT_YET, 0)
    looked_at = list(islice(_fitting(ways, wanted.style), MOST_TRIED))
    found = [WorthTeaching(grid, one) for sort, grid in looked_at for one in goodness_of(grid, sort, wanted.level)]
    counts = list(_differing(found))
    crossing = [one for one in counts if one.good_for.crossing]
    kept = crossing if len(crossing) >= SHOWN_AT_ONCE else counts
    paired = all(ground and ground.with_key("pair") for ground in grounds)
    why_not = "" if len(kept) >= SHOWN_AT_ONCE else TWO_COUNTS if paired else LITTLE_ROOM
    return Worthwhile(tuple(kept), why_not, len(looked_at))


def _ways(wanted: Wanted, grounds: Sequence[Features | None]) -> list[Way]:
    """The friendliest steps first, up and down; standards and sorts of numbers take turns.

    Where more than one standard asks for the same sort, each begins a step further on.
    """
    asked = Counter[Sort]()
    each: list[list[Way]] = []
    for ground in grounds[:MOST_GROUNDS]:
        for sort in _sorts(wanted, ground):
            sort = _crossing_as_asked(sort, ground)
            ways = deque(Way(sort, step, ground) for step in _steps(sort, ground))
            ways.rotate(-2 * asked[sort])
            asked[sort] += 1
            each.append(list(ways))
    turns = (way for turn in zip_longest(*each) for way in turn if way is not None)
    return [way for way in islice(turns, MOST_WAYS) if way.may_serve(wanted.style)]


def _sorts(wanted: Wanted, ground: Features | None) -> Iterator[Sort]:
    """The numbers that a standard, or an area, speaks of, as far as the level counts with them."""
    of_area = _KINDS_OF_AREA.get(wanted.area, ())
    if ground is None:
        named = of_area
    else:
        kinds = (name.strip() for one in ground.with_key("kind") for name in one.value.split("|"))
        named = tuple(kinds) or (Kind.WHOLE.value,)
    for kind in (kind for name in named for kind in _KINDS_NAMED.get(name, (name,)) if not of_area or kind in of_area):
        if kind == "integer":
            yield from below_zero(wanted.level)
        else:
            yield from sorts_of(Kind(kind), wanted.level, wanted.style, wanted.system)


def _crossing_as_asked(sort: Sort, ground: Features | None) -> Sort:
    """The sort without landmarks smaller than those that a standard would have crossed: thousands, not hundreds."""
    asked = [number for one in (ground.with_key("cross") if ground else ()) for number in numbers_named(one.value)]
    kept = tuple(mark for mark in sort.crossed if asked and mark >= min(asked))
    return replace(sort, crossed=kept) if kept else sort


def _steps(sort: Sort, ground: Features | None) -> Iterator[Fraction]:
    """The steps a class knows, then those that the standard names, as far as they are made of the same parts."""
    named = (number for one in (ground.with_key("step") if ground else ()) for number in numbers_named(one.value))
    for step in dict.fromkeys(
        chain(sort.steps, (number for number in named if number > 0 and number % sort.grain == 0))
    ):
        yield step
        if sort.back:
            yield -step


def _fitting(ways: Sequence[Way], style: Style) -> Iterator[tuple[Sort, Grid]]:
    """The grids to look at: so many ways take turns; where one has nothing more to propose, the next comes in."""
    most = max(MOST_CANDIDATES // len(ways), LEAST_EACH)
    waiting = ((way.sort, way.grids(most, style)) for way in ways)
    turns = deque(islice(waiting, AT_A_TIME))
    while turns:
        sort, grids = turns.popleft()
        grid = next(grids, None)
        if grid is not None:
            turns.append((sort, grids))
            yield sort, grid
        else:
            turns.extend(islice(waiting, 1))


def _differing(found: Sequence[WorthTeaching]) -> Iterator[WorthTeaching]:
    """The best, and then again and again the best that is most unlike those before it; each step and fold once."""
    left = {one: one.good_for.points for one in found}
    for _ in range(MOST_SHOWN):
        if not left:
            return
        best = max(left, key=lambda one: left[one])
        yield best
        left = {
            one: points - likeness(one, best)
            for one, points in left.items()
            if (one.grid.count.step, one.grid.line_length, one.grid.fill)
            != (best.grid.count.step, best.grid.line_length, best.grid.fill)
        }


def likeness(one: WorthTeaching, other: WorthTeaching) -> int:
    """How much two counts are alike to the eye and in what they are good for, in points."""
    a, b = one.grid, other.grid
    return (
        4 * (a.count.step == b.count.step)
        + 6 * (abs(a.count.step) == abs(b.count.step))
        + 5 * (a.count.start == b.count.start)
        + (a.line_length == b.line_length)
        + (a.fill == b.fill)
        + (a.count.kind == b.count.kind)
        + 3 * _same_subject(one.good_for.lasting.claim, other.good_for.lasting.claim)
        + (one.good_for.crossing == other.good_for.crossing)
    )


def _same_subject(one: Claim, other: Claim) -> bool:
    return one.family == other.family and one.subject == other.subject
