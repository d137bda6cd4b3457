"""Sums and opposites: counts that belong together and what they add to."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property

from routines.counting.claims import OppositesClaim, SumName, SumsClaim

from .phrases import Line, Phrases


class Sums(Phrases[SumsClaim]):
    """Block corners, pairs from both ends, the middle of nine, and line totals."""

    @property
    def _which(self) -> SumName:
        return self.claim.which or "ends"

    @property
    def _key(self) -> str:
        return {"block-corners": "corners", "ends": "ends", "centre-mean": "mean", "line-totals": "totals"}[self._which]

    def statement(self) -> str:
        if self._which != "line-totals":
            return self.say(f"{self._key}.statement")
        along, difference = self.claim.along, self.claim.difference
        if along is None or difference is None:
            return self.say("totals.open.statement")
        step = {**self.change(difference), "diff": self.page.difference(difference)}
        if along == "row":
            return self.say("totals.row.statement", **step)
        return self.say("totals.column.statement", **step)

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        fields = self._fields
        if self._which == "line-totals" and not fields:
            return "totals.open", {}
        return self._key, fields or {}

    def _shorter(self) -> tuple[str, ...]:
        """A shorter way to give the reason, where there is one."""
        return {
            "corners": ("pair.reason-short",),
            "ends": ("pair.reason-short",),
            "totals": ("totals.reason-short",),
        }.get(self._key, ())

    def reasons(self) -> Iterator[Line]:
        fields = self._fields
        if not fields:
            return self.saying("small")
        return self.saying(f"{self._key}.reason", *self._shorter(), **fields)

    def refutation(self, counterexample: Sequence[int]) -> str:
        fields = self._fields
        if not fields:
            return self.say("small")
        return self.say("no.totals" if self._which == "line-totals" else f"{self._key}.reason", **fields)

    @cached_property
    def _fields(self) -> dict[str, object] | None:
        """The numbers of one example in view; None where the grid is too small to hold one."""
        if self._which == "line-totals":
            along = self.claim.along
            return self._totals(along) if along else self._totals("row") or self._totals("column")
        if self._which == "centre-mean":
            return self._nine()
        four = self._ends() if self._which == "ends" else self._corners()
        if four is None:
            return None
        a, b, c, d = four
        value = self.count.value
        return {
            "a": self.page.value(a),
            "b": self.page.value(b),
            "c": self.bracketed(self.page.value(c)),
            "d": self.bracketed(self.page.value(d)),
            "sum": self.page.amount(value(a) + value(d)),
            "step": self.page.jump,
            "up": self.page.up(self.count.step),
            "down": self.page.up(-self.count.step),
        }

    def _ends(self) -> tuple[int, int, int, int] | None:
        last = self.grid.terms
        return (1, 2, last - 1, last) if last >= 4 else None

    def _corners(self) -> tuple[int, int, int, int] | None:
        for row in range(1, self.grid.rows):
            for column in range(1, self.grid.columns):
                four = [self.grid.at(row + down, column + right) for down in (0, 1) for right in (0, 1)]
                if None not in four:
                    a, b, c, d = (n for n in four if n is not None)
                    return a, b, c, d
        return None

    def _nine(self) -> dict[str, object] | None:
        for row in range(2, self.grid.rows):
            for column in range(2, self.grid.columns):
                nine = [self.grid.at(row + down, column + right) for down in (-1, 0, 1) for right in (-1, 0, 1)]
                middle = self.grid.at(row, column)
                if None not in nine and middle is not None:
                    total = self._total([n for n in nine if n is not None])
                    mid = self.page.value(middle)
                    return {"mid": mid, "factor": self.bracketed(mid), "sum": self.page.amount(total)}
        return None

    def _totals(self, along: str) -> dict[str, object] | None:
        full = self.grid.columns if along == "row" else self.grid.rows
        lines = {self._number(line, along): line for line in self.grid.lines(along) if len(line) == full}
        for i, line in sorted(lines.items()):
            after = lines.get(i + 1)
            if after is None:
                continue
            each = self.count.value(after[0]) - self.count.value(line[0])
            x, y = self._total(line), self._total(after)
            return {
                "line": self.language.lines[along].one,
                "i": i,
                "j": i + 1,
                "x": self.page.amount(x),
                "y": self.page.amount(y),
                "k": len(line),
                "each": self.page.difference(each),
                **self.change(y - x),
            }
        return None

    def _total(self, terms: Sequence[int]) -> Fraction:
        return Fraction(sum(map(self.count.scaled, terms)), self.count.scale)

    def _number(self, line: Sequence[int], along: str) -> int:
        row, column = self.page.place(line[0])
        return row if along == "row" else column


class Opposites(Phrases[OppositesClaim]):
    """Pairs of counts at the same distance from zero, on either side."""

    ends = "opposites.until"

    def _pairs(self) -> tuple[tuple[int, int], ...]:
        return self._real_pairs() if self.claim.pairs is None else self.claim.pairs

    def _real_pairs(self) -> tuple[tuple[int, int], ...]:
        total = 2 - 2 * self.count.start / self.count.step
        if total.denominator != 1:
            return ()
        terms = self.grid.terms
        return tuple((n, int(total) - n) for n in range(1, terms + 1) if n < total - n <= terms)

    def _listed(self, pairs: Sequence[tuple[int, int]]) -> str:
        return ", ".join(self.say("opposites.pair", a=self.page.value(a), b=self.page.value(b)) for a, b in pairs[:3])

    def statement(self) -> str:
        pairs = self._pairs()
        return self.say("opposites.statement", pairs=self._listed(pairs) + (", ..." if len(pairs) > 3 else ""))

    @cached_property
    def _fields(self) -> dict[str, object]:
        a, b = (self._pairs() or ((1, 1),))[-1 if self._seed % 2 else 0]
        low, high = sorted((a, b), key=self.count.value)
        value = self.page.value
        far = self.page.difference(self.count.value(high))
        return {"a": value(a), "b": value(b), "low": value(low), "high": value(high), "far": far}

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        return "opposites", self._fields

    def reasons(self) -> Iterator[Line]:
        return self.saying("opposites.reason", **self._fields)

    def notes(self) -> Iterator[Line]:
        n = self.life.breaks_at
        other = None if n is None else self.count.position_of(-self.count.value(n))
        if n is None or other is None:
            return
        low, high = sorted((n, other), key=self.count.value)
        value = self.page.value
        yield from self.saying("opposites.note", until=value(n), low=value(low), high=value(high))

    def refutation(self, counterexample: Sequence[int]) -> str:
        pairs = self._real_pairs()
        if not pairs:
            return self.say("no.opposites-none")
        return self.say("no.opposites", pairs=self._listed(pairs) + (", ..." if len(pairs) > 3 else ""))
