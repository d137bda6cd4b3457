"""Standards of any framework the school loads."""

from typing import Self

from django.db import models
from django.utils.translation import gettext_lazy as _

from .area import Area
from .grade import Grade

LONGEST = {"code": 40, "summary": 300, "number_limits": 200}
"""In characters, by column."""


class StandardQuerySet(models.QuerySet["Standard"]):
    def in_reading_order(self) -> Self:
        return self.order_by("framework", "grade__order", "code")


class Standard(models.Model):
    """One standard. `number_limits` and `count_features` say what a count needs to serve it (see tests/reference)."""

    framework = models.CharField(max_length=80)
    code = models.CharField(max_length=LONGEST["code"])
    grade = models.ForeignKey(Grade, on_delete=models.SET_NULL, null=True, blank=True, related_name="standards")
    area = models.CharField(max_length=12, choices=Area.choices)
    summary = models.CharField(max_length=LONGEST["summary"])
    number_limits = models.CharField(max_length=LONGEST["number_limits"], blank=True, default="")
    count_features = models.TextField(blank=True, default="")

    objects = StandardQuerySet.as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["framework", "code"],
                name="standard_code_unique_in_framework",
                violation_error_message=_("This framework already has a standard with this code."),
            ),
            models.CheckConstraint(condition=models.Q(area__in=Area.values), name="standard_area_known"),
        ]

    def __str__(self) -> str:
        return self.code
