"""What of a list is put before a class first: plain, lasting, each idea once; the list itself is as it was."""

from collections.abc import Sequence
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Claim, Grid, Pattern, find_patterns
from routines.counting.patterns.first_to_say import first_to_say
from routines.counting.patterns.friendly import never_hidden
from routines.counting.patterns.ranking import barred_places
from tests.brute_force.saying_first import Listed, first_six
from tests.counting.any_count import KINDS, grids
from tests.counting.comparing import board_of
from tests.counting.rulings.asking import grid


def said_first(view: Grid, level: int) -> list[Claim]:
    return [one.claim for one in first_to_say(find_patterns(view, audience=Audience(level)), view, level)[:6]]


def of_family(claims: Sequence[Claim], family: str) -> list[dict[str, Any]]:
    return [claim.as_dict() for claim in claims if claim.family == family]


def listed(found: Sequence[Pattern], view: Grid, level: int) -> list[Listed]:
    return [
        Listed(one.claim.as_dict(), len(one.cells), one.breaks_at, barred_places(one.claim, view, level))
        for one in found
    ]


@given(st.sampled_from(KINDS), st.data())
def test_the_first_six_are_those_a_teacher_chooses(kind: str, data: st.DataObject) -> None:
    view, level = data.draw(grids(kind)), data.draw(st.integers(0, 8))
    found = find_patterns(view, audience=Audience(level))
    read_by = {never_hidden(view.count), view.count.form.round_number()}
    chosen = [claim.as_dict() for claim in said_first(view, level)]
    assert chosen == first_six(listed(found, view, level), board_of(view), level, read_by)


@given(st.sampled_from(KINDS), st.data())
def test_nothing_is_left_out_and_the_others_keep_their_order(kind: str, data: st.DataObject) -> None:
    view, level = data.draw(grids(kind)), data.draw(st.integers(0, 8))
    found = find_patterns(view, audience=Audience(level))
    said = first_to_say(found, view, level)
    assert sorted(map(repr, said)) == sorted(map(repr, found))
    assert said[6:] == [one for one in found if one in said[6:]]


@given(st.sampled_from(KINDS), st.data())
def test_what_a_level_is_not_to_meet_first_stands_no_earlier_than_in_the_list(kind: str, data: st.DataObject) -> None:
    view, level = data.draw(grids(kind)), data.draw(st.integers(0, 8))
    said = first_to_say(find_patterns(view, audience=Audience(level)), view, level)
    barred = [barred_places(one.claim, view, level) for one in said]
    for i, places in enumerate(barred):
        assert i >= places or all(later >= places for later in barred[i:]), said[i]


def test_the_list_with_no_audience_is_said_as_at_level_four() -> None:
    view = grid("34", "11", 18, 6)
    assert first_to_say(find_patterns(view), view) == first_to_say(
        find_patterns(view, audience=Audience(4)), view, level=4
    )


@pytest.mark.parametrize(
    ("kind", "start", "step", "level"),
    [
        ("fraction", "4", "-1/3", 4),
        ("fraction", "2 1/2", "-3/4", 7),
        ("whole", "-20", "3", 6),
        ("decimal", "-1.2", "0.4", 6),
    ],
)
def test_across_zero_no_remainder_that_is_not_what_is_written(kind: str, start: str, step: str, level: int) -> None:
    remainders = of_family(said_first(grid(start, step, 16, 4, kind), level), "remainder")
    assert [one for one in remainders if one["modulus"] != "2"] == []


def test_across_zero_even_and_odd_are_said_all_the_same() -> None:
    assert "2" in [one["modulus"] for one in of_family(said_first(grid("-20", "3", 20, 5), 6), "remainder")]


def test_multiples_met_twice_are_no_pattern_yet_but_tens_are() -> None:
    # 40, 70, 100, 130 are the tens; only 40 and 100 twenties. Back from 15 by 5, 0 and -40 are the eights.
    twice = {"20": grid("16", "6", 20, 5), "8": grid("15", "-5", 16, 4)}
    for multiple, view in twice.items():
        assert multiple in [one["multiple"] for one in of_family([p.claim for p in find_patterns(view)], "landmarks")]
        assert multiple not in [one["multiple"] for one in of_family(said_first(view, 5), "landmarks")]
    # 70 and 140 in a count by 7.
    assert "10" in [
        one["multiple"] for one in of_family(said_first(grid("7", "7", 20, 5, fill="down"), 3), "landmarks")
    ]


