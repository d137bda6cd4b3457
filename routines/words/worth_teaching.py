"""Counts worth teaching, each with one line on what it is good for and one on what to ask."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

from routines.counting.audience import Audience
from routines.counting.grid import Fill
from routines.counting.worth_teaching import Crossing, Wanted, WorthTeaching
from routines.counting.worth_teaching import counts_worth_teaching as found_for

from .page import Page, page_of
from .seen import SpokenPattern
from .sentences import filled, sentence


@dataclass(frozen=True, kw_only=True)
class SpokenWorth(WorthTeaching):
    """A grid and what it is good for, in words."""

    audience: Audience = field(repr=False)

    @cached_property
    def lasting(self) -> SpokenPattern:
        """The idea that always holds."""
        return SpokenPattern.saying(self.good_for.lasting, self.grid, self.audience, self.grid)

    @cached_property
    def passing(self) -> SpokenPattern | None:
        """The idea that a class believes until it ends, as it is seen while it holds."""
        passing, upto = self.good_for.passing, self.good_for.passing_upto
        if passing is None:
            return None
        return SpokenPattern.saying(passing, self.grid.cut(upto), self.audience, self.grid)

    @cached_property
    def crossing(self) -> str:
        """Which landmark is crossed, and where; "" where none is near."""
        crossing = self.good_for.crossing
        if crossing is None:
            return ""
        page = page_of(self.grid, self.audience)
        key = _way(crossing, page)
        later = "later " if crossing.n > self.grid.terms else ""
        facts = {"mark": page.spot(crossing.landmark), "nth": page.language.nth(crossing.n)}
        return filled(page.language.worth_teaching[f"{later}{key}"], facts)

    @cached_property
    def line(self) -> str:
        """What it is good for: what is crossed, what always holds, what is over, and when."""
        seen = [one.statement for one in (self.lasting, self.passing) if one is not None]
        return sentence("; ".join(filter(None, [self.crossing, *map(_inside, seen)])))

    @cached_property
    def ask(self) -> str:
        """A number to ask about, with the answer."""
        page, asked = page_of(self.grid, self.audience), self.good_for.ask
        value = page.spot(asked.value)
        if asked.n is None:
            return sentence(filled(page.language.worth_teaching["never"], {"value": value}))
        row, column = self.grid.place(asked.n)
        along, number = ("row", row) if self.grid.fill is Fill.DOWN else ("column", column)
        facts = {"value": value, "line": page.language.line(along, number)}
        return sentence(filled(page.language.worth_teaching["comes"], facts))


def _way(crossing: Crossing, page: Page) -> str:
    """Whether the count comes to the landmark, goes over it, or leaves it counting back."""
    count = page.count
    if count.value(crossing.n) == crossing.landmark:
        return "on"
    return "over" if count.step > 0 else "back" if page.on_clock else "below"


def _inside(statement: str) -> str:
    """A statement as it stands within a line."""
    return statement[:1].lower() + statement[1:]


def counts_worth_teaching(wanted: Wanted, audience: Audience | None = None) -> list[SpokenWorth]:
    """The counts with their words: see `routines.counting.counts_worth_teaching`. The level is that of what is wanted."""
    language = audience.language if audience else "en"
    reader = Audience(wanted.level, language)
    return [SpokenWorth(one.grid, one.good_for, audience=reader) for one in found_for(wanted).counts]
