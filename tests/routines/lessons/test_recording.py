"""A lesson's life: opened, taught on paper, ended as its events say, closed by itself, deleted."""

from datetime import timedelta

import pytest
from django.utils import timezone

from routines.lessons.recording import (
    delete_lesson,
    end_lesson,
    plan_mark,
    record_paper_lesson,
    reopen_lesson,
    state_of,
)
from routines.models import Lesson, LessonEvent
from tests.routines.lessons.making import BOARD, append, data_of_every_kind, event, open_lesson
from tests.routines.making import TAUGHT_ON, make_lesson, make_routine


@pytest.fixture
def lesson(owner):
    return open_lesson(owner)


def quiet(lesson, hours: float) -> Lesson:
    at = timezone.now() - timedelta(hours=hours)
    Lesson.objects.filter(pk=lesson.pk).update(last_event_at=at, created_at=at)
    LessonEvent.objects.filter(lesson=lesson).update(received_at=at)
    lesson.refresh_from_db()
    return lesson


def test_a_lesson_begins_with_what_is_needed_to_make_it_again(lesson, owner):
    first = lesson.events.get()
    assert (first.seq, first.t, first.kind) == (1, 1, "lesson.open")
    assert first.data == {
        "version": lesson.version_id,
        "plan": plan_mark(lesson.version),
        "class_group": lesson.class_group_id,
        "teacher": owner.pk,
        "taught_on": "2026-09-15",
        "practice": False,
        "surface": "board",
    }


def paper(owner, **wish):
    routine = make_routine(owner)
    return record_paper_lesson(
        version=routine.current_version,
        class_group=owner.class_groups.get(),
        teacher=owner,
        taught_on=TAUGHT_ON,
        **wish,
    )


def test_a_paper_lesson_is_filled_in_one_event_and_its_slips_are_kept_in_order(owner):
    # the 8th count of 4, 11, 18 ... is 53, the 3rd is 18
    lesson = paper(owner, heard={8: ["54", "60"], 3: ["19"]}, left_out=[5])
    state = state_of(lesson)
    assert state.filled == [(1, 20)]
    assert {n: ([e.text for e in entries], entries[0].struck) for n, entries in state.entries.items()} == {
        3: (["18"], ["19"]),
        5: ([""], []),
        8: (["53"], ["54", "60"]),
    }
    assert state.ended
    assert lesson.ended
    assert [row.kind for row in lesson.events.all()] == [
        "lesson.open", "filled", "term.write", "term.correct", "term.left-out", "term.write", "term.correct", "term.correct",
        "lesson.end",
    ]  # fmt: skip


def test_a_paper_lesson_keeps_voices_noticings_and_targets(owner):
    lesson = paper(
        owner,
        voices=[{"from": 1, "to": 20, "how": "strong"}, {"from": 8, "to": 9, "how": "faded"}],
        noticed=[("the ones take turns", None), ("35 below", 0)],
        targets={0: "seen", 1: "not-yet"},
    )
    state = state_of(lesson)
    assert [state.voice(n) for n in (1, 8, 10)] == ["strong", "faded", "strong"]
    assert [(row["text"], row["expected"]) for row in state.notices] == [("the ones take turns", None), ("35 below", 0)]
    assert state.targets == {0: "seen", 1: "not-yet"}


def test_a_paper_lesson_with_more_than_a_batch_is_whole(owner):
    lesson = paper(owner, heard={n: ["0"] * 12 for n in range(1, 21)})
    assert lesson.last_seq == lesson.events.count() == 3 + 20 * 13


def test_a_paper_lesson_with_an_impossible_slip_keeps_nothing(owner):
    with pytest.raises(ValueError, match="refused"):
        paper(owner, heard={1: ["x" * 41]})
    assert not Lesson.objects.exists()


def counted() -> int:
    return Lesson.objects.counted().count()


def test_a_lesson_counts_from_its_first_written_term(lesson):
    append(lesson, event(2, "cover", {"n": 1}), event(3, "predict", {"n": 9, "text": "60"}))
    assert counted() == 0
    append(lesson, event(4), sender=BOARD)
    assert counted() == 1


@pytest.mark.parametrize("kind", ["term.write", "term.correct", "term.left-out", "filled"])
def test_whatever_is_written_counts(lesson, kind):
    append(lesson, event(2, kind, data_of_every_kind()[kind]))
    assert counted() == 1


