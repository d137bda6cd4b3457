"""Rulings 1 to 4: terms and cells, blocks, what can be seen, and what happens when the count goes on."""

from typing import Any

import pytest

from routines.counting import CountError, Grid, find_patterns

from .asking import grid, life, listed, pattern, verdict


class TestTermsAndCells:
    def test_landmarks_and_tables_count_terms_and_not_cells(self) -> None:
        # . . 2 4 / 6 8 10 12 / 14 16 18 20: the first ten is the 5th term, though it stands in the 7th cell.
        view = grid("2", "2", 10, 4, lead=2)
        assert listed(view, "landmarks", multiple="10")[0]["first"] == 5
        assert listed(view, "table") == [{"family": "table", "step": "2"}]

    def test_lead_cells_belong_to_no_line(self) -> None:
        # . . 2 4 / 6 8 10 12 / 14 16 18 20: column 1 begins with 6.
        view = grid("2", "2", 10, 4, lead=2)
        assert view.lines("column") == ((3, 7), (4, 8), (1, 5, 9), (2, 6, 10))
        assert view.lines("row") == ((1, 2), (3, 4, 5, 6), (7, 8, 9, 10))

    @pytest.mark.parametrize("lead", [-1, 4, 5, 1.0, "1", None, True])
    def test_a_lead_is_at_least_0_and_below_the_line_length(self, lead: Any) -> None:
        with pytest.raises(CountError) as refused:
            grid("2", "2", 10, 4, lead=lead)
        assert refused.value.field == "lead"

    def test_a_line_may_be_as_long_as_there_are_terms_whatever_the_lead(self) -> None:
        view = grid("2", "2", 6, 6, lead=5)
        assert (view.rows, view.columns) == (2, 6)
        assert [view.place(n) for n in (1, 2, 6)] == [(1, 6), (2, 1), (2, 5)]
        with pytest.raises(CountError) as refused:
            grid("2", "2", 6, 7)
        assert refused.value.field == "line_length"

    def test_a_cut_grid_may_have_fewer_terms_than_a_line(self) -> None:
        assert find_patterns(grid("2", "2", 12, 6), upto=3)

    def test_what_fails_in_view_is_false_and_not_claimed_up_to_there(self) -> None:
        # 9 18 27 36 45 54 63 72 81 90 | 99: the eleventh adds to 18.
        ten, twenty = grid("9", "9", 10, 5), grid("9", "9", 20, 5)
        assert pattern(ten, "digit-sum", along="count").breaks_at == 11
        assert listed(twenty, "digit-sum", along="count", implied=True) == []
        assert life(twenty, "digit-sum", along="count", blocks=[[9]]) == (False, None, 11)


class TestBlocks:
    def test_blocks_are_numbered_as_the_lines_on_the_page(self) -> None:
        # Filled upwards: 14 16 18 / 8 10 12 / 2 4 6. Row 1 is the top one, so its block stands first.
        view = grid("2", "2", 9, 3, fill="across-up")
        claim = listed(view, "remainder", modulus="6", along="row", implied=True)
        assert claim == []  # rows of three show no block of three twice
        rows = grid("2", "2", 18, 6, fill="across-up")  # 26 ... 36 / 14 ... 24 / 2 4 6 8 10 12
        assert listed(rows, "remainder", modulus="4", along="row", implied=True)[0]["blocks"] == [["2", "0"]] * 3

    def test_columns_of_an_upward_grid_are_read_upwards(self) -> None:
        # 38 43 / 28 33 / 18 23 / 8 13: tens in column 1 from the bottom 0, 1, 2, 3; in pairs of remainders by 20: 8, 18.
        view = grid("8", "5", 8, 2, fill="across-up")
        assert listed(view, "remainder", modulus="20", along="column")[0]["blocks"] == [["8", "18"], ["13", "3"]]
        assert listed(view, "digit-run", place=1, along="column")[0]["change"] == 1

    def test_all_blocks_have_the_smallest_length_that_works_for_all_lines(self) -> None:
        # 1 2 1 2 ... by ones digits: 5 10 15 20 / 25 30 35 40: rows of 5, 0.
        view = grid("5", "5", 8, 4)
        assert listed(view, "digit", place=0, along="row", implied=True)[0]["blocks"] == [[5, 0], [5, 0]]

    def test_a_line_with_fewer_cells_than_the_block_lists_just_those(self) -> None:
        # 3 6 9 12 / 15 18 21 24 / 27: the last row holds one cell of the block odd, even.
        view = grid("3", "3", 9, 4)
        assert listed(view, "remainder", modulus="2", along="row", implied=True)[0]["blocks"] == [
            ["1", "0"],
            ["1", "0"],
            ["1"],
        ]

    def test_a_wrong_number_of_blocks_is_false_and_no_error(self) -> None:
        view = grid("3", "3", 9, 4)
        for blocks in ([["1", "0"]], [["1", "0"]] * 2, [["1", "0"]] * 4):
            assert not verdict(view, "remainder", modulus=2, along="row", blocks=blocks).true
        assert not verdict(view, "remainder", modulus=2, along="count", blocks=[["1", "0"], ["1", "0"]]).true

    def test_lines_of_one_cell_are_consulted_too(self) -> None:
        # 20 21 22 23 / 24: the last row says 2 as well; with 3 it is false.
        view = grid("20", "1", 5, 4)
        assert verdict(view, "digit", place=1, along="row", blocks=[[2], [2]]).true
        assert not verdict(view, "digit", place=1, along="row", blocks=[[2], [3]]).true


