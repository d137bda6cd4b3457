"""Step, neighbour and table: what one move adds."""

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import cached_property

from routines.counting.claims import NeighbourClaim, StepClaim, TableClaim
from routines.counting.grid import Fill

from ..page import TIMES_FROM
from .phrases import Line, Phrases

OPPOSITE = {"down": "up", "down-right": "up-left", "down-left": "up-right"}


class Step(Phrases[StepClaim]):
    """Each count is so much more than the one before."""

    @cached_property
    def _fields(self) -> dict[str, str]:
        value, more = self.page.value, self.page.more(self.count.scaled_step)
        up, after = self.page.up(self.count.scaled_step), self.page.after(self.count.scaled_step)
        way = {"more": more, "up": up, "after": after}
        return {"d": self.page.jump, **way, "a": value(1), "b": value(2), "c": value(3)}

    def statement(self) -> str:
        by = self.count.step if self.claim.difference is None else self.claim.difference
        return self.say("step.statement", d=self.page.difference(by), more=self.page.more(by))

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        return "step", self._fields

    def reasons(self) -> Iterator[Line]:
        keys = ("step.reason", "step.reason-short") if self.grid.terms > 2 else ("step.reason-short",)
        return self.saying(*keys, **self._fields)

    def refutation(self, counterexample: Sequence[int]) -> str:
        n = max(counterexample[-1] if counterexample else 2, 2)
        change = self.change(self.count.step)
        return self.say("no.step", a=self.page.value(n - 1), b=self.page.value(n), **change)


class Neighbour(Phrases[NeighbourClaim]):
    """One cell on, in a direction of the page, said the way the count goes: up where the page is filled upwards."""

    @cached_property
    def _offset(self) -> int:
        """How many counts on the next cell in the claimed direction of the page is; below 0 for so many back."""
        length = self.grid.line_length
        rights = {Fill.ACROSS: 1, Fill.DOWN: length, Fill.ACROSS_UP: 1}[self.grid.fill]
        downs = {Fill.ACROSS: length, Fill.DOWN: 1, Fill.ACROSS_UP: -length}[self.grid.fill]
        direction = self.claim.direction or "right"
        right, down = {"right": (1, 0), "down": (0, 1), "down-right": (1, 1), "down-left": (-1, 1)}[direction]
        return right * rights + down * downs

    def _pairs(self) -> Iterator[tuple[int, int]]:
        """The cells with a neighbour that way, as term numbers, in counting order of the first."""
        right, down = {"right": (0, 1), "down": (1, 0), "down-right": (1, 1), "down-left": (1, -1)}[
            self.claim.direction or "right"
        ]
        for n in range(1, self.grid.terms + 1):
            row, column = self.grid.place(n)
            other = self.grid.at(row + right, column + down)
            if other is not None:
                yield n, other

    def _difference(self) -> Fraction:
        """What one step that way, as the count goes, really is; 0 counts on where the grid is one cell wide."""
        return self.count.step * abs(self._offset)

    @cached_property
    def _fields(self) -> dict[str, str]:
        going = self.language.going[self._way]
        return {"direction": self._direction(), "going": going, **self.change(self._difference())}

    @property
    def _way(self) -> str:
        way = self.claim.direction or "right"
        return OPPOSITE[way] if self._offset < 0 else way

    def _direction(self) -> str:
        return self.language.directions[self._way]

    def statement(self) -> str:
        claimed = self.claim.difference
        by = self._difference() if claimed is None else -claimed if self._offset < 0 else claimed
        return self.say("neighbour.statement", direction=self._direction(), **self.change(by))

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        return "neighbour", {**self._fields, "diff": self.page.whole_difference(self._difference())}

    def reasons(self) -> Iterator[Line]:
        k, length = abs(self._offset), self.grid.line_length
        if k == 1:
            keys = ("neighbour.reason-one", "neighbour.reason-bare")
            return self.saying(*keys, direction=self._direction(), diff=self.page.jump, jumps=self.page.jumps(1))
        aside = {0: "", 1: "-one-more", -1: "-one-less"}.get(k - length)
        fields = {**self._fields, **self.in_a_line(), "k": k, "jumps": self.page.jumps(k)}
        if aside is None:
            return self.saying("neighbour.reason-bare", **fields)
        return self.saying(f"neighbour.reason{aside}", f"neighbour.reason{aside}-short", **fields)

    def refutation(self, counterexample: Sequence[int]) -> str:
        pair = self._pair_of(counterexample)
        if pair is None:
            return self.say("small")
        a, b = reversed(pair) if self._offset < 0 else pair
        change = self.change(self.count.step * (b - a))
        return self.say(
            "no.neighbour", a=self.page.value(a), b=self.page.value(b), direction=self._direction(), **change
        )

    def _pair_of(self, counterexample: Sequence[int]) -> tuple[int, int] | None:
        pairs = list(self._pairs())
        last = counterexample[-1] if counterexample else 0
        return next((pair for pair in pairs if max(pair) == last), pairs[0] if pairs else None)


class Table(Phrases[TableClaim]):
    """The n-th count is n jumps of the step."""

    def _fields(self, n: int, step: Fraction) -> dict[str, object]:
        written = self.page.amount(step)
        return {
            "nth": self.language.nth(n),
            "n": n,
            "step": written,
            "factor": self.bracketed(written),
            "v": self.page.value(n),
            "w": self.page.amount(step * n),
        }

    def _step(self) -> Fraction:
        return self.count.step if self.claim.step is None else self.claim.step

    def _example(self) -> int:
        return min(4 + self._seed % 3, self.grid.terms)

    def statement(self) -> str:
        return self.say("table.statement", step=self.page.amount(self._step()))

    def noticing(self) -> tuple[str, Mapping[str, object]]:
        return "table", self._fields(self._example(), self.count.step)

    def reasons(self) -> Iterator[Line]:
        return self.saying("table.reason", **self._fields(self._example(), self.count.step))

    def refutation(self, counterexample: Sequence[int]) -> str:
        n, step = counterexample[-1] if counterexample else 1, self._step()
        value = self.count.value(n)
        many, rest = divmod(value, abs(step))
        if self.page.level < TIMES_FROM or rest == 0:
            return self.say("no.table", **self._fields(n, step))
        return self.say(
            "no.table-rest",
            v=self.page.value(n),
            rest=self.page.difference(rest),
            below=self.page.amount(value - rest),
            many=many,
            size=self.page.difference(step),
        )
