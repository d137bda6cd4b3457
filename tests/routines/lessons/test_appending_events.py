"""The one way into a lesson's list: bounded, gapless, and the same event twice is one event."""

import pytest

from accounts.text import DEEPEST
from routines.models import LessonEvent
from tests.routines.lessons.making import (
    AT,
    BOARD,
    SUBSTITUTE,
    append,
    data_of_every_kind,
    event,
    identity,
    open_lesson,
)
from tests.routines.making import make_routine


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)


def reasons(taken) -> list[str]:
    assert all(len(refusal.words) > 10 for refusal in taken.rejected.values())
    return [refusal.reason for refusal in taken.rejected.values()]


def test_events_get_gapless_numbers(lesson):
    events = [event(t) for t in range(2, 7)]
    taken = append(lesson, *events)
    assert [taken.accepted[e["id"]] for e in events] == [2, 3, 4, 5, 6]  # 1 is what opened it
    assert lesson.last_seq == 6


def test_the_same_event_again_is_accepted_again_with_its_number(lesson):
    one = event()
    first = append(lesson, one)
    again = append(lesson, one, one)
    assert first.accepted == again.accepted == {one["id"]: 2}
    assert lesson.events.count() == 2


def test_a_copy_that_was_heard_from_the_server_is_the_same_event(lesson):
    one = event(at="2026-11-03T14:05:09.250999+00:00")
    append(lesson, one)
    heard = lesson.events.get(id=one["id"]).as_dict()
    assert heard["at"] == AT
    del heard["seq"]
    assert append(lesson, heard).accepted == {one["id"]: 2}


@pytest.mark.parametrize(
    "change",
    [{"data": {"n": 1, "text": "5", "over": None}}, {"t": 9}, {"device": "d2"}, {"ms": 6}, {"kind": "predict"}],
)
def test_the_same_id_with_other_content_is_rejected(lesson, change):
    one = event()
    append(lesson, one)
    other = {**one, **change}
    if change == {"kind": "predict"}:
        other["data"] = {"n": 1, "text": "4"}
    assert reasons(append(lesson, other)) == ["other-content"]
    assert lesson.events.get(id=one["id"]).data["text"] == "4"


def test_an_event_of_another_lesson_is_rejected(lesson, owner):
    one = event()
    append(open_lesson(owner, routine=make_routine(owner)), one)
    assert reasons(append(lesson, one)) == ["other-content"]
    assert lesson.events.filter(id=one["id"]).count() == 0


def test_an_erased_event_sent_again_is_accepted_as_its_stub(lesson):
    one = event(kind="notice.add", data={"text": "a word to erase", "expected": None})
    append(lesson, one)
    LessonEvent.objects.filter(id=one["id"]).update(erased=True, data={})
    assert append(lesson, one).accepted == {one["id"]: 2}
    kept = lesson.events.get(id=one["id"])
    assert kept.data == {}
    assert kept.as_dict()["erased"] is True


@pytest.mark.parametrize(
    ("change", "reason"),
    [
        ({"id": "no"}, "malformed"),
        ({"id": None}, "malformed"),
        ({"id": identity().upper()}, "malformed"),
        ({"t": 0}, "counter"),
        ({"t": -1}, "counter"),
        ({"t": 10_001}, "counter"),
        ({"t": "1"}, "counter"),
        ({"t": True}, "counter"),
        ({"t": 1.5}, "counter"),
        ({"ms": 1.5}, "malformed"),
        ({"ms": -1}, "malformed"),
        ({"ms": 2**63}, "malformed"),
        ({"ms": None}, "malformed"),
        ({"device": ""}, "malformed"),
        ({"device": "d" * 37}, "malformed"),
        ({"device": "d\x00"}, "malformed"),
        ({"device": "ñ"}, "malformed"),
        ({"kind": ""}, "malformed"),
        ({"kind": 5}, "malformed"),
        ({"kind": "k" * 21}, "malformed"),
        ({"data": []}, "malformed"),
        ({"data": None}, "malformed"),
        ({"data": {"n": 1}}, "malformed"),
        ({"data": {"n": 1, "text": "x" * 5000}}, "too-large"),
        ({"data": {"n": 1, "text": "ñ" * 2100}}, "too-large"),
        ({"data": {"n": 1, "text": "4\x00"}}, "text"),
        ({"data": {"n": 1, "text": "\ud83d"}}, "text"),
        ({"data": {"n": 71, "text": "4"}}, "unknown-term"),
        ({"kind": "sparkle", "data": {"x": float("nan")}}, "malformed"),
        ({"kind": "sparkle", "data": {"x": "\x00"}}, "text"),
        ({"at": "yesterday"}, "malformed"),
        ({"at": "2026-13-41T25:00:00Z"}, "malformed"),
        ({"at": "0001-01-01T00:00:00+14:00"}, "malformed"),
        ({"at": None}, "malformed"),
        ({"at": 5}, "malformed"),
        ({"v": 0}, "malformed"),
        ({"v": 1000}, "malformed"),
        ({"v": "1"}, "malformed"),
    ],
)
def test_a_bad_event_is_rejected_by_its_reason_and_the_others_are_taken(lesson, change, reason):
    before, after = event(2), event(3)
    taken = append(lesson, before, {**event(), **change}, after)
    assert list(taken.accepted) == [before["id"], after["id"]]
    assert reasons(taken) == [reason]


