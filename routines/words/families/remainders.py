"""Remainders: what is left past a multiple, even and odd included."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property

from routines.counting.claims import RemainderClaim
from routines.counting.kinds.names import Kind

from ..language import Feature
from ..page import YOUNGER, Page
from .blocks import Block
from .phrases import Life, Line

# Spaces between the words of a name that a child still says in one breath: "the parts past a whole foot".
MOST_IN_A_NAME = 8


class Remainder(Block[RemainderClaim]):
    """What each count is past a multiple stays or comes back."""

    def __init__(self, page: Page, claim: RemainderClaim, life: Life) -> None:
        self.modulus = claim.modulus or Fraction(2)
        # Even and odd have words of their own.
        self.is_parity = self.modulus == 2 and page.count.kind == Kind.WHOLE
        self._read: dict[int, str] = {}
        super().__init__(page, claim, life)

    def _feature(self) -> Feature:
        mark = self.page.named_mark(self.modulus)
        return self.language.remainder(self.page.difference(self.modulus), mark)

    def remainder(self, n: int) -> Fraction:
        """What the n-th count is past the multiple before it."""
        return Fraction(self._scaled(n), self.count.scale * self.modulus.denominator)

    def reading(self, n: int) -> str | None:
        scaled = self._scaled(n)
        text = self._read.get(scaled)
        if text is None:
            text = self._read[scaled] = self.written(self.remainder(n))
        return text

    def _scaled(self, n: int) -> int:
        """The remainder as so many parts of 1, `scale` times the modulus's denominator of them."""
        return self.count.scaled(n) * self.modulus.denominator % (self.modulus.numerator * self.count.scale)

    def written(self, item: int | Fraction) -> str:
        if self.is_parity:
            return self.language.parity(odd=item % 2 == 1, plural=False)
        return self.page.difference(Fraction(item))

    def period(self) -> Fraction | None:
        return self.modulus

    @cached_property
    def fields(self) -> dict[str, object]:
        mark = self.page.mark(self.modulus)
        first, second, third = (self.line[min(at, len(self.line) - 1)] for at in range(3))
        value = self.page.value
        return {
            **super().fields,
            "mark": mark.one,
            "marks": mark.many,
            "a_mark": self.language.a(mark),
            "a": value(first),
            "b": value(second),
            "c": value(third),
            "d": self.page.jump,
            "total": self.page.move(self.length * self.terms_along(self.along)),
            "more": self.page.more(self.count.scaled_step),
        }

    @cached_property
    def _form(self) -> str:
        """Which set of phrases suits: parity has its own, and so has one remainder for the whole count."""
        if self.is_parity and self.length <= 2:
            shape = {1: "keep", 2: "turns-line"} if self.along != "count" else {1: "all", 2: "turns"}
            return f"parity.{shape[self.length]}"
        if self.along == "count" and self.length == 1:
            return "past" if self.remainder(1) else "all"
        return ""

    def _whole_statement(self) -> str:
        blocks, form = self.claim.blocks, self._form
        if not form or blocks is None or self.claim.along is None:
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
            x_all=self.language.parity(odd=first % 2 == 1, plural=True),
            series=self.short_series([self.written(block[0]) for block in blocks]),
            **self.fields,
        )

    @cached_property
    def _form_fields(self) -> dict[str, object]:
        first, second = self.line[0], self.line[min(1, len(self.line) - 1)]
        x, y = self.remainder(first), self.remainder(second)
        fields = {**self.fields, "x": self.written(x), "y": self.written(y), "r": self.written(x)}
        if self.is_parity:
            return {**fields, "x_all": self.language.parity(odd=x == 1, plural=True)}
        m_a, m_b = self.page.spot(self.count.value(first) - x), self.page.spot(self.count.value(second) - y)
        return {**fields, "m_a": m_a, "m_b": m_b}

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        if self._form:
            mark, ending = self.page.child_mark(self.modulus, by_ending=False), self.page.child_ending(self.modulus)
            if self._form == "all" and ending:
                return "all.ending", {**self._form_fields, "ending": self.language.either(ending)}
            return self._form, {**self._form_fields, "marks": mark.many, "a_mark": self.language.a(mark)}
        key, fields = super().noticing()
        brief = self._feature().short
        # What is left over has no other name yet, or one of too many words.
        if self.page.band <= YOUNGER or str(fields["the_feats"]).count(" ") > MOST_IN_A_NAME:
            the_brief = self.language.the_many(brief)
            fields = {
                **fields,
                "feats": brief.many,
                "the_feats": the_brief,
                "short": brief.many,
                "the_short": the_brief,
            }
        return key, fields

    def own_reasons(self) -> Iterator[Line]:
        form, along = self._form, self.terms_along(self.along)
        if form.startswith("parity"):
            turns = form in ("parity.turns", "parity.turns-line")
            if (self.page.how_many_in(along, Fraction(2)) is None) != turns:
                return
            fields = {**self._form_fields, "total": self.page.move(along), "jumps": self.page.jumps(along)}
            if form == "parity.keep" and along == self.grid.line_length:
                yield from self.saying("parity.keep.reason-line", **{**fields, **self.in_a_line()})
            yield from self.saying(f"{form}.reason", **fields)
        elif form and self.page.how_many_in(1, self.modulus) and not (form == "all" and self.page.on_clock):
            pure_a = self.page.pure(self.count.value(self.line[0]), self.modulus)
            pure_d = self.page.pure_move(1, self.modulus)
            fields = {**self._form_fields, "jumps": self.page.jumps(1), "pure_a": pure_a, "pure_d": pure_d}
            if pure_d and (form == "past" or pure_a):
                yield from self.saying(f"{form}.reason", **fields)
            elif form == "past":
                yield from self.saying("past.reason-jumps", **fields)

    def refutation(self, counterexample: Sequence[int]) -> str:
        if not (self.is_parity and counterexample) or self.claim.lines:
            return super().refutation(counterexample)
        n = counterexample[-1]
        line = next((line for line in self.grid.lines(self.along) if n in line), self.line)
        apart = self.told_apart(line, n)
        if apart is not None:
            return self.say("no.keep-parity", **apart)
        return self.say("no.parity", nth=self.language.nth(n), v=self.page.value(n), x=self.reading(n))
