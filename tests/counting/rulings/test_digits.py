"""Rulings 5, 6, 7 and 20: digits, digit runs, digit sums, and parts as they are written."""

from typing import Any

import pytest

from routines.counting import CountError

from .asking import grid, life, listed, pattern, verdict


def places(view: Any) -> set[int]:
    return {c["place"] for c in listed(view, "digit", implied=True) if "place" in c}


class TestPlaces:
    def test_below_zero_the_digit_that_is_written_counts(self) -> None:
        # 23 18 13 8 3 | -2: ones 3, 8, 3, 8, 3, then 2 where 8 was due.
        assert pattern(grid("23", "-5", 5, 5), "digit", place=0, along="count").breaks_at == 6
        # 20 15 10 5 0 | -5 -10: ones 0, 5, 0, 5, 0, 5, 0 for ever.
        never = pattern(grid("20", "-5", 5, 5), "digit", place=0, along="count")
        assert (never.holds, never.breaks_at) == ("always", None)

    def test_missing_leading_digits_are_0(self) -> None:
        # 1 101 201 301: the hundreds digit of 1 is 0, so it goes 0, 1, 2, 3.
        run = pattern(grid("1", "100", 4, 4), "digit-run", place=2, along="count")
        assert (run.claim.parameters.get("change"), run.breaks_at) == (1, 11)  # 901 is the 10th; 1,001 has 0

    def test_places_reach_to_the_leading_digit_of_the_largest_value_in_view(self) -> None:
        # 100 ... 107 and -107 ... -100 have hundreds, 992 ... 999 no thousands; 1 ... 1,001 by 200 has.
        assert max(places(grid("100", "1", 8, 4))) == 2
        assert max(places(grid("-107", "1", 8, 4))) == 2
        assert max(places(grid("992", "1", 8, 4))) == 2
        assert max(places(grid("1000", "200", 5, 5))) == 3

    def test_places_of_decimals_begin_with_the_finest_that_is_needed(self) -> None:
        # Typed 0.50 and 1.50 need tenths only: a typed zero adds no place.
        assert min(places(grid("0.50", "1.50", 8, 4, "decimal"))) == -1
        assert min(places(grid("0.5", "0.25", 8, 4, "decimal"))) == -2
        assert min(places(grid("0.125", "0.125", 8, 4, "decimal"))) == -3
        assert min(places(grid("2.0", "5.0", 8, 4, "decimal"))) == 0

    def test_place_0_of_money_is_the_cents(self) -> None:
        # $0.35 $0.60 $0.85 $1.10 ...: the last digit goes 5, 0.
        view = grid("$0.35", "$0.25", 8, 4, "money")
        assert listed(view, "digit", place=0, along="count")[0]["blocks"] == [[5, 0]]
        assert max(places(view)) <= 2  # $2.10 is 210 cents

    @pytest.mark.parametrize(
        ("kind", "start", "step"),
        [
            ("fraction", "1/2", "1/2"),
            ("clock", "10:00", "1 h"),
            ("length", "10 in", "10 in"),
            ("mass", "10 g", "10 g"),
            ("capacity", "10 mL", "10 mL"),
            ("elapsed", "10 min", "10 min"),
        ],
    )
    def test_no_places_are_listed_for_fractions_clocks_and_measures(self, kind: str, start: str, step: str) -> None:
        view = grid(start, step, 8, 4, kind)
        assert places(view) == set()
        assert not [c for c in listed(view, "digit-run", implied=True) if "place" in c]


