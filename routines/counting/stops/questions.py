"""What is asked at a chosen stop: a count further on, or a value past the end; with the ways to it and the time it takes."""

from fractions import Fraction

from ..audience import Audience, band_of
from ..grid import Grid
from ..locate import locate
from ..locate.routes import routes_to
from ..probes import goes_below_zero, probes
from .choosing import Choice
from .suggestion import StopSuggestion

# Seconds to think, to talk with a partner and to share, by level band. Common practice, no source.
TIMES = ((10, 30, 60), (20, 60, 90), (30, 60, 120), (45, 90, 150))


def ask(grid: Grid, choice: Choice, level: int) -> StopSuggestion:
    """The stop of a choice, for a level."""
    after, far, asked = choice.after, _far(grid, choice, level), None
    if choice.reason == "end":
        asked = _value_past_the_end(grid, level)
        ways = routes_to(grid, far) if asked is None else locate(grid, asked).routes
    else:
        view = grid if after >= grid.terms else grid.cut(after)
        ways = routes_to(view, far if choice.reason == "target" else after + 1)
    think, partner, share = TIMES[band_of(level)]
    return StopSuggestion(after, choice.reason, choice.claim, choice.spot, far, asked, ways, think, partner, share)


def _far(grid: Grid, choice: Choice, level: int) -> int:
    """The count a line further on; the next one, where that one would be below zero and the class does not go there."""
    far = choice.after + max(grid.line_length, 2)
    return choice.after + 1 if grid.count.value(far) < 0 and not goes_below_zero(grid, level) else far


def _value_past_the_end(grid: Grid, level: int) -> Fraction | None:
    """What to ask about: a number that comes, but none below zero where the class does not know of them yet.

    A count that has come down to nothing is asked for a number that never comes.
    """
    count = grid.count
    below = goes_below_zero(grid, level)
    asked = probes(grid, audience=Audience(level))
    ends_here = not below and count.value(grid.terms + 1) < 0
    found = next((probe.value for probe in asked if probe.appears or ends_here), None)
    if found is None and not below and count.step < 0:
        # The last one before zero; where that stands on the board, one that lies behind the start.
        return count.start - count.step if ends_here else count.start % -count.step
    return found
