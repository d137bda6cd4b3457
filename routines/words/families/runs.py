"""Digit-run: a digit or a part that changes by the same amount each time."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property

from routines.counting.claims import DigitRunClaim
from routines.counting.grid import Along, Grid
from routines.counting.kinds.names import Kind

from .digits import DigitReader
from .phrases import Line, Phrases


class DigitRun(Phrases[DigitRunClaim]):
    """A digit or a part goes up or down by the same amount from cell to cell."""

    @cached_property
    def _reader(self) -> DigitReader:
        return DigitReader(self.page, self.claim.place, self.claim.part)

    @cached_property
    def _along(self) -> Along:
        return self.claim.along or "count"

    @cached_property
    def _line(self) -> tuple[int, ...]:
        return max(self.grid.lines(self._along), key=len)

    @cached_property
    def _change(self) -> int:
        """The change as claimed, or as it is between the first two cells."""
        if self.claim.change is not None:
            return self.claim.change
        first = [self._reader.number(n) or 0 for n in self._line[:2]]
        return first[-1] - first[0]

    @cached_property
    def _fields(self) -> dict[str, object]:
        feature = self._reader.feature()
        row, column = self.page.place(self._line[0])
        number = column if self._along == "column" else row
        return {
            **self.page.about_all(feature, self._along),
            "up": self.language.down if self._change < 0 else self.language.up,
            "rises": self.language.rises(downwards=self._change < 0, plural=feature.plural),
            "rise": self.language.rises(downwards=self._change < 0, plural=True),
            "change": abs(self._change),
            "in_line": self.language.in_line(self._along, number),
        }

    def statement(self) -> str:
        return self.say("run.statement", **self._fields)

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        if self.page.before_place_value and self.claim.part is None:
            return self._before_place_value()
        return "run along the count" if self._along == "count" else "run", self._fields

    def _before_place_value(self) -> tuple[str, Mapping[str, object]]:
        """Of those who have not met digits: how a number ends, the number in front, or so many tens."""
        place = self._reader.place
        if place == 0:
            return "run of ends", {**self._fields, "more": self.page.more(self._change)}
        lasts = min((self.life.breaks_at or self.grid.terms + 1) - 1, self.grid.terms)
        if stands_in_front(self.grid.cut(lasts), place):
            return "run in front", self._fields
        return "run of places along the count" if self._along == "count" else "run", {
            **self._fields,
            **self.page.about_place(place),
        }

    def _shown(self, most: int) -> dict[str, object]:
        line = self._line_told
        terms = line[:most]
        readings = [str(self._reader.number(n) or 0) for n in terms]
        row, column = self.page.place(line[0])
        in_line = self.language.in_line(self._along, column if self._along == "column" else row)
        return {**self._fields, "in_line": in_line, "some": self.some(terms), "series": self.short_series(readings)}

    @cached_property
    def _line_told(self) -> tuple[int, ...]:
        """The line that is told of: of a run that ends the one in which it ends, if that can be seen to rise there."""
        ending = self.line_of_the_end(1, self._along)
        return ending if len(ending) > 1 else self._line

    def reasons(self) -> Iterator[Line]:
        moved = self.count.step * self.terms_along(self._along)
        yield from self._sum_reasons(moved)
        if len(self.line_of_the_end(1, self._along)) == 1 and any(True for _ in self.notes()):
            return
        key = "run.reason-list-count" if self._along == "count" else "run.reason-list"
        for most in (4, 3, 2):
            yield from self.saying(key, **self._shown(most))

    def _sum_reasons(self, moved: Fraction) -> Iterator[Line]:
        """One cell on as so many of the place, and a rest of whole periods that the place does not show."""
        unit, period = self._unit(), self._reader.period()
        if unit is None:
            return
        own = unit * self._change
        rest = moved - own
        fields = {"total": self.page.difference(moved), "more": self.page.more(moved)}
        if rest == 0:
            jumps = self.terms_along(self._along)
            fields["jumps"] = self.page.jumps(jumps)
            if self._reader.part is None and self.count.kind != Kind.MONEY and self.claim.place != 0:
                place = self.language.place_amount(abs(self._change), self._reader.place)
                if abs(self._change) == 1:
                    each = place if jumps == 1 else self.page.jump
                    yield lambda: self.language.jumps(jumps, each, place)
                if jumps == self.grid.line_length:
                    yield from self.saying("run.reason-place-line", place=place, **fields, **self.in_a_line())
                yield from self.saying("run.reason-place", place=place, **fields)
            elif jumps > 1:
                yield from self.saying("run.reason-jumps", **fields)
            else:
                yield from self.saying("run.reason-one", **fields)
        elif 0 < abs(rest) < abs(own) and own * moved > 0 and self.terms_along(self._along) == 1:
            aside = rest if moved > 0 else -rest
            yield from self.saying(
                "run.reason-nearly",
                d=self.page.jump,
                aside=self.page.difference(aside),
                # A jump is an amount, on a clock too: 29 min less than an hour, not earlier.
                aside_more=self.language.compared(aside, clock=False),
                own=self.page.difference(own),
            )
        elif period and rest % period == 0:
            yield from self.saying(
                "run.reason-carry",
                carry=self.page.difference(rest),
                carry_more=self.page.more(rest),
                own=self.page.difference(own),
                own_more=self.page.more(own),
                **fields,
            )

    def _unit(self) -> Fraction | None:
        """What 1 in the digit or part stands for; None where that depends on how the count is written."""
        return self._reader.unit()

    def notes(self) -> Iterator[Line]:
        n = self.life.breaks_at
        cell = None if n is None else self.cell_before(n, 1, self._along)
        if n is None or cell is None:
            return
        found, before = self._reader.number(n), self._reader.number(cell)
        if before is None or found == before + self._change:
            return
        if found is None:
            yield from self.saying("note.absent", until=self.page.value(n), **self._fields)
            return
        due = before + self._change
        yield from self._note_on_ones(cell, n)
        # Of a fraction with two names the parts are read off the first: 8/4 = 2.
        until = self.page.value(n) if self._reader.part is None else self.page.in_full(n)
        fields = {**self._fields, "until": until, "y": found, "x": due}
        if not self._past_the_end(due):
            yield from self.saying("note.digit", **fields)
            return
        if self.count.scaled(n) < 0 < self.count.scaled(cell) and found == before:
            yield from self.saying("note.both", a=self.page.value(cell), **fields)
        if self.count.scaled(n) < 0 <= self.count.scaled(cell):
            yield from self.saying("note.below-zero", **fields)
        yield from self._notes_on_places(cell, n, due)
        if found < before if self._change > 0 else found > before:
            if self.page.on_clock:
                key = "note.clock" if self._change > 0 else "note.clock-back"
                fields |= {"before": self._reader.shown(before), "found": self._reader.shown(found)}
                yield from self.saying(key, **fields)
            yield from self.saying("note.restart", "note.restart-short", **fields)
        else:
            yield from self.saying("note.is", **fields)

    def _notes_on_places(self, cell: int, n: int, due: int) -> Iterator[Line]:
        """A place that is full makes one of the next; one that is used up is filled from the next."""
        reader, found = self._reader, self._reader.number(n)
        place, larger = reader.unit_named(reader.place), reader.unit_named(reader.place + 1)
        if reader.place == 0 and self.count.kind == Kind.WHOLE:
            place = self.language.places[0]
        away_from_zero = abs(self.count.scaled(n)) > abs(self.count.scaled(cell))
        if place is None or larger is None or reader.part is not None or away_from_zero != (due > 0):
            return
        fields = {**self._fields, "until": self.page.value(n), "y": found, "x": due}
        if found is not None and found == due - 10:
            fields |= {"places": place.many, "larger": larger.one, "larger_many": larger.many}
            rest = f"{found} {place.one if found == 1 else place.many}"
            largest = reader.unit_named(reader.place + 2)
            full_too = self.count.value(n) % Fraction(10) ** (reader.place + 2) == 0
            if largest is not None and full_too:
                yield from self.saying("note.full-twice", **fields, largest=largest.one)
            yield from self.saying("note.full-and-more" if found else "note.full", **fields, rest=rest)
        elif found is not None and found == due + 10:
            yield from self.saying("note.opened", **fields, a_larger=self.language.a(larger), places=place.many)
        elif self._part_of(n, larger_place := reader.place + 1) != self._part_of(cell, larger_place):
            yield from self.saying("note.another", **fields, another=self.language.another(larger))

    def _note_on_ones(self, cell: int, n: int) -> Iterator[Line]:
        """The ones make a ten of their own, which comes to the tens."""
        count, move = self.count, abs(self.count.value(n) - self.count.value(cell))
        if count.kind != Kind.WHOLE or self._reader.part is not None or self._reader.place != 1:
            return
        ones, more = abs(count.value(cell)) % 10, move % 10
        grows = abs(count.value(n)) == abs(count.value(cell)) + move
        if grows and self._change > 0 and ones + more >= 10 and move // 10 % 10 == self._change:
            yield from self.saying(
                "note.ones",
                until=self.page.value(n),
                ones=ones,
                more_ones=more,
                by=self._change + 1,
            )

    def _part_of(self, n: int, place: int) -> int:
        """How many of a place the n-th count holds: 21 tens in 210."""
        return int(abs(self.count.value(n)) // Fraction(10) ** place)

    def _past_the_end(self, due: int) -> bool:
        """Whether a digit or part has no such number: no digit is 10, no clock shows 62 minutes."""
        if self._reader.part is None:
            return not 0 <= due <= 9
        unit, period = self._unit(), self._reader.period()
        return due < 0 or (unit is not None and period is not None and unit * due >= period)

    def refutation(self, counterexample: Sequence[int]) -> str:
        lines = self.grid.lines(self._along)
        n = counterexample[-1] if counterexample else self._line[-1]
        line = next((line for line in lines if n in line), self._line)
        at = max(line.index(n), 1) if n in line else 1
        if len(line) < 2:
            return self.say("small")
        a, b = line[at - 1], line[at]
        x, y = self._reader.number(a), self._reader.number(b)
        if x is None or y is None:
            return self.say("no.absent", **self._fields)
        return self.say("no.run", a=self.page.value(a), b=self.page.value(b), x=x, y=y, **self._fields)


def stands_in_front(grid: Grid, place: int) -> bool:
    """Whether the digit at a place, past the ones, is the first one written of every count in view, of 0 the only one."""
    values = [grid.count.value(n) for n in range(1, grid.terms + 1)]
    return place > 0 and all(value == 0 or 10**place <= value < 10 ** (place + 1) for value in values)
