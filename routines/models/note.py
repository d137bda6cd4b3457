"""A colleague's note on a routine."""

from django.conf import settings
from django.db import models
from django.utils import timezone


class RoutineNote(models.Model):
    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="notes")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="+")
    at = models.DateTimeField(default=timezone.now)
    text = models.TextField()

    class Meta:
        ordering = ["-at", "-pk"]

    def __str__(self) -> str:
        return f"note on {self.routine_id}"
