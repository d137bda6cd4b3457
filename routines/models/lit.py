"""The one rule for what of a plan lights up before anybody chose: on every page, card and sheet.

One pattern that always holds and one worth believing, which a class would follow until it stops near the end of the
grid; targets before others, in the teacher's order, be they of one kind. Totals never light up by themselves, nor what
only says that whole inches are whole, and never do two fill the whole grid.
"""

from collections.abc import Collection, Iterable, Iterator, Sequence
from itertools import chain, islice

from routines.counting import Claim, Grid
from routines.counting.believed import worth_believing as believed
from routines.counting.claims import (
    DigitClaim,
    DigitRunClaim,
    LandmarksClaim,
    NeighbourClaim,
    RemainderClaim,
    StepClaim,
    SumsClaim,
)
from routines.words import SpokenPattern, ended_runs

MOST_LIT = 2
# What always holds, and landmarks, are taken from the most noticeable: among them is nothing that the level would not meet.
MOST_NOTICEABLE = 6


def lit_by_itself(
    grid: Grid, targets: Sequence[SpokenPattern], found: Sequence[SpokenPattern], ringed: Collection[int]
) -> list[SpokenPattern]:
    """The patterns to light. found: all but the targets, most noticeable first. ringed: the terms drawn as landmarks."""
    if not targets:
        return _one_of_each(grid, found, ringed)
    lit: list[SpokenPattern] = []
    for target in targets[:MOST_LIT]:
        if not _cover_it_twice(grid, *lit, target):
            lit.append(target)
    if len(lit) < MOST_LIT:
        passing = worth_believing(grid, found) if lit[0].holds == "always" else ()
        beside = (one for one in chain(passing, always(found, ringed)) if not _cover_it_twice(grid, lit[0], one))
        lit += islice(beside, 1)
    return lit


def _one_of_each(grid: Grid, found: Sequence[SpokenPattern], ringed: Collection[int]) -> list[SpokenPattern]:
    for lasting in always(found, ringed):
        for passing in worth_believing(grid, found):
            if not _cover_it_twice(grid, lasting, passing):
                return [lasting, passing]
    telling = (pattern for pattern in always(found, ringed) if not _is_a_jump(pattern.claim))
    return list(islice(chain(telling, worth_believing(grid, found), always(found, ringed)), 1))


def always(found: Sequence[SpokenPattern], ringed: Collection[int]) -> Iterator[SpokenPattern]:
    """What holds for ever: ringed landmarks that line up, what else is noticeable, and the jumps, which cover every cell."""
    rings = [pattern for pattern in _lasting(found) if _in_line(pattern.claim) and set(pattern.cells) == set(ringed)]
    yield from rings
    noticeable = [pattern for pattern in _lasting(found[:MOST_NOTICEABLE]) if pattern not in rings]
    yield from sorted(noticeable, key=lambda pattern: _is_a_jump(pattern.claim))


def _lasting(found: Sequence[SpokenPattern]) -> list[SpokenPattern]:
    return [pattern for pattern in found if pattern.holds == "always" and not _says_nothing(pattern.claim)]


def worth_believing(grid: Grid, found: Sequence[SpokenPattern]) -> Iterator[SpokenPattern]:
    """What a class would believe until it stops near the view: digits that run, digits that stay, landmarks in line.

    Asked for one by one, because to find what ended within the grid takes longer than all the rest.
    """
    if not found:
        return
    audience = found[0].audience
    passing = [pattern for pattern in found if believed(pattern, grid, audience.level)]
    yield from _of(passing, DigitRunClaim)
    ended = (idea.pattern for idea in ended_runs(grid, audience=audience))
    yield from (pattern for pattern in ended if believed(pattern, grid, audience.level))
    yield from _of(passing, DigitClaim)
    yield from _of(passing, LandmarksClaim)


def _of(patterns: Iterable[SpokenPattern], family: type[Claim]) -> Iterator[SpokenPattern]:
    return (pattern for pattern in patterns if isinstance(pattern.claim, family))


def _cover_it_twice(grid: Grid, *patterns: SpokenPattern) -> bool:
    return sum(len(pattern.cells) == grid.terms for pattern in patterns) > 1


def _says_nothing(claim: Claim) -> bool:
    """Totals, and that whole inches are whole."""
    whole = isinstance(claim, RemainderClaim) and claim.modulus == 1 and claim.block_length == 1
    return whole or isinstance(claim, SumsClaim)


def _is_a_jump(claim: Claim) -> bool:
    return isinstance(claim, StepClaim | NeighbourClaim)


def _in_line(claim: Claim) -> bool:
    return isinstance(claim, LandmarksClaim) and claim.lie != "scattered"
