"""The one school of this server, and the habits of its place."""

import uuid
import zoneinfo

from django.core.exceptions import ValidationError
from django.core.validators import MaxValueValidator, MinValueValidator, RegexValidator
from django.db import models
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _


def require_known_time_zone(name: str) -> None:
    if name not in zoneinfo.available_timezones():
        raise ValidationError(gettext("Choose a time zone from the list, such as America/Chicago."))


def english_only() -> list[str]:
    return ["en"]


class SchoolQuerySet(models.QuerySet["School"]):
    def current(self) -> "School":
        """The school. Raises School.DoesNotExist before set-up; SchoolMiddleware sends people to set-up first."""
        return self.get()


class School(models.Model):
    class Paper(models.TextChoices):
        LETTER = "letter", _("Letter")
        A4 = "a4", _("A4")

    class UnitSystem(models.TextChoices):
        CUSTOMARY = "customary", _("Inches, ounces, cups")
        METRIC = "metric", _("Centimeters, grams, milliliters")

    class DecimalMark(models.TextChoices):
        POINT = ".", _("Point: 2.5")
        COMMA = ",", _("Comma: 2,5")

    class Thousands(models.TextChoices):
        COMMA = ",", _("Comma: 1,325")
        GAP = " ", _("Gap: 1 325")
        POINT = ".", _("Point: 1.325")
        NONE = "", _("Nothing: 1325")

    class Clock(models.IntegerChoices):
        TWELVE = 12, _("12 hours: 1:30")
        TWENTY_FOUR = 24, _("24 hours: 13:30")

    name = models.CharField(max_length=120)
    paper = models.CharField(max_length=10, choices=Paper.choices, default=Paper.LETTER)
    currency = models.CharField(
        max_length=3,
        default="USD",
        validators=[RegexValidator(r"^[A-Z]{3}$", _("Write the three letters of the currency, such as USD."))],
    )
    unit_system = models.CharField(max_length=10, choices=UnitSystem.choices, default=UnitSystem.CUSTOMARY)
    decimal_mark = models.CharField(max_length=1, choices=DecimalMark.choices, default=DecimalMark.POINT)
    thousands = models.CharField(max_length=1, choices=Thousands.choices, default=Thousands.COMMA, blank=True)
    clock = models.PositiveSmallIntegerField(choices=Clock.choices, default=Clock.TWELVE)
    year_starts_month = models.PositiveSmallIntegerField(
        default=8, validators=[MinValueValidator(1), MaxValueValidator(12)]
    )
    year_starts_day = models.PositiveSmallIntegerField(
        default=15, validators=[MinValueValidator(1), MaxValueValidator(31)]
    )
    time_zone = models.CharField(max_length=60, default="America/New_York", validators=[require_known_time_zone])
    languages = models.JSONField(default=english_only)
    is_demo = models.BooleanField(default=False, editable=False)
    # Changed by a restore, so that open boards send again everything they still hold.
    epoch = models.UUIDField(default=uuid.uuid4, editable=False)

    objects = SchoolQuerySet.as_manager()

    class Meta:
        constraints = [
            models.CheckConstraint(condition=models.Q(pk=1), name="school_is_one_row"),
            models.CheckConstraint(
                condition=~models.Q(decimal_mark=models.F("thousands")),
                name="school_marks_differ",
                violation_error_message=_("The decimal mark and the thousands mark must differ."),
            ),
            models.CheckConstraint(
                condition=models.Q(year_starts_month__range=(1, 12), year_starts_day__range=(1, 31)),
                name="school_year_start_is_a_day",
            ),
        ]

    def __str__(self) -> str:
        return self.name