def test_what_is_over_near_the_view_is_not_among_the_first() -> None:
    # 5¢ to 120¢: the quarters go down a diagonal as far as the 20th count and leave it with the 25th, 125¢.
    view = grid("5c", "5c", 24, 4, "money")
    found = find_patterns(view, audience=Audience(1))
    over = [one.claim for one in found if one.breaks_at == 25 and one.claim.family == "landmarks"]
    assert over
    assert over[0] in [one.claim for one in found[:6]]
    assert over[0] not in said_first(view, 1)


@pytest.mark.parametrize(
    ("kind", "start", "step", "length", "fill", "level"),
    [
        ("clock", "11:10 am", "20 min", 3, "down", 3),
        ("length", "1 ft 3 in", "9 in", 4, "across", 4),
        ("capacity", "3/4 cup", "3/4 cup", 4, "across", 5),
    ],
)
def test_a_part_that_is_written_is_not_said_again_as_what_is_left_over(
    kind: str, start: str, step: str, length: int, fill: str, level: int
) -> None:
    first = said_first(grid(start, step, 18, length, kind, fill=fill), level)
    assert of_family(first, "digit")
    assert not of_family(first, "remainder")


def test_the_same_counts_are_not_named_twice() -> None:
    # 5, 10 and 15 in row 6 are the wholes, and the fives; 2, 4 and 6 the wholes, and the twos.
    view = grid("5/6", "5/6", 18, 6, "fraction", fill="down", style={"fractions": "simplified"})
    assert [one["multiple"] for one in of_family(said_first(view, 6), "landmarks")] == ["1", "1/2"]
    view = grid("0.4", "0.4", 18, 6, "decimal", lead=1)
    assert [one["multiple"] for one in of_family(said_first(view, 6), "landmarks")] == ["1"]


def test_of_multiples_in_one_column_the_friendliest_are_enough() -> None:
    # 48, 96 oz are pounds and 24, 72 oz half pounds, all in column 4; -20, 10 are tens and -5, 25 fives, all in column 1.
    view = grid("6 oz", "6 oz", 20, 4, "mass")
    assert [one["multiple"] for one in of_family(said_first(view, 4), "landmarks")] == ["16"]
    assert [one["multiple"] for one in of_family(said_first(grid("-20", "3", 20, 5), 6), "landmarks")] == ["10"]


def test_how_many_there_are_in_turns_is_said_last() -> None:
    families = [claim.family for claim in said_first(grid("6 oz", "6 oz", 20, 4, "mass"), 4)]
    assert families[-1] == "how-many"
    assert "table" in families


def test_tops_over_other_bottoms_are_no_pattern_by_themselves() -> None:
    for written, plain in (("simplified", False), ("kept", True)):
        view = grid("5/6", "5/6", 18, 6, "fraction", fill="down", style={"fractions": written})
        assert bool(of_family(said_first(view, 6), "digit")) == plain


def test_even_numbers_are_named_beside_the_tens_that_they_are() -> None:
    multiples = [one["multiple"] for one in of_family(said_first(grid("15", "-5", 16, 4), 5), "landmarks")]
    assert multiples[:2] == ["10", "2"]


def test_ones_digits_that_stay_in_their_column_are_not_said_again_of_the_count() -> None:
    digits = [one for one in of_family(said_first(grid("2", "2", 20, 5), 0), "digit") if one["place"] == 0]
    assert [one["along"] for one in digits] == ["column"]


@pytest.mark.parametrize("level", range(9))
def test_fractions_are_not_said_by_what_is_left_over(level: int) -> None:
    for start, step, length in (("1/4", "1/4", 4), ("3/8", "3/8", 4), ("5/6", "5/6", 6)):
        assert not of_family(said_first(grid(start, step, 20, length, "fraction"), level), "remainder")


@pytest.mark.parametrize("level", range(3))
def test_before_division_measures_are_not_said_by_what_is_left_over_but_by_what_they_land_on(level: int) -> None:
    for kind, start, step in (("length", "75 cm", "25 cm"), ("money", "35c", "25c"), ("clock", "9:05", "5 min")):
        assert not of_family(said_first(grid(start, step, 16, 4, kind), level), "remainder")
    landing = of_family(said_first(grid("5c", "5c", 24, 4, "money"), level), "remainder")
    assert [one["blocks"] for one in landing] == [[["0"]]]


