"""By what long lists are known that many pages show and that seldom change: who planned counts, the classes of a year.

A piece of a page that shows such a list is known by the list's mark, so that the list itself is not read again. Whatever
changes what a list says gives it a new mark in the same transaction. So one that was read under a mark is never older than it.
"""

from collections.abc import Callable, Hashable
from typing import Literal, TypeVar
from uuid import UUID, uuid4

from django.db import models

from ..compiled_once import compiled_once
from ..written_once import Later
from .school import School

Row = TypeVar("Row")

List = Literal["owners", "classes"]


class ListMarks(models.Model):
    """One row. Without it, as in a database that was emptied, lists are read each time until one has changed."""

    owners = models.UUIDField(default=uuid4)
    classes = models.UUIDField(default=uuid4)

    class Meta:
        constraints = [models.CheckConstraint(condition=models.Q(pk=1), name="list_marks_is_one_row")]

    def __str__(self) -> str:
        return f"{self.owners} {self.classes}"


def has_changed(which: List) -> None:
    """To be called in the transaction of the change; the row is held until its end, so two changes never share a mark."""
    if not ListMarks.objects.filter(pk=1).update(**{which: uuid4()}):
        ListMarks.objects.bulk_create([ListMarks(pk=1)], ignore_conflicts=True)


def known_by_mark(
    school: School, which: List, read: Callable[[], list[Row]], *part: Hashable
) -> Later[tuple[Row, ...]]:
    """The list, read where it is shown for the first time. part: which part of it `read` gives.

    The mark is read before the list. A restored school may have a mark of long ago, but never the same epoch.
    """
    marks = _marks()
    if not marks:
        rows = tuple(read())
        return Later(rows, lambda: rows)
    owners, classes = marks[0]
    return Later((which, school.epoch, owners if which == "owners" else classes, *part), lambda: tuple(read()))


@compiled_once
def _marks() -> models.QuerySet[ListMarks, tuple[UUID, UUID]]:
    return ListMarks.objects.values_list("owners", "classes")
