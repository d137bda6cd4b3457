"""Numbers to ask about, each with what makes it a good question."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

from routines.counting.audience import Audience
from routines.counting.grid import Grid
from routines.counting.probes import LINES_ON, Probe
from routines.counting.probes import probes as probes_of

from .languages import LANGUAGES
from .sentences import filled


@dataclass(frozen=True, kw_only=True)
class SpokenProbe(Probe):
    """A number to ask about with its reason for an audience."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def why(self) -> str:
        """What makes it a good question."""
        language, count = LANGUAGES[self.audience.language], self.grid.count
        facts = {"step": count.difference_text(count.step), "lines": str(LINES_ON)}
        if self.n is not None:
            facts["nth"] = language.nth(self.n)
        if self.multiple is not None:
            rest = self.value % self.multiple
            facts |= {"multiple": count.difference_text(self.multiple), "ending": str(rest)}
            facts["rest"] = count.difference_text(rest)
        if self.like is not None:
            facts["like"] = language.value(count.text(self.like), clock=count.wrap is not None)
        return filled(language.probes[self.sort], facts)


def probes(grid: Grid, audience: Audience | None = None) -> list[SpokenProbe]:
    """Good numbers to ask about, with their reasons: see `routines.counting.probes`."""
    return [
        SpokenProbe(
            probe.value,
            probe.text,
            probe.appears,
            probe.n,
            probe.sort,
            probe.multiple,
            probe.like,
            grid=grid,
            audience=audience or Audience(),
        )
        for probe in probes_of(grid)
    ]
