"""What stays or comes back along lines: the frame that digit, digit-sum and remainder share."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property
from typing import TypeVar

from routines.counting.claims import BlockClaim
from routines.counting.grid import Along

from ..language import Feature, Noun
from ..numbers import series
from ..page import Page
from .phrases import Life, Line, Phrases

FORMS = {1: "keep", 2: "turns"}
COUNT_FORMS = {1: "always", 2: "turns"}


B = TypeVar("B", bound=BlockClaim)


class Block(Phrases[B]):
    """A repeating block per line; subclasses say what is read off a count and why it comes back."""

    def __init__(self, page: Page, claim: B, life: Life) -> None:
        super().__init__(page, claim, life)
        self.along: Along = claim.along or "count"
        self.line = self._line()
        self.length = claim.block_length or self._shortest_length()

    def _line(self) -> tuple[int, ...]:
        """The line that is pointed at: the first of the longest ones the claim speaks of."""
        lines = self.grid.lines(self.along)
        wanted = self.claim.lines
        if wanted:
            on_page = {self.page.line_number(i, self.along) for i in wanted}
            lines = tuple(line for line in lines if self._number(line) in on_page) or lines
        return max(lines, key=len)

    def _shortest_length(self) -> int:
        """The length of the shortest block that fits what is in view, where the claim leaves it open."""
        return next((k for k in range(1, self.grid.terms) if self._repeats(k)), self.grid.terms)

    def _repeats(self, k: int) -> bool:
        return all(
            self.reading(n) == self.reading(line[at - k])
            for line in self.grid.lines(self.along)
            for at, n in enumerate(line)
            if at >= k
        )

    @abstractmethod
    def _feature(self) -> Feature:
        """Name what is read off each count."""

    @abstractmethod
    def reading(self, n: int) -> str | None:
        """What is read off the n-th count; None where it is not written."""

    @abstractmethod
    def written(self, item: int | Fraction) -> str:
        """An item of a claim's block as it is written in a sentence."""

    @abstractmethod
    def period(self) -> Fraction | None:
        """The amount that leaves every reading as it is: 10 for ones digits, 12 in for inches."""

    def _number(self, line: Sequence[int]) -> int:
        row, column = self.page.place(line[0])
        return column if self.along == "column" else row

    @cached_property
    def fields(self) -> dict[str, object]:
        """What the phrases of the family may hold."""
        return {
            **self.page.about_all(self._feature(), self.along),
            "in_line": self.language.in_line(self.along, self._number(self.line)),
            "k": self.length,
        }

    # The teacher's line.

    def statement(self) -> str:
        said = self._whole_statement()
        wanted = self.claim.lines
        if not wanted:
            return said
        name = self.language.lines[self.along]
        numbers = self.page.listing([str(self.page.line_number(i, self.along)) for i in wanted])
        return self.say(
            "lines.statement", statement=said, lines=name.one if len(wanted) == 1 else name.many, numbers=numbers
        )

    def _whole_statement(self) -> str:
        fields = dict(self.fields)
        blocks = self.claim.blocks
        if self.claim.along is None:
            return self.say("any-count.statement", **fields)
        if blocks is None:
            return self.say(self._open_key(), **fields)
        first = max(blocks, key=len)
        longest = [self.written(item) for item in first]
        if self.along == "count":
            key = COUNT_FORMS.get(self.length, "repeat")
            if key == "always" and self.life.breaks_at is not None:
                key = "always.shown"
            return self.say(f"{key}.statement", x=longest[0], series=self.short_series(longest), **fields)
        if self.length == 1:
            return self.say(
                "keep.statement", series=self.short_series([self.written(block[0]) for block in blocks]), **fields
            )
        same = all(block == first[: len(block)] for block in blocks)
        key = f"{FORMS.get(self.length, 'repeat')}-{'same' if same else 'line'}"
        fields["in_line"] = self._in_line_of(blocks.index(first))
        return self.say(f"{key}.statement", series=self.short_series(longest, most=6), **fields)

    def _in_line_of(self, index: int) -> str:
        wanted = self.claim.lines
        lines = self.grid.lines(self.along)
        if wanted and index < len(wanted):
            return self.language.in_line(self.along, self.page.line_number(wanted[index], self.along))
        return self.language.in_line(self.along, self._number(lines[index]) if index < len(lines) else index + 1)

    def _open_key(self) -> str:
        length = self.claim.length
        if length is None:
            return "any-count.statement" if self.along == "count" else "any.statement"
        if self.along == "count":
            return {1: "any-always", 2: "any-turns-count"}.get(length, "any-repeat-count") + ".statement"
        return {1: "any-keep", 2: "any-turns"}.get(length, "any-repeat") + ".statement"

    # The child's words.

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        readings = self._readings(2)
        if self.along == "count":
            key = COUNT_FORMS.get(self.length, "repeat")
        else:
            key = {1: "keep", 2: "turns-line"}.get(self.length, "repeat-line")
        return key, {**self.fields, "x": readings[0], "y": readings[-1]}

    def _readings(self, most: int) -> list[str]:
        return [self.reading(n) or "0" for n in self.line[:most]]

    # The reason.

    def reasons(self) -> Iterator[Line]:
        yield from self.own_reasons()
        yield from self._filling_reasons()
        moved = self.length * self.terms_along(self.along)
        period = self.period()
        if period and self.page.how_many_in(moved, period) is not None:
            yield from self._jump_reasons(moved, period)
        yield from self._listed_reasons()

    def unit(self) -> Fraction | None:
        """What 1 of the reading is worth; None where that is not one amount."""
        return None

    def _filling_reasons(self) -> Iterator[Line]:
        """Why each line keeps a reading as it fills: the line is as long as one of the unit."""
        unit, length = self.unit(), self.grid.line_length
        fills = self.along != "count" and self.terms_along(self.along) == 1
        if unit and fills and self.length == 1 and self.page.how_many_in(length, unit) == 1:
            fields = {**self.fields, **self.in_a_line()}
            yield from self.saying("reason.fills", made=self.made(length, unit), **fields)

    def own_reasons(self) -> Iterator[Line]:
        """Reasons better than jumps, if the family has any."""
        return iter(())

    def _jump_reasons(self, moved: int, period: Fraction) -> Iterator[Line]:
        more, made = self.page.more(self.count.scaled_step), self.made(moved, period)
        jumps, total = self.page.jumps(moved), self.page.move(moved)
        fields = {**self.fields, "jumps": jumps, "total": total, "more": more, "made": made, **self.in_a_line()}
        if moved == self.grid.line_length and self.along != "count":
            yield from self.saying("reason.line-change", "reason.line-made", **fields)
        yield from self.saying("reason.stays" if self.length == 1 else "reason.comes-back", **fields)
        yield lambda: made
        yield lambda: jumps

    def _listed_reasons(self) -> Iterator[Line]:
        end = "-count" if self.along == "count" else ""
        # Of a claim that ends the line is told in which it ends.
        ending = self.line_of_the_end(self.length, self.along) if self.length == 1 else ()
        line = ending or self.line
        if self.length == 1 and len(line) > 1:
            a, b = self.page.value(line[0]), self.page.value(line[-1])
            in_line = self.language.in_line(self.along, self._number(line))
            span = {**self.fields, "in_line": in_line, "a": a, "b": b, "x": self.reading(line[0]) or "0"}
            yield from self.saying(f"reason.span{end}", **span)
        if ending and any(True for _ in self.notes()):
            return
        for most in (min(2 * self.length, 6), 4, 3, 2):
            terms = self.line[:most]
            readings = self.short_series(self._readings(most))
            yield from self.saying(f"reason.list{end}", some=self.some(terms), series=readings, **self.fields)

    def notes(self) -> Iterator[Line]:
        n = self.life.breaks_at
        if n is None:
            return
        due, found, until = self._due(n), self.reading(n), self.page.value(n)
        if due is None or due == found:
            return
        if found is None:
            yield from self.saying("note.absent", until=until, **self.fields)
            return
        unit = self.unit_named()
        if unit is not None and self.length == 1:
            yield from self.saying(
                "note.another", until=until, y=found, another=self.language.another(unit), **self.fields
            )
        yield from self.saying("note.digit", "note.digit-short", until=until, x=due, y=found, **self.fields)

    def unit_named(self) -> Noun | None:
        """What 1 of the reading is called, where it is called so: the tens digit counts tens."""
        return None

    def _due(self, n: int) -> str | None:
        """What the n-th count would have to show for its line to repeat; None where its line is too short to tell."""
        before = self.cell_before(n, self.length, self.along)
        return None if before is None else self.reading(before)

    # The answer to a false claim.

    def refutation(self, counterexample: Sequence[int]) -> str:
        blocks = self.claim.blocks
        lines = self.grid.lines(self.along)
        if all(self.reading(n) is None for n in self.line[:2]):
            return self.say("no.absent", **self.fields)
        if blocks is not None and not self.claim.lines and len(blocks) != len(lines):
            key = "no.line" if len(lines) == 1 else "no.lines"
            return self.say(key, n=len(lines), claimed=len(blocks), **self.fields)
        n = counterexample[-1] if counterexample else self.line[-1]
        line = next((line for line in lines if n in line), self.line)
        apart = self.told_apart(line, n)
        if apart is not None:
            return self.say("no.keep", **{**self.fields, **apart})
        shown = [self.reading(term) or "-" for term in line if term <= n][-6:]
        fields = {**self.fields, "in_line": self.language.in_line(self.along, self._number(line))}
        key = "no.block-count" if self.along == "count" else "no.block"
        key = "no.block-one" if len(shown) == 1 else key
        first = "..., " if line.index(n) >= 6 else ""
        # Never cut at its end: the last one is the one that speaks against the claim.
        return self.say(key, nth=self.language.nth(n), v=self.page.value(n), series=first + series(shown), **fields)

    def told_apart(self, line: Sequence[int], n: int) -> dict[str, object] | None:
        """Of a line that was to keep one reading: its first cell and the one that differs, with where they stand; else None."""
        x, y = self.reading(line[0]), self.reading(n)
        if self.length != 1 or self.along == "count" or n == line[0] or x is None or y is None or x == y:
            return None
        across = 1 if self.along == "row" else 0
        at = [self.page.place(m)[across] for m in (line[0], n)]
        lines = self.language.lines["column" if self.along == "row" else "row"]
        return {
            "in_line": self.language.in_line(self.along, self._number(line)),
            "a": self.page.value(line[0]),
            "v": self.page.value(n),
            "x": x,
            "y": y,
            "lines": lines.many,
            "line": lines.one,
            "i": at[0],
            "j": at[1],
        }