def test_of_the_tables_one_number_is_enough_for_a_start() -> None:
    # 4, 8, 12 ... in sixes, upwards: eights and twelves line up.
    multiples = [one["multiple"] for one in of_family(said_first(grid("4", "4", 24, 6), 4), "landmarks")]
    assert multiples == ["8"]


def test_a_class_that_counts_by_tens_does_not_look_for_eights() -> None:
    view = grid("990", "10", 16, 4)
    assert "8" in [one["multiple"] for one in of_family([one.claim for one in find_patterns(view)[:6]], "landmarks")]
    assert "8" not in [one["multiple"] for one in of_family(said_first(view, 4), "landmarks")]


def test_the_nought_before_the_point_says_nothing() -> None:
    digits = of_family(said_first(grid("0.08", "0.02", 20, 5, "decimal"), 5), "digit")
    assert [one["place"] for one in digits] == [-2]


@pytest.mark.parametrize("level", [0, 1, 2])
def test_a_place_is_not_times_the_step_before_children_multiply(level: int) -> None:
    assert not of_family(said_first(grid("5c", "5c", 24, 4, "money"), level), "table")


@pytest.mark.parametrize(
    ("kind", "start", "step", "length", "level"),
    [
        ("elapsed", "25 min", "25 min", 5, 3),  # 10, 5 and 0 min past a quarter hour
        ("capacity", "150 mL", "150 mL", 5, 5),  # 50 and 0 mL past a hundred
        ("mass", "6 oz", "6 oz", 4, 4),  # 6, 4, 2 and 0 oz past a half pound
    ],
)
def test_what_is_left_past_a_part_of_a_unit_is_not_said_first(
    kind: str, start: str, step: str, length: int, level: int
) -> None:
    assert not of_family(said_first(grid(start, step, 20, length, kind), level), "remainder")


def test_quarter_hours_here_and_there_are_not_thought_of_counting_by_25_minutes() -> None:
    # 75, 150, 225 min are quarter hours; in lines of 3 they stand in a column, and counting by 5 they come to mind.
    def landmarks(step: str, length: int, terms: int = 18) -> list[str]:
        first = said_first(grid(step, step, terms, length, "elapsed"), 3)
        return [one["multiple"] for one in of_family(first, "landmarks")]

    assert "15" not in landmarks("25 min", 5)
    assert "15" in landmarks("25 min", 3, terms=9)
    assert "15" in landmarks("5 min", 5)


def test_the_last_two_digits_are_not_said_again_as_parts_past_a_hundred() -> None:
    view = grid("1,325", "-50", 16, 4)
    assert [one["place"] for one in of_family(said_first(view, 4), "digit")] == [1, 0]
    assert "100" not in [one["modulus"] for one in of_family(said_first(view, 4), "remainder")]


def test_places_are_filled_up_before_the_same_counts_are_named_twice() -> None:
    # 0.0, 2.0 and 4.0 are the wholes, and the twos; 4, 2 and 0 stand with the wholes 4, 3, 2, 1, 0.
    for view, level in ((grid("-1.2", "0.4", 18, 6, "decimal", lead=1), 6), (grid("4", "-1/3", 15, 3, "fraction"), 6)):
        assert [one["multiple"] for one in of_family(said_first(view, level), "landmarks")] == ["1"]


def test_opposites_are_for_those_who_know_of_them() -> None:
    view = grid("4", "-1/3", 15, 3, "fraction")  # 2/3 and -2/3, 1/3 and -1/3
    assert of_family(said_first(view, 6), "opposites")
    assert not of_family(said_first(view, 4), "opposites")


@pytest.mark.parametrize(("start", "step", "length"), [("1", "1", 10), ("5", "5", 4), ("2", "2", 5)])
def test_how_numbers_are_written_is_told_before_even_numbers_where_these_are_not_met_yet(
    start: str, step: str, length: int
) -> None:
    """Source: Common Core State Standards 1.NBT.B.2 before 2.OA.C.3."""
    for level, digits_first in ((0, True), (1, True), (2, False)):
        told = [claim.as_dict() for claim in said_first(grid(start, step, 30, length), level)]
        digits = [i for i, one in enumerate(told) if one["family"] in ("digit", "digit-run")]
        evens = [i for i, one in enumerate(told) if "2" in (one.get("multiple"), one.get("modulus"))]
        assert digits
        assert evens
        assert (digits[-1] < evens[0]) is digits_first or (step == "2" and not digits_first)
