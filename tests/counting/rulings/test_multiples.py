"""Rulings 8, 9, 15 and 21: friendly multiples, landmarks and how they lie, remainders, how many in each."""

from fractions import Fraction
from typing import Any

import pytest

from routines.counting import Count, Grid

from .asking import grid, life, listed, pattern, verdict

FRIENDLY = [
    ("whole", "1", "1", "2 3 4 5 6 7 8 9 10 11 12 20 25 50 100 1000"),
    ("decimal", "0.1", "0.1", "1/10 1/2 1 2 5 10 100"),
    ("fraction", "1/3", "1/3", "1/2 1 2 5 10"),
    ("length", "1 in", "1 in", "1 6 12 36"),
    ("length", "1 cm", "1 cm", "1 10 50 100"),
    ("mass", "1 oz", "1 oz", "8 16"),
    ("mass", "1 g", "1 g", "100 500 1000"),
    ("capacity", "1 fl oz", "1 fl oz", "8 16 32 128"),
    ("capacity", "1 mL", "1 mL", "100 250 500 1000"),
    ("money", "$0.01", "$0.01", "5 10 25 50 100 500 1000"),
    ("clock", "1:00", "1 min", "15 30 60 720"),
    ("elapsed", "1 min", "1 min", "15 30 60"),
]


@pytest.mark.parametrize(("kind", "start", "step", "least"), FRIENDLY)
def test_these_multiples_are_tried_at_least(kind: str, start: str, step: str, least: str) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=4)
    assert set(map(Fraction, least.split())) <= set(count.friendly_multiples())


@pytest.mark.parametrize(("kind", "start", "step", "least"), FRIENDLY)
def test_landmarks_of_each_multiple_are_found(kind: str, start: str, step: str, least: str) -> None:
    # Counting by the smallest amount, a multiple of m of them comes every m-th count.
    unit = Count.parse(kind=kind, start=start, step=step, terms=2).step
    for multiple in map(Fraction, least.split()):
        every = multiple / unit
        if 2 <= every <= 100 and every.denominator == 1:
            view = grid(start, step, 200, 200, kind)
            assert listed(view, "landmarks", implied=True, multiple=str(multiple))[0]["every"] == every


LIES: list[tuple[Grid, int, str, list[int], int | None]] = [
    # 58 64 70 76 82 / 88 94 100 ...: tens in column 3 for ever, 30 more each row.
    (grid("58", "6", 20, 5), 10, "column", [3], None),
    # 1 2 3 4 / 5 6 7 8 / ...: evens are columns 2 and 4 whole.
    (grid("1", "1", 12, 4), 2, "columns", [2, 4], None),
    # Filled down: evens are rows 2 and 4.
    (grid("1", "1", 12, 4, fill="down"), 2, "rows", [2, 4], None),
    # 8 9 10 / 11 12 13 / ... /  19 20: tens 10, 20 in column 3 and 1: two only, no line: scattered.
    (grid("8", "1", 13, 3), 10, "scattered", [], None),
    # 1 2 3 4 / 5 6 7 8 / 9 10 11 12: 3 6 9 12 are 3 apart in rows of 4: 3, 6, 9 down-left, 12 in row 3 column 4 is not.
    (grid("1", "1", 11, 4), 3, "down-left", [], 12),
    # 1 ... 5 / 6 ... 10 / 11 ... 15 / ... : 6 12 18 in columns 1, 2, 3 of rows 2, 3, 4; 24, 30 in 4, 5; 36 in row 8
    # column 1: no neighbour of 30 (row 6 column 5).
    (grid("1", "1", 20, 5), 6, "down-right", [], 36),
    # Upwards: 16 17 18 19 20 / 11 ... 15 / 6 ... 10 / 1 ... 5: 6, 12, 18 go up and right: down-left by its other end.
    (grid("1", "1", 20, 5, fill="across-up"), 6, "down-left", [], 36),
    # 9 10 / 11 12 / 13 14 / 15 16 ...: every 4th, from 12: column 2, not all of it.
    (grid("9", "1", 12, 2), 4, "column", [2], None),
    # One row, one column: always scattered.
    (grid("1", "1", 9, 9), 2, "scattered", [], None),
    (grid("1", "1", 9, 1), 2, "scattered", [], None),
    (grid("1", "1", 9, 9, fill="down"), 3, "scattered", [], None),
]


