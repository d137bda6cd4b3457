"""How many counts the bank holds, kept by grade and area so that coverage counts none of them.

It follows from the counts' own rows: whoever shares, retires or moves one calls `count_bank_again` in the same transaction.
"""

from collections.abc import Iterable
from typing import TYPE_CHECKING

from django.db import models, transaction
from django.db.models import Count

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


def wrong_bank_totals() -> set[Cell]:
    """Where the kept total is not what the bank holds."""
    by = _bank().order_by().values_list("grade", "area").annotate(counts=Count("pk"))
    kept = BankTotal.objects.filter(counts__gt=0).values_list("grade", "area", "counts")
    return {(grade, area) for grade, area, _ in set(by) ^ set(kept)}


def _bank() -> "RoutineQuerySet":
    from .routine import Routine  # whose sharing is counted here

    return Routine.objects.in_bank()
