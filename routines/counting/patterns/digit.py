"""Digit: the digit at a place, or a part, repeats in blocks along the count, every row or every column.

Places only where digits are what is counted (EXACT 5), parts as they are written (EXACT 20). How long it holds is
worked out by the readings (`readings.py`, with the proofs).
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from ..claims import ALONG, Claim
from ..errors import CountError
from ..grid import Grid
from . import blocks
from .found import Found, Judged
from .readings import PlaceDigit, Reading, part_reading, places


def readings(grid: Grid) -> Iterator[tuple[dict[str, Any], Reading]]:
    """Every place and part that is looked at, coarser first, with the parameter that names it."""
    for place in places(grid.count, grid.terms):
        yield {"place": place}, PlaceDigit(grid.count, place)
    for name in grid.count.part_names():
        yield {"part": name}, part_reading(grid.count, name)


def reading_of(claim: Claim, grid: Grid) -> Reading:
    """The reading a claim names. Raises: CountError on `place` for clocks, on `part` for a part that is not there."""
    if claim.get("part") is not None:
        return part_reading(grid.count, claim.get("part"))
    if grid.count.wrap is not None:
        raise CountError("place", "On a clock, name the hours or the minutes instead of a place.")
    return PlaceDigit(grid.count, claim.get("place"))


def chosen(claim: Claim, grid: Grid) -> list[dict[str, Any]]:
    """The places or parts a claim may mean."""
    for name in ("place", "part"):
        if claim.get(name) is not None:
            return [{name: claim.get(name)}]
    return [named for named, _ in readings(grid)]


def find(grid: Grid) -> Iterator[Found]:
    for named, reading in readings(grid):
        values = reading.upto(grid.terms)
        for along in ALONG:
            found = blocks.find("digit", named, reading, grid, along, values)
            if found:
                yield found


def completed(claim: Claim, grid: Grid) -> Iterator[Claim]:
    for named in chosen(claim, grid):
        for along in [claim.get("along")] if claim.get("along") else ALONG:
            whole = claim.with_(**named, along=along)
            if whole.length is None:
                length = blocks.length_to_try(reading_of(whole, grid), grid, along)
                whole = whole.with_(length=length)
            yield whole


def judge(claim: Claim, grid: Grid) -> Judged:
    return blocks.judge(claim, reading_of(claim, grid), grid)