@pytest.mark.parametrize(("view", "multiple", "lie", "lines", "breaks_at"), LIES)
def test_how_landmarks_lie(view: Grid, multiple: int, lie: str, lines: list[int], breaks_at: int | None) -> None:
    found = pattern(view, "landmarks", implied=True, multiple=str(multiple))
    claim = found.claim.as_dict()
    assert (claim["lie"], claim["lines"], found.breaks_at) == (lie, lines, breaks_at)
    assert found.holds == ("always" if breaks_at is None else "shown")


def test_lies_exclude_each_other() -> None:
    for view, multiple, lie, _, _ in LIES:
        ways = ("row", "column", "rows", "columns", "down-right", "down-left", "scattered")
        assert [way for way in ways if verdict(view, "landmarks", multiple=multiple, lie=way).true] == [lie]


class TestLandmarks:
    def test_0_is_a_multiple_of_everything(self) -> None:
        # -4 -2 0 2 4 6 8 10: tens at 0 (3rd) and 10 (8th).
        claim = listed(grid("-4", "2", 10, 5), "landmarks", multiple="10")[0]
        assert (claim["first"], claim["every"]) == (3, 5)

    def test_every_2_or_more_and_two_in_view(self) -> None:
        assert listed(grid("10", "10", 8, 4), "landmarks", implied=True, multiple="10") == []  # every count is one
        assert listed(grid("1", "1", 19, 5), "landmarks", implied=True, multiple="10") == []  # 10 alone
        assert len(listed(grid("1", "1", 20, 5), "landmarks", implied=True, multiple="10")) == 1

    def test_landmarks_in_one_row_need_not_fill_it_and_break_with_the_next(self) -> None:
        # 8 9 10 ... 27 / 28 29: tens 10 and 20 stand in row 1; 30 is the 23rd count, in row 2.
        found = pattern(grid("8", "1", 22, 20), "landmarks", multiple="10")
        assert (found.claim.as_dict()["lie"], found.claim.parameters.get("lines"), found.breaks_at) == ("row", (1,), 23)

    def test_a_row_keeps_its_identity_when_rows_are_added_above(self) -> None:
        # Upwards: 28 29 / 8 ... 27: tens in row 2, the bottom one, until 30 comes in another row; new rows alone break nothing.
        up = grid("8", "1", 22, 20, fill="across-up")
        found = pattern(up, "landmarks", multiple="10")
        assert (found.claim.as_dict()["lie"], found.claim.parameters.get("lines"), found.breaks_at) == ("row", (2,), 23)

    def test_columns_that_are_filled_break_at_a_cell_that_is_no_landmark(self) -> None:
        # 5 10 / 15 20 / 25 30: tens are column 2; with two columns 15, 30 (threes) come every third: not in a column.
        found = pattern(grid("5", "5", 8, 4), "landmarks", multiple="10")
        assert (found.claim.as_dict()["lie"], found.breaks_at) == ("columns", None)

    def test_scattered_never_breaks_and_is_false_where_another_lie_fits(self) -> None:
        sevens = pattern(grid("58", "6", 20, 5), "landmarks", multiple="7")
        assert (sevens.claim.as_dict()["lie"], sevens.holds, sevens.breaks_at) == ("scattered", "always", None)
        assert not verdict(grid("58", "6", 20, 5), "landmarks", multiple=10, lie="scattered").true

    def test_lines_are_named_on_the_page(self) -> None:
        # Lead 2: . . 58 64 70 / 76 82 88 94 100 / 106 112 118 124 130: tens in column 5.
        claim = listed(grid("58", "6", 20, 5, lead=2), "landmarks", multiple="10")[0]
        assert (claim["first"], claim["every"], claim["lie"], claim["lines"]) == (3, 5, "column", [5])

    def test_wholes_make_the_bottom_row(self) -> None:
        # 1/3 2/3 1 / 4/3 5/3 2 / ... filled down in threes: 1, 2, 3 stand in row 3 and are all of it: one line is a row.
        claim = listed(grid("1/3", "1/3", 9, 3, "fraction", fill="down"), "landmarks", multiple="1")[0]
        assert (claim["lie"], claim["lines"], claim["every"], claim["first"]) == ("row", [3], 3, 3)

    def test_half_past_and_full_hours_on_a_clock(self) -> None:
        # 10:50 11:10 11:30 / 11:50 12:10 12:30: half hours in column 3; never a full hour.
        view = grid("10:50", "20 min", 12, 3, "clock")
        assert [c["multiple"] for c in listed(view, "landmarks", implied=True)] == ["30", "15"]


