"""What is asked at a chosen stop: a count further on, or a value past the end; with the ways to it and the time it takes."""

from collections.abc import Collection
from fractions import Fraction

from ..audience import Audience, band_of
from ..claims import Claim, LandmarksClaim, NeighbourClaim, StepClaim, TableClaim
from ..grid import Fill, Grid
from ..locate import locate
from ..locate.routes import routes_to
from ..probes import goes_below_zero, probes
from .choosing import Choice
from .suggestion import StopSuggestion

# A landmark further on than this many lines is not looked for in its line.
NEAR_LINES = 2

# From cell to cell along a line, not across its corners.
STRAIGHT = ("right", "down")

# Seconds to think, to talk with a partner and to share, by level band. Common practice, no source.
TIMES = ((10, 30, 60), (20, 60, 90), (30, 60, 120), (45, 90, 150))


def ask(grid: Grid, choice: Choice, level: int, predicted: Collection[int] = ()) -> StopSuggestion:
    """The stop of a choice, for a level; predicted: the counts that other stops ask for."""
    after, (far, by), asked = choice.after, _prediction(grid, choice, level, predicted), None
    if choice.reason == "end":
        asked = _value_past_the_end(grid, level)
        ways = routes_to(grid, far) if asked is None else locate(grid, asked).routes
    else:
        view = grid if after >= grid.terms else grid.cut(after)
        ways = routes_to(view, far if choice.reason == "target" else after + 1)
    think, partner, share = TIMES[band_of(level)]
    return StopSuggestion(after, choice.reason, choice.claim, choice.spot, far, by, asked, ways, think, partner, share)


def _prediction(grid: Grid, choice: Choice, level: int, predicted: Collection[int]) -> tuple[int, Claim]:
    """A count further on, and what leads to it.

    That is the next landmark in view where landmarks are seen, else the count a line further on; the next one, where
    that one would be below zero and the class does not go there. A landmark follows from the landmarks alone where none of
    their multiples is jumped over, else from the count a line before it.
    """
    count, claim = grid.count, choice.claim
    if isinstance(claim, LandmarksClaim) and choice.after < grid.terms:
        within = range(choice.after + 1, min(grid.terms, choice.after + NEAR_LINES * grid.line_length) + 1)
        multiple = claim.multiple
        landmark = next((n for n in within if multiple and count.value(n) % multiple == 0 and n not in predicted), None)
        if landmark is not None and multiple == abs((claim.every or 0) * count.step):
            return landmark, claim
        if landmark is not None and grid.line_length < landmark <= choice.after + grid.line_length:
            return landmark, _a_line_on(grid)
    far = choice.after + max(grid.line_length, 2)
    if choice.reason == "target":
        # One cell sooner follows from its own neighbor on the board as well.
        sooner = range(far, max(choice.after, grid.line_length), -1)
        far = next((n for n in sooner if n not in predicted), far)
    if count.value(far) < 0 and not goes_below_zero(grid, level):
        return choice.after + 1, StepClaim(difference=count.step)
    if isinstance(claim, StepClaim | TableClaim) or (isinstance(claim, NeighbourClaim) and claim.direction in STRAIGHT):
        return far, claim
    return far, _a_line_on(grid)


def _a_line_on(grid: Grid) -> Claim:
    """The step from a count to the one a line on."""
    if grid.line_length == 1:
        return StepClaim(difference=grid.count.step)
    a_line = grid.line_length * grid.count.step
    if grid.fill is Fill.DOWN:
        return NeighbourClaim(direction="right", difference=a_line)
    return NeighbourClaim(direction="down", difference=-a_line if grid.fill is Fill.ACROSS_UP else a_line)


def _value_past_the_end(grid: Grid, level: int) -> Fraction | None:
    """What to ask about: a number that comes, but none below zero where the class does not know of them yet.

    A count that has come down to nothing is asked for a number that never comes.
    """
    count = grid.count
    below = goes_below_zero(grid, level)
    asked = probes(grid, audience=Audience(level))
    ends_here = not below and count.value(grid.terms + 1) < 0
    # The very next count asks for no thinking past the end: one that comes a full line further on does.
    a_line_on = grid.terms + grid.line_length
    far = [probe.value for probe in asked if probe.n is not None and probe.n >= a_line_on]
    on = count.value(a_line_on)
    if not far and not ends_here and (below or on >= 0) and locate(grid, on).n == a_line_on:
        far = [on]
    if far:
        return far[0]
    lowest = count.start % -count.step if not below and count.step < 0 else None
    if lowest is not None and locate(grid, lowest).n not in (None, *range(grid.terms + 2)):
        return lowest
    found = next((probe.value for probe in asked if probe.appears or ends_here), None)
    if found is None and not below and count.step < 0:
        # The last one before zero; where that stands on the board, one that lies behind the start.
        return count.start - count.step if ends_here else count.start % -count.step
    return found
