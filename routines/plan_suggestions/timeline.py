"""Which ideas the timeline under the stops shows: the chosen ones, the plainest, and those that die on the board."""

from collections.abc import Collection
from functools import lru_cache

from routines.counting import Audience, Claim, Grid, Idea, find_patterns, ideas

PLAINEST = 4
DYING = 3
MOST = 7
SHORTEST_LIFE = 3
LONGEST_LOOKED_AT = 60
# What children follow with a finger until it stops.
FAMILIES = ("digit-run", "digit", "landmarks", "digit-sum", "remainder")


@lru_cache(maxsize=64)
def ideas_of(grid: Grid, audience: Audience) -> tuple[Idea, ...]:
    """Finding ideas looks at every length of the count, so a fold once looked at is remembered."""
    return tuple(ideas(grid, audience=audience))


def dying_ideas(grid: Grid, audience: Audience) -> list[Idea]:
    """What holds for a while and is over on this very grid: digits before all, the longest lived first.

    Left out where the grid is so long that looking would keep the teacher waiting.
    """
    if grid.terms > LONGEST_LOOKED_AT:
        return []
    over = [
        idea
        for idea in ideas_of(grid, audience)
        if idea.dies_at is not None
        and idea.seen_at + SHORTEST_LIFE <= idea.dies_at <= grid.terms
        and idea.claim.family in FAMILIES
    ]
    return sorted(over, key=lambda idea: (FAMILIES.index(idea.claim.family), idea.seen_at - (idea.dies_at or 0)))[
        :DYING
    ]


def ideas_to_show(grid: Grid, audience: Audience, chosen: Collection[Claim]) -> list[Idea]:
    """In the order in which they can be seen. `chosen`: the ticked and lit patterns."""
    known = ideas_of(grid, audience)
    by_claim = {idea.pattern.claim: idea for idea in known}
    plainest = [pattern.claim for pattern in find_patterns(grid, audience=audience)]
    picked = [by_claim[claim] for claim in chosen if claim in by_claim]
    picked += [by_claim[claim] for claim in plainest if claim in by_claim][:PLAINEST]
    picked += dying_ideas(grid, audience)
    shown = list(dict.fromkeys(picked))[:MOST]
    return sorted(shown, key=lambda idea: (idea.seen_at, idea.dies_at or grid.terms + 1))
