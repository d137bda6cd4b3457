"""School years."""

from datetime import date

from django.db import models
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once

from .term import Term, require_first_days, terms_from


class SchoolYearManager(models.Manager["SchoolYear"]):
    def on(self, day: date) -> "SchoolYear | None":
        """The year that holds `day`; between years, the latest that has begun; before all, the first."""
        return next(iter(_begun_by(day)), None) or self.order_by("starts_on").first()

    def newest_first(self) -> "list[SchoolYear]":
        return _every_year()

    def now(self) -> "SchoolYear | None":
        """As `on`, today."""
        return self.on(timezone.localdate())


class SchoolYear(models.Model):
    """One year. `term_starts` are the first days of its terms, as YYYY-MM-DD in order; none where the school has none."""

    name = models.CharField(max_length=20, unique=True)
    starts_on = models.DateField(unique=True)
    ends_on = models.DateField()
    term_starts = models.JSONField(default=list, blank=True, validators=[require_first_days])

    objects = SchoolYearManager()

    class Meta:
        ordering = ["-starts_on"]
        constraints = [
            models.CheckConstraint(
                condition=models.Q(ends_on__gt=models.F("starts_on")),
                name="school_year_ends_after_it_starts",
                violation_error_message=_("Choose a last day after the first day."),
            ),
        ]

    def __str__(self) -> str:
        return self.name

    @property
    def terms(self) -> list[Term]:
        return terms_from(self.term_starts, self.ends_on)


@compiled_once
def _begun_by(day: date) -> models.QuerySet[SchoolYear]:
    return SchoolYear.objects.filter(starts_on__lte=day).order_by("-starts_on")[:1]


@compiled_once
def _every_year() -> models.QuerySet[SchoolYear]:
    return SchoolYear.objects.order_by("-starts_on")