class TestRemainders:
    def test_below_zero_too_they_lie_from_0_up(self) -> None:
        # 5 2 -1 -4 -7 -10: by 4: 1, 2, 3, 0, 1, 2 (v - 4 floor(v/4)).
        view = grid("5", "-3", 8, 8)
        claim = listed(view, "remainder", implied=True, modulus="4", along="count")[0]
        assert claim["blocks"] == [["1", "2", "3", "0"]]

    def test_strings_are_in_lowest_terms_even_where_denominators_are_kept(self) -> None:
        # 2/8 4/8 6/8 1 2/8 ...: written in eighths, remainders by 1 are 1/4, 1/2, 3/4, 0.
        view = grid("2/8", "2/8", 8, 4, "fraction")
        assert view.count.text(1) == "2/8"
        assert listed(view, "remainder", modulus="1", along="count")[0]["blocks"] == [["1/4", "1/2", "3/4", "0"]]

    @pytest.mark.parametrize(("start", "step"), [("-20", "7"), ("20", "-7"), ("0", "7"), ("-1", "-7")])
    def test_they_always_hold(self, start: str, step: str) -> None:
        # By 14 a step of 7 takes turns between two remainders, whichever way and wherever the count crosses zero.
        first = int(start) - 14 * (int(start) // 14)
        claim = {"modulus": 14, "along": "count", "blocks": [[first, (first + 7) % 14]]}
        assert life(grid(start, step, 8, 4), "remainder", **claim) == (True, "always", None)

    def test_inches_past_a_foot(self) -> None:
        # 15 24 33 42 in: by 12: 3, 0, 9, 6.
        view = grid("1 ft 3 in", "9 in", 12, 4, "length")
        claim = listed(view, "remainder", implied=True, modulus="12", along="column")[0]
        assert claim["blocks"] == [["3"], ["0"], ["9"], ["6"]]


class TestHowMany:
    def test_one_two_two_in_each_ten(self) -> None:
        # 60s: 64; 70s: 70 76; 80s: 82 88; 90s: 94; 100s: 100 106; ... 58 stands in a ten that began before the view.
        found = pattern(grid("58", "6", 20, 5), "how-many", multiple="10")
        assert (found.claim.as_dict()["block"], found.holds) == ([1, 2, 2], "always")

    def test_only_whole_intervals_within_the_terms_count_and_two_turns_are_needed(self) -> None:
        # 3 8 13 18 23 28 | 33: whole tens 10s (13 18) and 20s (23 28)? 20 ... 30 lies within only when 30 is reached.
        # 3 8 13 18 23 28 33: [10,20) and [20,30): two each; [0,10) begins before 3.
        view = grid("3", "5", 7, 7)
        assert listed(view, "how-many", multiple="10")[0]["block"] == [2]
        assert listed(view.cut(6), "how-many", multiple="10") == []

    def test_a_block_that_listing_breaks(self) -> None:
        # 0 3 6 9 | 12 15 18 | 21 24 27 | 30 ...: 4, 3, 3, 4, 3, 3 for ever by tens.
        found = pattern(grid("0", "3", 24, 6), "how-many", multiple="10")
        assert (found.claim.as_dict()["block"], found.holds) == ([4, 3, 3], "always")
        # 2 5 8 | 11 14 17 | 20 23 26 29: 10s hold 3, 20s 4, 30s (32 35 38) 3, 40s (41 44 47) 3.
        assert life(grid("2", "3", 20, 5), "how-many", multiple=10, block=[3, 4, 3]) == (True, "always", None)
        # Twelves in hundreds: 100s hold 108 ... 192 (8), 200s 204 ... 288 (8), 300s 300 ... 396 (9).
        found = pattern(grid("96", "12", 18, 6), "how-many", multiple="100")
        assert (found.claim.as_dict()["block"], found.breaks_at) == ([8], 27)  # 300 to 396 end with 408, the 27th

    def test_going_down_the_intervals_come_in_counting_order(self) -> None:
        # 30 27 24 21 18 15 12 9 6 3 0: whole tens within: 20s hold 27 24 21; 10s 18 15 12; 0s 9 6 3 0.
        found: Any = pattern(grid("30", "-3", 21, 7), "how-many", multiple="10")
        # then -10s (-3 -6 -9) 3, -20s (-12 -15 -18) 3, -30s (-21 -24 -27 -30) 4: 3, 3, 4 repeats.
        assert (found.claim.as_dict()["block"], found.holds) == ([3, 3, 4], "always")