@pytest.mark.parametrize("depth", [DEEPEST, 1900])
def test_deep_nesting_is_rejected_whatever_python_and_the_database_can_hold(lesson, depth):
    deep: list = []
    for _ in range(depth - 1):
        deep = [deep]
    taken = append(lesson, event(kind="sparkle", data={"x": deep}), event(2))
    assert (len(taken.accepted), reasons(taken)) == (1, ["malformed"])


def test_as_deep_as_any_document_is_taken(lesson):
    deep: list = []
    for _ in range(DEEPEST - 2):
        deep = [deep]
    assert append(lesson, event(kind="sparkle", data={"x": deep})).rejected == {}


@pytest.mark.parametrize("clock", ["1970-01-01T00:00:00Z", "2199-01-01T00:00:00Z", "2026-11-03T14:05"])
def test_a_wall_clock_is_never_refused_for_being_wrong(lesson, clock):
    assert append(lesson, event(at=clock)).rejected == {}


@pytest.mark.parametrize("junk", [None, 3, "event", []])
def test_what_is_no_event_is_rejected_by_its_position(lesson, junk):
    good = event()
    taken = append(lesson, good, junk)
    assert list(taken.rejected) == ["1"]
    assert list(taken.accepted) == [good["id"]]


def test_unknown_kinds_are_kept(lesson):
    one = event(kind="sparkle", data={"x": [1, {"y": None}]})
    assert append(lesson, one).accepted
    assert lesson.events.get(id=one["id"]).data == {"x": [1, {"y": None}]}


def test_a_batch_holds_a_hundred_and_the_others_may_be_sent_again(lesson):
    events = [event(t) for t in range(1, 103)]
    taken = append(lesson, *events)
    assert len(taken.accepted) == 100
    assert reasons(taken) == ["too-many", "too-many"]
    assert len(append(lesson, *events[100:]).accepted) == 2


def test_a_lesson_holds_three_thousand(lesson):
    type(lesson).objects.filter(pk=lesson.pk).update(last_seq=2998)
    taken = append(lesson, *(event(t) for t in range(1, 5)))
    assert len(taken.accepted) == 2
    assert reasons(taken) == ["full", "full"]


SENDS = {
    # kind: (board, substitute), as DESIGN 7 and the contract have it
    "term.write": (True, True), "term.correct": (True, True), "term.left-out": (True, True), "mark.add": (True, True),
    "mark.remove": (True, True), "jump.add": (True, True), "phrase.add": (True, True), "predict": (True, True),
    "cover": (True, True), "uncover": (True, True), "recount": (True, True), "think": (True, True),
    "stop.enter": (True, True), "stop.leave": (True, True), "show": (True, True), "undo": (True, True),
    "filled": (False, True), "notice.add": (False, True), "notice.edit": (False, True), "voice": (False, True),
    "target": (False, True), "lesson.open": (False, False), "lesson.end": (False, False),
    "lesson.reopen": (False, False), "sparkle": (False, True),
}  # fmt: skip


@pytest.mark.parametrize("kind", SENDS)
def test_each_device_sends_what_it_may(lesson, kind):
    data = {**data_of_every_kind(), "sparkle": {}}[kind]
    for sender, may in zip((BOARD, SUBSTITUTE), SENDS[kind], strict=True):
        taken = append(lesson, event(2, kind, data), sender=sender)
        assert reasons(taken) == ([] if may else ["not-allowed"])


def test_the_table_of_senders_is_complete():
    assert set(SENDS) == {*data_of_every_kind(), "sparkle"}


@pytest.mark.parametrize("kind", ["undo", "mark.remove"])
def test_a_board_takes_back_only_what_it_could_have_made(lesson, kind):
    written, noticed = event(2), event(3, "notice.add", {"text": "tens", "expected": None})
    append(lesson, written, noticed)
    taken = append(
        lesson,
        event(4, kind, {"event": written["id"]}),
        event(5, kind, {"event": noticed["id"]}),
        event(6, kind, {"event": str(lesson.events.get(seq=1).id)}),
        sender=BOARD,
    )
    assert len(taken.accepted) == 1
    assert reasons(taken) == ["not-allowed", "not-allowed"]


def test_a_substitute_does_not_undo_the_end(lesson):
    end = event(2, "lesson.end", {})
    append(lesson, end)
    assert reasons(append(lesson, event(3, "undo", {"event": end["id"]}), sender=SUBSTITUTE)) == ["not-allowed"]


def test_who_sent_an_event_is_kept_and_never_told(lesson, owner):
    one = event()
    append(lesson, one)
    append(lesson, event(2), sender=BOARD)
    assert [kept.user for kept in lesson.events.order_by("seq")] == [owner, owner, None]
    assert set(lesson.events.get(id=one["id"]).as_dict()) == {*one, "seq"}
