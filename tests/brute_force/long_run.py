"""Many random grids, engine against brute force, on every core: how many claims, how many of them false.

Run it as `python -m tests.brute_force.long_run 100000 2026`, or through `run.py proof`.
"""

import os
import sys
import time
from dataclasses import dataclass
from multiprocessing import get_context
from random import Random

GRIDS_AT_A_TIME = 50


@dataclass(frozen=True)
class Tally:
    """Grids looked at, claims made about them, and what was wrong in words."""

    grids: int = 0
    claims: int = 0
    wrong: tuple[str, ...] = ()

    def __add__(self, other: "Tally") -> "Tally":
        return Tally(self.grids + other.grids, self.claims + other.claims, self.wrong + other.wrong)


def main(grids: int, seed: int = 2026) -> int:
    """Check so many grids, print what came of it, and give the number of false or missing claims."""
    began = shown = time.monotonic()
    batches = [(seed * 1_000_003 + i, min(GRIDS_AT_A_TIME, grids - i)) for i in range(0, grids, GRIDS_AT_A_TIME)]
    total = Tally()
    with get_context("spawn").Pool(os.cpu_count()) as pool:
        for tally in pool.imap_unordered(batch, batches):
            total += tally
            for line in tally.wrong:
                print(line, flush=True)  # noqa: T201
            if time.monotonic() - shown > 10:
                shown = time.monotonic()
                print(f"{total.grids:,} of {grids:,} grids ...", flush=True)  # noqa: T201
    seconds = time.monotonic() - began
    print(f"grids {total.grids:,} · claims {total.claims:,} · false or missing {len(total.wrong)} · {seconds:.0f} s")  # noqa: T201
    return len(total.wrong)


def batch(job: tuple[int, int]) -> Tally:
    """Check so many random grids from a seed: (seed, grids)."""
    from routines.counting.patterns import find_patterns
    from tests.counting.comparing import disagreements
    from tests.counting.random_grids import any_grid

    seed, grids = job
    random = Random(seed)
    total = Tally()
    for _ in range(grids):
        grid = any_grid(random)
        claims = len(find_patterns(grid, implied=True))
        total += Tally(1, claims, tuple(f"{grid}: {wrong}" for wrong in disagreements(grid)))
    return total


if __name__ == "__main__":
    sys.exit(min(1, main(int(sys.argv[1]), *map(int, sys.argv[2:]))))
