"""What a lesson's life is made of: opening it, recording one taught on paper, its end, its reflection, deleting it."""

import hashlib
import json
import uuid
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime
from typing import Any

from django.db import transaction
from django.db.models import Max
from django.utils import timezone

from accounts.models import User
from grade_bands.models import ClassGroup
from routines.lessons.events import BATCH_LIMIT, HIGHEST_T, Taken, append_events
from routines.lessons.log import Log, LogChanges, log_of, write_cell
from routines.lessons.roles import Participant, Role
from routines.lessons.state import LessonState, reduce_events
from routines.lessons.targets_seen import families_of_targets
from routines.lessons.totals import Counted, count_again, count_days_again
from routines.models import Lesson, LessonEvent, Reflection, RoutineVersion, TargetOutcome


@transaction.atomic
def start_lesson(
    *,
    version: RoutineVersion,
    class_group: ClassGroup,
    teacher: User,
    taught_on: date,
    surface: str,
    practice: bool = False,
    key: uuid.UUID | None = None,
    opening: Mapping[str, Any] | None = None,
) -> Lesson:
    """Open a lesson that keeps its own year, grade and area.

    Its first event holds what is needed to make it again; where it is made again, that event (`opening`) is there already.
    """
    lesson = Lesson.objects.create(
        key=key or uuid.uuid4(),
        routine=version.routine,
        version=version,
        class_group=class_group,
        teacher=teacher,
        taught_on=taught_on,
        surface=surface,
        practice=practice,
        year=class_group.year,
        grade=class_group.grade,
        area=version.routine.area,
        targets_not_recorded=len(families_of_targets(version.plan)),
    )
    if opening is None:
        keep_events(lesson=lesson, events=[made_event(1, "server", timezone.now(), "lesson.open", opening_of(lesson))])
    return lesson


@transaction.atomic
def open_on_the_board(
    *, version: RoutineVersion, class_group: ClassGroup, teacher: User, taught_on: date, practice: bool = False
) -> Lesson:
    """The lesson of this count that is open and still empty, else a new one: two presses at one moment open one."""
    User.objects.select_for_update().get(pk=teacher.pk)  # the second press waits here until the first has its lesson
    board = Lesson.Surface.BOARD
    hers = Lesson.objects.on_now().taught_by(teacher).filter(class_group=class_group, taught_on=taught_on)
    empty = hers.filter(version=version, practice=practice, surface=board, written_at=None).first()
    return empty or start_lesson(
        version=version, class_group=class_group, teacher=teacher, taught_on=taught_on, practice=practice, surface=board
    )


def opening_of(lesson: Lesson) -> dict[str, Any]:
    return {
        "version": lesson.version_id,
        "plan": plan_mark(lesson.version),
        "class_group": lesson.class_group_id,
        "teacher": lesson.teacher_id,
        "taught_on": lesson.taught_on.isoformat(),
        "practice": lesson.practice,
        "surface": str(lesson.surface),
    }


def plan_mark(version: RoutineVersion) -> str:
    """Tells one plan from another: after a restore, a number that was used before may stand for another version."""
    written = json.dumps(version.plan, sort_keys=True, ensure_ascii=False)
    return hashlib.sha256(written.encode()).hexdigest()[:16]


def made_event(t: int, device: str, at: datetime, kind: str, data: Mapping[str, Any]) -> dict[str, Any]:
    """An event made here, not on a device in the classroom."""
    return {
        "v": 1,
        "id": str(uuid.uuid4()),
        "t": t,
        "device": device,
        "at": at,
        "ms": 0,
        "kind": kind,
        "data": dict(data),
    }


def keep_events(*, lesson: Lesson, events: Sequence[Mapping[str, Any]]) -> None:
    """Append events made here, in the name of the lesson's teacher. Raises: ValueError where one is refused, a fault of ours."""
    teacher = Participant(Role.TEACHER, lesson.teacher)
    for first in range(0, len(events), BATCH_LIMIT):
        taken: Taken = append_events(lesson=lesson, events=events[first : first + BATCH_LIMIT], sender=teacher)
        if taken.rejected:
            raise ValueError(f"events of lesson {lesson.pk} refused: {taken.rejected}")


