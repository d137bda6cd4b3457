"""The list of patterns beside the grid of one count, each with its light."""

from django.utils.safestring import SafeString

from accounts.written_once import Later, written_once
from routines.worked_out import LISTED_AT_FIRST, PageSays


def pattern_list(says: Later[PageSays], lit: tuple[str, ...]) -> SafeString:
    """`lit`: the keys of those that are lit, in the order in which they were chosen."""
    return written_once(
        "bank/_pattern_list.html",
        first_patterns=Later(says.mark, lambda: says().patterns[:LISTED_AT_FIRST]),
        more_patterns=Later(says.mark, lambda: says().patterns[LISTED_AT_FIRST:]),
        lit=lit,
    )
