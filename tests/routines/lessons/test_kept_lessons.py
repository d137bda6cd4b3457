"""Lessons that a school kept before coverage asked for their first written term go on counting."""

from importlib import import_module

import pytest
from django.apps import apps
from django.utils import timezone

from routines.models import Lesson, LessonEvent
from tests.routines.making import make_lesson, make_routine

migration = import_module("routines.migrations.0006_lessons_kept_so_far")


@pytest.fixture
def before(owner):
    """A paper lesson as it was kept then: a row for each term, and nothing on the lesson itself."""
    lesson = make_lesson(make_routine(owner), owner)
    lesson.events.all().delete()
    rows = [("term.write", {"n": 1, "text": "4", "over": None}), ("notice.add", {"text": "odd"}), ("lesson.end", {})]
    for seq, (kind, data) in enumerate(rows, 1):
        LessonEvent.objects.create(
            lesson=lesson, seq=seq, id=f"00000000-0000-4000-8000-{seq:012}", t=seq, device="paper-1",
            at=timezone.now(), kind=kind, data=data,
        )  # fmt: skip
    Lesson.objects.update(last_seq=0, last_event_at=None, written_at=None, ended=True)
    return lesson


def test_they_are_counted_and_go_on_where_they_were(before):
    assert not Lesson.objects.counted().exists()
    migration.read_from_events(apps, None)
    kept = Lesson.objects.counted().get()
    assert kept.last_seq == 3
    assert kept.written_at == before.events.get(seq=1).received_at
    assert kept.last_event_at == before.events.get(seq=3).received_at
    assert kept.ended


def test_a_lesson_in_which_nothing_was_written_stays_uncounted(before):
    before.events.filter(kind="term.write").delete()
    migration.read_from_events(apps, None)
    assert not Lesson.objects.counted().exists()
    assert Lesson.objects.get().last_seq == 3
