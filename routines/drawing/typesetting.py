"""How sentences with numbers are set, on the screen and on paper."""

import re

_MINUS = re.compile(r"(?<![\w\u2212-])-(?=[$£€]?[\d.])")


def typeset(words: object) -> str:
    """Write a minus sign before numbers where the engine writes a hyphen. Not marked safe: it is escaped as any text."""
    return _MINUS.sub("\u2212", str(words))
