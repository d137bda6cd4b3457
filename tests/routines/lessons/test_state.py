"""Reducing lesson events: what stands on the board, whatever the order in which events arrived."""

import random

from hypothesis import given
from hypothesis import strategies as st

from routines.lessons.state import reduce_events


def event(t, kind, *, device="a", ms=0, identity=None, **data):
    return {"id": identity or f"{device}{t}{kind}", "t": t, "device": device, "ms": ms, "kind": kind, "data": data}


def test_a_written_term_stands_in_its_cell():
    assert reduce_events([event(1, "term.write", n=1, text="7")]).text(1) == "7"


def test_a_correction_strikes_what_was_said_and_keeps_it():
    said = event(1, "term.write", n=8, text="925")
    state = reduce_events([said, event(2, "term.correct", n=8, text="975", over=said["id"])])
    assert state.text(8) == "975"
    assert state.slips() == [(8, "925")]


def test_the_same_text_from_two_devices_is_one_entry_and_other_text_is_kept_beside_it():
    same = reduce_events([event(1, "term.write", n=1, text="7"), event(1, "term.write", device="b", n=1, text="7")])
    other = reduce_events([event(1, "term.write", n=1, text="7"), event(1, "term.write", device="b", n=1, text="8")])
    assert [entry.text for entry in same.entries[1]] == ["7"]
    assert [entry.text for entry in other.entries[1]] == ["7", "8"]


def test_what_is_undone_is_gone_even_when_the_undo_arrives_first():
    mark = event(1, "mark.add", n=3, mark="ring")
    undo = event(2, "undo", event=mark["id"])
    assert reduce_events([undo, mark]).marks == reduce_events([mark, undo]).marks == {}


def test_unknown_kinds_are_ignored():
    assert reduce_events([event(1, "sparkle", n=1)]).entries == {}


def test_time_at_a_stop_is_measured_by_the_device_that_was_there():
    state = reduce_events([event(1, "stop.enter", stop=1, ms=1000), event(2, "stop.leave", stop=1, ms=61000)])
    assert state.stop_times == {1: 60000}


def test_a_lesson_that_ended_can_be_opened_again():
    assert reduce_events([event(1, "lesson.end")]).ended
    assert not reduce_events([event(1, "lesson.end"), event(2, "lesson.reopen")]).ended


KINDS = st.sampled_from(["term.write", "predict", "cover", "uncover", "notice.add", "mark.add", "undo"])


@given(
    st.lists(
        st.tuples(st.integers(1, 9), st.sampled_from("abc"), KINDS, st.integers(1, 4), st.sampled_from("xyz")),
        max_size=25,
    ),
    st.randoms(use_true_random=False),
)
def test_equal_sets_of_events_give_equal_states(rows, order: random.Random):
    events = [
        event(t, kind, device=device, identity=f"e{i}", n=n, text=text, mark="ring", event=f"e{i - 1}")
        for i, (t, device, kind, n, text) in enumerate(rows)
    ]
    shuffled = events + events[:3]
    order.shuffle(shuffled)
    assert reduce_events(shuffled) == reduce_events(events)