def next_t(lesson: Lesson) -> int:
    """One past the highest counter, as a device counts that has heard everything."""
    highest = lesson.events.aggregate(t=Max("t"))["t"] or 0
    return min(highest + 1, HIGHEST_T)


@transaction.atomic
def end_lesson(*, lesson: Lesson) -> None:
    """End it after everything that is known of it. Ending what has ended changes nothing."""
    _turn(lesson, "lesson.end", ended=True)


@transaction.atomic
def reopen_lesson(*, lesson: Lesson) -> None:
    """Open again what ended, or was over by itself."""
    _turn(lesson, "lesson.reopen", ended=False)


def _turn(lesson: Lesson, kind: str, *, ended: bool) -> None:
    held = Lesson.objects.select_for_update().select_related("version", "teacher").get(pk=lesson.pk)
    if held.deleted_at is not None or (held.ended if ended else held.is_over()) is ended:
        return
    keep_events(lesson=held, events=[made_event(next_t(held), "server", timezone.now(), kind, {})])
    lesson.refresh_from_db()


@transaction.atomic
def delete_lesson(*, lesson: Lesson) -> None:
    """Delete it for good: stubs of its events stay, so that a device that sends them again is understood; nothing else does."""
    held = Lesson.objects.select_for_update().get(pk=lesson.pk)
    was_counted = held.is_counted
    LessonEvent.objects.filter(lesson=held).update(data={}, erased=True)
    Reflection.objects.filter(lesson=held).delete()
    TargetOutcome.objects.filter(lesson=held).delete()
    held.deleted_at = timezone.now()
    held.sharing = Lesson.Sharing.ONLY_ME
    held.targets_seen = held.targets_not_yet = held.targets_not_recorded = 0
    held.save(update_fields=["deleted_at", "sharing", "targets_seen", "targets_not_yet", "targets_not_recorded"])
    if was_counted:
        count_again(Counted.of(held))
    lesson.refresh_from_db()


@transaction.atomic
def move_lesson(*, lesson: Lesson, class_group: ClassGroup, taught_on: date, practice: bool) -> None:
    """Correct class and day, which are plain fields; year and grade follow the class."""
    held = Lesson.objects.select_for_update().get(pk=lesson.pk)
    places = {Counted.of(held)} if held.is_counted else set()
    for one in (held, lesson):
        one.class_group, one.taught_on, one.practice = class_group, taught_on, practice
        one.year, one.grade = class_group.year, class_group.grade
    held.save(update_fields=["class_group", "taught_on", "practice", "year", "grade"])
    count_again(*places, *({Counted.of(held)} if held.is_counted else set()))


def paper_events(
    *,
    first_t: int,
    terms: int,
    heard: Mapping[int, Sequence[str]],
    due: Mapping[int, str],
    left_out: Iterable[int] = (),
    again: Iterable[int] = (),
    voices: Iterable[Mapping[str, Any]] = (),
    noticed: Iterable[tuple[str, int | None]] = (),
    targets: Mapping[int, str] | None = None,
    at: datetime,
) -> list[dict[str, Any]]:
    """The events of a count taught on paper: it stands filled; beside that, what was said otherwise, in order, and then as it
    is due (`due`, by term), what was left out, voices of stretches, noticings with the planned answer they match, the end.
    """
    device = f"paper-{uuid.uuid4().hex[:8]}"
    made: list[dict[str, Any]] = []

    def add(kind: str, /, **data: Any) -> str:
        made.append(made_event(first_t + len(made), device, at, kind, data))
        return str(made[-1]["id"])

    add("filled", **{"from": 1, "to": terms})
    skipped = set(left_out)
    for n in sorted({*heard, *skipped}):
        said = [*heard[n], due[n]] if heard.get(n) else []
        write_cell(add, n, said, left_out=n in skipped)
    for n in sorted(again):
        add("recount", **{"from": n, "to": n})
    for voice in voices:
        add("voice", **voice)
    for text, expected in noticed:
        add("notice.add", text=text, expected=expected)
    for position, seen in sorted((targets or {}).items()):
        add("target", position=position, seen=seen)
    add("lesson.end")
    return made


