"""Eighty slips written down, with the names expected of them, by someone who had not seen the rules; and what a name is
judged by.

slips_written_blind.csv keeps the source of each row. Columns: `expected` is the class of the hearing and, behind a colon,
what happens in the numbers; `also` holds what the rulings allow as well; `earlier` what was said before, as 4=51.
"""

import csv
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property
from pathlib import Path

from routines.counting import (
    Audience,
    Count,
    CountError,
    Grid,
    Other,
    SkippedAhead,
    Slip,
    Style,
    classify,
    likely_slips,
)
from routines.counting.slips import Hearing
from routines.counting.slips.reading import plain
from tests.counting.slips.happenings import HAPPENINGS, happenings_of

TABLE = Path(__file__).with_name("slips_written_blind.csv")
TERMS, LINE = 12, 4
OF_24_HOURS = ("0", *map(str, range(13, 24)))
TAKES = {"one place off": "place", "wrong direction": "wrong-way", "difference": "difference"}


@dataclass(frozen=True)
class WrittenSlip:
    """One row of the table."""

    row: Mapping[str, str]

    @property
    def id(self) -> str:
        return self.row["id"]

    @property
    def n(self) -> int:
        return int(self.row["count_place"])

    @property
    def audience(self) -> Audience:
        return Audience(int(self.row["level"]))

    @cached_property
    def grid(self) -> Grid:
        """The count on a board, as far as it can be shown; with a 24-hour clock where the row writes its hours."""
        row = self.row
        hours = {text.partition(":")[0] for text in (row["start"], row["right"])}
        style = Style(clock=12 if hours.isdisjoint(OF_24_HOURS) else 24)
        for terms in range(TERMS, 1, -1):
            # Measures and money are not shown below zero.
            with suppress(CountError):
                count = Count.parse(kind=row["kind"], start=row["start"], step=row["step"], terms=terms, style=style)
                return Grid(count, min(LINE, terms))
        raise AssertionError(f"{self.id} has no count that can be shown")

    @property
    def earlier(self) -> dict[int, str]:
        return {int(n): text for n, _, text in (self.row["earlier"].partition("="),) if n}

    def heard(self) -> Hearing:
        return classify(self.grid, self.n, self.row["said"], self.earlier, audience=self.audience)

    def is_foreseen(self) -> bool:
        """Whether what was said is among what is foreseen at its count, mark for mark (c is a sign for cents too)."""
        slips = likely_slips(self.grid, audience=self.audience)
        said = plain(self.grid.count, self.row["said"])
        return any(slip.n == self.n and plain(self.grid.count, slip.heard) == said for slip in slips)

    def is_named(self) -> bool:
        """Whether it is named as the row expects, or as it also allows."""
        heard, (name, _, what) = self.heard(), self.row["expected"].partition(": ")
        if name.startswith("SkippedAhead"):
            return isinstance(heard, SkippedAhead) and f"SkippedAhead({heard.by})" == name
        if name in ("EqualName", "Repeated", "Carried") and "Slip: " not in self.row["also"]:
            return type(heard).__name__ == name
        allowed = {what.partition(" (")[0]} | {phrase for phrase in HAPPENINGS if phrase in self.row["also"]}
        if isinstance(heard, Slip):
            return not allowed.isdisjoint(happenings_of(heard.rule))
        if isinstance(heard, Other) and name in ("Slip", "Other"):
            return any(_is_other(heard, text) for text in (self.row["expected"], self.row["also"]))
        return type(heard).__name__ == name


def _is_other(heard: Other, text: str) -> bool:
    """Whether "Other: one place off", "Other: difference 1/4", "Other: wrong direction" stands in a text."""
    found = text.rpartition("Other: ")
    if not found[1] and "difference -" not in text:
        return False
    what = found[2]
    taken = next((takes for phrase, takes in TAKES.items() if phrase in what), None)
    if taken != heard.takes or taken != "difference":
        return taken == heard.takes
    return Fraction(what.partition("difference ")[2].split()[0].rstrip(";")) == heard.difference


def written_slips() -> list[WrittenSlip]:
    with TABLE.open(encoding="utf-8", newline="") as lines:
        return [WrittenSlip(row) for row in csv.DictReader(lines)]
