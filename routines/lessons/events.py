"""The one way into a lesson's list: each event read, judged by itself, and kept with the next number.

The same id with the same content again is accepted again, an erased event as its stub; the same id with other content is
rejected. Nothing in a batch is lost because another event in it was refused.
"""

import json
import uuid
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Any

from django.db import transaction
from django.utils import timezone
from django.utils.dateparse import parse_datetime
from django.utils.translation import gettext as _

from accounts.text import mended_document
from routines.lessons.kinds import (
    KINDS,
    PAST_THE_END,
    TAKES_BACK,
    WRITES,
    Bounds,
    EventRefused,
    is_identity,
    of_another_version,
)
from routines.lessons.roles import Participant
from routines.lessons.state import reduce_events
from routines.lessons.targets_seen import keep_targets
from routines.lessons.totals import Counted, count_again, count_days_again
from routines.models import Lesson, LessonEvent
from routines.words_erased.late_words import is_erased
from routines.words_erased.list_of_erasures import known

BATCH_LIMIT = 100
DATA_BYTES = 4096
LESSON_LIMIT = 3000
HIGHEST_T = 10_000
HIGHEST_MS = 2**53 - 1
ENDS = ("lesson.end", "lesson.reopen")


@dataclass(frozen=True, slots=True)
class Refusal:
    reason: str
    words: str

    def as_dict(self) -> dict[str, str]:
        return {"reason": self.reason, "words": self.words}


@dataclass(frozen=True, slots=True)
class Taken:
    """What became of a batch: seq by event id; why not, by id (by position for what has none)."""

    accepted: dict[str, int] = field(default_factory=dict)
    rejected: dict[str, Refusal] = field(default_factory=dict)


def append_events(
    *, lesson: Lesson, events: Iterable[Any], sender: Participant, ahead: timedelta = timedelta(0)
) -> Taken:
    """Take events into the lesson's list, at most BATCH_LIMIT. `lesson` is brought up to date with what they changed.

    ahead: by how much the sender's clock is ahead of this server's.
    """
    taken = Taken()
    batch = list(events)
    bounds = bounds_of(lesson)
    with transaction.atomic():
        # The row is the turn: one writer at a time numbers a lesson's events.
        held = Lesson.objects.select_for_update().get(pk=lesson.pk)
        _Appending(held, sender, taken, ahead).take(batch, bounds)
    for name in ("last_seq", "last_event_at", "written_at", "ended", "closed", "deleted_at"):
        setattr(lesson, name, getattr(held, name))
    return taken


def bounds_of(lesson: Lesson) -> Bounds:
    return Bounds(last_term=int(lesson.version.plan["count"]["terms"]) + PAST_THE_END)


