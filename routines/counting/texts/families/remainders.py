"""Remainders: what is left past a multiple, even and odd included."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from ..tongue import Feature
from .blocks import Block
from .telling import Line


class Remainder(Block):
    """What each count is past a multiple stays or comes back."""

    @property
    def modulus(self) -> Fraction:
        return Fraction(self.claim.get("modulus", 2))

    @property
    def is_parity(self) -> bool:
        """Even and odd, which have words of their own."""
        return self.modulus == 2 and self.count.kind == "whole"

    def _feature(self) -> Feature:
        mark = self.page.named_mark(self.modulus)
        return self.tongue.remainder(self.page.difference(self.modulus), mark)

    def remainder(self, n: int) -> Fraction:
        return self.count.value(n) % self.modulus

    def reading(self, n: int) -> str | None:
        return self.written(self.remainder(n))

    def written(self, item: int | Fraction) -> str:
        if self.is_parity:
            return self.tongue.parity(odd=item % 2 == 1, plural=False)
        return self.page.difference(Fraction(item))

    def period(self) -> Fraction | None:
        return self.modulus

    def fields(self) -> dict[str, object]:
        mark = self.page.mark(self.modulus)
        terms = self.line
        second = terms[min(1, len(terms) - 1)]
        total = self.count.step * self.length * self._terms_along()
        value = self.page.value
        return {
            **super().fields(),
            "mark": mark.one,
            "marks": mark.many,
            "a_mark": self.tongue.a(mark),
            "a": value(terms[0]),
            "b": value(second),
            "c": value(terms[min(2, len(terms) - 1)]),
            "d": self.page.jump,
            "total": self.page.difference(total),
        }

    @property
    def _form(self) -> str:
        """Which set of phrases suits: parity has its own, and so has one remainder for the whole count."""
        if self.is_parity and self.length <= 2:
            shape = {1: "keep", 2: "turns-line"} if self.along != "count" else {1: "all", 2: "turns"}
            return f"parity.{shape[self.length]}"
        if self.along == "count" and self.length == 1:
            return "past" if self.remainder(1) else "all"
        return ""

    def _whole_statement(self) -> str:
        blocks, form = self.claim.get("blocks"), self._form
        if not form or blocks is None or self.claim.get("along") is None:
            return super()._whole_statement()
        first = blocks[0][0]
        if form in ("all", "past"):
            form = "past" if first else "all"
        x = self.written(first)
        return self.say(
            f"{form}.statement",
            x=x,
            y=self.written(blocks[0][-1]),
            r=x,
            x_all=self.tongue.parity(odd=first % 2 == 1, plural=True),
            series=self.short_series([self.written(block[0]) for block in blocks]),
            **self.fields(),
        )

    def _form_fields(self, shown: int) -> dict[str, object]:
        first, second = self.line[0], self.line[min(1, len(self.line) - 1)]
        return {
            **self.fields(),
            "x": self.written(self.remainder(first)),
            "y": self.written(self.remainder(second)),
            "x_all": self.tongue.parity(odd=self.remainder(first) % 2 == 1, plural=True),
            "r": self.written(self.remainder(first)),
            "m_a": self.page.spot(self.count.value(first) - self.remainder(first)),
            "m_b": self.page.spot(self.count.value(second) - self.remainder(second)),
            "some": self.some(self.line[:shown]),
        }

    def cores(self) -> Iterator[Line]:
        form = self._form
        return self.saying(f"{form}.core", **self._form_fields(3)) if form else super().cores()

    def evidence(self) -> Iterator[Line]:
        form = self._form
        if not form:
            yield from super().evidence()
            return
        for shown in (3, 2, 1):
            yield from self.saying(f"{form}.evidence", **self._form_fields(shown))

    def own_reasons(self) -> Iterator[Line]:
        form = self._form
        per_cell = abs(self.count.step) * self._terms_along()
        if form.startswith("parity"):
            turns = form in ("parity.turns", "parity.turns-line")
            if (per_cell % 2 == 1) != turns:
                return
            fields = {**self._form_fields(3), "total": self.page.difference(per_cell)}
            fields["jumps"] = self.page.jumps(self._terms_along())
            yield from self.saying(f"{form}.reason", **fields)
        elif form and per_cell % self.modulus == 0:
            fields = {**self._form_fields(3), "jumps": self.page.jumps(1)}
            fields["pure_a"] = self.page.pure(self.count.value(self.line[0]), self.modulus)
            fields["pure_d"] = self.page.pure(abs(self.count.step), self.modulus)
            if fields["pure_d"] and (form == "past" or fields["pure_a"]):
                yield from self.saying(f"{form}.reason", **fields)
