"""Blocks that repeat along lines, whatever is read: digits, parts, digit sums, remainders (EXACT 2 to 4).

The three families of block claims share the search for the shortest block, and the judging of stated blocks.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from ..claims import BlockClaim, only_one_line, stated
from ..grid import ALONG, Along, Grid
from ..results import Pattern, Verdict
from .going_on import first_break, last_break
from .lines import Lines, lines_named, lines_of
from .readings import Reading

Line = tuple[int, ...]
Blocks = tuple[tuple[Any, ...], ...]
Made = Callable[[Along, Blocks], BlockClaim]
"""How a claim is made of the direction and the blocks that repeat."""


def shortest_block(values: Sequence[int | None], lines: Lines) -> int | None:
    """The least k that can be seen (two blocks in the longest line) and with which every line repeats."""
    return _shortest(values, lines, lines.longest // 2)


def _shortest(values: Sequence[int | None], lines: Lines, most: int) -> int | None:
    read = [values[line[0] : line[-1] + 1 : lines.stride] for line in lines.in_view]
    for k in range(1, most + 1):
        if all(line[k:] == line[:-k] for line in read):
            return k
    return None


def find(made: Made, reading: Reading, grid: Grid, along: Along, values: Sequence[int | None] = ()) -> Pattern | None:
    """The block claim of one reading along one direction.

    values: what is read off the terms in view, where that is known already.
    """
    values = values or reading.upto(grid.terms)
    lines = lines_of(grid, along)
    if reading.may_be_missing and None in values[1:]:
        return None
    k = shortest_block(values, lines)
    if k is None:
        return None
    breaks_at = break_beyond(reading, lines, k, grid.terms, None)
    return Pattern.of(made(along, blocks_in(reading, values, lines, k)), lines.in_view, breaks_at)


def blocks_in(reading: Reading, values: Sequence[int | None], lines: Lines, k: int) -> Blocks:
    """The first k cells of each line as they read."""
    return tuple([tuple([reading.shown(values[n] or 0) for n in line[:k]]) for line in lines.in_view])


def break_beyond(reading: Reading, lines: Lines, k: int, terms: int, only: Sequence[Line] | None) -> int | None:
    """The first term beyond the view at which a line, seen or begun later, does not repeat after k cells."""
    found = first_break(reading, lines.later_pairs(k, terms, only), k * lines.stride, 0)
    if reading.may_be_missing:
        missing = first_break(reading, lines.later_pairs(0, terms, only), 0, 0)
        found = min((n for n in (found, missing) if n is not None), default=None)
    return found


def judge(claim: BlockClaim, reading: Reading, grid: Grid) -> Verdict:
    """Judge a block claim that names its direction, and its blocks or their length."""
    along: Along = stated(claim.along)
    k, blocks = stated(claim.block_length), claim.blocks
    lines = lines_of(grid, along)
    only = lines_named(grid, along, claim.lines) if claim.lines else None
    chosen = lines.in_view if only is None else only
    if claim.lines and only is None:
        return Verdict.not_so()
    if blocks is not None and len(blocks) != len(chosen):
        return Verdict.not_so()
    told = blocks is None or all(len(block) >= min(k, len(line)) for block, line in zip(blocks, chosen, strict=True))
    true_from = _true_from(reading, lines, k, blocks, only) if told else None
    contradiction = _contradiction(reading, chosen, k, lines.stride, blocks)
    if contradiction:
        return Verdict.not_so(contradiction, true_from)
    seen = max(map(len, chosen)) >= 2 * k
    return Verdict.so(seen, break_beyond(reading, lines, k, grid.terms, only), true_from)


def _contradiction(
    reading: Reading, chosen: Sequence[Line], k: int, stride: int, blocks: Blocks | None
) -> tuple[int, ...]:
    """The first term in view that is not as stated, after the one k cells before it if there is one; () if none."""
    wrong: tuple[int, ...] = ()
    for i, line in enumerate(chosen):
        for at, n in enumerate(line):
            if wrong and n >= wrong[-1]:
                break
            value = reading.at(n)
            if blocks is not None:
                block = blocks[i]
                said = block[at % k] if at % k < len(block) else None
                right = value is not None and said is not None and reading.shown(value) == said
            else:
                right = value is not None and (at < k or value == reading.at(line[at - k]))
            if not right:
                wrong = (line[at - k], n) if at >= k else (n,)
    return wrong


def _true_from(
    reading: Reading, lines: Lines, k: int, blocks: Blocks | None, only: Sequence[Line] | None
) -> int | None:
    """The least term from which everything is as stated, for ever."""
    gap = k * lines.stride
    last = last_break(reading, lines.later_pairs(k, 0, only), gap, 0)
    missing = last_break(reading, lines.later_pairs(0, 0, only), 0, 0) if reading.may_be_missing else 0
    if last is None or missing is None:
        return None
    start = max(last - gap if last else 0, missing) + 1
    if blocks is None:
        return start
    for line, block in zip(lines.in_view if only is None else only, blocks, strict=True):
        end = lines.end_of(line)
        first_cell = max(0, -((line[0] - start) // lines.stride))
        cells = range(first_cell, first_cell + k) if end is None else range(end - line[0])
        for at in cells:
            n = line[0] + at * lines.stride
            value = reading.at(n)
            if at % k < len(block) and (value is None or reading.shown(value) != block[at % k]):
                if end is None:
                    return None
                start = max(start, n + 1)
    return start


def ways_meant(claim: BlockClaim) -> tuple[Along, ...]:
    """The directions along which a claim may run. Raises: CountError on `lines` where one of them has no numbered lines."""
    if claim.along is not None:
        return (claim.along,)
    if claim.lines is not None:
        raise only_one_line()
    return ALONG


def length_meant(claim: BlockClaim, reading: Reading, grid: Grid, along: Along) -> int | None:
    """The block length that "repeats" without a length means: the shortest that nothing in view contradicts.

    Where it cannot be seen yet, some k shorter than the longest line still brings at least one cell back; else 1.
    What a claim says itself is left as it is said.
    """
    if claim.block_length is not None:
        return claim.length
    lines = lines_of(grid, along)
    return _shortest(reading.upto(grid.terms), lines, lines.longest - 1) or 1
