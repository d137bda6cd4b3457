"""What a language brings to say where a value is counted."""

from __future__ import annotations

import re
from abc import ABC, abstractmethod
from collections.abc import Mapping, Sequence
from fractions import Fraction

from .clock import part_of_day


def filled(sentence: str, facts: Mapping[str, str]) -> str:
    """Put the facts into a sentence; a time that ends in "a.m." brings the full stop with it.

    >>> filled("We say {before}, then {after}.", {"before": "11:50 a.m.", "after": "12:10 p.m."})
    'We say 11:50 a.m., then 12:10 p.m.'
    """
    return re.sub(r"\b([ap]\. ?m\.)\.", r"\1", sentence.format_map(facts))


class Wording(ABC):
    """The sentences of one language, by name and level band (K-1, 2-3, 4-5, 6 and up), and its small grammar."""

    language: str
    sentences: Mapping[str, tuple[str, ...]]
    marks: Mapping[str, str]
    parts_of_day: Mapping[str, str]
    down_to_zero: str

    @abstractmethod
    def value(self, text: str, *, clock: bool) -> str:
        """Write a value inside a sentence; a clock time takes an article in Spanish."""

    def part_of_day(self, minute: Fraction) -> str:
        """Write the part of the day so many minutes after midnight."""
        return self.parts_of_day[part_of_day(minute, self.language)]

    @abstractmethod
    def jumps(self, times: int, step: str) -> str:
        """Write "11 jumps of 6"."""

    @abstractmethod
    def make(self, times: int) -> str:
        """Write the verb after so many jumps: "make"."""

    @abstractmethod
    def lead(self, times: int) -> str:
        """Write the verb after so many jumps: "lead"."""

    @abstractmethod
    def nth(self, n: int) -> str:
        """Write the ordinal of a count."""

    @abstractmethod
    def turn(self, turn: int) -> str:
        """Write which time round the clock."""

    @abstractmethod
    def way(self, *, up: bool) -> str:
        """Write the counting direction."""

    @abstractmethod
    def units(self, symbol: str) -> str:
        """Name a unit of measure whose number is a part of a written value."""

    @abstractmethod
    def small_coins(self, name: str) -> str:
        """Name the small coins of a currency; name is empty where they have none."""

    @abstractmethod
    def change(self, amount: str, *, up: bool, clock: bool) -> str:
        """Write "60 more"."""

    @abstractmethod
    def known_cell(self, value: str, n: int) -> str:
        """Name a term that a route starts from."""

    @abstractmethod
    def route_by_jumps(self, known: str, jumps: str, change: str) -> str:
        """Write a route of jumps."""

    @abstractmethod
    def route_in_grid(self, known: str, moves: Sequence[tuple[str, int, str]]) -> str:
        """Write a route through the grid: each move's direction, times and change."""

    @abstractmethod
    def listing(self, items: Sequence[str]) -> str:
        """Write a list that ends in "and"."""

    @staticmethod
    def _in_brackets(change: str) -> str:
        return f" ({change})" if change else ""
