"""Remainder: what is left over a friendly multiple repeats in blocks: even and odd, the eighths, the inches.

Always. Source: proof - terms a gap apart leave the same remainder exactly when the gap's worth is a multiple of the
modulus; the shortest such gap along a line is modulus/gcd(modulus, the line's step) terms of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import gcd

from ..claims import ALONG, Claim
from ..grid import Grid
from . import blocks
from .found import Found, Judged
from .lines import lines_of
from .readings import Remainder


def find(grid: Grid) -> Iterator[Found]:
    lines_along = [(along, lines_of(grid, along)) for along in ALONG]
    most = [lines.longest // 2 for _, lines in lines_along]
    for modulus in grid.count.friendly_multiples():
        reading = Remainder(grid.count, modulus)
        period, values = reading.period, None
        for (along, lines), longest in zip(lines_along, most, strict=True):
            k = period // gcd(period, lines.stride)
            if k > longest:
                continue
            values = values or reading.upto(grid.terms)
            claim = blocks.block_claim("remainder", {"modulus": modulus}, reading, values, lines, along, k)
            yield Found.of(claim, lines.in_view)


def completed(claim: Claim, grid: Grid) -> Iterator[Claim]:
    modulus = claim.get("modulus")
    largest = max((rest for block in claim.get("blocks") or () for rest in block), default=-1)
    for chosen in [modulus] if modulus is not None else grid.count.friendly_multiples():
        if largest >= chosen:
            continue
        for along in [claim.get("along")] if claim.get("along") else ALONG:
            whole = claim.with_(modulus=chosen, along=along)
            if whole.length is None:
                length = blocks.length_to_try(Remainder(grid.count, chosen), grid, along)
                whole = whole.with_(length=length)
            yield whole


def judge(claim: Claim, grid: Grid) -> Judged:
    return blocks.judge(claim, Remainder(grid.count, claim.get("modulus")), grid)
