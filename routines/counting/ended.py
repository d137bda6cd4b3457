"""Digits that ran for a while and are over before the grid ends: what children follow with a finger until it stops."""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise

from .claims import Claim
from .grid import ALONG, Grid
from .patterns import digit_run
from .patterns.digit import readings
from .patterns.follows import implied
from .results import Idea, Pattern

SHORTEST_LIFE = 3
LONGEST_LOOKED_AT = 60
KEPT_GRIDS = 256


@lru_cache(maxsize=KEPT_GRIDS)
def ended_runs(grid: Grid) -> tuple[Idea, ...]:
    """Those ideas of a grid that are digit runs and die on it, the longest lived first; found without the other ideas.

    One that lived for less than three terms was never followed; of a long grid the first part is looked at.

    >>> from .count import Count
    >>> grid = Grid(Count.parse(kind="whole", start="10", step="6", terms=25), line_length=5)
    >>> [(idea.claim.change, idea.lasts, idea.dies_at) for idea in ended_runs(grid)]
    [(3, 15, 16)]
    """
    lives: dict[Claim, list[tuple[int, Pattern]]] = {}
    listed: set[Claim] = set()
    for n in range(2, _last_with_a_run(grid.cut(min(grid.terms, LONGEST_LOOKED_AT))) + 1):
        view = grid.cut(n)
        runs = tuple(digit_run.find(view))
        follow = implied(runs, view)
        for i, run in enumerate(runs):
            lives.setdefault(run.claim, []).append((n, run))
            if i not in follow:
                listed.add(run.claim)
    ideas = [
        Idea(claim, seen_at=life[0][0], dies_at=life[0][1].breaks_at, lasts=life[-1][0], pattern=life[-1][1])
        for claim, life in lives.items()
        if claim in listed
    ]
    over = [idea for idea in ideas if idea.dies_at and idea.seen_at + SHORTEST_LIFE <= idea.dies_at <= grid.terms]
    return tuple(sorted(over, key=lambda idea: idea.seen_at - (idea.dies_at or 0)))


def _last_with_a_run(grid: Grid) -> int:
    """How many counts are in view when the last run is over: a digit that went by two amounts has none in any later view."""
    last = 0
    for _, reading in readings(grid):
        values = reading.upto(grid.terms)
        for along in ALONG:
            steps = [
                (later, now - before)
                for line in grid.lines(along)
                for earlier, later in pairwise(line)
                if (now := values[later]) is not None and (before := values[earlier]) is not None
            ]
            steps.sort()
            if steps and steps[0][1]:
                first = steps[0][1]
                last = max(last, next((later - 1 for later, change in steps if change != first), grid.terms))
    return last