class _Appending:
    """One batch into one lesson whose row is held."""

    def __init__(self, lesson: Lesson, sender: Participant, taken: Taken, ahead: timedelta) -> None:
        self.lesson = lesson
        self.sender = sender
        self.taken = taken
        self.ahead = ahead
        self.now = timezone.now()
        self.erased = known().events
        self.new: list[LessonEvent] = []

    def take(self, batch: Sequence[Any], bounds: Bounds) -> None:
        read: list[dict[str, Any]] = []
        for position, raw in enumerate(batch):
            try:
                if position >= BATCH_LIMIT:
                    words = _("At most %(most)s events at a time. Send the others again.")
                    raise EventRefused("too-many", words % {"most": BATCH_LIMIT})
                read.append(read_event(raw, bounds))
            except EventRefused as refused:
                self.taken.rejected[_name(raw, position)] = Refusal(refused.reason, str(refused))
        known = {str(event.id): event for event in LessonEvent.objects.filter(id__in=[event["id"] for event in read])}
        kinds = self._kinds_taken_back(read)
        for event in read:
            name = str(event["id"])
            try:
                self.taken.accepted[name] = self._seq(event, known, kinds)
            except EventRefused as refused:
                self.taken.rejected[name] = Refusal(refused.reason, str(refused))
        if self.new:
            LessonEvent.objects.bulk_create(self.new)
            self._settle()

    def _seq(self, event: dict[str, Any], known: dict[str, LessonEvent], kinds: dict[str, str]) -> int:
        """The number of an event: the one it has, or the next. Raises: EventRefused."""
        same = known.get(str(event["id"]))
        if same is not None:
            if same.lesson_id == self.lesson.pk and (same.erased or is_same(same, event)):
                return same.seq
            raise EventRefused("other-content", _("Another event has this id."))
        self._refuse_not_allowed(event, kinds)
        if self.lesson.last_seq >= LESSON_LIMIT:
            raise EventRefused("full", _("This lesson is full: %(most)s events are kept.") % {"most": LESSON_LIMIT})
        self.lesson.last_seq += 1
        user = self.sender.user if getattr(self.sender.user, "pk", None) else None
        kept = LessonEvent(lesson=self.lesson, seq=self.lesson.last_seq, user=user, received_at=self.now, **event)
        # An older backup was put back, or the device was cut off: it sends what it still holds.
        if str(kept.id) in self.erased or is_erased(kept, made_at=made_at(kept.at, self.ahead)):
            kept.data, kept.erased = {}, True
        known[str(event["id"])] = kept
        kinds[str(event["id"])] = event["kind"]
        self.new.append(kept)
        return kept.seq

    def _refuse_not_allowed(self, event: dict[str, Any], kinds: dict[str, str]) -> None:
        kind = event["kind"]
        if self.lesson.deleted_at is not None:
            raise EventRefused("deleted", _("This lesson was removed."))
        if kind not in KINDS and not self.sender.may_send(kind):
            raise EventRefused("not-allowed", of_another_version(kind))
        about = kinds.get(event["data"]["event"]) if kind in TAKES_BACK else None
        if not self.sender.may_send(kind) or (about is not None and not self.sender.may_send(about)):
            raise EventRefused("not-allowed", _("This device may not do that in this lesson."))
        if self.sender.is_guest and self.lesson.is_over_for_guests(self.now):
            raise EventRefused("ended", _("The lesson has ended; its teacher can open it again."))

    def _kinds_taken_back(self, read: Iterable[dict[str, Any]]) -> dict[str, str]:
        """The kind of each kept event that this batch undoes or removes."""
        meant = [event["data"]["event"] for event in read if event["kind"] in TAKES_BACK]
        return {str(pk): kind for pk, kind in self.lesson.events.filter(id__in=meant).values_list("id", "kind")}

    def _settle(self) -> None:
        """What the lesson's row says of its events: when the first standing term came, whether it has ended, since when quiet."""
        lesson, kinds = self.lesson, {event.kind for event in self.new}
        was_counted = lesson.is_counted
        if lesson.written_at is not None and lesson.is_quiet(self.now):
            lesson.closed = True
        if "lesson.reopen" in kinds:
            lesson.closed = False
        lesson.last_event_at = self.now
        undoes = "undo" in kinds
        if undoes or kinds & set(ENDS):
            kept = lesson.events.filter(kind__in=[*ENDS, "undo"])
            lesson.ended = reduce_events(event.as_dict() for event in kept).ended
        if undoes or (lesson.written_at is None and kinds & WRITES):
            lesson.written_at = _first_written(lesson)
        says_else = ("target" in kinds or undoes) and keep_targets(lesson)
        lesson.save(update_fields=["last_seq", "last_event_at", "closed", "ended", "written_at"])
        if lesson.is_counted is not was_counted:
            count_again(Counted.of(lesson))
        elif says_else and lesson.is_counted and lesson.is_shared:
            count_days_again([Counted.of(lesson).of_day])


def _first_written(lesson: Lesson) -> datetime | None:
    """When the first term that was not undone reached the server."""
    undone = {data.get("event") for data in lesson.events.filter(kind="undo").values_list("data", flat=True)}
    written = lesson.events.filter(kind__in=WRITES).order_by("seq").values_list("id", "received_at")
    return next((at for identity, at in written.iterator() if str(identity) not in undone), None)


def read_event(raw: Any, bounds: Bounds) -> dict[str, Any]:
    """The columns of an event as a device sent it. Raises: EventRefused with the reason."""
    if not isinstance(raw, Mapping):
        raise EventRefused("malformed", _("An event is a group of named parts."))
    identity, device, kind, data = raw.get("id"), raw.get("device"), raw.get("kind"), raw.get("data", {})
    if not is_identity(identity):
        raise EventRefused("malformed", _("The event has no proper id."))
    version, t, ms = (_whole(raw.get(name), name) for name in ("v", "t", "ms"))
    if not 1 <= version <= 999:
        raise EventRefused("malformed", _("The event is of no version that can be read."))
    if not 1 <= t <= HIGHEST_T:
        raise EventRefused("counter", _("The event’s counter is out of reach. Load the page again and go on."))
    if not 0 <= ms <= HIGHEST_MS:
        raise EventRefused("malformed", _("The event’s clock is out of reach."))
    for name, text, limit in (("device", device, 36), ("kind", kind, 20)):
        if not isinstance(text, str) or not 1 <= len(text) <= limit or not text.isascii() or not text.isprintable():
            words = _("The event’s “%(part)s” is 1 to %(limit)s plain signs.")
            raise EventRefused("malformed", words % {"part": name, "limit": limit})
    if not isinstance(data, Mapping):
        raise EventRefused("malformed", _("The event’s content is a group of named parts."))
    _refuse_unfit(data)
    if kind in KINDS:
        KINDS[kind].check(data, bounds)
    return {
        "id": uuid.UUID(identity),
        "v": version,
        "t": t,
        "device": device,
        "at": _moment(raw.get("at")),
        "ms": ms,
        "kind": kind,
        "data": dict(data),
    }


