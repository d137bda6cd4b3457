"""When each idea can first be seen while the count is being written, and when it dies."""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from dataclasses import replace

from .audience import Audience, level_of
from .claims import BlockClaim, Claim, LandmarksClaim, stated
from .grid import Fill, Grid
from .patterns import everything
from .patterns.follows import implied
from .patterns.ranking import rank
from .results import Idea, Pattern


def ideas(grid: Grid, *, audience: Audience | None = None) -> list[Idea]:
    """Every idea that can be seen at some time while the terms in view are written, the earliest first.

    An idea is listed if at some term it does not follow from a broader one. One whose lines are still being begun
    is the same idea while each new line keeps to it. That landmarks come every k counts is one idea, however they lie,
    and never dies; each lie in line is an idea of its own beside it. audience: whose order it is of those seen at once.

    >>> from .count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="34", step="11", terms=12), line_length=4)
    >>> [(i.seen_at, i.dies_at) for i in ideas(grid) if i.claim.family == "digit-run" and i.claim.place == 1]
    [(3, 7)]
    """
    level = level_of(audience)
    first: dict[Hashable, tuple[int, Pattern]] = {}
    last: dict[Hashable, tuple[int, Pattern]] = {}
    listed: set[Hashable] = set()
    for n in range(2, grid.terms + 1):
        view = grid.cut(n)
        found = everything(view)
        follow = implied(found, view)
        for i, listing in enumerate(found):
            for one in _ideas_in(listing):
                key = idea_key(one.claim, view)
                first.setdefault(key, (n, one))
                last[key] = (n, one)
                if i not in follow:
                    listed.add(key)
    return sorted(
        (_idea(grid, first[key], last[key]) for key in first if key in listed),
        key=lambda idea: (idea.seen_at, rank(idea.claim, grid, level)),
    )


def idea_key(claim: Claim, grid: Grid) -> Hashable:
    """What stays the same about a claim while more lines are begun and rows are added."""
    if isinstance(claim, BlockClaim):
        return claim.family, tuple(claim.subject.items()), claim.block_length, claim.lines
    if isinstance(claim, LandmarksClaim) and claim.lie == "row" and grid.fill is Fill.ACROSS_UP:
        return replace(claim, lines=(grid.fill_lines - stated(claim.lines)[0] + 1,))
    return claim


def _ideas_in(one: Pattern) -> Iterator[Pattern]:
    """The ideas in one pattern: of landmarks that they come every so many counts, and how they lie where that is in line.

    Source: proof that a lie in line ends only in a less tidy one - landmarks out of one line are in no other one; no two
    of a diagonal lie in one line; and whole lines, every so many cells of each, stay whole.
    """
    if not isinstance(one.claim, LandmarksClaim):
        yield one
        return
    if one.claim.lie != "scattered":
        yield one
    yield Pattern.of(replace(one.claim, lie=None, lines=None), (tuple(sorted(one.cells)),), None)


def _idea(grid: Grid, first: tuple[int, Pattern], last: tuple[int, Pattern]) -> Idea:
    (seen_at, begun), (lasted, fullest) = first, last
    return Idea(begun.claim, seen_at, begun.breaks_at, lasted, fullest)
