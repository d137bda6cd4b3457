"""What tapped cells have in common."""

from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, CountError, Grid, Pattern, explain_cells
from routines.counting.checking import judge
from tests.counting.random_grids import FILLS, KINDS, grid_of


def grid(start: str, step: str, terms: int, length: int, kind: str = "whole") -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


def explained(view: Grid, *texts: str) -> list[Pattern]:
    return explain_cells(view, [n for n in range(1, view.terms + 1) if view.count.text(n) in texts])


def test_multiples_that_are_nobodys_friend_are_found_too() -> None:
    best = explained(grid("1", "1", 60, 10), "13", "26", "39")[0]
    assert (best.claim.parameters.get("multiple"), best.cells) == (13, (13, 26, 39, 52))


def test_cells_that_end_alike_are_said_to_end_alike() -> None:
    patterns = explained(grid("3", "4", 25, 7), "7", "27", "47")  # ones digits 3 7 1 5 9, over and over
    assert any(p.claim.parameters.get("place") == 0 and set(p.cells) >= {2, 7, 12} for p in patterns)


def test_every_thirteenth_count_is_a_remainder_of_thirteen_jumps() -> None:
    patterns = explained(grid("5", "7", 40, 9), "12", "103", "194")  # the 2nd, 15th and 28th
    assert any(p.claim.parameters.get("modulus") == 91 for p in patterns)


def test_a_friendlier_number_explains_before_what_so_many_jumps_make() -> None:
    # The 2nd, 6th and 10th are every 4th: 12 past a multiple of 28, but a class says multiples of 4.
    patterns = explained(grid("5", "7", 40, 9), "12", "40", "68")
    assert [p.claim.parameters.get("modulus") for p in patterns if p.claim.family == "remainder"] == [4]


def test_one_column_may_keep_what_the_others_do_not() -> None:
    view = grid("14", "-6", 20, 5)  # column 4 holds -4 -34 -64 -94
    patterns = explained(view, "-4", "-34", "-64")
    kept = next(p for p in patterns if p.claim.family == "digit")
    assert (kept.claim.parameters.get("lines"), kept.claim.parameters.get("blocks"), kept.holds) == (
        (4,),
        ((4,),),
        "always",
    )


def test_a_diagonal_is_a_neighbour_again_and_again() -> None:
    patterns = explained(grid("1", "1", 30, 6), "2", "9", "16", "23")
    assert any(p.claim.parameters.get("direction") == "down-right" for p in patterns)


def test_opposites_are_named() -> None:
    assert explained(grid("-6", "2", 10, 5), "-4", "4")[0].claim.family == "opposites"


def test_cells_with_nothing_in_common_get_no_explanation_that_does_not_hold_for_all() -> None:
    for pattern in explained(grid("58", "6", 20, 5), "58", "64", "88"):
        assert set(pattern.cells) >= {1, 2, 6}


@pytest.mark.parametrize("cells", [[0], [21], [True], ["3"], [2.0]])
def test_a_cell_that_is_not_in_view_is_refused(cells: list[int]) -> None:
    with pytest.raises(CountError) as error:
        explain_cells(grid("58", "6", 20, 5), cells)
    assert error.value.field == "n"


def test_no_cells_have_nothing_to_explain() -> None:
    assert explain_cells(grid("58", "6", 20, 5), []) == []


@given(st.integers(0, 2**32), st.sampled_from(KINDS), st.sampled_from(FILLS))
def test_explanations_are_few_true_and_hold_every_tapped_cell(seed: int, kind: str, fill: str) -> None:
    random = Random(seed)
    view = grid_of(random, kind, fill, down=random.random() < 0.5)
    cells = random.sample(range(1, view.terms + 1), random.randint(1, min(5, view.terms)))
    patterns = explain_cells(view, cells)
    assert len(patterns) <= 3
    assert len({pattern.claim.family for pattern in patterns}) == len(patterns)
    for pattern in patterns:
        assert set(cells) <= set(pattern.cells)
        assert pattern.groups == (pattern.cells,)
        _, judged = judge(pattern.claim, view)
        assert (judged.true, judged.holds, judged.breaks_at) == (True, pattern.holds, pattern.breaks_at)


def test_one_cell_alone_is_told_by_what_is_most_noticeable() -> None:
    assert explained(grid("58", "6", 20, 5), "70")[0].claim.parameters.get("multiple") == 10


def test_on_a_clock_only_what_comes_again_all_times_round_is_in_common() -> None:
    view = grid("3:10", "-50 min", 16, 4, "clock")  # 2:20 and 8:30: multiples of 70 minutes only as they stand
    assert not [p for p in explain_cells(view, [2, 9]) if p.claim.family == "landmarks"]
    every_other = explain_cells(grid("8:20", "25 min", 16, 4, "clock"), [1, 3])  # 8:20 and 9:10
    assert {p.claim.parameters.get("multiple") for p in every_other if p.claim.family == "landmarks"} == {10}


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("seed", range(6))
def test_whatever_is_in_common_can_be_checked(kind: str, seed: int) -> None:
    random = Random(f"{kind}{seed}")
    view = grid_of(random, kind, random.choice(FILLS))
    for pattern in explain_cells(view, random.sample(range(1, view.terms + 1), min(2, view.terms))):
        assert judge(pattern.claim, view)[1].true


@pytest.mark.parametrize("cells", [None, 5, "12", [[1]], ["1"], [1.0], [True], [0], [21]])
def test_what_is_no_term_is_refused(cells: object) -> None:
    with pytest.raises(CountError) as refused:
        explain_cells(grid("58", "6", 20, 5), cells)  # type: ignore[arg-type]
    assert refused.value.field == "n"
