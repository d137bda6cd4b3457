"""Numbers to ask about, each with what makes it a good question."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from functools import cached_property

from routines.counting.audience import Audience
from routines.counting.grid import Grid
from routines.counting.probes import LINES_ON, Probe
from routines.counting.probes import probes as probes_of

from .page import page_of
from .sentences import filled


@dataclass(frozen=True, kw_only=True)
class SpokenProbe(Probe):
    """A number to ask about with its reason for an audience."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def why(self) -> str:
        """Where it comes, or between which counts it is jumped over, and what makes it a good question."""
        page = page_of(self.grid, self.audience)
        language, count = page.language, page.count
        facts = {"step": page.difference(abs(count.step)), "value": page.spot(self.value), "start": page.value(1)}
        if self.n is not None:
            facts |= {"nth": language.nth(self.n), "jumps": str(self.n - self.grid.terms)}
            facts |= {"row": str(self.row), "column": str(self.column)}
        if self.before is not None and self.after is not None:
            facts |= {"before": page.spot(self.before), "after": page.spot(self.after)}
        if self.multiple is not None:
            rest = self.value % self.multiple
            facts |= {"multiple": page.difference(self.multiple), "ending": str(rest), "rest": page.difference(rest)}
            facts["a_mark"] = language.a(page.mark(self.multiple))
        if self.like is not None:
            facts["like"] = page.value(self.like)
            facts["lines"] = str(LINES_ON)
        return filled(language.probes[self.sort], facts)


def probes(grid: Grid, audience: Audience | None = None) -> list[SpokenProbe]:
    """Good numbers to ask about, with their reasons: see `routines.counting.probes`."""
    return [
        SpokenProbe(
            **{fact.name: getattr(probe, fact.name) for fact in fields(probe)},
            grid=grid,
            audience=audience or Audience(),
        )
        for probe in probes_of(grid, audience=audience)
    ]
