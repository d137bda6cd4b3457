"""Landmarks: where the multiples stand; and how many counts lie in each stretch between them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property, partial

from routines.counting.claims import HowManyClaim, LandmarksClaim
from routines.counting.grid import Fill
from routines.counting.kinds.names import Kind
from routines.counting.patterns.first_to_say import HELD_IN_MIND

from ..language import Noun
from ..numbers import series
from ..page import TIMES_FROM
from ..sentences import MOST_WORDS_OF_A_CHILD
from .phrases import Line, Phrases

MOST_STRETCHES = 12
MOST_SAID = 5
MOST_TENS_SAID = 3
MARKS_SAID = 3
CLIMBING = {"down-right": "up-left", "down-left": "up-right"}


class Landmarks(Phrases[LandmarksClaim]):
    """The multiples of a friendly number come every so many counts and lie in a certain way."""

    @cached_property
    def _multiple(self) -> Fraction:
        return self.claim.multiple or Fraction(10)

    @cached_property
    def _found(self) -> tuple[int, ...]:
        """The landmarks in view, as term numbers."""
        start, step, parts = self.count.scaled_start, self.count.scaled_step, self._multiple.denominator
        modulus = self._multiple.numerator * self.count.scale
        return tuple(n for n in range(1, self.grid.terms + 1) if (start + (n - 1) * step) * parts % modulus == 0)

    def _named(self, mark: Noun) -> Noun:
        """What they are called: among half meters stand whole ones too, if there are any."""
        twice = any(self.count.value(n) % (2 * self._multiple) == 0 for n in self._found)
        return mark.among if mark.among and twice else mark

    def _every(self) -> int:
        if self.claim.every is not None:
            return self.claim.every
        return (Fraction(self.count.step) / self._multiple).denominator

    def _first(self) -> int:
        return (self._found or (1,))[0] if self.claim.first is None else self.claim.first

    @cached_property
    def _fields(self) -> dict[str, object]:
        mark = self._named(self.page.landmark(self._multiple))
        lines = [self.page.line_number(line, str(self.claim.lie)) for line in self.claim.lines or ()]
        every, first = self._every(), self._first()
        return {
            "mark": mark.one,
            "marks": mark.many,
            "a_mark": self.language.a(mark),
            "the_marks": self.language.the_many(mark),
            "i": self.page.listing([str(line) for line in lines]),
            "k": every,
            "kth": self.language.nth(every),
            "nth": self.language.nth(first),
        }

    def _lie(self) -> str:
        """Where they lie, as a key; a claim that leaves the lie or its lines open tells only how often they come."""
        lie = self.claim.lie
        if lie in (None, "scattered") or (lie in ("row", "column", "rows", "columns") and not self.claim.lines):
            later = self._first() > self._every() or self.claim.first not in (None, self._every())
            return "scattered" if later else "scattered-first"
        return self._as_counted(str(lie))

    def _as_counted(self, lie: str) -> str:
        """A diagonal as the count goes: where the page fills from below it climbs."""
        return CLIMBING.get(lie, lie) if self.grid.fill is Fill.ACROSS_UP else lie

    def _is_diagonal(self) -> bool:
        return self.claim.lie in CLIMBING

    def statement(self) -> str:
        return self.say(f"lie.{self._lie()}.statement", **self._fields)

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        named = self.page.landmark if self.page.on_clock else self.page.child_mark
        mark = self._named(named(self._multiple))
        ending = self.page.child_ending(self._multiple)
        some = self._pointed_to()
        if ending:
            the_marks = self.language.those_ending(ending)
        else:
            the_marks = self.language.first_of(some) if some else self.language.the_many(mark)
        child = {"marks": mark.many, "a_mark": self.language.a(mark), "the_marks": the_marks}
        key = f"lie.{self._lie()}"
        if ending and key.startswith("lie.scattered"):
            return f"{key}.ending", {**self._fields, "ending": self.language.either(ending)}
        return key, {**self._fields, **child}

    def says(self) -> Iterator[Line]:
        yield from super().says()
        named = self._named(self.page.landmark(self._multiple)).many
        lie = self._lie()
        if ", " in named and not lie.startswith("scattered"):
            # A long name leaves few words for where they stand.
            line = self.language.lines["row" if lie.startswith("row") else "column"]
            where = "diagonal" if self._is_diagonal() else "line" if lie in ("row", "column") else "lines"
            yield from self.saying(f"lie.long-name.{where}", line=line.one, lines=line.many, **self._fields)

    def _pointed_to(self) -> list[str]:
        """The first few, where the class has no name for them and they stand in one line: "25¢, 50¢, 75¢ and so on"."""
        one_line = self._lie() in ("row", "column") or self._is_diagonal()
        if not one_line or self.page.knows_a_name(self._multiple) or len(self._found) < MARKS_SAID:
            return []
        return [self.page.value(n) for n in self._found[:MARKS_SAID]]

    def reasons(self) -> Iterator[Line]:
        every = self._every()
        yield from self._reasons_by_lines(every)
        yield lambda: self.made(every, self._multiple)
        yield lambda: self.page.jumps(every)

    def _reasons_by_lines(self, every: int) -> Iterator[Line]:
        """Why they lie so, by how many counts stand in a line."""
        length, lie = self.grid.line_length, self._lie()
        fields = {**self._fields, **self.in_a_line()}
        beside = ("row", "rows") if self.grid.fill is Fill.DOWN else ("column", "columns")
        if lie in beside and length % every == 0 and length > every:
            named = self.page.named_mark(self._multiple)
            made = self.made(every, self._multiple) if named and named.counts else self.page.jumps(every)
            stay_in = self.language.lines["row" if beside[0] == "row" else "column"].many
            times = length // every
            keys = ("lie.reason-times", "lie.reason-times-short")
            yield from self.saying(
                *keys, made=made, times=times, stay_in=stay_in, total=self.page.move(every), **fields
            )
        elif lie in beside and length == every:
            yield from self.saying("lie.reason-line", made=self.made(length, self._multiple), **fields)
        elif lie in beside and every % length == 0:
            made, across = self.made(every, self._multiple), every // length
            yield from self.saying("lie.reason-lines", made=made, across=across, **fields)
        elif self._is_diagonal() and abs(every - length) == 1:
            made, key = self.made(every, self._multiple), "more" if every > length else "less"
            yield from self.saying(f"lie.reason-one-{key}", made=made, **fields)

    def notes(self) -> Iterator[Line]:
        n = self.life.breaks_at
        if n is None or (self.grid.fill is Fill.ACROSS_UP and n > self._last_row_end()):
            return
        row, column = self.page.place(n)
        yield from self.saying("lie.note-outside", until=self.page.value(n), row=row, column=column, **self._fields)

    def _last_row_end(self) -> int:
        """The last term that still fits the rows on the page, whose numbers then stay as they are."""
        return self.page.printed.fill_lines * self.grid.line_length - self.grid.lead

    def refutation(self, counterexample: Sequence[int]) -> str:
        found, fields = self._found, dict(self._fields)
        if not found:
            return self.say("no.none", **fields)
        shown = found[:6]
        places = [self.page.place(n) for n in shown]
        fields |= {
            "some": self.some(shown),
            "numbers": self.page.listing([str(n) for n in shown]),
            "rows": self.page.listing([str(row) for row in sorted({row for row, _ in places})]),
            "columns": self.page.listing([str(column) for column in sorted({column for _, column in places})]),
        }
        key = "no.landmark" if len(found) == 1 else "no.landmarks" if len(found) <= 6 else "no.landmarks-many"
        return self.say(key, **fields)


class HowMany(Phrases[HowManyClaim]):
    """So many counts lie in each stretch from one multiple to just before the next."""

    @cached_property
    def _multiple(self) -> Fraction:
        return self.claim.multiple or Fraction(10)

    @cached_property
    def _stretches(self) -> tuple[tuple[int, tuple[int, ...]], ...]:
        """The first stretches wholly inside the terms in view, in counting order: j and the terms in [j m, (j + 1) m)."""
        count, parts = self.count, self._multiple.denominator
        width = self._multiple.numerator * count.scale
        start, step = count.scaled_start * parts, count.scaled_step * parts
        end = start + (self.grid.terms - 1) * step
        first, last = -(-min(start, end) // width), max(start, end) // width - 1
        if step > 0:
            order = range(first, min(last, first + MOST_STRETCHES) + 1)
            edges = {j: -(-(j * width - start) // step) + 1 for j in [*order, order.stop]}
            return tuple((j, tuple(range(edges[j], edges[j + 1]))) for j in order)
        order = range(last, max(first, last - MOST_STRETCHES) - 1, -1)
        edges = {j: (j * width - start) // step + 2 for j in [last + 1, *order]}
        return tuple((j, tuple(range(edges[j + 1], edges[j]))) for j in order)

    def _block(self) -> tuple[int, ...]:
        return self.claim.block or tuple(len(terms) for _, terms in self._stretches[:3])

    def _stretch(self) -> Noun:
        mark = self.page.named_stretch(self._multiple)
        return mark if mark and mark.counts else self.language.stretch(self.page.difference(self._multiple))

    @cached_property
    def _fields(self) -> dict[str, object]:
        block, stretch = self._block(), self._stretch()
        return {
            "stretch": stretch.one,
            "a_stretch": self.language.a(stretch),
            "to_the_next": self.language.to_the_next(stretch),
            "line": self.language.lines["column" if self.grid.fill is Fill.DOWN else "row"].one,
            "k": block[0] if block else 0,
            "series": self.short_series([str(many) for many in block]),
            "edge": self._edge(),
        }

    def _edge(self) -> str:
        """Where the first whole stretch begins."""
        first = self._stretches[0][0] if self._stretches else 0
        return self.page.spot((first + (self.count.step < 0)) * self._multiple)

    def _starts_whole(self) -> bool:
        """Whether the very first count begins a whole stretch."""
        return self.count.step > 0 and self.count.value(1) % self._multiple == 0

    def _form(self) -> str:
        block = self._block()
        if len(block) != 1:
            mark = self.page.named_mark(self._multiple)
            told = self.page.level >= TIMES_FROM and mark is not None and mark.counts
            return "many.turns" if told and len(block) <= HELD_IN_MIND and not self._crosses_zero() else "many.long"
        if self._crosses_zero():
            return "many.crossing-one" if block == (1,) else "many.crossing"
        if block[0] == 1:
            return "many.one-only"
        return "many.lines" if self._are_lines() else "many.one"

    def _crosses_zero(self) -> bool:
        """Whether 0 lies within the view: "each whole" would be read as one on either side of it."""
        ends = self.count.scaled_start, self.count.scaled(self.grid.terms)
        return min(ends) < 0 < max(ends)

    def _are_lines(self) -> bool:
        """Whether every line, as the grid fills, is just one stretch."""
        grid, k = self.grid, self._block()[0]
        if grid.lead or k != grid.line_length or grid.terms % k or abs(self.count.step) * k != self._multiple:
            return False
        first, last = self.count.value(1), self.count.value(k)
        return first // self._multiple == last // self._multiple

    def statement(self) -> str:
        key = "many.turns" if self._form() == "many.long" else self._form()
        return self._from_the_edge(self.say(f"{key}.statement", **self._fields))

    def _from_the_edge(self, said: str) -> str:
        """What is said, with where whole stretches begin if that is not the first count."""
        if self._starts_whole() or not self._stretches or self._form() == "many.lines":
            return said
        return self.say("many.from" if self.count.step > 0 else "many.below", statement=said, **self._fields)

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        return self._form(), self._fields

    def cores(self) -> Iterator[Line]:
        tens = self._in_tens()
        if tens:
            yield from self.saying("many.tens.core", tens=tens)
            return
        if self._in_turns():
            return
        for core in super().cores():
            yield core if self._form() == "many.long" else partial(self._from_the_edge, core())

    def says(self) -> Iterator[Line]:
        if self._in_tens():
            return
        if self._form() == "many.turns":
            if self._in_turns():
                yield self._in_turns
            return
        for said in super().says():
            yield partial(self._from_the_edge, said())

    def _in_turns(self) -> str:
        """How many there are in turns as a child says it, where that is not too long: "3, then 2, then 3"; else empty."""
        if self._form() != "many.turns":
            return ""
        then = self.say("many.then").join(map(str, self._block()))
        said = self.say("many.turns.says", then=then, **self._fields)
        return said if said.count(" ") < MOST_WORDS_OF_A_CHILD[self.page.level] else ""

    def _in_tens(self) -> str:
        """What the youngest say of counts from 20 to 99, ten by ten: "2 in the twenties, 3 in the thirties"; else empty."""
        if self.count.kind != Kind.WHOLE or self._multiple != 10 or self.page.level >= TIMES_FROM:
            return ""
        shown = max(2, len(self._block()))
        tens = [(j, len(terms)) for j, terms in self._stretches if 2 <= j <= 9][:shown]
        if shown > MOST_TENS_SAID or len(tens) < shown:
            return ""
        key = "many.one-in-tens" if self._block() == (1,) else "many.in-tens"
        return series([self.say(key, k=many, tens_name=self.language.decades[j - 2]) for j, many in tens])

    def _pointed_out(self) -> Iterator[Line]:
        filled = [(j, terms) for j, terms in self._stretches if terms]
        if not filled:
            yield from self.reasons()
            return
        j, terms = min(filled[:4], key=lambda stretch: len(stretch[1]))
        value = self.page.value
        fields: dict[str, object] = {
            "a": self.page.spot(j * self._multiple),
            "b": self.page.spot((j + 1) * self._multiple),
            "n": len(terms),
            "first": value(terms[0]),
            "last": value(terms[-1]),
        }
        if len(terms) <= MOST_SAID:
            yield from self.saying("many.evidence", some=self.some(terms), **fields)
        else:
            yield from self.saying("many.evidence-long", **fields)
        if len(terms) > 1:
            yield from self.saying("many.evidence-short", **fields)

    def reasons(self) -> Iterator[Line]:
        block = self._block()
        jumps, total = sum(block), self._multiple * len(block)
        if not jumps or abs(self.count.step) * jumps != total:
            filled = any(terms for _, terms in self._stretches)
            if filled:
                yield from self._pointed_out()
            else:
                yield lambda: self.page.jumps(1)
            return
        yield lambda: self.made(jumps, self._multiple)
        yield lambda: self.page.jumps(jumps)

    def stops_at(self) -> str:
        return self.say("many.note", until=self.page.value(self.life.breaks_at or 1), **self._fields)

    def refutation(self, counterexample: Sequence[int]) -> str:
        many = [str(len(terms)) for _, terms in self._stretches]
        return self.say("no.many", stretch=self._stretch().one, series=self.short_series(many))