def test_a_lesson_whose_only_term_was_undone_does_not_count(lesson):
    written, other = event(2), event(4)
    append(lesson, written)
    append(lesson, event(3, "undo", {"event": written["id"]}))
    assert counted() == 0
    append(lesson, other)
    assert counted() == 1
    assert lesson.written_at == lesson.events.get(id=other["id"]).received_at


def test_an_undo_that_came_before_its_term_keeps_it_from_counting(lesson):
    written = event(2)
    append(lesson, event(3, "undo", {"event": written["id"]}))
    append(lesson, written)
    assert counted() == 0


def test_a_practice_run_never_counts(owner):
    append(open_lesson(owner, practice=True), event(2))
    assert counted() == 0


def test_ended_is_what_the_events_come_to_not_what_arrived_last(lesson):
    append(lesson, event(6, "lesson.reopen", {}))
    append(lesson, event(5, "lesson.end", {}))
    assert not lesson.ended
    end = event(7, "lesson.end", {})
    append(lesson, end)
    assert lesson.ended
    append(lesson, event(8, "undo", {"event": end["id"]}))
    assert not lesson.ended
    lesson.refresh_from_db()
    assert not lesson.ended


def test_ending_and_opening_again_are_events_and_doing_it_twice_is_once(lesson):
    append(lesson, event(40))
    end_lesson(lesson=lesson)
    end_lesson(lesson=lesson)
    assert lesson.ended
    assert lesson.events.filter(kind="lesson.end").values_list("t", flat=True).get() == 41
    reopen_lesson(lesson=lesson)
    reopen_lesson(lesson=lesson)
    assert not lesson.ended
    assert lesson.events.filter(kind="lesson.reopen").count() == 1


def test_a_lesson_is_over_by_itself_after_four_quiet_hours(lesson):
    append(lesson, event(2))
    assert not quiet(lesson, 3.9).is_over()
    assert list(Lesson.objects.on_now()) == [lesson]
    assert quiet(lesson, 4.1).is_over()
    assert list(Lesson.objects.on_now()) == []
    assert not lesson.ended


def test_who_writes_next_closes_it_and_its_teacher_opens_it_again(lesson):
    append(lesson, event(2))
    quiet(lesson, 5)
    append(lesson, event(3, "notice.add", {"text": "tens", "expected": None}))
    lesson.refresh_from_db()
    assert lesson.closed
    assert lesson.is_over()
    reopen_lesson(lesson=lesson)
    assert not lesson.closed
    assert not lesson.is_over()


def test_a_lesson_opened_early_waits_for_its_class(lesson):
    quiet(lesson, 6)
    assert not lesson.is_over()
    append(lesson, event(2))
    assert not lesson.closed
    assert not lesson.is_over()


def test_guests_have_a_quarter_of_an_hour_to_send_what_they_hold(lesson):
    append(lesson, event(2), event(3, "lesson.end", {}))
    assert append(lesson, event(4), sender=BOARD).rejected == {}
    quiet(lesson, 0.3)
    late = append(lesson, event(5), sender=BOARD)
    assert [refusal.reason for refusal in late.rejected.values()] == ["ended"]
    assert append(lesson, event(5)).rejected == {}  # its teacher


def test_deleting_leaves_stubs_and_nothing_else(owner):
    lesson = make_lesson(make_routine(owner), owner, sharing="team", seen="planted words")
    sent = event(50, "notice.add", {"text": "planted words", "expected": None})
    append(lesson, sent)
    delete_lesson(lesson=lesson)
    assert counted() == 0
    assert not Lesson.objects.taught_by(owner).exists()
    assert not Lesson.objects.open_to(owner).exists()
    assert not Lesson.objects.known_to(owner).exists()
    assert not Lesson.objects.on_now().exists()
    assert all(row.erased and row.data == {} for row in lesson.events.all())
    assert lesson.events.count() == lesson.last_seq
    lesson = Lesson.objects.get()
    assert not hasattr(lesson, "reflection")
    assert append(lesson, sent).accepted  # as its stub
    assert [r.reason for r in append(lesson, event(51)).rejected.values()] == ["deleted"]
    reopen_lesson(lesson=lesson)
    assert lesson.deleted_at is not None
