"""What a person is typing: one draft per person and routine, kept by autosave until it is saved as a version."""

import uuid
from typing import Self

from django.conf import settings
from django.db import models
from django.utils import timezone

from accounts.models import User

from .routine import Routine


class PlanDraftQuerySet(models.QuerySet["PlanDraft"]):
    def of(self, user: User) -> Self:
        return self.filter(person=user)

    def with_titles_for(self, user: User) -> Self:
        """Adds `routine_title`, of the saved plan; None where there is none, or none that the user may still see."""
        seen = Routine.objects.visible_to(user).filter(pk=models.OuterRef("routine"))
        return self.annotate(routine_title=models.Subquery(seen.values("title")))


class PlanDraft(models.Model):
    """`fields` holds the plan form as typed (it may not be readable yet); `based_on` is the version it started from."""

    person = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="plan_drafts")
    key = models.UUIDField(default=uuid.uuid4, unique=True, editable=False)
    routine = models.ForeignKey(
        "routines.Routine", null=True, blank=True, on_delete=models.CASCADE, related_name="drafts"
    )
    based_on = models.ForeignKey(
        "routines.RoutineVersion", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    fields = models.JSONField(default=dict)
    kept_at = models.DateTimeField(default=timezone.now)

    objects = PlanDraftQuerySet.as_manager()

    # Only on drafts that were asked for `with_titles_for` somebody.
    routine_title: str | None

    class Meta:
        ordering = ["-kept_at"]
        constraints = [
            models.UniqueConstraint(
                fields=["person", "routine"],
                condition=models.Q(routine__isnull=False),
                name="plandraft_one_per_person_and_routine",
            )
        ]

    def __str__(self) -> str:
        return f"draft of {self.person_id} for {self.routine_id or 'a new routine'}"
