"""A board hears what the class may see, and nothing else, whatever was sent and in whatever order."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.lessons.events import heard_events
from routines.lessons.kinds import KINDS
from routines.lessons.state import reduce_events
from routines.models import Lesson, LessonEvent
from tests.routines.lessons.making import BOARD, SUBSTITUTE, append, data_of_every_kind, event, identity, open_lesson

HEARD = {
    "term.write", "term.correct", "term.left-out", "filled", "recount", "mark.add", "mark.remove", "jump.add",
    "phrase.add", "predict", "cover", "uncover", "think", "stop.enter", "stop.leave", "show", "undo", "lesson.end",
    "lesson.reopen",
}  # fmt: skip
PRIVATE = ("lesson.open", "notice.add", "notice.edit", "voice", "target", "sparkle")
ORDER = ("t", "device", "id")


def everything_heard(lesson, reader, limit) -> list[dict]:
    """As a device polls: page by page, each from where the last one reached."""
    heard, after = [], 0
    while after < lesson.last_seq:
        page, last = heard_events(lesson, reader, after=after, limit=limit)
        assert last > after
        heard += page
        after = last
    return heard


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)


def test_every_kind_is_heard_or_not_as_written_down(lesson):
    about = event(2)
    events = [event(t, kind, data) for t, (kind, data) in enumerate(data_of_every_kind(about["id"]).items(), 3)]
    append(lesson, about, *events, event(90, "sparkle", {"answer": "planted"}))
    kinds = {told["kind"] for told in everything_heard(lesson, BOARD, 500)}
    assert kinds == HEARD
    assert {told["kind"] for told in everything_heard(lesson, SUBSTITUTE, 500)} == {*KINDS, "sparkle"}
    assert not kinds & set(PRIVATE)


def test_nothing_private_stands_in_what_a_board_hears(lesson):
    append(lesson, *(event(t, kind, data) for t, (kind, data) in enumerate(data_of_every_kind().items(), 2)))
    told = json.dumps(everything_heard(lesson, BOARD, 500))
    for planted in ("planted", "faded", "not-yet", "class_group", "user"):
        assert planted not in told


def test_an_undo_that_came_before_its_event_is_heard_with_it(lesson):
    written = event(2)
    append(lesson, event(3, "undo", {"event": written["id"]}))
    page, last = heard_events(lesson, BOARD, after=0)
    assert (page, last) == ([], 2)
    append(lesson, written)
    page, last = heard_events(lesson, BOARD, after=last)
    assert [(told["kind"], told["seq"]) for told in page] == [("undo", 2), ("term.write", 3)]


def test_stubs_are_heard_as_stubs(lesson):
    phrase = event(2, "phrase.add", {"text": "planted", "cells": [1]})
    append(lesson, phrase)
    LessonEvent.objects.filter(id=phrase["id"]).update(erased=True, data={})
    (told,), _ = heard_events(lesson, BOARD, after=0)
    assert (told["id"], told["data"], told["erased"]) == (phrase["id"], {}, True)


ROWS = st.lists(
    st.tuples(st.sampled_from([*KINDS, "sparkle"]), st.integers(0, 7), st.integers(1, 5)), min_size=1, max_size=12
)


@pytest.mark.django_db
@given(rows=ROWS, order=st.randoms(use_true_random=False), limit=st.integers(1, 5))
def test_a_board_ends_up_with_the_same_board_as_the_lectern(rows, order, limit):
    """Any events in any order of arrival: never a private one or its undo, and what the class sees is complete."""
    lesson = shared_lesson()
    ids = [identity() for _ in range(8)]
    events = []
    for k, (kind, about, t) in enumerate(rows):
        data = {**data_of_every_kind(ids[about]), "sparkle": {"x": "planted"}}[kind]
        events.append(event(t, kind, data, identity=ids[k] if k < 8 else None, device=f"d{k}"))
    order.shuffle(events)
    for one in events:  # each a batch of its own, in any order
        append(lesson, one)
    kinds = {told["id"]: told["kind"] for told in everything_heard(lesson, SUBSTITUTE, 500)}
    heard = everything_heard(lesson, BOARD, limit)
    for told in heard:
        assert told["kind"] in HEARD
        assert "user" not in told
        if told["kind"] in ("undo", "mark.remove"):
            assert kinds[told["data"]["event"]] in HEARD
    seen, all_of_it = reduce_events(heard).as_dict(), reduce_events(event_dicts(lesson)).as_dict()
    for name in ("opened", "notices", "voices", "targets"):
        del seen[name], all_of_it[name]
    assert seen == all_of_it


def event_dicts(lesson):
    return [row.as_dict() for row in lesson.events.all()]


def shared_lesson() -> Lesson:
    """A fresh lesson for each example."""
    first = Lesson.objects.first()
    assert first is not None
    return open_lesson(first.teacher, routine=first.routine)


@pytest.fixture(autouse=True)
def one_lesson(lesson):
    return lesson
