"""The three slips that a teacher reads first: at more than one count, heard before written, one other name at most.

Common practice, no source.
"""

from collections.abc import Iterator
from random import Random

import pytest

from routines.counting import Audience, Count, Grid, Slip, likely_slips
from routines.counting.slips.foreseeing import AREAS, ONE_SLIP, jumps_of
from routines.counting.slips.reading import value_of
from tests.counting.random_grids import any_grid

FIRST = 3
LEARNING_TO_COUNT = 2
WEIGHTS = {rule.id: rule.weight for area in AREAS for rule in area.rules}
SAID_OTHERWISE = ("S03", "S04", "S05", "S06", "S07")
GRIDS = 300


def some_grids(seed: int) -> Iterator[tuple[Grid, Audience, list[Slip]]]:
    random = Random(seed)
    for _ in range(GRIDS // 10):
        grid, audience = any_grid(random), Audience(random.randrange(9), random.choice(("en", "es")))
        yield grid, audience, likely_slips(grid, audience=audience)


def goes_on(slip: Slip, grid: Grid) -> bool:
    """Whether a slip is likely, and leads on from the count before; what cannot be read as a number does."""
    said = value_of(grid.count, slip.heard) if grid.count.wrap is None else None
    onward = said is None or (said - grid.count.value(slip.n - 1)) * grid.count.step > 0
    return WEIGHTS[slip.rule] > 0 and onward


def once(slips: list[Slip]) -> list[Slip]:
    """Each slip where it comes first."""
    seen: dict[str, Slip] = {}
    for slip in slips:
        seen.setdefault(ONE_SLIP.get(slip.rule, slip.rule), slip)
    return list(seen.values())


@pytest.mark.parametrize("seed", range(10))
def test_one_of_them_at_most_is_another_name_where_there_are_slips_enough(seed: int) -> None:
    for grid, _, slips in some_grids(seed):
        names = [slip for slip in slips[:FIRST] if slip.equal_name]
        likely = [slip for slip in once(slips) if goes_on(slip, grid) and not slip.equal_name]
        assert len(names) <= 1 or len(likely) < FIRST - 1, (grid, slips[:FIRST])


@pytest.mark.parametrize("seed", range(10))
def test_to_second_grade_what_is_heard_comes_before_what_is_only_written(seed: int) -> None:
    for grid, audience, slips in some_grids(seed):
        if audience.level <= LEARNING_TO_COUNT:
            written = [slip for slip in slips[:FIRST] if is_written(slip)]
            heard = [
                slip for slip in once(slips) if goes_on(slip, grid) and not is_written(slip) and not slip.equal_name
            ]
            assert not written or len(heard) < FIRST, (grid, slips[:FIRST])


def is_written(slip: Slip) -> bool:
    return slip.of_writing and not slip.equal_name and slip.rule not in SAID_OTHERWISE


@pytest.mark.parametrize("seed", range(10))
def test_they_are_not_all_at_one_count_where_another_is_as_hard_for_one_that_is_as_likely(seed: int) -> None:
    for grid, audience, slips in some_grids(seed):
        first = slips[:FIRST]
        if len(first) < FIRST or len({slip.n for slip in first}) > 1 or not all(goes_on(slip, grid) for slip in first):
            continue
        at = jumps_of(grid)[first[0].n - 2].how_hard()
        third = ONE_SLIP.get(first[-1].rule, first[-1].rule)
        elsewhere = [
            slip
            for slip in slips[FIRST:]
            if ONE_SLIP.get(slip.rule, slip.rule) == third
            and slip.n != first[0].n
            and slip.heard not in {one.heard for one in first}
            and jumps_of(grid)[slip.n - 2].how_hard() == at != (False, 0)
        ]
        assert not elsewhere, (grid, audience, first, elsewhere)


@pytest.mark.parametrize(
    ("kind", "start", "step", "terms", "level", "due"),
    [
        ("whole", "66", "-2", 20, 1, {"60", "58"}),
        ("whole", "115", "-5", 20, 2, {"100", "95"}),
        ("whole", "5", "5", 24, 1, {"100", "105"}),
        ("whole", "27", "1", 24, 0, {"30", "50"}),
        ("whole", "10", "10", 12, 0, {"100", "110"}),
        ("clock", "9:05 a.m.", "5 min", 24, 2, {"10:00 a.m.", "11:00 a.m."}),
        ("capacity", "3/4 cup", "3/4 cup", 16, 5, {"1 2/4 cups", "2 1/4 cups"}),
    ],
)
def test_where_two_jumps_are_hard_both_have_one(
    kind: str, start: str, step: str, terms: int, level: int, due: set[str]
) -> None:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), 4)
    assert {slip.correct for slip in likely_slips(grid, level)[:FIRST]} == due
    assert len({slip.correct for slip in likely_slips(grid, audience=Audience(level, "es"))[:FIRST]}) > 1


def test_a_slip_stands_beside_what_is_right_by_another_name() -> None:
    for level in (3, 4, 5):
        first = likely_slips(Grid(Count.parse(kind="fraction", start="3/8", step="3/8", terms=16), 4), level)[:FIRST]
        assert [slip.equal_name for slip in first].count(True) == 1


def test_where_the_hundred_is_crossed_once_all_are_there() -> None:
    """Nothing else on the board is hard, so nothing is spread out."""
    first = likely_slips(Grid(Count.parse(kind="whole", start="240", step="100", terms=16), 4), 2)[:FIRST]
    assert {slip.correct for slip in first} == {"1,040"}
