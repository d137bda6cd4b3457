"""Classes: a group of children, never their names."""

from typing import Any, Self

from django.conf import settings
from django.db import models, transaction
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once, held, hold
from accounts.languages import LANGUAGES
from accounts.models import User
from accounts.models.list_marks import has_changed

from .grade import Grade
from .school_year import SchoolYear


class ClassGroupQuerySet(models.QuerySet["ClassGroup"]):
    def taught_by(self, user: User) -> Self:
        return self.filter(teachers=user)

    def in_year(self, year: SchoolYear | None) -> Self:
        return self.filter(year=year)

    def in_grade_order(self) -> Self:
        return self.order_by("grade__order", "name")

    def with_people(self) -> Self:
        return self.select_related("grade", "year").prefetch_related("teachers")


class ClassGroup(models.Model):
    """One class in one year. `languages` are those its mathematics is spoken in ("en", "es")."""

    name = models.CharField(max_length=40)
    grade = models.ForeignKey(Grade, on_delete=models.PROTECT, related_name="class_groups")
    year = models.ForeignKey(SchoolYear, on_delete=models.PROTECT, related_name="class_groups")
    teachers = models.ManyToManyField(settings.AUTH_USER_MODEL, blank=True, related_name="class_groups")
    languages = models.JSONField(default=list, blank=True)

    objects = ClassGroupQuerySet.as_manager()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["year", "name"],
                name="class_group_name_unique_in_year",
                violation_error_message=_("This year already has a class with this name."),
            ),
        ]

    def __str__(self) -> str:
        return self.name

    def save(self, *args: Any, **kwargs: Any) -> None:
        with transaction.atomic():
            super().save(*args, **kwargs)
            has_changed("classes")

    def delete(self, *args: Any, **kwargs: Any) -> tuple[int, dict[str, int]]:
        with transaction.atomic():
            has_changed("classes")
            return super().delete(*args, **kwargs)

    @property
    def language_names(self) -> list[str]:
        """Its languages as people call them; a code that is no longer known stays as it is."""
        return [str(LANGUAGES.get(code, code)) for code in self.languages]


def classes_of(user: User) -> list[ClassGroup]:
    """Those that she teaches or taught, in any year; asked for unless they are held for this request."""
    known = held(user, "class_groups")
    return _classes_of(user) if known is None else known


def hold_classes_of(user: User) -> list[ClassGroup]:
    """As `classes_of`, and `user.class_groups.all()` is not asked for again."""
    found = classes_of(user)
    hold(user, "class_groups", found)
    return found


@compiled_once
def _classes_of(user: User) -> models.QuerySet[ClassGroup]:
    return ClassGroup.objects.taught_by(user)


@compiled_once
def classes_in_year(user: User, year: SchoolYear | None) -> models.QuerySet[ClassGroup]:
    """Those that she teaches in one year, with their grades, in the order of these."""
    return ClassGroup.objects.taught_by(user).in_year(year).select_related("grade").in_grade_order()
