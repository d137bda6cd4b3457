"""A written value as the pieces that a drawing places one by one."""

from collections.abc import Sequence
from typing import NamedTuple


class Piece(NamedTuple):
    """One piece of a written value.

    kind: sign, number, unit, top, bottom, symbol or equals. part: the name of the part it writes, if children read it
    by itself.
    """

    kind: str
    text: str
    part: str = ""


_SPACED_AFTER = {"number": ("unit", "top"), "bottom": ("unit", "number"), "unit": ("number", "unit", "top", "sign")}


def join(pieces: Sequence[Piece]) -> str:
    """The pieces as one line of text.

    >>> join([Piece("number", "2"), Piece("top", "1"), Piece("bottom", "3"), Piece("unit", "in")])
    '2 1/3 in'
    """
    text, before = "", ""
    for kind, part_text, _ in pieces:
        if kind == "bottom":
            text += "/"
        elif kind == "equals" or before == "equals" or kind in _SPACED_AFTER.get(before, ()):
            text += " "
        text += part_text
        before = kind
    return text