def _whole(value: Any, name: str) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        words = _("The event’s “%(part)s” is a whole number.") % {"part": name}
        raise EventRefused("counter" if name == "t" else "malformed", words)
    return value


def _refuse_unfit(data: Mapping[str, Any]) -> None:
    """Too large or too deep, or not to be written in every database: half a character, the sign 0, a number without end."""
    try:
        mended_document(data)  # for how deep it is: how much deeper Python and the databases go, each of them decides
        written = json.dumps(data, ensure_ascii=False, allow_nan=False).encode()
    except UnicodeEncodeError:
        raise EventRefused("text", _("The text holds a sign that cannot be shown. Type it again.")) from None
    except (ValueError, TypeError, RecursionError):
        raise EventRefused("malformed", _("The event’s content cannot be kept.")) from None
    if len(written) > DATA_BYTES:
        raise EventRefused("too-large", _("That is more than one event can hold. Say it in fewer words."))
    if b"\\u0000" in written:
        raise EventRefused("text", _("The text holds a sign that cannot be shown. Type it again."))


def _moment(value: Any) -> datetime:
    """A wall clock's time, to the thousandth as scripts have it. Never refused for being wrong."""
    try:
        moment = value if isinstance(value, datetime) else parse_datetime(value)
        if moment is None:
            raise ValueError
        if timezone.is_naive(moment):
            moment = timezone.make_aware(moment)
        moment = moment.astimezone(UTC)
    except (TypeError, ValueError, OverflowError):
        raise EventRefused("malformed", _("The event’s time cannot be read.")) from None
    return moment.replace(microsecond=moment.microsecond // 1000 * 1000)


def clock_ahead(said: Any) -> timedelta:
    """By how much a device's clock is ahead, from what it says the time is; none where it says nothing that can be read."""
    try:
        return _moment(said) - timezone.now() if said is not None else timedelta(0)
    except EventRefused:
        return timedelta(0)


def made_at(at: datetime, ahead: timedelta) -> datetime:
    """When an event was made, by this server's clock: never later than now, and as said where the clocks go out of bounds."""
    try:
        return min(at - ahead, timezone.now())
    except OverflowError:
        return min(at, timezone.now())


def is_same(known: LessonEvent, event: Mapping[str, Any]) -> bool:
    alike = all(getattr(known, name) == event[name] for name in ("v", "t", "device", "ms", "kind", "data"))
    return alike and _moment(known.at) == event["at"]


def _name(raw: Any, position: int) -> str:
    identity = raw.get("id") if isinstance(raw, Mapping) else None
    return identity if isinstance(identity, str) and 1 <= len(identity) <= 36 else str(position)


def heard_events(
    lesson: Lesson, reader: Participant, *, after: int, limit: int = 500
) -> tuple[list[dict[str, Any]], int]:
    """What this reader may hear of what came after `after`, in the order of `seq`, and up to which seq that goes.

    Who may not hear an event hears neither its undo. An undo may have come before its event: it is then sent with it.
    """
    page = list(lesson.events.after(after)[:limit])
    last = page[-1].seq if page else after
    if not reader.is_board:
        return [event.as_dict() for event in page], last
    meant = {event.data.get("event") for event in page if event.kind in TAKES_BACK and not event.erased}
    kinds = {str(pk): kind for pk, kind in lesson.events.filter(id__in=filter(None, meant)).values_list("id", "kind")}
    kinds |= {str(event.id): event.kind for event in page}
    heard = [event for event in page if reader.may_hear(event.kind) and _about_is_heard(event, kinds, reader)]
    names = {str(event.id) for event in heard}
    earlier = lesson.events.filter(kind__in=TAKES_BACK, seq__lte=after, erased=False) if names and after else ()
    late = [event for event in earlier if event.data.get("event") in names]
    return [event.as_dict() for event in sorted([*late, *heard], key=lambda event: event.seq)], last


def _about_is_heard(event: LessonEvent, kinds: Mapping[str, str], reader: Participant) -> bool:
    if event.kind not in TAKES_BACK or event.erased:
        return True
    about = kinds.get(event.data.get("event", ""))
    return about is not None and reader.may_hear(about)
