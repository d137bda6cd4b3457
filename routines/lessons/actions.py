"""Recording lessons: the one way in which events, board or paper, reach the list."""

import json
import uuid
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any

from django.db import transaction
from django.db.models import Max
from django.utils import timezone
from django.utils.dateparse import parse_datetime

from routines.lessons.state import KINDS
from routines.models import Lesson, LessonEvent, Reflection, RoutineVersion, TargetOutcome

BATCH_LIMIT = 100
EVENT_BYTES = 4096
LESSON_LIMIT = 3000


@dataclass(frozen=True, slots=True)
class Taken:
    """What became of a batch: seq by event id, and the reason for each event refused (by id, or by position when it has none)."""

    accepted: dict[str, int] = field(default_factory=dict)
    rejected: dict[str, str] = field(default_factory=dict)


@transaction.atomic
def start_lesson(
    *, version: RoutineVersion, class_group, teacher, taught_on: date, surface: str, practice: bool = False
) -> Lesson:
    """Open a lesson that keeps its own year, grade and area."""
    return Lesson.objects.create(
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
    )


@transaction.atomic
def append_events(*, lesson: Lesson, events: Iterable[Mapping[str, Any]], user) -> Taken:
    """Take events into the lesson's list: each accepted with its seq, or rejected with the reason.

    The same id with the same content again is accepted again; the same id with other content is rejected.
    """
    taken = Taken()
    batch = list(events)
    Lesson.objects.select_for_update().get(pk=lesson.pk)
    seq = lesson.events.aggregate(last=Max("seq"))["last"] or 0
    held = {
        str(event.id): event
        for event in LessonEvent.objects.filter(
            id__in=[i for i in (_uuid(e.get("id")) for e in batch if isinstance(e, Mapping)) if i]
        )
    }
    for position, raw in enumerate(batch):
        name = str(raw.get("id", position)) if isinstance(raw, Mapping) else str(position)
        if position >= BATCH_LIMIT:
            taken.rejected[name] = f"At most {BATCH_LIMIT} events at a time."
            continue
        event, reason = _read(raw)
        if event is None:
            taken.rejected[name] = reason
            continue
        name = str(event["id"])
        known = held.get(name)
        if known is not None:
            if known.lesson_id == lesson.pk and (known.erased or _same(known, event)):
                taken.accepted[name] = known.seq
            else:
                taken.rejected[name] = "Another event has this id."
            continue
        if seq >= LESSON_LIMIT:
            taken.rejected[name] = f"A lesson holds at most {LESSON_LIMIT} events."
            continue
        seq += 1
        held[name] = LessonEvent.objects.create(lesson=lesson, seq=seq, user=user, **event)
        taken.accepted[name] = seq
        if event["kind"] in ("lesson.end", "lesson.reopen"):
            lesson.ended = event["kind"] == "lesson.end"
            lesson.save(update_fields=["ended"])
    return taken


def _read(raw: Any) -> tuple[dict[str, Any] | None, str]:
    if not isinstance(raw, Mapping):
        return None, "An event is a group of named parts."
    identity = _uuid(raw.get("id"))
    if identity is None:
        return None, "The event has no proper id."
    t, ms, version = raw.get("t"), raw.get("ms", 0), raw.get("v", 1)
    if any(isinstance(n, bool) or not isinstance(n, int) or not 0 <= n < 2**53 for n in (t, ms)):
        return None, "The event's counters are not whole numbers."
    if isinstance(version, bool) or not isinstance(version, int) or not 1 <= version < 1000:
        return None, "The event has no version."
    device, kind, data = raw.get("device"), raw.get("kind"), raw.get("data", {})
    if not isinstance(device, str) or not 1 <= len(device) <= 36:
        return None, "The event names no device."
    if not isinstance(kind, str) or not 1 <= len(kind) <= 20:
        return None, "The event has no kind."
    if not isinstance(data, Mapping) or len(json.dumps(data)) > EVENT_BYTES:
        return None, f"The event's content is over {EVENT_BYTES} characters."
    if kind in KINDS and not KINDS[kind] <= data.keys():
        return None, f"{kind} lacks {', '.join(sorted(KINDS[kind] - data.keys()))}."
    at = _moment(raw.get("at"))
    if at is None:
        return None, "The event has no time."
    return {
        "id": identity,
        "v": version,
        "t": t,
        "device": device,
        "at": at,
        "ms": ms,
        "kind": kind,
        "data": dict(data),
    }, ""


def _uuid(value: Any) -> uuid.UUID | None:
    try:
        return uuid.UUID(value) if isinstance(value, str) else value if isinstance(value, uuid.UUID) else None
    except ValueError:
        return None


def _moment(value: Any) -> datetime | None:
    if isinstance(value, datetime):
        return value
    try:
        moment = parse_datetime(value) if isinstance(value, str) else None
    except ValueError:
        return None
    if moment is not None and timezone.is_naive(moment):
        moment = timezone.make_aware(moment)
    return moment


def _same(known: LessonEvent, event: Mapping[str, Any]) -> bool:
    return all(getattr(known, name) == event[name] for name in ("v", "t", "device", "ms", "kind", "data", "at"))


def paper_events(
    *,
    correct: Mapping[int, str],
    slips: Mapping[int, str],
    voices: Iterable[Mapping[str, Any]],
    noticed: Iterable[str],
    at: datetime,
) -> list[dict[str, Any]]:
    """The events of a count taught on paper: each term written as it should be (`correct`, by term), what was slipped as it
    was said and then corrected, voices of stretches, noticings, the end."""
    device = f"paper-{uuid.uuid4().hex[:8]}"
    made: list[dict[str, Any]] = []

    def add(kind: str, **data: Any) -> str:
        identity = str(uuid.uuid4())
        made.append(
            {
                "v": 1,
                "id": identity,
                "t": len(made) + 1,
                "device": device,
                "at": at,
                "ms": 0,
                "kind": kind,
                "data": data,
            }
        )
        return identity

    for n, text in correct.items():
        said = add("term.write", n=n, text=slips.get(n, text), over=None)
        if n in slips:
            add("term.correct", n=n, text=text, over=said)
    for voice in voices:
        add("voice", **voice)
    for text in noticed:
        add("notice.add", text=text)
    add("lesson.end")
    return made


@transaction.atomic
def save_reflection(
    *,
    lesson: Lesson,
    outcome: str,
    seen: str = "",
    stuck: str = "",
    next_step: str = "",
    to_next_year: str = "",
    sharing: str,
    targets: Mapping[int, str] | None = None,
) -> Reflection:
    """Keep what the teacher made of the lesson, who may read it, and which targets the class saw (by position in the plan)."""
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
    lesson.sharing = sharing
    lesson.save(update_fields=["sharing"])
    planned = lesson.version.read_plan().targets
    TargetOutcome.objects.filter(lesson=lesson).delete()
    TargetOutcome.objects.bulk_create(
        TargetOutcome(lesson=lesson, position=position, family=str(planned[position].claim["family"]), seen=seen_or_not)
        for position, seen_or_not in sorted((targets or {}).items())
        if 0 <= position < len(planned)
    )
    return reflection
