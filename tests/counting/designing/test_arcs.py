"""Arcs of a circle, against looking at every number of a turn."""

from hypothesis import given
from hypothesis import strategies as st

from routines.counting.designing.arcs import Arcs, overlap
from routines.counting.designing.congruences import Span

turns = st.integers(4, 30)
starts = st.lists(st.integers(-50, 50), max_size=4)


def on_arcs(number: int, at: list[int], length: int, turn: int) -> bool:
    return any((number - start) % turn < length for start in at)


def held(arcs: Arcs) -> set[int]:
    return {x for x in range(arcs.turn) if any(low <= x < high for low, high in arcs.stretches)}


@given(starts, st.integers(1, 12), turns)
def test_a_union_of_arcs_holds_what_lies_on_one_of_them(at, length, turn):
    arcs = Arcs.starting(at, length, turn)
    assert held(arcs) == {x for x in range(turn) if on_arcs(x, at, length, turn)}
    assert list(arcs.stretches) == sorted(arcs.stretches)


@given(starts, starts, st.integers(1, 8), turns, st.integers(1, 3))
def test_arcs_meet_in_what_lies_on_both(at, others, length, turn, times):
    both = Arcs.starting(at, length, turn).meet(Arcs.starting(others, length, turn * times))
    assert held(both) == {
        x for x in range(turn * times) if on_arcs(x, at, length, turn) and on_arcs(x, others, length, turn * times)
    }


@given(st.lists(st.integers(-50, 50), min_size=1, max_size=5), st.integers(1, 6), st.integers(2, 9))
def test_overlap_is_what_all_arcs_share(at, length, times):
    turn = length * times
    shared = {x for x in range(turn) if all((x - start) % turn < length for start in at)}
    found = overlap(at, length, turn)
    listed = set() if found is None else {(found[0] + k) % turn for k in range(found[1])}
    assert listed == shared


@given(starts, st.integers(1, 8), turns, st.integers(-40, 40), st.integers(0, 60), st.integers(1, 50))
def test_members_are_the_numbers_of_the_span_on_the_arcs(at, length, turn, low, width, grain):
    span = Span(low, low + width, grain)
    arcs = Arcs.starting(at, length, turn)
    runs = arcs.members(span)
    assert len(runs) <= arcs.pieces(span)
    assert sorted(number for run in runs for number in run) == [
        x for x in span.members() if on_arcs(x, at, length, turn)
    ]
