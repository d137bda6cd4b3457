"""Digit sum: the digits of each whole number add to numbers that repeat in blocks.

Never always along the count or across the fill (EXACT 7): the break is searched for (`readings.DigitSum`).
"""

from __future__ import annotations

from collections.abc import Iterator

from ..claims import ALONG, Claim
from ..errors import CountError
from ..grid import Grid
from . import blocks
from .found import Found, Judged
from .readings import BeyondReach, DigitSum


def find(grid: Grid) -> Iterator[Found]:
    if grid.count.kind != "whole":
        return
    reading = DigitSum(grid.count)
    for along in ALONG:
        try:
            found = blocks.find("digit-sum", {}, reading, grid, along)
        except BeyondReach:  # said nothing of rather than said without its end
            continue
        if found:
            yield found


def completed(claim: Claim, grid: Grid) -> Iterator[Claim]:
    _refuse_other_kinds(grid)
    for along in [claim.get("along")] if claim.get("along") else ALONG:
        whole = claim.with_(along=along)
        if whole.length is None:
            whole = whole.with_(length=blocks.length_to_try(DigitSum(grid.count), grid, along))
        yield whole


def judge(claim: Claim, grid: Grid) -> Judged:
    _refuse_other_kinds(grid)
    return blocks.judge(claim, DigitSum(grid.count), grid)


def _refuse_other_kinds(grid: Grid) -> None:
    if grid.count.kind != "whole":
        raise CountError("family", "Add up digits of whole numbers only; choose another claim.")