class TestDigitRun:
    def test_it_is_a_plain_difference_without_carry(self) -> None:
        # 7 8 9 | 10: from 9 to 0 is -9 and not +1.
        assert life(grid("5", "1", 5, 5), "digit-run", place=0, along="count", change=1) == (True, "shown", 6)
        # 9 18 27 ... 90: ones 9, 8, ..., 0; then 99: up 9 where down 1 is due.
        assert life(grid("9", "9", 10, 5), "digit-run", place=0, along="count", change=-1) == (True, "shown", 11)

    def test_along_rows_the_end_of_one_is_not_compared_with_the_start_of_the_next(self) -> None:
        # 20 21 ... 29 / 30 ... 39: ones up 1 in every row, for ever; not along the count (29 to 30).
        view = grid("20", "1", 20, 10)
        assert life(view, "digit-run", place=0, along="row", change=1) == (True, "always", None)
        assert life(view, "digit-run", place=0, along="count", change=1) == (False, None, 11)

    def test_one_change_serves_all_lines(self) -> None:
        # 1 2 3 / 4 5 6 / 7 8 9: down each column 3 more. With 7 terms of 1 4 7 10 ... columns differ.
        assert listed(grid("1", "1", 9, 3), "digit-run", place=0, along="column")[0]["change"] == 3
        # 8 9 / 10 11 / 12 13: column 1 8, 0, 2 and column 2 9, 1, 3: -8 then +2.
        assert listed(grid("8", "1", 6, 2), "digit-run", place=0, along="column") == []

    def test_elevens_from_34_run_until_the_seventh(self) -> None:
        # 34 45 56 67 78 89 | 100
        view = grid("34", "11", 6, 3)
        for place in (0, 1):
            assert pattern(view, "digit-run", place=place, along="count").breaks_at == 7


class TestDigitSum:
    def test_it_is_never_always_along_the_count_or_across_the_fill(self) -> None:
        # 10 20 30 ... 90: 1, 2, 3, ... is no block; 9, 18, ... 90 is; 11 20 101 would be by no fixed step.
        nines = pattern(grid("9", "9", 10, 5), "digit-sum", along="count")
        assert (nines.claim.parameters.get("blocks"), nines.holds, nines.breaks_at) == (((9,),), "shown", 11)

    def test_down_columns_it_breaks_where_listing_finds_it(self) -> None:
        # 9 18 27 / 36 45 54 / 63 72 81 | 90 99: column 2 is the first to leave 9, with the 11th.
        columns = pattern(grid("9", "9", 9, 3), "digit-sum", along="column", implied=True)
        assert (columns.claim.parameters.get("blocks"), columns.breaks_at) == (((9,), (9,), (9,)), 11)

    def test_below_zero_the_digits_as_written_are_added(self) -> None:
        # -9 -18 -27 -36: 9 each; the break mirrors that above: -99 is the 11th.
        assert pattern(grid("-9", "-9", 6, 3), "digit-sum", along="count").breaks_at == 11

    def test_only_whole_numbers_have_digit_sums(self) -> None:
        assert listed(grid("$0.09", "$0.09", 8, 4, "money"), "digit-sum", implied=True) == []
        with pytest.raises(CountError):
            verdict(grid("0.9", "0.9", 8, 4, "decimal"), "digit-sum", along="count", blocks=[[9]])


