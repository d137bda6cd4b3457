"""How many counts the bank holds, kept by grade and area so that coverage counts none of them, and who has some in it.

It follows from the counts' own rows: whoever shares, retires or moves one calls `count_bank_again` in the same transaction,
and who shares, retires or hands one on `look_for_owners_again`.
"""

from collections.abc import Iterable
from typing import TYPE_CHECKING

from django.conf import settings
from django.db import models, transaction
from django.db.models import Count

from accounts.models.list_marks import has_changed
from grade_bands.models import Area

if TYPE_CHECKING:
    from .routine import RoutineQuerySet

Cell = tuple[int, str]
"""Grade (its key), area."""


class BankTotal(models.Model):
    grade = models.ForeignKey("grade_bands.Grade", on_delete=models.CASCADE, related_name="+", db_index=False)
    area = models.CharField(max_length=12, choices=Area.choices)
    counts = models.PositiveIntegerField(default=0)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["grade", "area"], name="banktotal_once")]

    def __str__(self) -> str:
        return f"{self.counts} of {self.grade_id} in {self.area}"


@transaction.atomic
def count_bank_again(wanted: Iterable[Cell]) -> None:
    """Bring these totals to what the bank holds: their rows are held first, in one order, and the counts read after that.

    So of two that change at one moment the second sees both, and nobody waits in a ring.
    """
    ordered = sorted(wanted)
    BankTotal.objects.bulk_create(
        [BankTotal(grade_id=grade, area=area) for grade, area in ordered], ignore_conflicts=True
    )
    for grade, area in ordered:
        total = BankTotal.objects.select_for_update().get(grade=grade, area=area)
        total.counts = _bank().filter(grade=grade, area=area).count()
        total.save(update_fields=["counts"])


class BankOwner(models.Model):
    """Whether this person has a count in the bank: PostgreSQL takes long to look it up for each."""

    owner = models.OneToOneField(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="bank_owner")
    has_counts = models.BooleanField(default=False)

    def __str__(self) -> str:
        return f"{self.owner_id}: {self.has_counts}"


@transaction.atomic
def look_for_owners_again(owners: Iterable[int]) -> None:
    """Bring what is kept of these people to what the bank holds; in one order, as above."""
    ordered = sorted(owners)
    BankOwner.objects.bulk_create([BankOwner(owner_id=owner) for owner in ordered], ignore_conflicts=True)
    for owner in ordered:
        row = BankOwner.objects.select_for_update().get(owner=owner)
        had, row.has_counts = row.has_counts, _bank().filter(owner=owner).exists()
        if row.has_counts != had:
            row.save(update_fields=["has_counts"])
            has_changed("owners")


def wrong_bank_owners() -> set[int]:
    """Of whom it is kept wrongly whether they have a count in the bank."""
    kept = BankOwner.objects.filter(has_counts=True).values_list("owner", flat=True)
    return set(kept) ^ set(_bank().order_by().values_list("owner", flat=True).distinct())


def wrong_bank_totals() -> set[Cell]:
    """Where the kept total is not what the bank holds."""
    by = _bank().order_by().values_list("grade", "area").annotate(counts=Count("pk"))
    kept = BankTotal.objects.filter(counts__gt=0).values_list("grade", "area", "counts")
    return {(grade, area) for grade, area, _ in set(by) ^ set(kept)}


def _bank() -> "RoutineQuerySet":
    from .routine import Routine  # whose sharing is counted here

    return Routine.objects.in_bank()
