"""Starts and steps as runs: numbers that go up by the same amount, never listed before they are wanted."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

Runs = Sequence[range]


def how_many_in(runs: Runs) -> int:
    """Count what is in the runs, twice where two share it; `len` gives up beyond 2^63.

    >>> how_many_in([range(0, 10, 3), range(5, 5)])
    4
    """
    return sum(max(0, -((run.start - run.stop) // run.step)) for run in runs)


def held_by(runs: Runs, number: int) -> bool:
    """Say whether one of the runs has the number."""
    return any(number in run for run in runs)


def just(numbers: Iterable[int]) -> list[range]:
    """Give numbers that go up by no one amount, each as a run of its own."""
    return [range(number, number + 1) for number in numbers]


def mirrored(run: range) -> range:
    """Give the run of the opposite numbers.

    >>> mirrored(range(2, 9, 3))
    range(-8, -1, 3)
    """
    return range(-run[-1], 1 - run[0], run.step) if run else run


def nearest_first(run: range, middle_twice: int) -> Iterator[range]:
    """Give a run in two, each beginning nearest the middle and going away from it.

    >>> list(nearest_first(range(0, 10, 3), 8))
    [range(3, -1, -3), range(6, 10, 3)]
    """
    here = min(max((middle_twice // 2 - run.start) // run.step + 1, 0), how_many_in([run]))
    if here:
        yield range(run.start + (here - 1) * run.step, run.start - 1, -run.step)
    if run.start + here * run.step < run.stop:
        yield range(run.start + here * run.step, run.stop, run.step)
