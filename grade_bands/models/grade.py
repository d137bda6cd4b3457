"""Grades, and the bands of grades that plan together. Names and order are the school's own."""

from typing import Self

from django.core.validators import MaxValueValidator
from django.db import models
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once
from accounts.models import User

from .area import Area, require_known_areas


class GradeBandQuerySet(models.QuerySet["GradeBand"]):
    def with_grades(self) -> Self:
        return self.prefetch_related("grades")


class GradeBand(models.Model):
    name = models.CharField(max_length=20, unique=True)
    order = models.PositiveSmallIntegerField(unique=True)

    objects = GradeBandQuerySet.as_manager()

    class Meta:
        ordering = ["order"]

    def __str__(self) -> str:
        return self.name


class GradeQuerySet(models.QuerySet["Grade"]):
    def taught_by(self, user: User) -> Self:
        """Grades in which this person has a class, in any year."""
        return self.filter(class_groups__teachers=user).distinct()

    def in_order(self) -> "list[Grade]":
        """All of them; each preview of a plan asks."""
        return _every_grade()


class Grade(models.Model):
    """One grade. `level` (0 = K .. 8) sets how the app's texts speak; `areas` are the ones expected in coverage."""

    name = models.CharField(max_length=12, unique=True)
    order = models.PositiveSmallIntegerField(unique=True)
    level = models.PositiveSmallIntegerField(validators=[MaxValueValidator(8)])
    band = models.ForeignKey(GradeBand, on_delete=models.PROTECT, related_name="grades")
    areas = models.JSONField(default=list, blank=True, validators=[require_known_areas])

    objects = GradeQuerySet.as_manager()

    class Meta:
        ordering = ["order"]
        constraints = [
            models.CheckConstraint(
                condition=models.Q(level__lte=8),
                name="grade_level_is_0_to_8",
                violation_error_message=_("The level goes from 0 for kindergarten to 8."),
            ),
        ]

    def __str__(self) -> str:
        return self.name

    def expects(self, area: Area | str) -> bool:
        return str(area) in self.areas

    def area_labels(self) -> list[str]:
        return [str(area.label) for area in Area if self.expects(area)]


@compiled_once
def _every_grade() -> models.QuerySet[Grade]:
    return Grade.objects.order_by("order")
