"""A colleague's note on a routine."""

from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from accounts.models import User

from .routine import Routine


class RoutineNoteQuerySet(models.QuerySet["RoutineNote"]):
    def visible_to(self, user: User) -> Self:
        """Who may read the routine may read its notes."""
        seen = Routine.objects.visible_to(user).filter(pk=models.OuterRef("routine"))
        return self.filter(models.Exists(seen))


class RoutineNote(models.Model):
    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="notes")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="+")
    at = models.DateTimeField(default=timezone.now)
    text = models.TextField()

    objects = RoutineNoteQuerySet.as_manager()

    class Meta:
        ordering = ["-at", "-pk"]

    def __str__(self) -> str:
        return f"note on {self.routine_id}"

    def rewrite(self, text: str) -> None:
        """Other words in their place. It stands where it stood: `at` is when it was first written."""
        self.text = text
        self.save(update_fields=["text"])
