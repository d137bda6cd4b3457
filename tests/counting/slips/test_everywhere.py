"""Every kind, level and direction has slips to foresee, and what is foreseen is heard under the same name.

The ruling on classifying asks for both. Which slips: common practice, no source, unless the rule says otherwise.
"""

from itertools import product

import pytest

from routines.counting import Count, CountError, Grid, likely_slips
from tests.counting.slips.foreseen_and_heard import some_foreseen

LEVELS = range(9)
FEWEST = 3
TERMS = (4, 12)
# Starts and steps as they are typed; the same going down.
COUNTS = {
    "whole": (("0", "1", "7", "15", "96", "100", "1,325"), ("1", "2", "3", "5", "7", "10", "12", "25", "100", "1,000")),
    "decimal": (("0", "0.1", "2.7", "5.97", "12.5"), ("0.1", "0.3", "0.25", "0.01", "1.5", "2")),
    "fraction": (("0", "1/8", "2/3", "3 1/5", "4 1/2"), ("1/8", "1/3", "3/4", "1 1/2", "2")),
    "length": (("10 in", "1 ft 3 in", "70 cm", "2 m 15 cm", "3 yd"), ("4 in", "9 in", "1 ft", "10 cm", "15 cm", "1 m")),
    "mass": (("6 oz", "2 lb 6 oz", "850 g", "1 kg 50 g"), ("3 oz", "6 oz", "1 lb", "50 g", "100 g", "125 g")),
    "capacity": (("150 mL", "1 L 700 mL", "2 gal 1 qt", "1 pt"), ("50 mL", "150 mL", "250 mL", "1 qt", "1 pt")),
    "money": (("5c", "$0.35", "$2.85", "$10"), ("1c", "5c", "10c", "25c", "$0.75", "$2")),
    "clock": (("8:00", "10:50", "2:30", "7:05"), ("1 min", "5 min", "20 min", "30 min", "60 min", "75 min")),
    "elapsed": (("50 min", "1 h 35 min", "3 h"), ("5 min", "20 min", "35 min", "45 min", "1 h")),
}


def counts(kind: str, *, down: bool) -> list[Count]:
    """The counts of a kind that can be shown; those down start high enough where nothing is measured below zero."""
    found = []
    for start, step, terms in product(*COUNTS[kind], TERMS):
        try:
            up = Count.parse(kind=kind, start=start, step=step, terms=terms)
            found.append(Count(up.kind, up.value(terms), -up.step, terms, up.style) if down else up)
        except CountError:  # Two systems of units.
            continue
    return found


@pytest.mark.parametrize("down", [False, True], ids=["up", "down"])
@pytest.mark.parametrize("kind", COUNTS)
def test_every_start_step_level_and_direction_has_three_slips(kind: str, down: bool) -> None:
    tried = counts(kind, down=down)
    assert len(tried) >= 20
    few = {
        (count.text(1), count.difference_text(count.step), count.terms, level): [slip.heard for slip in slips]
        for count in tried
        for level in LEVELS
        if len(slips := likely_slips(Grid(count, 4), level)) < FEWEST
    }
    assert not few, few


@pytest.mark.parametrize(
    ("kind", "start", "step", "level"),
    [("whole", "15", "-5", 5), ("length", "10 in", "4 in", 3), ("capacity", "150 mL", "50 mL", 4)],
)
def test_counts_that_had_none_have_some(kind: str, start: str, step: str, level: int) -> None:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=12), 4)
    assert len({slip.rule for slip in likely_slips(grid, level)}) >= FEWEST


def test_the_whole_is_left_out_counting_back_in_fractions() -> None:
    grid = Grid(Count.parse(kind="fraction", start="4 1/2", step="-1/4", terms=8), 4)
    assert (3, "3 3/4") in {(slip.n, slip.heard) for slip in likely_slips(grid, 4)}


def test_what_is_foreseen_is_heard_under_the_same_name() -> None:
    tally = some_foreseen(2026, 120)
    assert tally.slips > 1000
    assert not tally.otherwise, "\n".join(tally.otherwise)
