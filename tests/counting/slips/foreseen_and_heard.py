"""Whether what is foreseen in random counts is named the same when it is heard: run by itself for as many as you like.

Run it as `python -m tests.counting.slips.foreseen_and_heard 2000 2026`, or through `run.py proof`.
"""

import sys
from random import Random
from typing import NamedTuple

from routines.counting import Audience, EqualName, Grid, Slip, classify, likely_slips
from tests.counting.random_grids import any_grid


class Foreseen(NamedTuple):
    """How many slips were foreseen, and which of them were named otherwise when they were heard, in words."""

    slips: int
    otherwise: tuple[str, ...]


def some_foreseen(seed: int, grids: int) -> Foreseen:
    """What is foreseen in so many random grids, each for a random level and language, and how it is named."""
    random = Random(seed)
    slips, otherwise = 0, []
    for _ in range(grids):
        grid, audience = any_grid(random), Audience(random.randrange(9), random.choice(("en", "es")))
        for slip in likely_slips(grid, audience=audience):
            slips += 1
            if not named_the_same(grid, slip, audience):
                named = classify(grid, slip.n, slip.heard, audience=audience)
                otherwise.append(f"{grid}, level {audience.level}: {slip} is heard as {named}")
    return Foreseen(slips, tuple(otherwise))


def named_the_same(grid: Grid, slip: Slip, audience: Audience) -> bool:
    """Whether a slip is heard under its own rule, by itself or beside counts left out or repeated; another name as such."""
    heard = classify(grid, slip.n, slip.heard, audience=audience)
    if slip.equal_name:
        return isinstance(heard, EqualName)
    named = heard if isinstance(heard, Slip) else getattr(heard, "slip", None)
    return named is not None and named.rule == slip.rule


def main(grids: int, seed: int = 2026) -> int:
    """Print what came of so many random counts, and give the number of slips that were named otherwise."""
    foreseen = some_foreseen(seed, grids)
    for line in foreseen.otherwise:
        print(line)  # noqa: T201
    print(f"counts {grids:,} · slips foreseen {foreseen.slips:,} · heard under another name {len(foreseen.otherwise)}")  # noqa: T201
    return len(foreseen.otherwise)


if __name__ == "__main__":
    sys.exit(min(1, main(int(sys.argv[1]), *map(int, sys.argv[2:]))))
