"""Numbers one after the other, the same in every language."""

from collections.abc import Sequence


def series(items: Sequence[str]) -> str:
    """Write items one after the other: commas, or semicolons where a number has a comma of its own.

    >>> series(["0", "6", "2"]), series(["0,5", "1", "1,5"])
    ('0, 6, 2', '0,5; 1; 1,5')
    """
    return ("; " if any("," in item for item in items) else ", ").join(items)
