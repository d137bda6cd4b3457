"""Rulings 11, 28 and 29: the list is complete for every audience, and its order suits who is listening."""

from fractions import Fraction
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Grid, find_patterns
from routines.counting.patterns.friendly import friendliness, never_hidden
from tests.brute_force import listening
from tests.brute_force.board import Board
from tests.counting.any_count import KINDS, grids
from tests.counting.comparing import board_of

from .asking import grid

HOUSE = (
    "step", "along the fill", "across the fill", "landmarks in line", "constant", "twos", "longer", "digit-run",
    "how-many", "digit-sum", "table", "other neighbours", "sums", "opposites", "scattered",
)  # fmt: skip


def claims_for(view: Grid, level: int) -> list[dict[str, Any]]:
    return [pattern.claim.as_dict() for pattern in find_patterns(view, audience=Audience(level))]


def house_class(claim: dict[str, Any], board: Board) -> int:
    family = claim["family"]
    if family == "neighbour":
        along, across = ("down", "right") if board.fill == "down" else ("right", "down")
        name = {along: "along the fill", across: "across the fill"}.get(claim["direction"], "other neighbours")
    elif family == "landmarks":
        name = "scattered" if claim["lie"] == "scattered" else "landmarks in line"
    elif family in ("digit", "remainder"):
        name = {1: "constant", 2: "twos"}.get(max(map(len, claim["blocks"])), "longer")
    else:
        name = family
    return HOUSE.index(name)


def named(claim: dict[str, Any]) -> str | None:
    return claim.get("modulus") or claim.get("multiple")


@given(st.sampled_from(KINDS), st.data())
def test_no_audience_is_left_anything_out(kind: str, data: st.DataObject) -> None:
    view, level = data.draw(grids(kind)), data.draw(st.integers(0, 8))
    assert sorted(map(repr, claims_for(view, level))) == sorted(repr(p.claim.as_dict()) for p in find_patterns(view))


@given(st.sampled_from(KINDS), st.data())
def test_what_may_not_come_first_comes_when_too_few_others_are_left(kind: str, data: st.DataObject) -> None:
    view, level = data.draw(grids(kind)), data.draw(st.integers(0, 8))
    board, listed = board_of(view), claims_for(view, level)
    barred = [listening.may_not_come_before(claim, board, level) for claim in listed]
    for i, places in enumerate(barred):
        if places is not None and i < places:
            # Nothing that may stand here, or that is barred from fewer places, was kept waiting.
            assert all(later is None or later >= places for later in barred[i:]), listed[i]


@given(st.sampled_from(KINDS), st.data())
def test_what_may_come_first_is_in_the_order_of_the_house(kind: str, data: st.DataObject) -> None:
    view, level = data.draw(grids(kind)), data.draw(st.integers(0, 8))
    board = board_of(view)
    free = [c for c in claims_for(view, level) if listening.may_not_come_before(c, board, level) == 0]
    waits = [level <= 1 and listening.waits_for_the_youngest(claim, board) for claim in free]
    assert waits == sorted(waits)
    for late in (False, True):
        classes = [house_class(claim, board) for claim, wait in zip(free, waits, strict=True) if wait == late]
        assert classes == sorted(classes)
    by_class = [(w, house_class(c, board), c) for c, w in zip(free, waits, strict=True) if named(c)]
    if kind == "whole":
        for one, other in pairwise(by_class):
            if one[:2] == other[:2]:
                assert listening.met_at(str(named(one[2])), board) <= listening.met_at(str(named(other[2])), board)


@given(st.sampled_from([kind for kind in KINDS if kind != "whole"]), st.data())
def test_the_whole_that_a_kind_reads_by_comes_before_its_halves_and_those_before_others(
    kind: str, data: st.DataObject
) -> None:
    view = data.draw(grids(kind))
    count, board = view.count, board_of(view)
    assert never_hidden(count) == listening.never_hidden(board)
    whole, round_number = never_hidden(count), count.form.round_number()
    # In quarts a quart comes first, though it is a quarter of a gallon.
    halves = [m for m in (whole / 2, whole / 4) if m in count.friendly_multiples() and m != round_number]
    of_the_round = (round_number, round_number / 2, round_number / 4)
    others = [m for m in count.friendly_multiples() if m not in (whole, *halves, *of_the_round)]
    round_first = [round_number] if round_number in count.friendly_multiples() else []
    as_met = sorted(count.friendly_multiples(), key=lambda m: friendliness(m, count))
    assert as_met[: len(round_first)] == round_first
    assert [m for m in as_met if m in (whole, *halves)] == [m for m in (whole, *halves) if m in as_met]
    assert [m for m in as_met if m in others and m > whole and m % whole == 0] == sorted(
        m for m in others if m > whole and m % whole == 0
    )


@pytest.mark.parametrize("level", range(9))
def test_a_count_by_six_shows_that_all_are_even(level: int) -> None:
    # 16 22 28 ...: 4 past a multiple of 6 once hid it.
    even = {"family": "remainder", "modulus": "2", "along": "count", "blocks": [["0"]]}
    assert even in claims_for(grid("16", "6", 20, 5), level)


def test_tens_come_before_twenties_in_a_count_by_six_from_sixteen() -> None:
    multiples = [named(c) for c in claims_for(grid("16", "6", 20, 5), 2) if c["family"] == "landmarks"]
    assert multiples.index("10") < multiples.index("20")


@pytest.mark.parametrize("level", [0, 1])
@pytest.mark.parametrize("start", ["1", "27"])
def test_the_youngest_do_not_meet_sixes_or_nines_first(level: int, start: str) -> None:
    first = claims_for(grid(start, "1", 30, 10), level)[:6]
    assert {named(claim) for claim in first} <= {None, "2", "5", "10", "100"}


def test_a_digit_that_half_of_the_counts_do_not_write_is_not_among_the_first() -> None:
    # 7 57 107 157: hundreds 0 0 1 1 take up 29's example: with 4 in view two have no hundreds digit.
    first = claims_for(grid("7", "50", 4, 2), 4)[:6]
    assert not [c for c in first if c.get("place") == 2]


@given(st.integers(-300, 300), st.integers(-60, 60).filter(bool), st.integers(4, 40), st.integers(2, 10))
def test_evenness_is_never_hidden_behind_another_remainder(start: int, step: int, terms: int, length: int) -> None:
    view = grid(str(start), str(step), terms, min(length, terms))
    listed = [c for c in claims_for(view, 4) if named(c) == "2" and c["family"] == "remainder"]
    if step % 2 == 0:
        assert {"family": "remainder", "modulus": "2", "along": "count", "blocks": [[str(start % 2)]]} in listed
    else:
        assert any(c["along"] == "count" and len(c["blocks"][0]) == 2 for c in listed)


@pytest.mark.parametrize(
    ("kind", "start", "step", "whole"),
    [
        ("fraction", "1/4", "1/4", Fraction(1)),
        ("length", "9 in", "9 in", Fraction(12)),
        ("mass", "250 g", "250 g", Fraction(1000)),
        ("money", "25c", "25c", Fraction(100)),
        ("clock", "9:00", "20 min", Fraction(60)),
    ],
)
def test_landmarks_at_the_whole_are_listed_first_of_all_landmarks(
    kind: str, start: str, step: str, whole: Fraction
) -> None:
    landmarks = [c for c in claims_for(grid(start, step, 24, 4, kind), 3) if c["family"] == "landmarks"]
    in_line = [c for c in landmarks if c["lie"] != "scattered"]
    assert Fraction(str(named((in_line or landmarks)[0]))) == whole
