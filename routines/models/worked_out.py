"""What a saved plan says on a card or on its page, worked out once."""

from collections.abc import Iterable
from typing import Self

from django.db import models


class WorkedOutQuerySet(models.QuerySet["WorkedOut"]):
    def of_documents(self, documents: Iterable[str]) -> Self:
        """What was worked out of the plan documents with these marks."""
        return self.filter(document__in=list(documents))


class WorkedOut(models.Model):
    """`key` is a mark of all that it follows from, `made_by` one of all that made it. `said` is JSON, deflated: drawings
    shrink to a tenth. It holds nobody's words, and every row can be made again."""

    key = models.CharField(max_length=64, primary_key=True)
    document = models.CharField(max_length=64, db_index=True)
    made_by = models.CharField(max_length=64)
    said = models.BinaryField()

    objects = WorkedOutQuerySet.as_manager()

    def __str__(self) -> str:
        return self.key