@transaction.atomic
def record_paper_lesson(
    *,
    version: RoutineVersion,
    class_group: ClassGroup,
    teacher: User,
    taught_on: date,
    practice: bool = False,
    heard: Mapping[int, Sequence[str]] | None = None,
    left_out: Iterable[int] = (),
    again: Iterable[int] = (),
    voices: Iterable[Mapping[str, Any]] = (),
    noticed: Iterable[tuple[str, int | None]] = (),
    targets: Mapping[int, str] | None = None,
    at: datetime | None = None,
) -> Lesson:
    """A lesson taught on paper, kept whole or not at all."""
    lesson = start_lesson(
        version=version,
        class_group=class_group,
        teacher=teacher,
        taught_on=taught_on,
        surface=Lesson.Surface.PAPER,
        practice=practice,
    )
    count = version.read_plan().count.count()
    heard = heard or {}
    events = paper_events(
        first_t=next_t(lesson),
        terms=count.terms,
        heard=heard,
        due={n: count.text(n) for n in heard},
        left_out=left_out,
        again=again,
        voices=voices,
        noticed=noticed,
        targets=targets,
        at=at or timezone.now(),
    )
    keep_events(lesson=lesson, events=events)
    return lesson


@transaction.atomic
def change_log(*, lesson: Lesson, wanted: Log, chosen: Mapping[int, str] | None = None) -> None:
    """Bring a kept lesson to what its teacher wants it to say, by events appended. Nothing is appended where it says so already.

    `chosen`: where two devices differed, the entry (by its event) that holds.
    """
    held = Lesson.objects.select_for_update().select_related("version", "teacher").get(pk=lesson.pk)
    count = held.version.read_plan().count.count()
    device, now, made = f"log-{uuid.uuid4().hex[:8]}", timezone.now(), list[dict[str, Any]]()
    first_t = next_t(held)

    def make(kind: str, /, **data: Any) -> str:
        made.append(made_event(min(first_t + len(made), HIGHEST_T), device, now, kind, data))
        return str(made[-1]["id"])

    stored = [event.as_dict() for event in held.events.all()]
    choosing = LogChanges(stored, count, make)
    for n, event in sorted((chosen or {}).items()):
        choosing.choose(n, event)
    writing = LogChanges([*stored, *made], count, make)
    if chosen:
        as_chosen = log_of(writing.state, count).cells
        cells = {n: cell for n, cell in wanted.cells.items() if n not in chosen}
        wanted = replace(wanted, cells=cells | {n: as_chosen[n] for n in chosen if n in as_chosen})
    writing.write(wanted)
    keep_events(lesson=held, events=made)
    lesson.refresh_from_db()


@transaction.atomic
def save_reflection(
    *,
    lesson: Lesson,
    outcome: str = "",
    seen: str = "",
    stuck: str = "",
    next_step: str = "",
    to_next_year: str = "",
    sharing: str,
) -> Reflection:
    """Keep what the teacher made of the lesson, and who may read it. `outcome` "" is not recorded."""
    reflection, _ = Reflection.objects.update_or_create(
        lesson=lesson,
        defaults={
            "outcome": outcome,
            "seen": seen,
            "stuck": stuck,
            "next_step": next_step,
            "to_next_year": to_next_year,
            "updated_at": timezone.now(),
        },
    )
    held = Lesson.objects.select_for_update().get(pk=lesson.pk)
    before, lesson.sharing, held.sharing = held.sharing, sharing, sharing
    held.save(update_fields=["sharing"])
    if held.is_counted and sharing != before:
        count_days_again([Counted.of(held).of_day])
    return reflection


def state_of(lesson: Lesson) -> LessonState:
    """What its events come to."""
    return reduce_events(event.as_dict() for event in lesson.events.all())
