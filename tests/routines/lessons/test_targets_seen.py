"""Targets marked on the lectern are counted as soon as they are said, whether or not anybody opens the log."""

import importlib
from datetime import timedelta

import pytest
from django.apps import apps
from django.urls import reverse

from routines.lessons.recording import delete_lesson, end_lesson
from routines.models import Lesson, TargetOutcome
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.making import make_lesson, make_routine


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)


def target(position, seen, t=2, **changes):
    return event(t, "target", {"position": position, "seen": seen}, **changes)


def kept(lesson) -> list[tuple[int, str, str]]:
    return [(row.position, row.family, row.seen) for row in lesson.target_outcomes.all()]


def counted() -> list[TargetOutcome]:
    return list(TargetOutcome.objects.filter(lesson__in=Lesson.objects.counted()))


def test_a_lesson_that_ended_counts_its_targets_without_its_log_being_opened(lesson):
    append(lesson, event(), target(0, "seen"), target(1, "not-yet", 3))
    end_lesson(lesson=lesson)
    assert kept(lesson) == [(0, "step", "seen"), (1, "neighbour", "not-yet")]
    assert len(counted()) == 2


def test_so_does_one_that_closed_by_itself(lesson):
    append(lesson, event(), target(0, "seen"))
    long_ago = lesson.last_event_at - timedelta(hours=5)
    Lesson.objects.update(last_event_at=long_ago)
    lesson.refresh_from_db()
    assert lesson.is_over()
    assert [row.seen for row in counted()] == ["seen"]


def test_before_its_first_term_and_as_a_practice_run_a_lesson_counts_none(lesson, owner):
    append(lesson, target(0, "seen"))
    append(open_lesson(owner, routine=lesson.routine, practice=True), event(), target(0, "seen"))
    assert counted() == []


def test_the_later_word_holds_whatever_the_order_of_arrival(lesson):
    append(lesson, target(0, "seen", 5))
    append(lesson, target(0, "not-yet", 4))
    assert kept(lesson) == [(0, "step", "seen")]


def test_what_is_taken_back_is_not_recorded_any_more(lesson):
    said = target(0, "seen")
    append(lesson, said)
    append(lesson, event(3, "undo", {"event": said["id"]}))
    assert kept(lesson) == []
    append(lesson, target(1, "seen", 4), target(1, "", 5))
    assert kept(lesson) == []


def test_an_undo_that_comes_first_holds_too(lesson):
    said = target(0, "seen")
    append(lesson, event(3, "undo", {"event": said["id"]}))
    append(lesson, said)
    assert kept(lesson) == []


def test_a_target_that_the_plan_does_not_hold_makes_no_row_and_is_kept_as_event(lesson):
    taken = append(lesson, target(7, "seen"))
    assert not taken.rejected
    assert kept(lesson) == []


def test_a_plan_that_cannot_be_read_stops_no_event(lesson):
    lesson.version.plan["targets"] = [{"words": "no claim"}]
    lesson.version.save()
    assert not append(lesson, target(0, "seen")).rejected
    assert kept(lesson) == []


def test_rows_kept_before_targets_were_events_stay_until_an_event_is_about_them(lesson):
    TargetOutcome.objects.create(lesson=lesson, position=1, family="neighbour", seen="seen")
    append(lesson, target(0, "seen"))
    assert kept(lesson) == [(0, "step", "seen"), (1, "neighbour", "seen")]
    append(lesson, target(1, "not-yet", 3))
    assert kept(lesson) == [(0, "step", "seen"), (1, "neighbour", "not-yet")]


def test_saving_the_log_untouched_keeps_what_the_lectern_said(lesson, owner, visit):
    append(lesson, event(), target(0, "seen"))
    page = visit(owner).get(lesson.get_absolute_url())
    form = page.context["form"]
    sent = {name: form[name].value() or "" for name in form.fields if name != "practice"}
    assert visit(owner).post(reverse("lesson", args=[lesson.key]), sent).status_code == 302
    assert kept(lesson) == [(0, "step", "seen")]


def test_a_deleted_lesson_leaves_none(lesson):
    append(lesson, event(), target(0, "seen"))
    delete_lesson(lesson=lesson)
    assert kept(lesson) == []


def test_lessons_kept_so_far_have_their_rows_made(lesson, owner):
    taken_back = target(1, "seen", 3)
    append(lesson, target(0, "seen"), taken_back, event(4, "undo", {"event": taken_back["id"]}))
    other = make_lesson(make_routine(owner), owner)
    TargetOutcome.objects.all().delete()
    TargetOutcome.objects.create(lesson=other, position=0, family="step", seen="not-yet")
    importlib.import_module("routines.migrations.0010_targets_seen_so_far").read_from_events(apps, None)
    assert kept(lesson) == [(0, "step", "seen")]
    assert kept(other) == [(0, "step", "not-yet")]
