"""A count planned for a class on a day."""

from datetime import date
from typing import Self

from django.conf import settings
from django.db import models
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from grade_bands.models import ClassGroup

from .routine import title_for


class PlannedQuerySet(models.QuerySet["Planned"]):
    def visible_to(self, user: User) -> Self:
        """Own and the team's planned week; all for a coach; none for an administrator beyond her own."""
        if user.is_coach:
            return self
        own = models.Q(by=user)
        if user.is_administrator:
            return self.filter(own)
        team = ClassGroup.objects.filter(
            teachers=user,
            grade__band=models.OuterRef("class_group__grade__band"),
            year=models.OuterRef("class_group__year"),
        )
        return self.filter(own | models.Exists(team))

    def changeable_by(self, user: User) -> Self:
        """Those that she planned herself, and those for a class that she teaches."""
        hers = ClassGroup.teachers.through.objects.filter(
            classgroup_id=models.OuterRef("class_group_id"), user_id=user.pk
        )
        return self.filter(models.Q(by=user) | models.Exists(hers))

    def between(self, first: date, last: date) -> Self:
        return self.filter(on__range=(first, last))

    def with_titles_for(self, user: User) -> Self:
        """Adds `title` and `routine_open`, as lessons have them: a plan may be for a count that is no longer in the bank."""
        title, is_open = title_for(user, "routine")
        return self.annotate(title=title, routine_open=is_open)


class Planned(models.Model):
    routine = models.ForeignKey("routines.Routine", on_delete=models.CASCADE, related_name="planned")
    class_group = models.ForeignKey("grade_bands.ClassGroup", on_delete=models.CASCADE, related_name="planned")
    on = models.DateField()
    by = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+")

    objects = PlannedQuerySet.as_manager()

    # Only on rows that were asked for `with_titles_for` somebody.
    title: str
    routine_open: bool

    class Meta:
        ordering = ["on", "pk"]
        constraints = [
            models.UniqueConstraint(
                fields=["routine", "class_group", "on"],
                name="planned_once_a_day",
                violation_error_message=_("This count is already planned for that class on that day."),
            )
        ]

    def __str__(self) -> str:
        return f"{self.routine_id} for {self.class_group_id} on {self.on}"
