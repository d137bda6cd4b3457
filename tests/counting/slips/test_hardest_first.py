"""The first slips are heard at the hardest jump in view, and what goes on as the count does comes before what turns back.

Where children slip: the harder parts of counting are where tens and hundreds are crossed (Progressions K-5 NBT, grade 2);
that the largest place comes first, and what is heard aloud before what is only written: common practice, no source.
"""

from fractions import Fraction
from random import Random

import pytest

from routines.counting import Count, Grid, Slip, likely_slips

FIRST, GRIDS = 3, 250


def slips_of(kind: str, start: str, step: str, terms: int, level: int) -> list[Slip]:
    return likely_slips(Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), 4), level)


@pytest.mark.parametrize(
    ("start", "step", "terms", "level", "due", "heard"),
    [
        ("5", "5", 24, 1, {"100", "105"}, {"ninety-ten", "105"}),
        ("7", "10", 15, 1, {"107"}, {"98", "100", "200"}),
        ("16", "6", 20, 2, {"100", "22"}, {"99", "101"}),
        ("7", "7", 16, 3, {"105", "70"}, {"104", "106"}),
    ],
)
def test_a_count_past_a_hundred_foresees_first_what_is_heard_there(
    start: str, step: str, terms: int, level: int, due: set[str], heard: set[str]
) -> None:
    first = slips_of("whole", start, step, terms, level)[:FIRST]
    assert {slip.correct for slip in first} <= due
    assert {slip.heard for slip in first} >= heard


def test_what_the_ruling_names_at_107_comes_before_all_else_what_is_heard_before_what_is_written() -> None:
    slips = slips_of("whole", "7", "10", 15, 1)
    assert [slip.heard for slip in slips[:4]] == ["100", "98", "200", "1007"]


def largest_crossed(before: Fraction, due: Fraction) -> int:
    """The largest power of ten, from ten on, of which another one is begun, filled or left between two whole numbers."""
    return max((10**k for k in range(1, 7) if before // 10**k != due // 10**k or before % 10**k == 0), default=0)


@pytest.mark.parametrize("seed", range(GRIDS))
def test_the_hardest_jump_of_a_count_up_by_few_is_among_the_first(seed: int) -> None:
    random = Random(seed)
    start, step = random.randrange(1, 400), random.randrange(1, 10)
    grid = Grid(Count("whole", Fraction(start), Fraction(step), random.randrange(8, 40)), 4)
    value = grid.count.value
    crossed = {n: largest_crossed(value(n - 1), value(n)) for n in range(2, grid.terms + 1)}
    hardest = {n for n, size in crossed.items() if size == max(crossed.values())}
    slips = likely_slips(grid, random.randrange(9))
    assert hardest & {slip.n for slip in slips[:FIRST]}, (grid, slips[:FIRST])


@pytest.mark.parametrize("seed", range(GRIDS))
def test_what_stays_or_goes_the_wrong_way_comes_after_what_goes_on(seed: int) -> None:
    """For jumps that are worked out: not by one of a place, whose digits go round aloud, and not in a count past zero."""
    random = Random(seed)
    step = random.choice([n for n in range(2, 90) if n not in (10,)])
    start = random.randrange(300, 2000)
    down = random.random() < 0.5
    terms = random.randrange(6, 24) if not down else min(24, start // step)
    grid = Grid(Count("whole", Fraction(start), Fraction(-step if down else step), terms), 3)
    slips = likely_slips(grid, random.randrange(3, 9))
    once = {slip.rule: slip for slip in reversed(slips)}
    featured = [slip for slip in slips[:FIRST] if goes_back(grid, slip)]
    onward = [slip for slip in once.values() if not goes_back(grid, slip) and slip.rule not in ("J08", "J09")]
    assert not featured or len(onward) < FIRST + 3, (grid, featured)


def goes_back(grid: Grid, slip: Slip) -> bool:
    said = slip.heard.replace(",", "")
    if slip.of_writing or not said.isdigit() or slip.rule in ("J04", "J05"):
        return False
    return (int(said) - grid.count.value(slip.n - 1)) * grid.count.step <= 0


def test_where_digits_go_round_it_is_still_heard_first() -> None:
    assert ("304", "404") in {(slip.heard, slip.correct) for slip in slips_of("whole", "374", "10", 12, 2)[:FIRST]}
    assert ("29", "19") in {(slip.heard, slip.correct) for slip in slips_of("whole", "20", "-1", 20, 0)[:FIRST]}


def test_before_the_tables_only_what_is_counted_in_class_takes_over() -> None:
    for level in (1, 2):
        assert "18" not in {slip.heard for slip in slips_of("whole", "16", "6", 12, level) if slip.correct == "22"}
        assert {"40"} & {slip.heard for slip in slips_of("whole", "37", "5", 12, level) if slip.correct == "42"}
    assert "18" in {slip.heard for slip in slips_of("whole", "16", "6", 12, 3) if slip.correct == "22"}
