"""The one way into a lesson's list: bounded, gapless, and the same event twice is one event."""

import uuid

import pytest
from django.utils import timezone

from routines.lessons.actions import append_events, start_lesson
from tests.routines.making import TAUGHT_ON, make_routine


@pytest.fixture
def lesson(owner):
    routine = make_routine(owner)
    return start_lesson(
        version=routine.current_version,
        class_group=owner.class_groups.get(),
        teacher=owner,
        taught_on=TAUGHT_ON,
        surface="board",
    )


def event(t=1, kind="term.write", **data):
    return {
        "v": 1,
        "id": str(uuid.uuid4()),
        "t": t,
        "device": "d1",
        "at": timezone.now().isoformat(),
        "ms": 5,
        "kind": kind,
        "data": data or {"n": t, "text": "4"},
    }


def test_events_get_gapless_numbers(lesson, owner):
    events = [event(t) for t in range(1, 6)]
    taken = append_events(lesson=lesson, events=events, user=owner)
    assert [taken.accepted[e["id"]] for e in events] == [1, 2, 3, 4, 5]


def test_the_same_event_again_is_accepted_again_with_its_number(lesson, owner):
    one = event()
    first = append_events(lesson=lesson, events=[one], user=owner)
    again = append_events(lesson=lesson, events=[one, one], user=owner)
    assert first.accepted == again.accepted
    assert lesson.events.count() == 1


def test_the_same_id_with_other_content_is_rejected(lesson, owner):
    one = event()
    append_events(lesson=lesson, events=[one], user=owner)
    other = {**one, "data": {"n": 1, "text": "5"}}
    assert one["id"] in append_events(lesson=lesson, events=[other], user=owner).rejected
    assert lesson.events.get().data["text"] == "4"


def test_an_erased_event_sent_again_is_accepted_as_its_stub(lesson, owner):
    one = event(kind="notice.add", text="a word to erase")
    append_events(lesson=lesson, events=[one], user=owner)
    lesson.events.update(erased=True, data={})
    taken = append_events(lesson=lesson, events=[one], user=owner)
    assert taken.accepted == {one["id"]: 1}
    assert lesson.events.get().data == {}


@pytest.mark.parametrize(
    "change",
    [
        {"id": "no"},
        {"id": None},
        {"t": -1},
        {"t": "1"},
        {"t": True},
        {"ms": 1.5},
        {"device": ""},
        {"device": "d" * 37},
        {"kind": ""},
        {"kind": 5},
        {"data": []},
        {"data": {"n": 1}},
        {"data": {"n": 1, "text": "x" * 5000}},
        {"at": "yesterday"},
        {"at": None},
        {"v": 0},
    ],
)
def test_a_malformed_event_is_rejected_with_a_reason_and_the_others_are_taken(lesson, owner, change):
    good = event(2)
    taken = append_events(lesson=lesson, events=[{**event(), **change}, good], user=owner)
    assert list(taken.accepted) == [good["id"]]
    assert all(len(reason) > 10 for reason in taken.rejected.values())
    assert len(taken.rejected) == 1


@pytest.mark.parametrize("junk", [None, 3, "event", []])
def test_what_is_no_event_is_rejected(lesson, owner, junk):
    assert append_events(lesson=lesson, events=[junk], user=owner).accepted == {}


def test_unknown_kinds_are_kept(lesson, owner):
    assert append_events(lesson=lesson, events=[event(kind="sparkle", x=1)], user=owner).accepted


def test_a_batch_holds_a_hundred(lesson, owner):
    taken = append_events(lesson=lesson, events=[event(t) for t in range(1, 103)], user=owner)
    assert (len(taken.accepted), len(taken.rejected)) == (100, 2)


def test_the_end_closes_the_lesson_and_reopening_opens_it(lesson, owner):
    append_events(lesson=lesson, events=[event(1, "lesson.end", x=1)], user=owner)
    lesson.refresh_from_db()
    assert lesson.ended
    append_events(lesson=lesson, events=[event(2, "lesson.reopen", x=1)], user=owner)
    lesson.refresh_from_db()
    assert not lesson.ended