SEEN = [
    # family, parameters, the fewest terms of 2 4 6 ... in rows of 4 with which the claim can be seen
    ("step", {"difference": 2}, 2),
    ("table", {"step": 2}, 2),
    ("neighbour", {"direction": "right", "difference": 2}, 3),  # pairs 2-4 and 4-6
    ("neighbour", {"direction": "down", "difference": 8}, 6),  # 2-10 and 4-12
    ("neighbour", {"direction": "down-left", "difference": 6}, 6),  # 4-10 and 6-12
    ("neighbour", {"direction": "down-right", "difference": 10}, 7),  # 2-12 and 4-14
    ("remainder", {"modulus": 4, "along": "count", "length": 2}, 4),  # 2 0 2 0
    ("remainder", {"modulus": 4, "along": "column", "length": 1}, 5),  # 2 over 10
    ("sums", {"which": "ends"}, 4),
    ("sums", {"which": "block-corners"}, 6),  # 2 4 over 10 12
    ("sums", {"which": "centre-mean"}, 11),  # 2 4 6 / 10 12 14 / 18 20 22
    ("sums", {"which": "line-totals", "along": "row"}, 8),  # two full rows
    ("sums", {"which": "line-totals", "along": "column"}, 6),  # columns 1 and 2 hold two cells each
]


@pytest.mark.parametrize(("family", "parameters", "least"), SEEN)
def test_what_is_needed_to_be_seen(family: str, parameters: dict[str, Any], least: int) -> None:
    view = grid("2", "2", 24, 4)
    seen = {n: verdict(view.cut(n), family, **parameters).seen for n in range(1, 13)}
    assert min(n for n, is_seen in seen.items() if is_seen) == least
    assert verdict(view.cut(least - 1), family, **parameters).true


def test_a_digit_run_needs_three_cells_and_a_change() -> None:
    view = grid("11", "11", 8, 2)  # 11 22 / 33 44 / 55 66 / 77 88
    run = {"place": 1, "along": "column", "change": 2}
    assert not verdict(view.cut(4), "digit-run", **run).seen
    assert verdict(view.cut(5), "digit-run", **run).seen
    still = verdict(grid("10", "10", 8, 4), "digit-run", place=0, along="count", change=0)
    assert (still.true, still.seen) == (True, False)


