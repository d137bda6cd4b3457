"""Texts that a spreadsheet opens. Nothing in them is run as a formula."""

import re

PLAIN_NUMBER = re.compile(r"-?[0-9][0-9.,\u00a0\u202f ]*")
DANGEROUS = ("=", "+", "-", "@", "\t", "\r")


def neutral(text: str) -> str:
    """A text that no spreadsheet takes for a formula. Plain numbers, also below zero, stay numbers.

    >>> neutral("-7"), neutral("=1+1"), neutral("-3/4")
    ('-7', "'=1+1", "'-3/4")
    """
    if text.startswith(DANGEROUS) and not PLAIN_NUMBER.fullmatch(text):
        return f"'{text}"
    return text
