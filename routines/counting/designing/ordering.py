"""Which designs come first: one key, the best for a class first."""

from __future__ import annotations

from functools import lru_cache
from math import gcd

from ..claims import Claim, DigitClaim, RemainderClaim
from ..grid import ALONG, Fill, Grid

MOST_CELLS = 60
"""Cells that a board bears and that are read from the back of the room. Common practice, no source."""

Modulus = tuple[int, str]
"""A scaled friendly multiple, and the way along which every line keeps its remainder by it."""


def fold_rank(fold: Grid, step: int, multiples: tuple[int, ...], wanted: frozenset[Modulus]) -> tuple[int, int]:
    """Give the part of the key that the start has no say in: fits a board (0) or not (1); other constant blocks."""
    fits = 0 if fold.rows * fold.columns <= MOST_CELLS else 1
    return fits, _constant_blocks(fold.terms, fold.line_length, fold.fill, step, multiples, wanted)


def start_rank(fold: Grid, start: int, step: int, middle_twice: int) -> tuple[int, ...]:
    """Give the rest of the key: start nearest the middle of its limits, smallest values, then what is left to tell
    two grids apart: fewest counts, shortest lines, fills in their order."""
    largest = max(abs(start), abs(start + (fold.terms - 1) * step))
    fill = tuple(Fill).index(fold.fill)
    return abs(2 * start - middle_twice), largest, fold.terms, fold.line_length, fill, start, step


def wanted_constants(wanted: list[Claim], scale: int) -> frozenset[Modulus]:
    """Give the constant remainders that are asked for and so are not "other"."""
    found: set[Modulus] = set()
    for claim in wanted:
        if not isinstance(claim, DigitClaim | RemainderClaim):
            continue
        modulus = _period(claim.place) if isinstance(claim, DigitClaim) else claim.modulus
        if modulus is not None and claim.block_length in (None, 1):
            ways = ALONG if claim.along is None else (claim.along,)
            found.update((int(modulus * scale), along) for along in ways)
    return frozenset(found)


def _period(place: int | None) -> int | None:
    """By which number the same remainder means the same digit at a place, from the ones up."""
    return None if place is None or place < 0 else int(10 ** (place + 1))


@lru_cache(maxsize=100_000)
def _constant_blocks(
    terms: int, line_length: int, fill: Fill, step: int, multiples: tuple[int, ...], wanted: frozenset[Modulus]
) -> int:
    """Count the friendly multiples by which the whole count, every row or every column keeps one remainder.

    One that holds along the count is not counted again along its rows and columns, as in EXACT 11.
    """
    rows_worth, columns_worth = (line_length, 1) if fill is Fill.DOWN else (1, line_length)
    ways = {"row": rows_worth, "column": columns_worth}
    found = 0
    for multiple in multiples:
        if step % multiple == 0:
            found += (multiple, "count") not in wanted
            continue
        every = multiple // gcd(multiple, step)
        found += sum(
            worth % every == 0 and terms > worth and (multiple, along) not in wanted for along, worth in ways.items()
        )
    return found
