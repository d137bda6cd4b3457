"""Pages by number of rows whose query is compiled once."""

from typing import Any, Generic, TypeVar, cast

from django.core.paginator import Page, Paginator

from .compiled_once import CompiledOnce

Row = TypeVar("Row")

Part = tuple[int, int] | None
"""From which row to which; None for all of them, to be counted."""


class Listed(Generic[Row]):
    """The rows of a function that takes a `part`."""

    def __init__(self, rows: CompiledOnce[..., Row], *args: Any) -> None:
        self.rows, self.args = rows, args

    def count(self) -> int:
        return self.rows.how_many(*self.args, part=None)

    def __getitem__(self, wanted: slice) -> list[Row]:
        return self.rows(*self.args, part=(wanted.start, wanted.stop))

    def page(self, size: int, asked: str | None) -> Page[Row]:
        """The page that an address asks for; the nearest there is."""
        return Paginator(cast("Any", self), size).get_page(asked)
