"""One thing that happened in a lesson. The list only grows; board, lectern, log and paper are views of it."""

from datetime import UTC
from typing import Any, Self

from django.conf import settings
from django.db import models
from django.utils import timezone


class LessonEventQuerySet(models.QuerySet["LessonEvent"]):
    def after(self, seq: int) -> Self:
        """Events the reader has not had yet, in the order in which the server took them."""
        return self.filter(seq__gt=seq).order_by("seq")


class LessonEvent(models.Model):
    """`t` is a Lamport counter, `device` random per page load, `at` wall clock for display, `ms` monotonic since load.

    The server adds `seq` (per lesson, gapless), `user` and `received_at`. Events are never changed; erasing someone's
    words leaves a stub (`erased`) so that a resent event is still recognised.
    """

    lesson = models.ForeignKey("routines.Lesson", on_delete=models.CASCADE, related_name="events")
    seq = models.PositiveIntegerField()
    v = models.PositiveSmallIntegerField(default=1)
    id = models.UUIDField(primary_key=True)
    t = models.PositiveBigIntegerField()
    device = models.CharField(max_length=36)
    at = models.DateTimeField()
    ms = models.PositiveBigIntegerField(default=0)
    kind = models.CharField(max_length=20)
    data = models.JSONField(default=dict)
    user = models.ForeignKey(
        settings.AUTH_USER_MODEL, null=True, blank=True, on_delete=models.PROTECT, related_name="+"
    )
    received_at = models.DateTimeField(default=timezone.now)
    erased = models.BooleanField(default=False)

    objects = LessonEventQuerySet.as_manager()

    class Meta:
        ordering = ["lesson", "seq"]
        constraints = [models.UniqueConstraint(fields=["lesson", "seq"], name="lessonevent_seq_once")]

    def __str__(self) -> str:
        return f"{self.kind} {self.seq} of lesson {self.lesson_id}"

    def as_dict(self) -> dict[str, Any]:
        """The event as devices exchange it, with the server's `seq`; never who sent it. `at` as scripts write a time."""
        at = self.at.astimezone(UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z")
        stub = {"erased": True} if self.erased else {}
        return {
            "v": self.v,
            "id": str(self.id),
            "t": self.t,
            "device": self.device,
            "at": at,
            "ms": self.ms,
            "kind": self.kind,
            "data": self.data,
            "seq": self.seq,
            **stub,
        }
