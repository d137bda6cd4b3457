"""What is put in the place of words that are removed: a stub with which everything still fits."""

from collections.abc import Sequence
from functools import partial
from typing import Any

from django.db import models

from accounts.people_words import WordsColumn
from routines.models import ImportFile, RoutineVersion
from routines.models.plan_reading import PlanError, read_document

from .matching import STUBS, Sought


def put_stubs(row: Any, found: Sequence[tuple[WordsColumn, Sought]]) -> list[str]:
    """Put a stub in the place of the words, the longest with which everything still fits. Names the changed columns."""
    before = {column.field: getattr(row, column.field) for column, _ in found}
    fitted = _fits(row)
    changed: list[str] = []
    for stub in STUBS:
        for name, value in before.items():
            setattr(row, name, value)
        changed = [
            column.field
            for column, sought in found
            if column.change(row, partial(sought.taken_out, stub=stub.casefold() if column.derived else stub))
        ]
        if not fitted or _fits(row):
            break
    return changed


def _fits(row: Any) -> bool:
    """Whether every text is as short as its column asks, and every plan one that can be read."""
    for column in row._meta.concrete_fields:
        text = row.__dict__.get(column.attname)
        if (
            isinstance(column, models.CharField)
            and isinstance(text, str)
            and len(text) > (column.max_length or len(text))
        ):
            return False
    try:
        if isinstance(row, RoutineVersion):
            read_document(row.plan)
        if isinstance(row, ImportFile):
            for plan in row.plans:
                read_document(plan)
    except (PlanError, TypeError):
        return False
    return True
