"""Rulings 10 and 22: sums on the page, and opposites."""

import pytest

from .asking import grid, life, listed, pattern, verdict


class TestLineTotals:
    def test_rows_of_a_full_grid(self) -> None:
        # 1 ... 5 = 15, 6 ... 10 = 40, 11 ... 15 = 65
        found = pattern(grid("1", "1", 15, 5), "sums", which="line-totals", along="row")
        assert (found.claim.as_dict()["difference"], found.holds) == ("25", "always")

    def test_a_ragged_last_line_is_not_full(self) -> None:
        # 1 2 3 4 / 5 6 7 8 / 9 10: rows 10, 26; columns 1 and 2 are full (15, 18), 3 and 4 are not.
        view = grid("1", "1", 10, 4)
        assert listed(view, "sums", which="line-totals", along="row")[0]["difference"] == "16"
        columns = pattern(view, "sums", which="line-totals", along="column")
        assert (columns.claim.as_dict()["difference"], columns.groups) == ("3", ((1, 5, 9), (2, 6, 10)))
        # 3 fill lines are begun: two longer columns, of four cells, are full again at term 3 x 4 + 2.
        assert columns.breaks_at == 14

    def test_across_the_fill_totals_break_when_two_longer_lines_are_full(self) -> None:
        # 3 rows of 5: columns 5 apart in totals by 3 ones; with 16 and 17 columns 1 and 2 hold four cells: 4 apart.
        columns = pattern(grid("1", "1", 15, 5), "sums", which="line-totals", along="column")
        assert (columns.claim.as_dict()["difference"], columns.holds, columns.breaks_at) == ("3", "shown", 17)

    def test_upward_rows_are_subtracted_in_page_order(self) -> None:
        # 11 ... 15 = 65 / 6 ... 10 = 40 / 1 ... 5 = 15
        view = grid("1", "1", 15, 5, fill="across-up")
        assert listed(view, "sums", which="line-totals", along="row")[0]["difference"] == "-25"

    def test_lead_cells_make_their_lines_not_full(self) -> None:
        # . . 1 2 / 3 4 5 6 / 7 8 9 10: rows 2 and 3 are full (18, 34); columns 3 and 4 (1 5 9 = 15, 2 6 10 = 18).
        view = grid("1", "1", 10, 4, lead=2)
        rows, columns = (pattern(view, "sums", which="line-totals", along=along) for along in ("row", "column"))
        assert (rows.claim.as_dict()["difference"], rows.groups) == ("16", ((3, 4, 5, 6), (7, 8, 9, 10)))
        assert (columns.claim.as_dict()["difference"], columns.groups) == ("3", ((1, 5, 9), (2, 6, 10)))
        # Columns 3 and 4 are full again with row 4: its cells 3 and 4 are terms 13 and 14.
        assert columns.breaks_at == 14

    def test_in_a_grid_filled_down_columns_are_the_ones_that_always_hold(self) -> None:
        # Filled down in threes: columns 1 2 3 = 6, 4 5 6 = 15, 7 8 9 = 24; rows 1 4 7 = 12, 2 5 8 = 15.
        view = grid("1", "1", 9, 3, fill="down")
        assert pattern(view, "sums", which="line-totals", along="column").holds == "always"
        assert pattern(view, "sums", which="line-totals", along="row").breaks_at == 11  # 3 x 3 + 2

    def test_a_wrong_difference_is_false(self) -> None:
        assert life(grid("1", "1", 15, 5), "sums", which="line-totals", along="row", difference=24)[0] is False


class TestOtherSums:
    def test_ends_are_said_afresh_of_every_longer_count(self) -> None:
        found = pattern(grid("5", "5", 5, 5), "sums", which="ends")
        assert (found.holds, found.breaks_at, found.claim.as_dict()) == (
            "always",
            None,
            {"family": "sums", "which": "ends"},
        )

    @pytest.mark.parametrize(("terms", "length", "shown"), [(10, 5, False), (13, 5, True), (9, 3, True), (8, 3, False)])
    def test_the_middle_of_nine_needs_a_full_3_by_3(self, terms: int, length: int, shown: bool) -> None:
        assert bool(listed(grid("1", "1", terms, length), "sums", which="centre-mean")) is shown

    def test_corners_need_a_full_2_by_2(self) -> None:
        # . . . 1 / 2 3 4 5: with lead 3 the only full block would need a second full column pair.
        assert listed(grid("1", "1", 5, 4, lead=3), "sums", which="block-corners") == []
        assert listed(grid("1", "1", 6, 4, lead=2), "sums", which="block-corners") != []  # 1 2 over 5 6
        assert listed(grid("1", "1", 9, 1), "sums", which="block-corners") == []


class TestOpposites:
    def test_all_pairs_in_view_and_none_more_can_come(self) -> None:
        # -7 -5 -3 -1 1 3 5 7
        found = pattern(grid("-7", "2", 8, 4), "opposites")
        assert found.claim.as_dict() == {"family": "opposites", "pairs": [[1, 8], [2, 7], [3, 6], [4, 5]]}
        assert (found.holds, found.breaks_at) == ("shown", None)

    def test_the_term_that_adds_the_next_pair_breaks_it(self) -> None:
        # -7 -5 -3 -1 1 3 | 5
        found = pattern(grid("-7", "2", 6, 3), "opposites")
        assert (found.claim.as_dict()["pairs"], found.breaks_at) == ([[3, 6], [4, 5]], 7)

    def test_value_0_is_no_pair(self) -> None:
        # -4 0 4: one pair, (1, 3)
        assert listed(grid("-4", "4", 3, 3), "opposites")[0]["pairs"] == [[1, 3]]
        # -4 0: none
        assert listed(grid("-4", "4", 2, 2), "opposites") == []

    def test_one_pair_missing_or_too_many_is_false(self) -> None:
        view = grid("-3", "2", 4, 4)  # -3 -1 1 3
        assert verdict(view, "opposites", pairs=[[1, 4], [2, 3]]).true
        assert not verdict(view, "opposites", pairs=[[2, 3]]).true
        assert not verdict(view, "opposites", pairs=[[1, 3], [1, 4], [2, 3]]).true

    def test_fractions_have_opposites_too(self) -> None:
        # -3/2 -1/2 1/2 3/2
        assert listed(grid("-3/2", "1", 4, 4, "fraction"), "opposites")[0]["pairs"] == [[1, 4], [2, 3]]
