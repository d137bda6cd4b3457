"""Four devices writing at once: every event once, numbers without a gap, on every database."""

import random
import threading

import pytest
from django.db import connection

from routines.lessons.events import append_events
from routines.lessons.roles import Participant, Role
from routines.models import Lesson
from tests.routines.lessons.making import event, open_lesson

WRITERS, BATCHES, SIZE = 4, 6, 10


@pytest.mark.django_db(transaction=True)
def test_four_writers_leave_no_gap_and_lose_nothing(owner):
    lesson = open_lesson(owner)
    shared = [
        event(2, device="shared") for _ in range(SIZE)
    ]  # the same events from all four, as two tabs of one browser
    sent: list[dict] = []
    answers: list[dict[str, int]] = []
    problems: list[BaseException] = []
    together = threading.Barrier(WRITERS)

    def write(number: int) -> None:
        try:
            mine = Lesson.objects.select_related("version").get(pk=lesson.pk)
            sender = Participant(Role.TEACHER, owner)
            order = random.Random(number)
            for batch in range(BATCHES):
                events = [event(3 + batch, device=f"d{number}") for _ in range(SIZE)]
                sent.extend(events)
                mixed = [*events, *shared]
                order.shuffle(mixed)
                together.wait(timeout=30)
                taken = append_events(lesson=mine, events=mixed, sender=sender)
                assert taken.rejected == {}
                again = append_events(lesson=mine, events=events, sender=sender)  # the answer was lost
                assert again.accepted.items() <= taken.accepted.items()
                answers.append(taken.accepted)
        except BaseException as problem:
            problems.append(problem)
            together.abort()
        finally:
            connection.close()

    threads = [threading.Thread(target=write, args=(number,)) for number in range(WRITERS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(timeout=60)
    assert problems == []
    kept = {str(row.id): row.seq for row in lesson.events.all()}
    assert sorted(kept.values()) == list(range(1, 1 + 1 + WRITERS * BATCHES * SIZE + SIZE))
    assert {one["id"] for one in [*sent, *shared]} <= set(kept)
    for accepted in answers:
        assert {name: kept[name] for name in accepted} == accepted
    lesson.refresh_from_db()
    assert lesson.last_seq == len(kept)
