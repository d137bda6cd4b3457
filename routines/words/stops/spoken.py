"""A stop with its sentences, for a level and a language; each is made when it is first read."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

from routines.counting.audience import Audience
from routines.counting.grid import Grid
from routines.counting.slips.checked import reader_of
from routines.counting.stops import StopSuggestion
from routines.counting.stops import suggest_stops as suggested

from ..locating import spoken_routes
from ..sentences import opening
from .answering import answer_of
from .asking import question_of, what_is_asked_for
from .filling import ChildsFilling, Filling
from .hows import how_the_jump_goes, what_changes, why_it_dies
from .past_the_end import answer_past_the_end


@dataclass(frozen=True, kw_only=True)
class SpokenStop(StopSuggestion):
    """A stop with its question, its answer and the routes to it; why: what makes this a good place, for the teacher."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)
    ahead: tuple[SpokenStop, ...] = field(default=(), repr=False, compare=False)

    @cached_property
    def question(self) -> str:
        """What the class is asked."""
        ahead = [(stop._filling, stop.question) for stop in self.ahead if stop.reason == "hard"]
        return question_of(self._filling, ahead)

    @cached_property
    def answer(self) -> str:
        """What is so, and how a child can tell; no two stops of a count are answered with the same two words first."""
        child = ChildsFilling(self, self.grid, self.audience)
        if self.asked is not None:
            return answer_past_the_end(child, self.asked)
        return answer_of(child, self._hows(child), {opening(stop.answer) for stop in self.ahead})

    def _hows(self, child: Filling) -> list[str]:
        """The ways to tell that answer the question, the best first; there may be none."""
        if self.reason == "dies" and self.claim is not None:
            return list(why_it_dies(child, self.claim))
        if self.reason == "hard" and self.spot is not None:
            asks = what_is_asked_for(self._filling, self.question)
            return list(how_the_jump_goes(child, self.spot.landmark, asks))
        return []

    @property
    def routes(self) -> tuple[str, ...]:
        """The ways to the answer, each in one line."""
        return tuple(route.text for route in spoken_routes(self.grid, self.ways, self.audience))

    @cached_property
    def why(self) -> str:
        """What makes this a good place."""
        filling, key, changes = self._filling, self.reason, ""
        if self.spot is not None and key == "hard":
            back, landed = self.grid.count.step < 0, self.grid.count.value(self.spot.n) == self.spot.landmark
            key = "hard back" if back else "hard on" if landed else "hard"
            if back and filling.jump.a == self.spot.landmark and filling.jump.count.wrap is None:
                key = "hard below"
            changes = what_changes(filling, self.spot.landmark) if back else ""
        if key == "target" and self.by != self.claim:
            key = "by"
        reasons = [key, "target"] if self.spot is not None and filling.fields["idea"] else [key]
        told = filling.language.stops.reasons
        return " ".join(filling.told(told[reason], "landmark", facts={"how": changes}) for reason in reasons)

    @cached_property
    def _filling(self) -> Filling:
        return Filling(self, self.grid, self.audience)


def suggest_stops(
    grid: Grid, targets: Iterable[Any] = (), grade: int | None = None, *, audience: Audience | None = None
) -> list[SpokenStop]:
    """Places to stop with what to ask there: see `routines.counting.suggest_stops`."""
    reader = reader_of(grid, grade, audience)
    spoken: list[SpokenStop] = []
    for stop in suggested(grid, targets, audience=reader):
        spoken.append(
            SpokenStop(
                stop.after,
                stop.reason,
                stop.claim,
                stop.spot,
                stop.far,
                stop.by,
                stop.asked,
                stop.ways,
                stop.think,
                stop.partner,
                stop.share,
                grid=grid,
                audience=reader,
                ahead=tuple(spoken),
            )
        )
    return spoken