class TestParts:
    def test_the_hour_number_breaks_where_the_clock_shows_1_after_12(self) -> None:
        # 9:00 10:00 11:00 12:00 | 1:00: hours up 1 until the 5th.
        run = pattern(grid("9:00", "1 h", 4, 4, "clock"), "digit-run", part="hours", along="count")
        assert (run.claim.parameters.get("change"), run.holds, run.breaks_at) == (1, "shown", 5)
        # On a 24-hour clock from 9:00 the first drop is after 23:00, the 15th: the 16th shows 0.
        long = pattern(
            grid("9:00", "1 h", 4, 4, "clock", style={"clock": 24}), "digit-run", part="hours", along="count"
        )
        assert long.breaks_at == 16

    def test_minutes_are_read_as_shown_and_come_round_for_ever(self) -> None:
        view = grid("10:50", "20 min", 12, 3, "clock")
        assert listed(view, "digit", part="minutes", along="column")[0]["blocks"] == [[50], [10], [30]]
        assert pattern(view, "digit", part="minutes", along="count").holds == "always"

    def test_thirds_below_zero_break_where_the_remainder_does_not(self) -> None:
        # 1 2/3, 1 1/3, 1, 2/3, 1/3, 0 | -1/3 -2/3: written tops 2, 1, -, 2, 1, -, then 1 where 2 is due.
        view = grid("5/3", "-1/3", 6, 3, "fraction", style={"shape": "top-heavy", "wholes": "fraction"})
        # 5/3 4/3 3/3 / 2/3 1/3 0/3 | -1/3: the tops fall by 1 until 0/3 is followed by 1/3.
        tops = pattern(view, "digit-run", part="top", along="count")
        assert (tops.claim.parameters.get("change"), tops.breaks_at) == (-1, 7)
        rests = pattern(view, "remainder", modulus="1", along="count")
        assert (rests.holds, rests.claim.as_dict()["blocks"]) == ("always", [["2/3", "1/3", "0"]])

    def test_feet_and_inches_are_read_from_what_is_written(self) -> None:
        view = grid("1 ft 3 in", "9 in", 12, 4, "length")
        assert [view.count.parts(n) for n in (1, 2, 3, 4)] == [
            {"feet": 1, "inches": 3},
            {"feet": 2, "inches": 0},
            {"feet": 2, "inches": 9},
            {"feet": 3, "inches": 6},
        ]
        assert listed(view, "digit", part="inches", along="column")[0]["blocks"] == [[3], [0], [9], [6]]
        feet = pattern(view, "digit-run", part="feet", along="column")
        assert (feet.claim.parameters.get("change"), feet.holds) == (3, "always")

    def test_a_whole_or_a_top_that_is_not_written_because_it_is_0_counts_as_0(self) -> None:
        # 4 3 2/3 3 1/3 / 3 2 2/3 2 1/3 / 2 1 2/3 1 1/3 / 1 2/3 1/3: down a column the wholes fall by 1 to the whole 0 of
        # 2/3; 0 comes 13th, and -1/3, whose whole is 0 again, is the 14th.
        view = grid("4", "-1/3", 12, 3, "fraction")
        wholes = pattern(view, "digit-run", part="whole", along="column")
        assert (wholes.claim.parameters.get("change"), wholes.breaks_at) == (-1, 14)
        # The tops go 0, 2, 1 for ever above zero: 3, the 4th, writes no top because it is 0.
        assert listed(view, "digit", part="top", along="column")[0]["blocks"] == [[0], [2], [1]]

    def test_a_part_that_no_count_in_view_writes_is_not_listed(self) -> None:
        # 1/8 2/8 3/8 write no whole, until 8/8, which comes 8th.
        assert not listed(grid("1/8", "1/8", 6, 3, "fraction"), "digit", implied=True, part="whole")
        assert listed(grid("1/8", "1/8", 12, 4, "fraction"), "digit-run", implied=True, part="whole") == []
        # 3 in, 6 in, 9 in write no feet; with 1 ft they do, and count as 0 before it.
        small = grid("3 in", "3 in", 3, 3, "length", style={"units": "two"})
        assert not listed(small, "digit", implied=True, part="feet")
        larger = grid("3 in", "3 in", 9, 3, "length", style={"units": "two"})
        assert life(larger, "digit", part="feet", along="row", blocks=[[0], [0], [1]])[0] is False

    def test_a_bottom_that_is_not_written_contradicts(self) -> None:
        view = grid("3/8", "3/8", 7, 7, "fraction")  # 3/8 ... 2 5/8, then 3, which has no bottom
        bottoms = pattern(view, "digit", part="bottom", along="count")
        assert bottoms.breaks_at == 8

    def test_dollars_and_cents_are_parts_of_money(self) -> None:
        view = grid("$0.35", "$0.25", 12, 4, "money")
        assert view.count.parts(4) == {"dollars": 1, "cents": 10}
        assert listed(view, "digit", part="cents", along="column")[0]["blocks"] == [[35], [60], [85], [10]]

    def test_a_part_that_these_numbers_do_not_have_is_refused(self) -> None:
        with pytest.raises(CountError) as refused:
            verdict(grid("5", "5", 8, 4), "digit", part="inches", along="count", length=1)
        assert refused.value.field == "part"
