"""The demo school's lessons on the board: told in steps, kept as events, true to their plans."""

from datetime import UTC, datetime

import pytest

from routines.demo.board_lessons import BOARD_LESSONS
from routines.demo.lesson_script import events_of
from routines.demo.people import PEOPLE
from routines.demo.plans import PLANS
from routines.lessons.state import reduce_events

BEGINS = datetime(2026, 9, 15, 9, 15, tzinfo=UTC)
PLAN_OF = {demo.key: demo.plan for demo in PLANS}
CLASSES = {name: person.sign_in_name for person in PEOPLE for _, name, _ in person.classes}

each_lesson = pytest.mark.parametrize("lesson", BOARD_LESSONS, ids=lambda lesson: f"{lesson.routine}-{lesson.week}")


def events(lesson):
    return events_of(lesson.script, count=PLAN_OF[lesson.routine].count.count(), begins=BEGINS)


def test_there_are_enough_of_them_for_log_and_replay_to_have_something_to_show():
    assert len(BOARD_LESSONS) >= 8
    assert len({lesson.routine for lesson in BOARD_LESSONS}) == len(BOARD_LESSONS)


@each_lesson
def test_it_is_taught_by_the_teacher_of_its_class(lesson):
    assert CLASSES[lesson.class_name] == lesson.teacher


@each_lesson
def test_in_the_end_every_count_stands_right_and_something_was_struck(lesson):
    count = PLAN_OF[lesson.routine].count.count()
    told = events(lesson)
    state = reduce_events(told)
    left_out = {event["data"]["n"] for event in told if event["kind"] == "term.left-out"}
    for n in range(1, count.terms + 1):
        assert n in left_out or state.entries[n][-1].text == count.text(n), n
    struck = [(n, said) for n, entries in state.entries.items() for said in entries[-1].struck]
    assert struck
    assert all(said != count.text(n) for n, said in struck)


@each_lesson
def test_it_has_stops_voices_noticings_and_every_target(lesson):
    plan = PLAN_OF[lesson.routine]
    told = events(lesson)
    state = reduce_events(told)
    assert sorted(state.stops) == list(range(len(plan.stops)))
    assert all(time > 0 for time in state.stops.values())
    assert {voice["from"] for voice in state.voices} >= {1}
    assert max(voice["to"] for voice in state.voices) == plan.count.terms
    targets = [event["data"]["position"] for event in told if event["kind"] == "target"]
    assert targets == list(range(len(plan.targets)))
    for event in told:
        if event["kind"] == "notice.add" and event["data"]["expected"] is not None:
            assert plan.expected[event["data"]["expected"]].sort != "slip"
    assert state.ended


@each_lesson
def test_a_stop_is_made_where_the_plan_has_it(lesson):
    plan = PLAN_OF[lesson.routine]
    written = 0
    for event in events(lesson):
        if event["kind"] == "term.write":
            written = max(written, event["data"]["n"])
        if event["kind"] == "stop.enter":
            assert written == plan.stops[event["data"]["stop"]].after


@each_lesson
def test_it_takes_a_lesson_and_not_an_afternoon(lesson):
    last = events(lesson)[-1]
    assert 5 * 60 <= last["ms"] / 1000 <= 20 * 60
