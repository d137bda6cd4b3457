"""A count suggested to a teacher or to a team. Others never see what became of it."""

from typing import Self

from django.conf import settings
from django.db import models
from django.db.models import Q
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from accounts.models import User


class SuggestionQuerySet(models.QuerySet["Suggestion"]):
    def visible_to(self, user: User) -> Self:
        """What the user made, was sent, or what went to a team in which she teaches."""
        return self.filter(Q(by=user) | Q(to_teacher=user) | Q(to_band__grades__class_groups__teachers=user)).distinct()


class Suggestion(models.Model):
    class Answer(models.TextChoices):
        OPEN = "open", _("not answered")
        TAKEN = "taken", _("taken")
        KEPT = "kept", _("kept for later")
        DECLINED = "declined", _("declined")

    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="suggestions")
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="+")
    to_teacher = models.ForeignKey(
        settings.AUTH_USER_MODEL, null=True, blank=True, on_delete=models.CASCADE, related_name="suggestions"
    )
    to_band = models.ForeignKey(
        "grade_bands.GradeBand", null=True, blank=True, on_delete=models.CASCADE, related_name="suggestions"
    )
    why = models.TextField()
    by_when = models.DateField(null=True, blank=True)
    answer = models.CharField(max_length=8, choices=Answer.choices, default=Answer.OPEN)
    made_at = models.DateTimeField(default=timezone.now)

    objects = SuggestionQuerySet.as_manager()

    class Meta:
        ordering = ["-made_at", "-pk"]
        constraints = [
            models.CheckConstraint(
                condition=Q(to_teacher__isnull=False, to_band__isnull=True)
                | Q(to_teacher__isnull=True, to_band__isnull=False),
                name="suggestion_to_a_teacher_or_a_team",
                violation_error_message=_("Suggest the count to one teacher or to one team."),
            )
        ]

    def __str__(self) -> str:
        return f"{self.routine_id} suggested by {self.by_id}"
