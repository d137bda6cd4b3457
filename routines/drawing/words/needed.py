"""What a language must give for the drawings: one that lacks a word cannot be written down."""

from collections.abc import Mapping
from typing import NamedTuple

Pair = tuple[str, str]
"""Of a count that goes on, and of one that goes back."""


class Words(NamedTuple):
    """unfolded: the title of the strip. Between braces: {step} the size of a jump, {n} how many."""

    until: str
    rows: str
    columns: str
    empty: str
    lit: Mapping[str, str]
    signs: Mapping[str, str]
    unfolded: str
    timeline: str
    counts_on_the_board: str
    stop: str
    at: str
    pictures: Mapping[str, str]
    picture: str
    jump: Pair
    since: Pair
    wholes: str
    dark_parts: Pair
    bracketed_parts: Pair
