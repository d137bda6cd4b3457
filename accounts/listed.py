"""Pages by number of rows whose query is compiled once."""

from collections.abc import Callable
from typing import Any, TypeVar, cast

from django.core.paginator import Page, Paginator
from django.db.models import Func, IntegerField, QuerySet, Subquery

from .compiled_once import CompiledOnce

Row = TypeVar("Row")

Part = tuple[int, int] | None
"""From which row to which; None for all of them, to be counted."""

FIRST = (None, "", "1")


def how_many(rows: QuerySet[Any, Any]) -> Subquery:
    """The number of these rows, as a value of a query that is asked anyway."""
    counted = rows.order_by().annotate(number=Func("pk", function="COUNT", output_field=IntegerField()))
    return Subquery(counted.values("number"))


def listed_page(
    row: Callable[..., Row], found: CompiledOnce[..., tuple[Any, ...]], *args: Any, size: int, asked: str | None
) -> Page[Row]:
    """The page that an address asks for; the nearest there is.

    found: a function of `args` and a `part`, whose rows are the values of a `row`, and after them how many rows there are:
    so the first page, which nearly everybody asks for, is one query.
    """
    if asked in FIRST:
        values = found(*args, part=(0, size))
        paginator = Paginator(range(values[0][-1] if values else 0), size)
        number = 1
    else:
        paginator = Paginator(range(found.how_many(*args, part=None)), size)
        number = paginator.get_page(asked).number
        values = found(*args, part=((number - 1) * size, number * size))
    rows = [row(*of_row) for *of_row, _ in values]
    return Page(cast("Any", rows), number, cast("Any", paginator))
