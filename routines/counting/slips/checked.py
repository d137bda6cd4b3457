"""What is handed to the teaching part, checked at its door: a grid, a reader, a count, and lists of things."""

from collections.abc import Iterable, Mapping, Set
from typing import Any

from ..audience import Audience
from ..count import refuse_no_position
from ..errors import CountError
from ..grid import Grid

FARTHEST_COUNT = 10**9


def reader_of(grid: Grid, grade: int | None, audience: Audience | None) -> Audience:
    """The audience meant by a level, an audience, or neither.

    Raises: CountError on `grid`, `level` or `audience`.
    """
    if not isinstance(grid, Grid):
        raise CountError("grid", "no-grid")
    if audience is not None and not isinstance(audience, Audience):
        raise CountError("audience", "no-audience")
    language = audience.language if audience else "en"
    return Audience(grade, language) if grade is not None else audience or Audience()


def count_number(n: Any, field: str = "n") -> int:
    """A count by its number, past the end of a grid too. Raises: CountError on the field."""
    refuse_no_position(n, field)
    if n > FARTHEST_COUNT:
        raise CountError(field, "position-too-far", most=FARTHEST_COUNT)
    return int(n)


def said_text(text: Any, field: str = "said") -> str:
    """What was heard. Raises: CountError on the field for what is no text."""
    if not isinstance(text, str):
        raise CountError(field, "said-not-text")
    return text


def in_order(entries: Any, field: str) -> list[Any]:
    """The entries of a list, in their order. Raises: CountError on the field for what has none."""
    if isinstance(entries, (str, bytes, Mapping, Set)) or not isinstance(entries, Iterable):
        raise CountError(field, "not-a-list", name=field)
    return list(entries)
