"""Digits and parts: what one place or one part of the written counts does."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction

from routines.counting.claims import DigitClaim, DigitSumClaim
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.measure import Measure
from routines.counting.kinds.names import Kind
from routines.counting.kinds.units import UNITS
from routines.counting.patterns.readings import part_reading

from ..language import Feature, Noun
from ..page import Page
from .blocks import Block
from .phrases import Line


class DigitReader:
    """Reads a place's digit or a part off the counts of one page."""

    def __init__(self, page: Page, place: int | None, part: str | None) -> None:
        self.page = page
        self.count = page.count
        self.part = part
        self.place = 0 if place is None else place

    def feature(self) -> Feature:
        """The place or part, named."""
        return self.page.digit(self.place) if self.part is None else self.page.part(self.part)

    def number(self, n: int) -> int | None:
        """The digit of |value(n)| at the place, or the part as written; None where the part is not written."""
        if self.part is not None:
            return self._part(n)
        scaled, scale, place = abs(self.count.scaled(n)), self.count.scale, self.place
        if place < 0:
            return int(scaled * 10**-place // scale % 10)
        return int(scaled // (scale * 10**place) % 10)

    def _part(self, n: int) -> int | None:
        if self.part not in self.count.part_names():
            return self.page.parts(n).get(str(self.part))
        return part_reading(self.count, self.part, self.page.grid.terms).at(n)

    def shown(self, number: int) -> str:
        """A part's number as a clock writes it: minutes with two digits."""
        return f"{number:02d}" if self.part == "minutes" else str(number)

    def period(self) -> Fraction | None:
        """The amount that brings the same digit or part back; None for a part that nothing brings back."""
        if self.part is None:
            return Fraction(10) ** (self.place + 1)
        return self._part_period()

    def unit(self) -> Fraction | None:
        """What 1 of the digit or part is worth; None where that depends on how the count is written."""
        if self.part is None:
            return Fraction(10) ** self.place
        if self.count.kind == Kind.MONEY:
            currency = currency_named(self.count.style.currency, "en")
            return Fraction(10**currency.digits if self.part == currency.main.several else 1)
        if self.part == "whole":
            return Fraction(1)
        return next((unit.size for unit in UNITS.values() if unit.part == self.part), None)

    def unit_named(self, place: int) -> Noun | None:
        """What 1 at a place is called; None for a part, for coins, and for the ones of whole numbers."""
        if self.part is not None or self.count.kind not in (Kind.WHOLE, Kind.DECIMAL):
            return None
        if place == 0:
            return self.page.named_mark(Fraction(1))
        return self.page.language.places.get(place)

    def _part_period(self) -> Fraction | None:
        names = self.count.part_names()
        if self.part not in names:
            return None
        at = names.index(self.part)
        if self.part == "top":
            if at == 0:
                return None
            return self.count.form.small.size if isinstance(self.count.form, Measure) else Fraction(1)
        if at == 0:
            return Fraction(self.count.wrap) if self.count.wrap else None
        if self.count.kind == Kind.MONEY:
            return Fraction(10 ** currency_named(self.count.style.currency, "en").digits)
        larger = next((unit for unit in UNITS.values() if unit.part == names[at - 1]), None)
        return larger.size if larger else None


class Digit(Block[DigitClaim]):
    """A digit or a part stays or comes back."""

    @property
    def _reader(self) -> DigitReader:
        return DigitReader(self.page, self.claim.place, self.claim.part)

    def _feature(self) -> Feature:
        return self._reader.feature()

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        key, fields = super().noticing()
        if not self.page.before_place_value or self.claim.part is not None:
            return key, fields
        # Those who have not met digits look at how a number ends.
        ends = not self.claim.place and key in ("always", "keep")
        return f"{key}.ending" if ends else key, {**fields, **self.page.about_place(self._reader.place)}

    def reading(self, n: int) -> str | None:
        number = self._reader.number(n)
        return None if number is None else str(number)

    def written(self, item: int | Fraction) -> str:
        # A whole among mixed numbers is written without a top.
        nothing = item == 0 and self.claim.part == "top" and self.count.style.shape == "mixed"
        return self.language.none if nothing else str(item)

    def own_reasons(self) -> Iterator[Line]:
        """Parts of one size: the start is made of them, and so is every jump."""
        bottom = self.page.jump.partition("/")[2].split(" ")[0]
        if self.claim.part == "bottom" and self.along == "count" and self.length == 1 and bottom == self.reading(1):
            a, d = self.page.value(1), self.page.jump
            yield from self.saying("reason.bottom", a=a, d=d, x=bottom, **self.fields)

    def _jump_reasons(self, moved: int, period: Fraction) -> Iterator[Line]:
        """Across zero, where digits are read from both sides, jumps are a reason only for what is as far from it on both.

        A clock goes around: midnight is no zero.
        """
        count, half = self.count, period / 2
        ends = count.scaled_start, count.scaled(self.grid.terms)
        if self.page.on_clock or not min(ends) < 0 < max(ends):
            yield from super()._jump_reasons(moved, period)
        elif all((value / half).denominator == 1 for value in (count.start, count.step)):
            mark = self.page.mark(half)
            fields = {"marks": mark.many, "a_mark": self.language.a(mark), "total": self.page.move(moved)}
            more = self.page.more(count.scaled_step)
            yield from self.saying("reason.both-sides", more=more, **fields, **self.fields)

    def period(self) -> Fraction | None:
        return self._reader.period()

    def unit(self) -> Fraction | None:
        return self._reader.unit()

    def unit_named(self) -> Noun | None:
        return self._reader.unit_named(self._reader.place)


class DigitSum(Block[DigitSumClaim]):
    """The digits of each count add to the same, or the sums come back."""

    def _feature(self) -> Feature:
        return self.language.digit_sum

    def _digits(self, n: int) -> str:
        return str(abs(self.count.scaled(n)) // self.count.scale)

    def reading(self, n: int) -> str | None:
        return str(sum(map(int, self._digits(n))))

    def written(self, item: int | Fraction) -> str:
        return str(item)

    def period(self) -> Fraction | None:
        return None

    def own_reasons(self) -> Iterator[Line]:
        longer = [n for n in self.line if len(self._digits(n)) > 1]
        for most in (3, 2, 1):
            terms = longer[:most]
            if terms:
                yield from self.saying("reason.sums", sums=self.page.listing([self._sum(n) for n in terms]))

    def _sum(self, n: int) -> str:
        return f"{' + '.join(self._digits(n))} = {self.reading(n)}"
