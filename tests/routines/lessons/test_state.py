"""Reducing lesson events: what stands on the board, whatever the order in which events arrived."""

import copy
import json

from hypothesis import given
from hypothesis import strategies as st

from routines.lessons.state import ACTS, reduce_events


def event(t, kind, *, device="a", ms=0, identity=None, **data):
    return {"id": identity or f"{device}{t}{kind}", "t": t, "device": device, "ms": ms, "kind": kind, "data": data}


def test_a_written_term_stands_in_its_cell():
    assert [entry.text for entry in reduce_events([event(1, "term.write", n=1, text="7")]).entries[1]] == ["7"]


def test_a_correction_strikes_what_was_said_and_keeps_it():
    said = event(1, "term.write", n=8, text="925")
    state = reduce_events([said, event(2, "term.correct", n=8, text="975", over=said["id"])])
    assert [entry.text for entry in state.entries[8]] == ["975"]
    assert [entry.struck for entry in state.entries[8]] == [["925"]]


def test_the_same_text_from_two_devices_is_one_entry_and_other_text_is_kept_beside_it():
    same = reduce_events([event(1, "term.write", n=1, text="7"), event(1, "term.write", device="b", n=1, text="7")])
    other = reduce_events([event(1, "term.write", n=1, text="7"), event(1, "term.write", device="b", n=1, text="8")])
    assert [entry.text for entry in same.entries[1]] == ["7"]
    assert [entry.text for entry in other.entries[1]] == ["7", "8"]


def test_what_is_undone_is_gone_even_when_the_undo_arrives_first():
    mark = event(1, "mark.add", n=3, mark="ring")
    undo = event(2, "undo", event=mark["id"])
    assert reduce_events([undo, mark]).marks == reduce_events([mark, undo]).marks == []


def test_unknown_kinds_are_ignored():
    assert reduce_events([event(1, "sparkle", n=1)]).entries == {}


def test_time_at_a_stop_is_measured_by_the_device_that_was_there():
    state = reduce_events([event(1, "stop.enter", stop=1, ms=1000), event(2, "stop.leave", stop=1, ms=61000)])
    assert state.stops == {1: 60000}


def test_a_lesson_that_ended_can_be_opened_again():
    assert reduce_events([event(1, "lesson.end")]).ended
    assert not reduce_events([event(1, "lesson.end"), event(2, "lesson.reopen")]).ended


def test_where_voices_overlap_the_later_holds():
    state = reduce_events(
        [
            event(1, "voice", **{"from": 1, "to": 20, "how": "strong"}),
            event(2, "voice", **{"from": 8, "to": 12, "how": "faded"}),
        ]
    )
    assert [state.voice(n) for n in (1, 8, 12, 13, 21)] == ["strong", "faded", "faded", "strong", None]


# Few ids, counters, devices and terms, so that events meet.
IDS = st.integers(1, 12).map(lambda k: f"e{k}")
NEARLY_IDS = st.one_of(IDS, st.none())
TERMS = st.integers(1, 3)
STOPS = st.integers(0, 1)
DATA = {
    "lesson.open": st.fixed_dictionaries({"version": TERMS}),
    "term.write": st.fixed_dictionaries({"n": TERMS, "text": st.sampled_from("xyz"), "over": NEARLY_IDS}),
    "term.correct": st.fixed_dictionaries({"n": TERMS, "text": st.sampled_from("xyz"), "over": NEARLY_IDS}),
    "term.left-out": st.fixed_dictionaries({"n": TERMS, "over": NEARLY_IDS}),
    "filled": st.fixed_dictionaries({"from": TERMS, "to": TERMS}),
    "recount": st.fixed_dictionaries({"from": TERMS, "to": TERMS}),
    "mark.add": st.fixed_dictionaries({"n": TERMS, "mark": st.just("ring"), "place": st.none()}),
    "mark.remove": st.fixed_dictionaries({"event": IDS}),
    "jump.add": st.fixed_dictionaries({"from": TERMS, "to": TERMS}),
    "phrase.add": st.fixed_dictionaries({"text": st.sampled_from("xy"), "cells": st.lists(TERMS, max_size=2)}),
    "predict": st.fixed_dictionaries({"n": TERMS, "text": st.sampled_from("xy")}),
    "cover": st.fixed_dictionaries({"n": TERMS}),
    "uncover": st.fixed_dictionaries({"n": TERMS}),
    "think": st.fixed_dictionaries({"seconds": st.integers(0, 2)}),
    "stop.enter": st.fixed_dictionaries({"stop": STOPS}),
    "stop.leave": st.fixed_dictionaries({"stop": STOPS}),
    "show": st.fixed_dictionaries({"line": TERMS}),
    "notice.add": st.fixed_dictionaries({"text": st.sampled_from("xy"), "expected": st.none()}),
    "notice.edit": st.fixed_dictionaries({"event": IDS, "text": st.sampled_from("xy")}),
    "voice": st.fixed_dictionaries({"from": TERMS, "to": TERMS, "how": st.just("strong")}),
    "target": st.fixed_dictionaries({"position": STOPS, "seen": st.sampled_from(["seen", "not-yet", ""])}),
    "undo": st.fixed_dictionaries({"event": IDS}),
    "lesson.end": st.just({}),
    "lesson.reopen": st.just({}),
    "sparkle": st.fixed_dictionaries({"n": TERMS}),
}
ROWS = st.one_of(
    *(
        st.tuples(st.integers(1, 6), st.sampled_from("abC"), st.integers(0, 9), st.just(kind), data, st.booleans())
        for kind, data in DATA.items()
    )
)


def made(rows) -> list[dict]:
    return [
        {
            "id": f"e{k}", "t": t, "device": device, "at": "2026-11-03T14:05:09.250Z", "ms": ms, "kind": kind,
            **({"data": {}, "erased": True} if erased and k % 5 == 0 else {"data": data}),
        }
        for k, (t, device, ms, kind, data, erased) in enumerate(rows, 1)
    ]  # fmt: skip


def test_the_generated_events_are_of_every_kind():
    assert set(ACTS) | {"undo", "mark.remove", "sparkle"} == set(DATA)


@given(st.lists(ROWS, max_size=12), st.data())
def test_any_shuffle_repetition_or_split_of_a_set_gives_one_state(rows, data):
    events = made(rows)
    state = reduce_events(events).as_dict()
    shuffled = data.draw(st.permutations(events))
    again = data.draw(st.lists(st.sampled_from(events), max_size=4)) if events else []
    cut = data.draw(st.integers(0, len(events)))
    assert reduce_events(shuffled).as_dict() == state
    assert reduce_events([*shuffled, *again]).as_dict() == state
    assert reduce_events([*events[cut:], *again, *events[:cut]]).as_dict() == state


@given(st.lists(ROWS, max_size=12))
def test_reducing_changes_no_event(rows):
    events = made(rows)
    before = copy.deepcopy(events)
    reduce_events(events)
    assert events == before


@given(st.lists(ROWS, max_size=12), st.integers(1, 12))
def test_what_is_undone_leaves_no_trace_of_its_own_id(rows, k):
    events = [*made(rows), event(9, "undo", identity="last", event=f"e{k}")]
    assert f'"event": "e{k}"' not in json.dumps(reduce_events(events).as_dict())


@given(st.lists(ROWS, max_size=12))
def test_entries_of_a_cell_never_say_the_same_twice(rows):
    for entries in reduce_events(made(rows)).entries.values():
        said = [(entry.text, entry.left_out) for entry in entries]
        assert len(said) == len(set(said)) > 0
