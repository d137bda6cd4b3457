"""What every family tells about one of its claims on one page."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import Generic, Self, TypeVar
from zlib import crc32

from routines.counting.claims import Claim
from routines.counting.grid import Fill

from ..numbers import series
from ..page import TIMES_FROM, Page

Line = Callable[[], str]
C = TypeVar("C", bound=Claim)

SUBJECTS = ("along", "place", "part", "direction", "modulus", "multiple", "which")
"""What a claim may be about, in the order in which it chooses a phrase."""


@dataclass(frozen=True, slots=True)
class Life:
    """How long a claim holds: "always", "shown" or None (false), and the term with which it is false."""

    holds: str | None = None
    breaks_at: int | None = None


class Phrases(ABC, Generic[C]):
    """The phrases of one claim, without capitals and full stops; `claims.py` puts them together by level.

    Each method that gives several phrases gives the one that suits best first; nothing is worked out before it is
    asked for.
    """

    def __init__(self, page: Page, claim: C, life: Life) -> None:
        self.page = page
        self.grid = page.grid
        self.count = page.count
        self.language = page.language
        self.claim = claim
        self.life = life
        subject = claim.subject
        about = "".join(str(subject.get(name)) for name in SUBJECTS)
        self._seed = crc32(f"{page.seed}{claim.family}{about}".encode())

    def on(self, page: Page) -> Self:
        """The phrases of the same claim on another page of its grid."""
        return self if page is self.page else type(self)(page, self.claim, self.life)

    ends = "until"
    """Under which key a line tells its end."""

    @abstractmethod
    def statement(self) -> str:
        """The teacher's line, as for a claim that never stops."""

    @abstractmethod
    def noticing(self) -> tuple[str, Mapping[str, object]]:
        """What a child notices: under which key it is said, and what the phrases hold."""

    def cores(self) -> Iterator[Line]:
        """What is noticed, to be said by a child: "I see that ..."."""
        key, fields = self.noticing()
        return self.saying(f"{key}.core", **fields)

    def says(self) -> Iterator[Line]:
        """The whole sentences in which a child says it of itself, where there are some: "I go up 6 every time"."""
        key, fields = self.noticing()
        own = f"{key}.says"
        return self.saying(own, **fields) if own in self.language.patterns else iter(())

    @abstractmethod
    def reasons(self) -> Iterator[Line]:
        """Why, in numbers."""

    @abstractmethod
    def refutation(self, counterexample: Sequence[int]) -> str:
        """What is there instead, when the claim is false."""

    def notes(self) -> Iterator[Line]:
        """Why the claim ends where it ends, in numbers; none if there is nothing exact to say."""
        return iter(())

    def stops_at(self) -> str:
        """Where the claim ends, and nothing more."""
        return self.say("note.plain", until=self.page.value(self.life.breaks_at or 1))

    def made(self, k: int, multiple: Fraction) -> str:
        """What `k` jumps make, as so many of a multiple: "5 jumps of 6 make 30, which is 3 tens"."""
        page, many = self.page, self.page.how_many_in(k, multiple)
        jumps, total = page.jumps(k), page.move(k)
        if many is None:
            return jumps
        noun = page.named_mark(multiple)
        if page.on_clock and noun is not None:
            return jumps  # 30 min is half an hour, and no time of day
        if noun is None:
            if many == 1:
                return jumps
            same = {Fraction(many), multiple} == {Fraction(k), abs(self.count.step)}
            if page.level >= TIMES_FROM and not same:
                return self.say("made.pure", jumps=jumps, pure=f"{many} × {page.difference(multiple)}")
            return self.say("made.multiple", jumps=jumps, total=total, a_mark=self.language.a(page.mark(multiple)))
        if not noun.counts:
            return self.say("made.even", jumps=jumps, total=total)
        pure = f"{many} {noun.one if many == 1 else noun.many}"
        if page.counts_in(multiple, many):
            return self.language.jumps(k, pure if k == 1 else page.jump, pure)
        written_so = total.startswith(f"{many} ") and total.count(" ") == 1 and "/" not in total
        return jumps if written_so else self.say("made.pure", jumps=jumps, pure=pure)

    def in_a_line(self) -> dict[str, object]:
        """How many counts stand in a line as it fills, as fields of a phrase."""
        line = self.language.lines["column" if self.grid.fill is Fill.DOWN else "row"]
        return {"n": self.grid.line_length, "fills": line.one, "line_names": line.many}

    @property
    def seed(self) -> int:
        """A number of the claim's own, by which one of several phrases is chosen."""
        return self._seed

    def say(self, key: str, **fields: object) -> str:
        """One phrase of the language, the same one for the same claim every time."""
        variants = self.variants(key)
        return variants[self._seed % len(variants)].format(**fields)

    def variants(self, key: str) -> tuple[str, ...]:
        """The phrases under a key, on a clock its own where there are some."""
        sentences = self.language.patterns
        if self.page.on_clock and (on_clock := f"{key}, on a clock") in sentences:
            return sentences[on_clock]
        return sentences[key]

    def saying(self, *keys: str, **fields: object) -> Iterator[Line]:
        """Every phrase under the keys, the chosen one of each key first."""
        for key in keys:
            variants = self.variants(key)
            first = self._seed % len(variants)
            for template in variants[first:] + variants[:first]:
                yield partial(template.format, **fields)

    def terms_along(self, along: str) -> int:
        """How many counts one cell on along a line is."""
        if along == "count" or (along == "column") == (self.grid.fill is Fill.DOWN):
            return 1
        return self.grid.line_length

    def cell_before(self, n: int, k: int, along: str) -> int | None:
        """The term `k` cells before the n-th in its line, when the count has gone on to the n-th; None ahead of it."""
        before = n - k * self.terms_along(along)
        if before < 1 or along == "count":
            return before if before >= 1 else None
        grown, at = self.grid.grown(n), 1 if along == "column" else 0
        return before if grown.place(before)[at] == grown.place(n)[at] else None

    def line_of_the_end(self, k: int, along: str) -> tuple[int, ...]:
        """The counts of the line in which the claim ends, as far as they are `k` cells ahead of its end; else none."""
        n = self.life.breaks_at
        before = None if n is None else self.cell_before(n, k, along)
        if before is None or along == "count":
            return ()
        line = next((line for line in self.grid.lines(along) if before in line), ())
        return tuple(m for m in line if m <= before)

    def some(self, terms: Sequence[int]) -> str:
        """Counts as a list that ends in "and"."""
        return self.page.listing([self.page.value(n) for n in terms])

    def change(self, value: Fraction) -> dict[str, str]:
        """A difference with its direction, as fields of a phrase."""
        page = self.page
        return {
            "diff": page.difference(value),
            "more": page.more(value),
            "up": page.up(value),
            "after": page.after(value),
        }

    @staticmethod
    def bracketed(amount: str) -> str:
        """An amount as it stands after + or ×: below zero it takes brackets."""
        return f"({amount})" if amount.startswith("-") else amount

    @staticmethod
    def short_series(items: Sequence[str], most: int = 8) -> str:
        """Items in a row, cut off where a line would not hold them."""
        if any(" " in item for item in items):
            most = 2 * most // 3
        if len(items) <= most:
            return series(items)
        return series(items[: most - 2]) + (", ..." if all("," not in item for item in items) else "; ...")
