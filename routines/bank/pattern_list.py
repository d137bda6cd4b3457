"""The list of patterns beside the grid of one count, each with its light."""

from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

from django.template.loader import render_to_string
from django.utils.safestring import SafeString
from django.utils.translation import get_language

from routines.worked_out import LISTED_AT_FIRST, ListedPattern

LISTS_REMEMBERED = 100  # of about 40 KB each


class Row(NamedTuple):
    """All that a row of the list shows."""

    key: str
    target: bool
    holds: str
    statement: str
    because: str


def pattern_list(patterns: Iterable[ListedPattern], lit: Iterable[str]) -> SafeString:
    """`lit`: the keys of those that are lit, in the order in which they were chosen."""
    rows = tuple(Row(item.key, item.target, item.holds, item.statement, item.because) for item in patterns)
    return drawn_list(rows, tuple(lit), get_language())


@lru_cache(maxsize=LISTS_REMEMBERED)
def drawn_list(rows: tuple[Row, ...], lit: tuple[str, ...], language: str | None) -> SafeString:
    """The same rows with the same lights are the same to the letter, whoever looks at them."""
    context = {"lit": lit, "first_patterns": rows[:LISTED_AT_FIRST], "more_patterns": rows[LISTED_AT_FIRST:]}
    return render_to_string("bank/_pattern_list.html", context)
