"""How much work finding patterns is, in calls of Python functions: a count that is the same on every machine."""

import sys
from collections.abc import Callable
from contextlib import suppress

import pytest

from routines.counting import (
    Count,
    CountError,
    Grid,
    check,
    compare_folds,
    explain_cells,
    find_patterns,
    probes,
    proposed_landmarks,
)
from tests.counting.claims import a_claim

COUNTS = [
    ("whole", "58", "6", 5),
    ("whole", "1,325", "-50", 4),
    ("decimal", "0.25", "0.35", 8),
    ("fraction", "3/4", "3/4", 4),
    ("length", "1 ft 3 in", "9 in", 4),
    ("clock", "10:50", "20 min", 3),
    ("money", "$0.20", "$0.25", 4),
]


def calls_of(work: Callable[[], object]) -> int:
    """The calls of Python functions while some work is done."""
    counted = 0

    def count(frame, event, argument) -> None:
        nonlocal counted
        counted += event == "call"

    sys.setprofile(count)
    try:
        work()
    finally:
        sys.setprofile(None)
    return counted


def calls(grid: Grid) -> int:
    """The calls while the patterns of a grid are found and put into words."""
    return calls_of(lambda: find_patterns(grid))


def grid_of(kind: str, start: str, step: str, line_length: int, terms: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), line_length=line_length)


@pytest.mark.parametrize(("kind", "start", "step", "line_length"), COUNTS)
def test_forty_cells_are_bounded(kind, start, step, line_length):
    assert 100 < calls(grid_of(kind, start, step, line_length, 40)) < 25_000


@pytest.mark.parametrize(("kind", "start", "step", "line_length"), COUNTS)
def test_five_times_the_cells_are_far_from_five_times_five_the_work(kind, start, step, line_length):
    few, many = (calls(grid_of(kind, start, step, line_length, terms)) for terms in (40, 200))
    assert many < 8 * few


HUGE = "9" * 30
HUGE_CLAIMS = [
    a_claim("step", difference=HUGE),
    a_claim("neighbour", direction="down", difference=f"1/{'9' * 28}"),
    a_claim("remainder", modulus=HUGE, along="column", length=200),
    a_claim("remainder", modulus=HUGE, along="count", blocks=[[str(10**29 + n) for n in range(200)]]),
    a_claim("landmarks", multiple=HUGE, every=10**29, first=10**29),
    a_claim("landmarks", multiple="1/" + "9" * 28),
    a_claim("how-many", multiple=HUGE, block=[10**29] * 200),
    a_claim("how-many", multiple="1/" + "9" * 28),
    a_claim("digit", place=9, along="row", blocks=[[10**29] * 200] * 200),
    a_claim("digit-run", place=9, change=10**29),
    a_claim("digit-sum", along="count", blocks=[[10**29] * 200]),
    a_claim("sums", which="line-totals", along="row", difference=HUGE),
    a_claim("opposites", pairs=[[10**28, 10**29]]),
]


@pytest.mark.parametrize("claim", HUGE_CLAIMS, ids=lambda claim: claim.family)
def test_a_claim_of_huge_numbers_is_judged_with_bounded_work(claim):
    def judged() -> None:
        with suppress(CountError):
            check(claim, grid_of("whole", "58", "6", 5, 200))

    assert calls_of(judged) < 200_000  # forty thousand numbers in the largest claim


@pytest.mark.parametrize(
    "ask",
    [
        lambda grid: explain_cells(grid, range(1, 201)),
        lambda grid: [fold.patterns for fold in compare_folds(grid.count)],
        lambda grid: probes(grid),
        lambda grid: proposed_landmarks(grid),
    ],
    ids=["every cell tapped", "every fold", "probes", "a story"],
)
def test_what_a_page_asks_of_the_largest_grid_is_bounded(ask):
    def asked() -> None:
        with suppress(CountError):
            ask(grid_of("whole", "58", "6", 5, 200))

    assert 100 < calls_of(asked) < 3_000_000
