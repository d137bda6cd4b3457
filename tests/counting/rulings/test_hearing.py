"""Ruling 27: what was heard at a count, and in which order it is named."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import (
    Carried,
    EqualName,
    Grid,
    Other,
    Repeated,
    Right,
    SkippedAhead,
    Slip,
    classify,
    likely_slips,
)
from tests.counting.any_count import KINDS, grids

from .asking import grid

BACK = grid("1,325", "-50", 16, 4)
FEET = grid("1 ft 3 in", "9 in", 12, 4, "length")
CLOCK = grid("10:50", "20 min", 12, 3, "clock")
QUARTERS = grid("1/4", "1/4", 12, 4, "fraction", style={"fractions": "simplified"})
EIGHTHS = grid("3/8", "3/8", 12, 4, "fraction")


@pytest.mark.parametrize(
    ("view", "n", "said", "renamed"),
    [
        (QUARTERS, 3, "6/8", True),  # 3/4
        (EIGHTHS, 3, "9/8", None),  # 1 1/8
        (EIGHTHS, 3, "1 2/16", None),
        (CLOCK, 8, "13:10", False),  # 1:10
        (FEET, 2, "1 ft 12 in", False),  # 2 ft
        (FEET, 2, "24 in", None),
        (grid("1/5", "1/5", 12, 4, "fraction"), 10, "1 5/5", False),  # 2
        (grid("$0.35", "$0.25", 12, 4, "money"), 2, "60c", None),
        (grid("0.5", "0.5", 8, 4, "decimal"), 1, "0.50", None),
    ],
)
def test_the_same_exact_value_is_an_equal_name(view: Grid, n: int, said: str, renamed: bool | None) -> None:
    heard = classify(view, n, said)
    assert isinstance(heard, EqualName)
    if renamed is not None:
        assert heard.renamed is renamed


@pytest.mark.parametrize(
    ("view", "n", "said"),
    [
        (CLOCK, 2, "10:70"),  # 11:10
        (grid("9:20", "20 min", 12, 3, "clock"), 3, "9:60"),  # 10:00
        (grid("$0.75", "$0.25", 12, 4, "money"), 2, "$0.100"),  # $1.00
        (grid("1.8", "0.1", 12, 4, "decimal"), 3, "1.10"),  # 2.0 read part by part
        (grid("1.99", "0.01", 12, 4, "decimal"), 2, "1.100"),
    ],
)
def test_forms_nobody_may_write_are_slips(view: Grid, n: int, said: str) -> None:
    assert isinstance(classify(view, n, said), Slip)


def test_what_is_due_is_right_however_it_is_marked() -> None:
    for said in ("1,275", "1275", " 1,275 ", "one thousand two hundred seventy-five"):
        assert isinstance(classify(BACK, 2, said), Right)


class TestOrder:
    def test_one_skip_and_then_one_carried(self) -> None:
        skip = classify(BACK, 8, "925")  # 975 is due; 925 is the 9th
        assert isinstance(skip, SkippedAhead)
        assert skip.by == 1
        carried = classify(BACK, 9, "875", earlier=[skip])  # 925 is due: 50 too low again
        assert isinstance(carried, Carried)

    def test_the_count_said_before_is_repeated(self) -> None:
        assert isinstance(classify(BACK, 9, "975", {8: "975"}), Repeated)

    def test_carried_comes_before_skipped_ahead(self) -> None:
        # After a skip at 8, "825" at 10 (875 due) is as far off as "925" was: carried, though it is also the 11th.
        assert isinstance(classify(BACK, 10, "825", {8: "925", 9: "875"}), Carried)
        assert isinstance(classify(BACK, 10, "825"), SkippedAhead)

    @pytest.mark.parametrize("k", [1, 2, 3])
    def test_skipped_ahead_says_by_how_many(self, k: int) -> None:
        heard = classify(BACK, 4, BACK.count.text(4 + k))
        assert isinstance(heard, SkippedAhead)
        assert heard.by == k

    @pytest.mark.parametrize(
        ("view", "n", "said"),
        [
            (FEET, 4, "3 ft 8 in"),  # 3 ft 6 in: traded at ten
            (CLOCK, 2, "10:70"),
            (grid("374", "10", 8, 4), 4, "304"),  # 404
            (grid("67", "1", 8, 4), 4, "50"),  # 70
        ],
    )
    def test_a_slip_of_the_table(self, view: Grid, n: int, said: str) -> None:
        assert isinstance(classify(view, n, said), Slip)

    def test_anything_else_says_the_difference_and_what_it_takes(self) -> None:
        view = grid("1,234", "300", 10, 5)  # 1,234 1,534 1,834 2,134
        for said, away in (("1,543", 9), ("1,524", -10)):
            heard = classify(view, 2, said)
            assert isinstance(heard, Other)
            assert heard.difference == away
            assert heard.takes
        assert classify(view, 2, "1,543").takes == "swapped"
        assert classify(view, 2, "934").takes == "wrong-way"
        unreadable = classify(view, 2, "banana")
        assert isinstance(unreadable, Other)
        assert unreadable.difference is None


def test_equal_names_that_are_foreseen_are_marked() -> None:
    slips = likely_slips(FEET, 4)
    marked = [slip for slip in slips if slip.equal_name]
    assert [(slip.n, slip.heard) for slip in marked if slip.heard == "1 ft 12 in"] == [(2, "1 ft 12 in")]
    for slip in slips:
        heard = classify(FEET, slip.n, slip.heard)
        assert isinstance(heard, EqualName) is slip.equal_name


# On a clock the same text comes again on the next turn.
STRAIGHT = [kind for kind in KINDS if kind != "clock"]


@given(st.sampled_from(STRAIGHT).flatmap(grids), st.integers(2, 30), st.integers(1, 3))
def test_up_to_three_counts_left_out_are_named_so_whatever_rule_explains_them_too(view: Grid, n: int, k: int) -> None:
    heard = classify(view, n, view.count.text(n + k))
    assert isinstance(heard, SkippedAhead)
    assert heard.by == k


@given(st.sampled_from(STRAIGHT).flatmap(grids), st.integers(3, 30))
def test_what_was_wrong_before_in_the_same_way_is_carried_and_what_was_right_before_is_repeated(
    view: Grid, n: int
) -> None:
    text = view.count.text
    assert isinstance(classify(view, n, text(n + 1), {n - 1: text(n)}), Carried)
    assert isinstance(classify(view, n, text(n - 1), {n - 1: text(n - 1)}), Repeated)


@given(st.sampled_from(STRAIGHT).flatmap(grids), st.data())
def test_what_is_foreseen_is_never_anything_else_when_it_is_heard(view: Grid, data: st.DataObject) -> None:
    level = data.draw(st.integers(0, 8))
    for slip in likely_slips(view, level)[:12]:
        heard = classify(view, slip.n, slip.heard)
        assert not isinstance(heard, Right | Other)
        if slip.equal_name:
            assert isinstance(heard, EqualName | Slip)
        else:
            assert isinstance(heard, Slip | SkippedAhead | Repeated)
