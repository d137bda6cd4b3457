"""The engine's findings on one grid laid beside those of the brute force."""

from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from routines.counting import Claim, Grid
from routines.counting.checking import judge
from routines.counting.kinds.measure import Measure
from routines.counting.patterns import find_patterns
from tests.brute_force.board import Board
from tests.brute_force.lasting import contradicts, first_break, follows, two_turns
from tests.brute_force.seeing import everything_seen

FARTHEST = 600
"""So many terms are listed at most; a later break is looked at where it is said to be."""

CELL_BY_CELL = ("digit", "digit-run", "digit-sum", "remainder")


def board_of(grid: Grid) -> Board:
    count = grid.count
    return Board(
        kind=count.kind,
        start=count.start,
        step=count.step,
        terms=grid.terms,
        length=grid.line_length,
        fill=grid.fill,
        lead=grid.lead,
        friendly=count.friendly_multiples(),
        part_names=count.part_names(),
        written=count.text,
        mixed=count.style.shape == "mixed",
        small=count.form.small.size if isinstance(count.form, Measure) else Fraction(1),
        unit=count.style.currency if count.kind == "money" else count.base_unit,
    )


def disagreements(grid: Grid) -> Iterator[str]:
    """Every way in which engine and brute force differ on a grid: claims, their lives, what is listed, `check`."""
    board = board_of(grid)
    by_engine = {repr(found.claim.as_dict()): found for found in find_patterns(grid, implied=True)}
    by_looking = {repr(claim): claim for claim in everything_seen(board)}
    yield from (f"not so, or not to be seen: {claim}" for claim in by_engine.keys() - by_looking.keys())
    yield from (f"missed: {claim}" for claim in by_looking.keys() - by_engine.keys())
    lasts: dict[int, int | None] = {}
    for key in by_engine.keys() & by_looking.keys():
        found, claim = by_engine[key], by_looking[key]
        lasts[id(claim)] = found.breaks_at
        yield from _other_life(board, claim, found.breaks_at)
        always = found.breaks_at is None and claim["family"] != "opposites"
        if (found.holds == "always") != always:
            yield f"holds {found.holds} with break {found.breaks_at}: {key}"
        yield from _other_verdict(grid, claim, found.breaks_at, found.holds)
    listed = {repr(found.claim.as_dict()) for found in find_patterns(grid)}
    claims = [claim for key, claim in by_looking.items() if key in by_engine]
    for claim in claims:
        follow = any(other is not claim and follows(claim, other, board, lasts) for other in claims)
        if follow == (repr(claim) in listed):
            yield f"{'listed though it follows' if follow else 'not listed'}: {claim}"


def _other_life(board: Board, claim: dict[str, Any], breaks_at: int | None) -> Iterator[str]:
    limit = min(FARTHEST, two_turns(board, claim)) if breaks_at is None else min(FARTHEST, breaks_at)
    by_listing = first_break(board, claim, max(limit, board.terms))
    if by_listing != (breaks_at if breaks_at is not None and breaks_at <= limit else None):
        yield f"breaks at {by_listing} by listing, {breaks_at} said: {claim}"
    if breaks_at is not None and breaks_at > limit and claim["family"] in CELL_BY_CELL:
        if not contradicts(board, claim, breaks_at):
            yield f"does not break at {breaks_at}: {claim}"
        for n in range(max(board.terms + 1, breaks_at - 40), breaks_at):
            if contradicts(board, claim, n):
                yield f"breaks at {n} already, not at {breaks_at}: {claim}"


def _other_verdict(grid: Grid, claim: dict[str, Any], breaks_at: int | None, holds: str) -> Iterator[str]:
    _, judged = judge(Claim.from_dict(claim), grid)
    said = (judged.true, judged.seen, judged.holds, judged.breaks_at, judged.counterexample)
    if said != (True, True, holds, breaks_at, ()):
        yield f"check says {said}: {claim}"
