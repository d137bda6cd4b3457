"""Forms that make something, each known by the key its page gave it: what is sent twice is kept once."""

from datetime import timedelta
from typing import Any
from uuid import UUID

from django.conf import settings
from django.db import models
from django.utils import timezone

from .user import User

# A page may stay open over the long holidays and then be sent again.
KEPT = timedelta(days=120)


class SentFormQuerySet(models.QuerySet["SentForm"]):
    def of(self, person: User, key: UUID) -> "SentForm | None":
        return self.filter(person=person, key=key).first()

    def claim(self, *, person: User, key: UUID, content: str = "") -> tuple["SentForm", bool]:
        """The row of this form, and whether it is sent for the first time. Only inside the transaction that makes the thing.

        Of two senders at once the second waits here, on SQLite at the start of its transaction, on PostgreSQL at the
        unique key, until the first is through; when that one failed, the second is the first. A try that is rolled
        back leaves no row.
        """
        row, first = self.get_or_create(person=person, key=key, defaults={"content": content})
        if first:
            self.filter(sent_at__lt=timezone.now() - KEPT).delete()
        return row, first


class SentForm(models.Model):
    """`content` is a keyed hash of what was sent first, never the words; `made` says what came of it."""

    person = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+")
    key = models.UUIDField()
    content = models.CharField(max_length=64, blank=True, default="")
    made = models.JSONField(default=dict)
    sent_at = models.DateTimeField(default=timezone.now, db_index=True)

    objects = SentFormQuerySet.as_manager()

    class Meta:
        constraints = [models.UniqueConstraint(fields=["person", "key"], name="sentform_once_per_person_and_key")]

    def __str__(self) -> str:
        return f"form {self.key} of {self.person_id}"

    def remember(self, **made: Any) -> None:
        """Say what the form made, for whoever sends it again."""
        self.made = made
        self.save(update_fields=["made"])
