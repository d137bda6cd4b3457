"""Which ideas the timeline under the stops shows: the chosen ones, the plainest, and those that die on the board."""

from collections.abc import Collection
from functools import lru_cache

from routines.counting import Audience, Claim, Grid, Idea, find_patterns, ideas

PLAINEST = 4
DYING = 2
MOST = 7


@lru_cache(maxsize=64)
def ideas_of(grid: Grid, audience: Audience) -> tuple[Idea, ...]:
    """Finding ideas looks at every length of the count, so a fold once looked at is remembered."""
    return tuple(ideas(grid, audience=audience))


def ideas_to_show(grid: Grid, audience: Audience, chosen: Collection[Claim]) -> list[Idea]:
    """In the order in which they can be seen. `chosen`: the ticked and lit patterns."""
    known = ideas_of(grid, audience)
    by_claim = {idea.pattern.claim: idea for idea in known}
    plainest = [pattern.claim for pattern in find_patterns(grid, audience=audience)]
    picked = [by_claim[claim] for claim in chosen if claim in by_claim]
    picked += [by_claim[claim] for claim in plainest if claim in by_claim][:PLAINEST]
    dying = [idea for idea in known if idea.dies_at is not None and idea.dies_at <= grid.terms]
    picked += sorted(dying, key=lambda idea: idea.seen_at - (idea.dies_at or 0))[:DYING]
    shown = list(dict.fromkeys(picked))[:MOST]
    return sorted(shown, key=lambda idea: (idea.seen_at, idea.dies_at or grid.terms + 1))
