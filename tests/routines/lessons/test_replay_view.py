"""A lesson again, moment by moment: who may, what stands at each moment, and that the last is what the log shows."""

import pytest
from django.urls import reverse
from django.utils import timezone

from routines.lessons.drawn import cells_on_board
from routines.lessons.moments import moments_of, state_at
from routines.lessons.recording import keep_events, made_event, state_of
from routines.models import Lesson
from tests.routines.making import make_lesson, make_routine


@pytest.fixture
def lesson(owner):
    made = make_lesson(make_routine(owner), owner)
    wrong = made_event(50, "board-a", timezone.now(), "term.write", {"n": 8, "text": "54", "over": None})
    right = made_event(51, "board-a", timezone.now(), "term.correct", {"n": 8, "text": "53", "over": wrong["id"]})
    noticed = made_event(52, "board-a", timezone.now(), "notice.add", {"text": "planted plum", "expected": None})
    undone = made_event(53, "board-a", timezone.now(), "notice.add", {"text": "planted pear", "expected": None})
    undo = made_event(54, "board-a", timezone.now(), "undo", {"event": undone["id"]})
    keep_events(lesson=made, events=[wrong, right, noticed, undone, undo])
    return made


def replay(lesson):
    return reverse("lesson_replay", args=[lesson.key])


def moments(lesson):
    plan = lesson.version.read_plan()
    return moments_of([event.as_dict() for event in lesson.events.all()], plan, plan.count.count())


def test_the_moments_are_in_order_and_what_was_undone_is_none(lesson):
    _, found = moments(lesson)
    assert [(moment.sort, moment.words) for moment in found] == [
        ("begin", "before the first count"),
        ("slip", "“54” is said for 53"),
        ("slip", "“54” is struck: 53"),
        ("noticed", "planted plum"),
        ("end", "the end"),
    ]


def test_it_begins_empty_and_ends_in_the_picture_of_the_log(lesson):
    ordered, found = moments(lesson)
    count = lesson.version.read_plan().count.count()
    assert cells_on_board(state_at(ordered, found[0]), count) == {}
    assert cells_on_board(state_at(ordered, found[-1]), count) == cells_on_board(state_of(lesson), count)
    assert state_at(ordered, found[1]).entries[8][0].text == "54"


def test_every_step_is_a_link_and_a_script_gets_the_part_alone(owner, visit, lesson):
    client = visit(owner)
    page = client.get(replay(lesson), {"moment": "1"})
    assert 'href="?moment=2"' in page.text
    part = client.get(replay(lesson), {"moment": "1"}, headers={"HX-Request": "true"})
    assert part.text.startswith('<div id="replay"')
    assert "<html" not in part.text


@pytest.mark.parametrize("moment", ["-1", "5", "999999999999", "x", "²"])
def test_a_moment_that_is_none_is_the_beginning(owner, visit, lesson, moment):
    assert 'data-at="0"' in visit(owner).get(replay(lesson), {"moment": moment}).text


@pytest.mark.parametrize(("sharing", "status"), [("only-me", 404), ("team", 200), ("team-coach", 200)])
def test_a_team_mate_steps_through_what_is_shared(teammate, visit, lesson, sharing, status):
    Lesson.objects.update(sharing=sharing)
    answer = visit(teammate).get(replay(lesson))
    assert answer.status_code == status
    assert ("planted plum" in answer.text) is (status == 200)


@pytest.mark.parametrize(("sharing", "status"), [("only-me", 404), ("team", 404), ("team-coach", 200)])
def test_a_coach_steps_through_what_is_shared_with_her(coach, visit, lesson, sharing, status):
    Lesson.objects.update(sharing=sharing)
    assert visit(coach).get(replay(lesson)).status_code == status


def test_an_administrator_and_whoever_is_signed_out_do_not(administrator, visit, client, lesson):
    Lesson.objects.update(sharing="team-coach")
    assert visit(administrator).get(replay(lesson)).status_code == 404
    assert client.get(replay(lesson)).status_code == 302
