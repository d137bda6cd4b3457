"""What can be read off written counts, worked out from the text and the exact value; imports no pattern code."""

import re
from collections.abc import Callable
from fractions import Fraction

from routines.counting.claims import Claim
from routines.counting.grid import Grid

PART_SYMBOLS = {
    "inches": "in",
    "feet": "ft",
    "yards": "yd",
    "miles": "mi",
    "ounces": "oz",
    "pounds": "lb",
    "tons": "tons?|toneladas?",
    "fluid ounces": "fl oz",
    "cups": "cups?|tazas?",
    "pints": "pt",
    "quarts": "qt",
    "gallons": "gal",
    "seconds": "s",
    "minutes": "min",
    "hours": "h",
    "days": "d",
}


class Readings:
    """The reading a block or run claim is about, term by term, and the lines as the page shows them."""

    def __init__(self, grid: Grid, claim: Claim | None, place: Callable[[int], tuple[int, int]]) -> None:
        """place: row and column of a term on the page."""
        self.grid = grid
        self.claim = claim
        self.place = place

    def value(self, n: int) -> Fraction:
        return Fraction(self.grid.count.start) + (n - 1) * Fraction(self.grid.count.step)

    def number(self, n: int) -> int | Fraction | None:
        """The digit, part, digit sum or remainder of the n-th count."""
        claim, value = self.claim, self.value(n)
        assert claim is not None
        if claim.family == "digit-sum":
            return sum(int(digit) for digit in str(abs(int(value))))
        if claim.family == "remainder":
            return value % claim.parameters.get("modulus")
        if claim.parameters.get("part") is not None:
            return self.part(n, claim.parameters.get("part"))
        return int(abs(value) / Fraction(10) ** (claim.parameters.get("place") or 0)) % 10

    def part(self, n: int, name: str) -> int | None:
        """A part read off the written text."""
        count = self.grid.count
        text = count.text(n).split(" = ")[0].lstrip("-")
        for mark in filter(None, (count.style.thousands,)):
            text = re.sub(rf"(?<=\d){re.escape(mark)}(?=\d{{3}}(?![\d/]))", "", text)
        if count.kind == "clock":
            hour, minute = re.match(r"(\d+):(\d+)", text).groups()  # type: ignore[union-attr]
            return int(hour if name == "hours" else minute)
        if count.kind == "money":
            main, _, small = re.search(r"\d+(?:[.,]\d+)?", text)[0].replace(",", ".").partition(".")  # type: ignore[index]
            return int(main) if name == count.part_names()[0] else int(small)
        if name in ("top", "bottom"):
            stack = re.search(r"(\d+)/(\d+)", text)
            if stack is None:  # of a mixed number no top means none over; no bottom is ever 0
                return 0 if name == "top" and count.style.shape == "mixed" else None
            return int(stack[1 if name == "top" else 2])
        if name == "whole":
            whole = re.match(r"\d+(?![\d/])", text)
            if whole is None and abs(self.value(n)) >= 1:  # -82 written as -656/8
                return None
            return int(whole[0]) if whole else 0
        symbol = PART_SYMBOLS.get(name, name)
        found = re.search(rf"(?<![\d/])(\d+)(?: \d+/\d+)? (?:{symbol})\b", text)
        return int(found[1]) if found else 0

    def line(self, along: str, number: int) -> list[int]:
        """The terms of a row or column, in counting order."""
        at = 0 if along == "row" else 1
        return [n for n in range(1, self.grid.terms + 1) if self.place(n)[at] == number]

    def lines(self, along: str | None) -> list[list[int]]:
        """Every line that has a term in view, in page order."""
        if along in (None, "count"):
            return [list(range(1, self.grid.terms + 1))]
        at = 0 if along == "row" else 1
        numbers = sorted({self.place(n)[at] for n in range(1, self.grid.terms + 1)})
        return [self.line(along, i) for i in numbers]

    def shows(self, text: str, n: int) -> bool:
        """Whether a written reading is what the n-th count shows."""
        number = self.number(n)
        if text == "-":
            return number is None
        if text.rstrip("es") in ("even", "odd", "par", "impar") or text in ("even", "odd", "pares", "impares"):
            assert number is not None
            return ("odd" in text or "impar" in text) == (number % 2 == 1)
        if number is None:
            return False
        if self.claim is not None and self.claim.family == "remainder":
            return text == self.grid.count.difference_text(Fraction(number))
        return text == str(number)
