"""A count written on a board, read as a child reads it: values listed one by one, digits and parts off the writing.

Imports nothing of the engine. What is written is handed in as text; the rest is worked out here.
"""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction

WRITTEN_UNITS = {
    "in": "inches",
    "ft": "feet",
    "yd": "yards",
    "mi": "miles",
    "mm": "mm",
    "cm": "cm",
    "m": "m",
    "km": "km",
    "oz": "ounces",
    "lb": "pounds",
    "g": "g",
    "kg": "kg",
    "fl oz": "fluid ounces",
    "cup": "cups",
    "cups": "cups",
    "pt": "pints",
    "qt": "quarts",
    "gal": "gallons",
    "mL": "mL",
    "L": "L",
    "s": "seconds",
    "min": "minutes",
    "h": "hours",
    "d": "days",
}


@dataclass(frozen=True)
class Board:
    """A count with so many terms, folded; `friendly` are the multiples to try, `part_names` the parts to read.

    `unit` is the unit in which values are given, of money the currency: "in", "USD". `mixed`: whether
    mixed numbers are written; `small` is the unit whose parts they are.
    """

    kind: str
    start: Fraction
    step: Fraction
    terms: int
    length: int
    fill: str = "across"
    lead: int = 0
    friendly: Sequence[Fraction] = ()
    part_names: Sequence[str] = ()
    written: Callable[[int], str] | None = None
    unit: str = ""
    mixed: bool = True
    small: Fraction = Fraction(1)

    def value(self, n: int) -> Fraction:
        return self.start + (n - 1) * self.step

    def line_and_cell(self, n: int) -> tuple[int, int]:
        """Which fill line a term is in, and which cell of it, both from 0."""
        return (self.lead + n - 1) // self.length, (self.lead + n - 1) % self.length

    def name_of_line(self, n: int, along: str) -> int:
        """A number for the line a term is in that stays when the count goes on."""
        line, cell = self.line_and_cell(n)
        if along == "count":
            return 0
        return cell if (along == "row") == (self.fill == "down") else line

    def page_place(self, n: int, terms: int | None = None) -> tuple[int, int]:
        """Row and column on the page of `terms` terms (default: those in view), from 1."""
        line, cell = self.line_and_cell(n)
        begun = self.line_and_cell(terms or self.terms)[0] + 1
        if self.fill == "down":
            return cell + 1, line + 1
        return (begun - line if self.fill == "across-up" else line + 1), cell + 1

    def lines(self, along: str, terms: int | None = None) -> list[list[int]]:
        """The lines with their terms, page order, each in counting order."""
        terms = terms or self.terms
        found: dict[int, list[int]] = {}
        for n in range(1, terms + 1):
            key = 1 if along == "count" else self.page_place(n, terms)[0 if along == "row" else 1]
            found.setdefault(key, []).append(n)
        return [found[key] for key in sorted(found)]

    def digit(self, n: int, place: int) -> int:
        """The digit at a place of |value|, off its digits written out in full."""
        size = abs(self.value(n))
        places = max(0, -place)
        digits = str(size.numerator * 10**places // size.denominator).rjust(places + place + 1, "0")
        return int(digits[-1 - place - places])

    def part(self, n: int, name: str) -> int | None:
        """A part as it is written, None where it is not.

        0 where it is not written because it is 0, and some count in view writes one; a bottom is never 0.
        """
        assert self.written is not None
        number = read_parts(self.kind, self.written(n), self.part_names).get(name)
        if number is None and name != "bottom" and self.mixed and self.writes(name):
            size = abs(self.value(n)) / self.small
            return 0 if (size < 1 if name == "whole" else size.denominator == 1) else None
        return number

    def writes(self, name: str) -> bool:
        """Whether a part stands in the writing of some count in view."""
        assert self.written is not None
        for text in map(self.written, range(1, self.terms + 1)):
            if name in ("top", "bottom"):
                found = "/" in text.split(" = ")[0]
            elif name == "whole":
                found = re.match(r"-?\d+(?= |$)", text.replace(",", "").split(" = ")[0]) is not None
            elif self.kind in ("clock", "money"):
                found = True
            else:
                found = any(
                    WRITTEN_UNITS[unit] == name
                    and re.search(r"^\d+(?!/)(?: |$)", amount.strip().replace(",", "")) is not None
                    for amount, unit in re.findall(r"([\d ./,]+?) (fl oz|[a-zA-Z]+)", text.lstrip("-"))
                )
            if found:
                return True
        return False


def read_parts(kind: str, text: str, names: Sequence[str]) -> dict[str, int]:
    """The numbers in a written value by the names of its parts."""
    text = text.lstrip("-").replace(",", "")
    if kind == "clock":
        hours, minutes = re.match(r"(\d+):(\d\d)", text).groups()  # type: ignore[union-attr]
        return {"hours": int(hours), "minutes": int(minutes)}
    if kind == "money":
        main, cents = re.search(r"(\d+)\.(\d\d)", text).groups()  # type: ignore[union-attr]
        return dict(zip(names, (int(main), int(cents)), strict=True))
    if kind == "fraction":
        return _mixed(text.split(" = ")[0], "whole")
    parts = {name: 0 for name in names if name not in ("top", "bottom")}
    for amount, unit in re.findall(r"([\d ./]+?) (fl oz|[a-zA-Z]+)", text):
        parts |= _mixed(amount.strip(), WRITTEN_UNITS[unit])
    return parts


def _mixed(text: str, whole: str) -> dict[str, int]:
    """A whole number, a fraction, or both."""
    found = re.fullmatch(r"(?:(\d+)(?: |$))?(?:(\d+)/(\d+))?", text)
    assert found, text
    named = zip((whole, "top", "bottom"), found.groups(), strict=True)
    return {name: int(number) for name, number in named if number is not None}
