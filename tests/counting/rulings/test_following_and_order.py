"""Rulings 11 and 28: what is not listed again, and the order of the list and of the designs."""

from typing import Any

from routines.counting import Claim, Grid, Limits, design_grids, find_patterns
from tests.counting.claims import a_claim

from .asking import grid, listed


def only_implied(view: Grid, family: str, **parameters: Any) -> list[dict[str, Any]]:
    said = listed(view, family, **parameters)
    return [claim for claim in listed(view, family, implied=True, **parameters) if claim not in said]


class TestFollowing:
    def test_f1_a_neighbour_whose_pairs_are_consecutive_says_the_step_again(self) -> None:
        across, down = grid("58", "6", 20, 5), grid("58", "6", 20, 5, fill="down")
        assert [c["direction"] for c in only_implied(across, "neighbour")] == ["right"]
        assert [c["direction"] for c in only_implied(down, "neighbour")] == ["down"]
        # In lines of two the cell down and to the left is the next count: 58 64 / 70 76: from 64 to 70.
        pairs = grid("58", "6", 8, 2)
        assert {c["direction"] for c in only_implied(pairs, "neighbour")} == {"right", "down-left"}
        # In one column the next count is the one below.
        assert {c["direction"] for c in only_implied(grid("58", "6", 8, 1), "neighbour")} == {"down"}

    def test_f2_a_block_along_the_count_is_not_said_again_of_rows_that_are_runs(self) -> None:
        # 5 10 15 20 / 25 ...: ones 5, 0 along the count and along each row; the columns are not runs: listed.
        view = grid("5", "5", 16, 4)
        assert [c["along"] for c in only_implied(view, "digit", place=0)] == ["row"]
        columns = listed(view, "digit", place=0, along="column")
        assert columns[0]["blocks"] == [[5], [0], [5], [0]]

    def test_f3_what_is_constant_along_the_count_is_not_said_of_rows_or_columns(self) -> None:
        view = grid("5", "10", 16, 4)
        assert {c["along"] for c in only_implied(view, "digit", place=0)} == {"row", "column"}
        assert [c["along"] for c in listed(view, "digit", place=0)] == ["count"]

    def test_f3_needs_the_broader_one_to_hold_as_long(self) -> None:
        # From 101 by 1 the hundreds are 1 until 200, the 100th count, in columns too. But 200 begins a row of three, so
        # rows go on keeping their hundreds until 298 299 300, with the 200th: not said by the count, so listed.
        assert [c["along"] for c in listed(grid("101", "1", 9, 3), "digit", place=2)] == ["count", "row"]

    def test_f4_a_remainder_says_those_by_its_divisors_with_the_same_length(self) -> None:
        # 7 19 31 ...: always 7 past a multiple of 12: so 3 past 4, 1 past 3, 1 past 6. That all are odd is said before it.
        view = grid("7", "12", 12, 12)
        assert [c["modulus"] for c in listed(view, "remainder", along="count") if len(c["blocks"][0]) == 1] == [
            "2",
            "12",
        ]
        constant = [c["modulus"] for c in only_implied(view, "remainder", along="count") if len(c["blocks"][0]) == 1]
        assert set(constant) == {"3", "4", "6"}
        # By 8 two take turns (7, 3), by 4 it is constant: other lengths do not follow.
        assert [c["blocks"] for c in listed(view, "remainder", modulus="8", along="count")] == [[["7", "3"]]]

    def test_f5_ones_digits_say_remainders_by_ten_five_and_two(self) -> None:
        # 58 64 70 ...: the ones digits repeat every 5; by 10 and by 5 every 5 too (2 is constant: another length).
        view = grid("58", "6", 20, 5)
        assert {c["modulus"] for c in only_implied(view, "remainder", along="count")} >= {"10", "5"}
        # 23 18 13 8 3 -2: below zero the ones digit says nothing of remainders.
        below = grid("23", "-5", 6, 6)
        assert [c["blocks"] for c in listed(below, "remainder", modulus="10", along="count")] == [[["3", "8"]]]

    def test_f5_not_where_the_digit_dies_first(self) -> None:
        # 23 18 13 8 3 | -2: digits end with the 6th, remainders never: listed beside them though all are at least 0.
        view = grid("23", "-5", 5, 5)
        assert listed(view, "remainder", modulus="10", along="count")

    def test_f6_landmarks_of_a_multiple_say_those_of_a_divisor_that_come_as_often(self) -> None:
        # 7 14 21 ... by 7s: tens come every 10th (70), and fives every 5th: both listed; 50s every 50th.
        # 12 24 36 48 60: fives, tens and twenties come together at 60, every 5th: tens say the fives, but twenties do
        # not say the tens, which are friendlier.
        view = grid("12", "12", 20, 4)
        assert [c["multiple"] for c in only_implied(view, "landmarks") if c["every"] == 5] == ["5"]
        assert [c["multiple"] for c in listed(view, "landmarks") if c["every"] == 5] == ["10", "20"]

    def test_f6_asks_what_the_kind_reads_by_not_what_this_count_goes_round_by(self) -> None:
        # 0, 1 1/5 in, 2 2/5 in ...: every fifth is a whole inch and half a foot, and half a foot is the friendlier.
        view = grid("0 in", "1 1/5 in", 20, 12, kind="length")
        assert [c["multiple"] for c in only_implied(view, "landmarks") if c["every"] == 5] == ["1"]
        assert "6" in [c["multiple"] for c in listed(view, "landmarks")]

    def test_f7_a_run_along_the_count_is_not_said_again_of_rows(self) -> None:
        # 11 22 33 / 44 55 66: tens up 1 along the count and along rows (which are runs); columns up 3: listed.
        view = grid("11", "11", 9, 3)
        runs = listed(view, "digit-run", place=1)
        assert {(c["along"], c["change"]) for c in runs} >= {("count", 1), ("column", 3)}

    def test_nothing_else_follows(self) -> None:
        view = grid("5", "10", 16, 4)
        families = {p.claim.family for p in find_patterns(view)}
        assert families >= {"step", "neighbour", "sums", "digit", "remainder", "how-many"}
        assert {c["direction"] for c in listed(view, "neighbour")} == {"down", "down-right", "down-left"}
        assert {c["which"] for c in listed(view, "sums")} == {"block-corners", "ends", "centre-mean", "line-totals"}
        # The mean of nine and both line totals follow from the corners only in the mind of a mathematician.
        assert len(listed(view, "sums")) == 5


