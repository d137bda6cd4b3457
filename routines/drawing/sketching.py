"""Which patterns a small drawing lights, and how much of each: a sketch that stays calm.

A card cannot light everything that is true of it. It lights one pattern of each kind at most, and a pattern that lies on
more than half of the grid is shown by one of its groups: one column stands for "each column".
"""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace

from routines.counting import Grid

from .groups import drawn_groups
from .said import SaidPattern

MUCH = 0.5  # of the grid's counts; what covers more is shown by an example


def sketch(grid: Grid, patterns: Iterable[SaidPattern], shown: Collection[int]) -> list[SaidPattern]:
    """Choose the first telling pattern of each kind, reduced to an example where it covers much of the grid.

    shown: the terms that the drawing shows; an example lies wholly in them if one can. A pattern that is one group over
    the whole count ("6 more each time") tells nothing when it is lit, so it is left to the words.
    """
    chosen: dict[bool, SaidPattern] = {}
    taken: set[int] = set()
    for pattern in patterns:
        always = pattern.holds == "always"
        if always in chosen:
            continue
        groups = drawn_groups(pattern)
        cells = {n for group in groups for n in group}
        if len(cells) > MUCH * grid.terms:
            example = _example(groups, taken, shown)
            if example is None:
                continue
            pattern = replace(pattern, groups=(example,))
        chosen[always] = pattern
        taken.update(pattern.cells)
    return list(chosen.values())


def _example(
    groups: Sequence[tuple[int, ...]], taken: Collection[int], shown: Collection[int]
) -> tuple[int, ...] | None:
    """One group for all: clear of what is lit already, wholly in the drawing, as long as any; the first such."""
    if len(groups) < 2:
        return None
    longest = max(map(len, groups))
    full = [group for group in groups if len(group) == longest and all(n in shown for n in group)]
    clear = [group for group in full if not any(n in taken for n in group)]
    return (clear or full or list(groups))[0]
