"""The counting engine against the plain brute force of the tests: ratios in one run, and what one call costs.

The ratio says how many times longer it takes to look at every cell and list on and on than to reason. Neither says a word
there; what words cost is listed by itself: a search alone, with the first six patterns read, with all of them read.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from fractions import Fraction
from functools import partial
from itertools import product
from statistics import median
from time import process_time

from routines import words
from routines.counting import Count, Fill, Grid, Limits, compare_folds, design_grids, find_patterns
from routines.counting.claims import DigitClaim, LandmarksClaim
from routines.counting.patterns import everything
from tests.brute_force.board import Board
from tests.brute_force.designing import Page, designs
from tests.brute_force.lasting import first_break, two_turns
from tests.brute_force.seeing import everything_seen

RUNS, FEWEST_RUNS = 7, 3
LONG_ENOUGH = 5.0
"""After so many seconds the fewest runs are enough."""

SIZES = ((12, 4), (48, 8), (200, 10))
"""Cells and line length of the grids."""

SHOWN = 6
"""So many patterns a page shows at first."""

FARTHEST = 600
"""So far the brute force lists, as it does in the tests."""

KINDS = (
    ("whole", "58", "6"),
    ("fraction", "1/4", "3/4"),
    ("length", "1 ft 3 in", "9 in"),
    ("clock", "10:50", "20 min"),
)

STARTS, STEPS, LINE_LENGTHS = (1, 24), (2, 9), (4, 6)
WANTED = (LandmarksClaim(Fraction(10), lie="column"), DigitClaim(place=0, along="column", length=1))


def main() -> int:
    """Print the ratios and the medians."""
    write(f"Median of {FEWEST_RUNS} to {RUNS} runs, milliseconds of processor time; ratio = brute force / engine.")
    write(f"{'cells':>6}  {'what':<16}{'engine':>10}{'brute force':>14}{'ratio':>9}")
    for cells, length in SIZES:
        for kind, start, step in KINDS:
            grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=cells), length)
            line(cells, f"patterns {kind}", partial(search, grid), partial(seen_and_lasting, grid))
        count = Count.parse(kind="whole", start="58", step="6", terms=cells)
        line(cells, "folds strip", partial(compare_folds, count), partial(seen_in_every_fold, count))
        line(cells, "designs", partial(designed, cells), partial(tried_one_by_one, cells))
        if designed(cells) != tried_one_by_one(cells):
            raise SystemExit("The designs and trying everything disagree: no ratio of these means anything.")
    write(
        f"\n{'cells':>6}  {'words':<16}{'search':>10}{'six read':>12}{'all read':>12}{'all/search':>12}{'all/six':>9}"
    )
    for cells, length in SIZES:
        for kind, start, step in KINDS:
            words_line(kind, Grid(Count.parse(kind=kind, start=start, step=step, terms=cells), length))
    full = Count.parse(kind="whole", start="58", step="6", terms=48)
    strip = time_of(lambda: read(pattern for fold in words.compare_folds(full) for pattern in fold.patterns))
    write(f"The folds strip of 48 cells with every fold's patterns read: {strip:.1f} ms.")
    return 0


def words_line(kind: str, grid: Grid) -> None:
    """What the words of a search cost: nothing until they are read."""
    searched, six, every = (time_of(partial(search_and_read, grid, most)) for most in (0, SHOWN, None))
    write(
        f"{grid.terms:>6}  {kind:<16}{searched:>10.2f}{six:>12.2f}{every:>12.2f}{every / searched:>12.1f}{every / six:>9.1f}"
    )


def search(grid: Grid) -> None:
    """A search of a grid that nobody has searched before: what is found is kept."""
    everything.cache_clear()
    find_patterns(grid)


def search_and_read(grid: Grid, most: int | None) -> None:
    everything.cache_clear()
    read(words.find_patterns(grid)[:most])


def read(patterns: Iterable[words.SpokenPattern]) -> None:
    for pattern in patterns:
        _ = pattern.statement, pattern.student_words, pattern.because


def line(cells: int, what: str, engine: Callable[[], object], brute_force: Callable[[], object]) -> None:
    quick, plain = time_of(engine), time_of(brute_force)
    write(f"{cells:>6}  {what:<16}{quick:>10.2f}{plain:>14.2f}{plain / quick:>9.1f}")


def time_of(work: Callable[[], object]) -> float:
    """Give the median processor time of some runs in milliseconds, after one that is not counted."""
    work()
    times: list[float] = []
    while len(times) < RUNS and (len(times) < FEWEST_RUNS or sum(times) < LONG_ENOUGH):
        began = process_time()
        work()
        times.append(process_time() - began)
    return 1000 * median(times)


def board_of(grid: Grid) -> Board:
    count = grid.count
    return Board(
        kind=count.kind,
        start=count.start,
        step=count.step,
        terms=grid.terms,
        length=grid.line_length,
        fill=grid.fill,
        lead=grid.lead,
        friendly=count.friendly_multiples(),
        part_names=count.part_names(),
        written=count.text,
    )


def seen_and_lasting(grid: Grid) -> list[int | None]:
    """Find by looking at every cell, and how long it lasts by writing on."""
    board = board_of(grid)
    return [first_break(board, claim, min(two_turns(board, claim), FARTHEST)) for claim in everything_seen(board)]


def seen_in_every_fold(count: Count) -> list[int]:
    folds = product((Fill.ACROSS, Fill.DOWN), range(2, 13))
    return [
        len(everything_seen(board_of(Grid(count, length, fill)))) for fill, length in folds if length <= count.terms
    ]


def designed(cells: int) -> int:
    limits = Limits(
        starts=STARTS, steps=STEPS, line_lengths=LINE_LENGTHS, terms=(cells, cells), fills=(Fill.ACROSS,), at_most=None
    )
    return len(design_grids(WANTED, limits).grids)


def tried_one_by_one(cells: int) -> int:
    pages = (
        Page(Fraction(start), Fraction(step), cells, length, "across", finest=0)
        for start in range(STARTS[0], STARTS[1] + 1)
        for step in range(STEPS[0], STEPS[1] + 1)
        for length in range(LINE_LENGTHS[0], LINE_LENGTHS[1] + 1)
    )
    return len(designs([claim.as_dict() for claim in WANTED], pages))


def write(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    raise SystemExit(main())
