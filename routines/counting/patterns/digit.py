"""Digit: the digit at a place, or a part, repeats in blocks along the count, every row or every column.

Places only where digits are what is counted (EXACT 5), parts as they are written (EXACT 20). How long it holds is
worked out by the readings (`readings.py`, with the proofs).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import partial
from typing import NamedTuple

from ..claims import DigitClaim, PlaceClaim, stated
from ..errors import CountError
from ..grid import ALONG, Grid
from ..kinds.names import Kind
from ..results import Pattern, Verdict
from . import blocks
from .readings import PlaceDigit, Reading, is_written, part_reading, places


class Named(NamedTuple):
    """What a claim calls the digit or the part that it is about: one of the two."""

    place: int | None = None
    part: str | None = None


def readings(grid: Grid) -> Iterator[tuple[Named, Reading]]:
    """Every place, and every part that some count in view writes, coarser first, with its name."""
    for place in places(grid.count, grid.terms):
        yield Named(place=place), PlaceDigit(grid.count, place)
    for part in grid.count.part_names():
        if is_written(grid.count, part, grid.terms):
            yield Named(part=part), part_reading(grid.count, part, grid.terms)


def reading_of(named: Named | PlaceClaim, grid: Grid) -> Reading:
    """The reading that is named.

    Raises: CountError on `place` for clocks and fractions, which have none; on `part` for a part that is not there.
    """
    if named.part is not None:
        return part_reading(grid.count, named.part, grid.terms)
    if grid.count.wrap is not None:
        raise CountError("place", "place-on-a-clock")
    if grid.count.kind == Kind.FRACTION:
        raise CountError("place", "place-of-a-fraction")
    return PlaceDigit(grid.count, stated(named.place))


def named_by(claim: PlaceClaim, grid: Grid) -> list[Named]:
    """The places or parts a claim may mean."""
    if claim.place is not None or claim.part is not None:
        return [Named(claim.place, claim.part)]
    return [named for named, _ in readings(grid)]


def find(grid: Grid) -> Iterator[Pattern]:
    for named, reading in readings(grid):
        values = reading.upto(grid.terms)
        for along in ALONG:
            found = blocks.find(partial(DigitClaim, *named), reading, grid, along, values)
            if found:
                yield found


def completed(claim: DigitClaim, grid: Grid) -> Iterator[DigitClaim]:
    for named in named_by(claim, grid):
        for along in blocks.ways_meant(claim):
            length = blocks.length_meant(claim, reading_of(named, grid), grid, along)
            yield replace(claim, place=named.place, part=named.part, along=along, length=length)


def judge(claim: DigitClaim, grid: Grid) -> Verdict:
    return blocks.judge(claim, reading_of(claim, grid), grid)