class TestGoingOn:
    def test_the_tens_of_each_row_are_shown_or_always_by_where_the_rows_begin(self) -> None:
        # 12 14 16 18 / 20 22 24 26 / 28 30: the third row leaves its ten with the 10th count.
        short = pattern(grid("12", "2", 8, 4), "digit", place=1, along="row")
        assert (short.claim.parameters.get("blocks"), short.holds, short.breaks_at) == (((1,), (2,)), "shown", 10)
        # 20 ... 29 / 30 ... 39: every later row is a whole ten.
        tens = pattern(grid("20", "1", 20, 10), "digit", place=1, along="row")
        assert (tens.holds, tens.breaks_at) == ("always", None)

    def test_a_later_line_repeats_with_the_same_length_whatever_its_digits(self) -> None:
        # Tens in rows 20 ... 29, 30 ... 39, and so on: 100 ... 109 have the tens digit 0, still one for the row.
        assert life(grid("20", "1", 20, 10), "digit", place=1, along="row", length=1) == (True, "always", None)
        # 95 96 97 98 99 | 100 ...: rows of 5 keep their tens for ever, since 5 divides 10.
        assert life(grid("95", "1", 10, 5), "digit", place=1, along="row", length=1) == (True, "always", None)

    def test_whole_numbers_go_on_below_zero(self) -> None:
        # 20 18 16 ... 2 0 | -2 -4: even all the way.
        assert life(grid("20", "-2", 8, 4), "remainder", modulus=2, along="count", blocks=[["0"]]) == (
            True,
            "always",
            None,
        )

    def test_measures_and_money_go_on_below_zero_too_though_not_in_view(self) -> None:
        # $1.00 $0.75 $0.50 $0.25 | $0.00 -$0.25: cents 0, 75, 50, 25 written, then 0, 25 where 75 is due (the 6th).
        cents = verdict(grid("$1.00", "-$0.25", 4, 2, "money"), "digit", part="cents", along="count", length=4)
        assert (cents.true, cents.breaks_at) == (True, 6)
        rests = verdict(grid("$1.00", "-$0.25", 4, 2, "money"), "remainder", modulus=100, along="count", length=4)
        assert (rests.holds, rests.breaks_at) == ("always", None)

    def test_the_bounds_of_the_view_do_not_bound_what_is_proved(self) -> None:
        # 999,999,000 by 500 reaches 10^9 with the 3rd count; the claim goes on past it: hundreds 0, 5, 0, 5 ...
        view = grid("999,999,000", "500", 3, 3)
        hundreds = verdict(view, "digit", place=2, along="count", blocks=[[0, 5]])
        assert (hundreds.true, hundreds.seen, hundreds.holds) == (True, False, "always")
        # The millions digit 9 gives way to 0 with the 3rd count, 1,000,000,000, in view.
        assert verdict(view, "digit", place=6, along="count", blocks=[[9]]).breaks_at == 3
        # Past 200 terms: 1, 2, 3 ...: the hundreds digit is 0 up to 99 and 1 with the 100th count.
        assert verdict(grid("1", "1", 50, 10), "digit", place=2, along="count", blocks=[[0]]).breaks_at == 100
        assert verdict(grid("1", "1", 50, 10), "digit", place=3, along="count", blocks=[[0]]).breaks_at == 1000

    def test_a_claim_is_true_of_the_grid_that_ends_one_term_before_it_breaks(self) -> None:
        before, after = grid("12", "2", 9, 4), grid("12", "2", 10, 4)
        assert life(before, "digit", place=1, along="row", length=1) == (True, "shown", 10)
        assert life(after, "digit", place=1, along="row", length=1) == (False, None, 10)

    def test_a_line_begun_later_keeps_the_change_of_a_digit_run(self) -> None:
        # 11 22 33 / 44 55 66 / 77 88 99 | 110 121 132: in row 4 tens go 1, 2, 3: up 1 again. In row 5 (143 154 165)
        # 4, 5, 6; row 6 (176 187 198): 7, 8, 9; row 7 (209 220 231): 0, 2 is up 2, with the 20th count.
        view: Grid = grid("11", "11", 9, 3)
        assert life(view, "digit-run", place=1, along="row", change=1) == (True, "shown", 20)
        # Ones digits: row 4 (110 121 132) 0, 1, 2; row 7 (209 220 231) 9, 0: down 9, with the 20th count.
        assert life(view, "digit-run", place=0, along="row", change=1) == (True, "shown", 20)
        # Along the count the ones digit falls from 9 (99) to 0 (110) with the 10th count.
        assert life(view, "digit-run", place=0, along="count", change=1) == (True, "shown", 10)
