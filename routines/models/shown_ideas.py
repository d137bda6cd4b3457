"""Which ideas the timeline under the stops shows: the chosen ones, the plainest, and those that die on the board."""

from collections.abc import Collection
from functools import lru_cache

from routines.counting import Audience, Claim, Grid
from routines.words import SpokenIdea, ideas, patterns_to_say

PLAINEST = 4
DYING = 3
MOST = 7
SHORTEST_LIFE = 3
LONGEST_LOOKED_AT = 60
# What children follow with a finger until it stops.
FAMILIES = ("digit-run", "digit", "landmarks", "digit-sum", "remainder")


@lru_cache(maxsize=64)
def ideas_of(grid: Grid, audience: Audience) -> tuple[SpokenIdea, ...]:
    """Finding ideas looks at every length of the count, so a fold once looked at is remembered."""
    return tuple(ideas(grid, audience=audience))


def dying_ideas(grid: Grid, audience: Audience) -> list[SpokenIdea]:
    """What holds for a while and is over on this very grid: digits before all, the longest lived first.

    Nothing is looked for where the grid is so long that looking would keep the teacher waiting.
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


def ideas_to_show(grid: Grid, audience: Audience, chosen: Collection[Claim]) -> list[SpokenIdea]:
    """In the order in which they can be seen. `chosen`: the ticked and lit patterns.

    Of a long count the first part is looked at: when an idea is first seen, and when it dies, is the same.
    """
    known = ideas_of(grid if grid.terms <= LONGEST_LOOKED_AT else grid.cut(LONGEST_LOOKED_AT), audience)
    plainest = [pattern.claim for pattern in patterns_to_say(grid, audience=audience)]
    picked = [idea for claim in chosen if (idea := _idea_of(claim, known))]
    picked += [idea for claim in plainest if (idea := _idea_of(claim, known))][:PLAINEST]
    picked += dying_ideas(grid, audience)
    shown = list(dict.fromkeys(picked))[:MOST]
    return sorted(shown, key=lambda idea: (idea.seen_at, idea.dies_at or grid.terms + 1))


def same_subject(one: Claim, other: Claim) -> bool:
    """Two claims about the same thing, as it may look in two folds: the tens, the tens digit, what is below."""
    return one.family == other.family and one.subject == other.subject


def _idea_of(claim: Claim, known: Collection[SpokenIdea]) -> SpokenIdea | None:
    """The idea that became this claim; of landmarks that lie in no line, that they come every so many counts."""
    same = (idea for idea in known if idea.pattern.claim == claim)
    alike = (idea for idea in known if same_subject(idea.pattern.claim, claim) and idea.dies_at is None)
    return next(same, None) or next(alike, None)
