"""A frozen saved plan."""

from typing import Self

from django.conf import settings
from django.db import models
from django.db.models.functions import Cast
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from routines.models.plan_document import Plan
from routines.models.plan_reading import PlanError, read_document


class UnreadablePlan(PlanError):
    """A stored plan that cannot be read: damaged, or written by a newer Countfold. Lists go on without it."""

    def __init__(self, routine_id: int, field: str, message: str) -> None:
        super().__init__(field, message)
        self.routine_id = routine_id


class RoutineVersionQuerySet(models.QuerySet["RoutineVersion"]):
    def newest_first(self) -> Self:
        return self.order_by("-number")

    def documents(self) -> list[str]:
        """The plans as the texts that are stored, by which one plan is told from another without reading it."""
        return list(self.annotate(document=Cast("plan", models.TextField())).values_list("document", flat=True))


class RoutineVersion(models.Model):
    """One save of a routine: never changed afterwards. `plan` is the plan document."""

    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="versions")
    number = models.PositiveIntegerField()
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.PROTECT, related_name="+")
    at = models.DateTimeField(default=timezone.now)
    plan = models.JSONField()

    objects = RoutineVersionQuerySet.as_manager()

    class Meta:
        ordering = ["routine", "number"]
        constraints = [
            models.UniqueConstraint(
                fields=["routine", "number"],
                name="routineversion_number_once",
                violation_error_message=_("Somebody saved this plan at the same moment."),
            )
        ]

    def __str__(self) -> str:
        return f"version {self.number} of {self.routine_id}"

    def read_plan(self) -> Plan:
        """The plan of this save. Raises UnreadablePlan."""
        try:
            return read_document(self.plan)
        except PlanError as error:
            raise UnreadablePlan(self.routine_id, error.field, str(error)) from error