def kinds_of(view: Grid) -> list[str]:
    """The classes of the house order as they come in the list, each once."""
    return list(dict.fromkeys(class_of(p.claim, view) for p in find_patterns(view)))


def class_of(claim: Claim, view: Grid) -> str:
    family = claim.family
    if family == "neighbour":
        along = "down" if view.fill == "down" else "right"
        straight = {"right": "down", "down": "right"}[along]
        direction = claim.parameters.get("direction")
        return {along: "along the fill", straight: "across the fill"}.get(direction, "other neighbours")
    if family == "landmarks":
        return "scattered" if claim.parameters.get("lie") == "scattered" else "landmarks in line"
    if family in ("digit", "remainder"):
        return {1: "constant", 2: "twos"}.get(claim.block_length or 0, "longer")
    return family


AS_MET = [10, 100, 1000, 2, 5, 25, 50, 20, 3, 4, 6, 8, 9, 7, 11, 12]

HOUSE_ORDER = [
    "step", "along the fill", "across the fill", "landmarks in line", "constant", "twos", "longer", "digit-run",
    "how-many", "digit-sum", "table", "other neighbours", "sums", "opposites", "scattered",
]  # fmt: skip


class TestOrderOfPatterns:
    def test_every_list_keeps_the_order_of_the_house(self) -> None:
        views = [
            grid("58", "6", 20, 5),
            grid("58", "6", 20, 5, fill="down"),
            grid("-7", "2", 16, 4),
            grid("9", "9", 10, 5),
            grid("11", "11", 9, 3),
            grid("1 ft 3 in", "9 in", 12, 4, "length"),
            grid("10:50", "20 min", 12, 3, "clock"),
        ]
        seen: set[str] = set()
        for view in views:
            order = kinds_of(view)
            assert order == sorted(order, key=HOUSE_ORDER.index)
            seen |= set(order)
        assert seen == set(HOUSE_ORDER) - {"along the fill"}  # which follows from the step

    def test_ties_go_by_coarser_place_then_by_the_multiple_that_is_met_first(self) -> None:
        # Columns of 1,325 by -50 keep several digits: thousands before hundreds before tens.
        for view in (grid("5", "100", 12, 4), grid("1,325", "-50", 16, 4), grid("58", "6", 20, 5)):
            patterns = find_patterns(view, implied=True)
            for name, length in (("constant", 1), ("twos", 2)):
                places = [
                    p.claim.parameters.get("place")
                    for p in patterns
                    if p.claim.family == "digit" and p.claim.block_length == length and class_of(p.claim, view) == name
                ]
                assert places == sorted(places, reverse=True)
            for family in ("remainder", "landmarks", "how-many"):
                for name in HOUSE_ORDER:
                    multiples = [
                        int(str(p.claim.parameters.get("modulus") or p.claim.parameters.get("multiple")))
                        for p in patterns
                        if p.claim.family == family and class_of(p.claim, view) == name
                    ]
                    assert multiples == sorted(multiples, key=AS_MET.index), (family, name)

    def test_a_longer_block_of_a_coarser_place_comes_before_a_shorter_one_of_a_finer(self) -> None:
        # 0 4 8 ... by 4: ones repeat every 5, tens every 25: the tens, being coarser, come first.
        view = grid("0", "4", 60, 60)
        longer = [
            p.claim.parameters.get("place")
            for p in find_patterns(view)
            if class_of(p.claim, view) == "longer" and p.claim.family == "digit"
        ]
        assert longer == [1, 0]


class TestOrderOfDesigns:
    def test_boards_of_sixty_cells_come_first_then_the_start_nearest_the_middle(self) -> None:
        # Counts by 5 in rows of 5, starts 0 to 8: nothing else differs, so 4 (the middle), then 3, 5, then 2, 6 ...
        limits = Limits(
            kind="whole", starts=(0, 8), steps=(7, 7), line_lengths=(4, 4), terms=(12, 12), fills=("across",)
        )
        starts = [int(design.count.start) for design in design_grids([a_claim("step", difference=7)], limits).grids]
        assert starts == [4, 3, 5, 2, 6, 1, 7, 0, 8]

    def test_a_grid_that_fits_a_board_comes_before_one_that_does_not(self) -> None:
        limits = Limits(
            kind="whole", starts=(7, 7), steps=(1, 1), line_lengths=(8, 8), terms=(60, 66), fills=("across",)
        )
        grids = design_grids([a_claim("step", difference=1)], limits).grids
        fits = [design.rows * design.columns <= 60 for design in grids]
        assert fits == sorted(fits, reverse=True)
