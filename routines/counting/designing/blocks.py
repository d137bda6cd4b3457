"""Remainders that repeat in blocks along the lines, and digit sums by way of their remainders by 9."""

from __future__ import annotations

from collections.abc import Sequence

from ..claims import BlockClaim, DigitRunClaim, DigitSumClaim, RemainderClaim
from ..grid import ALONG, Along, Grid
from ..patterns.lines import lines_named
from .congruences import Residues, Span, solve
from .numbers import Numbers
from .runs import Runs
from .wants import NEVER, Narrowing, Want

Lines = Sequence[Sequence[int]]
Blocks = Sequence[Sequence[int]]


def remainder(claim: RemainderClaim, along: Along, modulus: int, numbers: Numbers) -> Want:
    """Along every line the remainders by the modulus repeat in a block."""
    blocks = claim.blocks
    whole = None if blocks is None else [[numbers.whole(rest) for rest in block] for block in blocks]
    return _repeating(claim, along, modulus, whole, numbers.steps)


def digit_sum(claim: DigitSumClaim, along: Along, numbers: Numbers) -> Want:
    """Along every line the digit sums repeat in a block.

    Source: a number and its digit sum leave the same remainder by 9 (10 = 1 mod 9), so digit sums repeat only where
    these do. That is said of |v|, so it narrows the numbers only where none is below zero.
    """
    blocks = claim.blocks
    by_nine = None if blocks is None else [[digits % 9 for digits in block] for block in blocks]
    repeating = _repeating(claim, along, 9, by_nine, numbers.steps)

    def on(fold: Grid) -> Narrowing:
        lines = lines_for(claim, along, fold)
        if lines is None:
            return NEVER
        narrowing = repeating(fold) if numbers.all_above_zero else Narrowing(None)

        def allows(start: int, step: int) -> bool:
            return _digit_sums_repeat(claim, lines, start, step)

        return Narrowing(narrowing.steps, narrowing.starts, allows)

    return on


def everywhere(claim: BlockClaim | DigitRunClaim) -> tuple[Along, ...]:
    """Give the ways along which a claim may run: its own, or all where it is left out."""
    return ALONG if claim.along is None else (claim.along,)


def lines_for(claim: BlockClaim, along: Along, fold: Grid) -> Lines | None:
    """Give the lines that a claim in blocks speaks of; None if it cannot be true and seen in them."""
    numbers, blocks = claim.lines, claim.blocks
    if numbers is not None and along == "count":
        return None
    lines = fold.lines(along) if numbers is None else lines_named(fold, along, numbers)
    if lines is None or max(map(len, lines)) < 2 * (claim.block_length or 1):
        return None
    return None if blocks is not None and len(blocks) != len(lines) else lines


def block_lengths(claim: BlockClaim, lines: Lines) -> Sequence[int]:
    """Give the block lengths that a claim may mean: its own, or all that would be seen twice."""
    return range(1, max(map(len, lines)) // 2 + 1) if claim.block_length is None else (claim.block_length,)


def _repeating(claim: BlockClaim, along: Along, modulus: int, blocks: Blocks | None, span: Span) -> Want:
    """Narrow by remainders.

    Source: proof - two cells leave remainders that differ by d exactly when (terms between) x step = d (mod m): each
    cell of a block gives one such congruence for the step, the repeating one more; the first cell then gives one for
    the start.
    """

    def on(fold: Grid) -> Narrowing:
        lines = lines_for(claim, along, fold)
        if lines is None:
            return NEVER
        longest = max(lines, key=len)
        steps: list[range] = []
        for length in block_lengths(claim, lines):
            residues = solve(longest[length] - longest[0], 0, modulus)
            if residues is not None and blocks is not None:
                residues = _in_blocks(lines, blocks, modulus, residues)
            if residues is not None:
                steps.append(span.members(residues))
        if blocks is None:
            return Narrowing(steps)
        first, rest = lines[0][0], blocks[0][0]

        def starts(step: int, span: Span) -> Runs:
            return [span.members(Residues((rest - (first - 1) * step) % modulus, modulus))]

        return Narrowing(steps, starts)

    return on


def _in_blocks(lines: Lines, blocks: Blocks, modulus: int, residues: Residues) -> Residues | None:
    first, rest = lines[0][0], blocks[0][0]
    both: Residues | None = residues
    for line, block in zip(lines, blocks, strict=True):
        for n, wanted in zip(line, block, strict=False):
            one = solve(n - first, wanted - rest, modulus)
            both = both.meet(one) if both is not None and one is not None else None
            if both is None:
                return None
    return both


def _digit_sums_repeat(claim: DigitSumClaim, lines: Lines, start: int, step: int) -> bool:
    blocks, length = claim.blocks, claim.block_length
    if length is None:
        return True
    for index, line in enumerate(lines):
        block = list(blocks[index]) if blocks is not None else []
        for at, n in enumerate(line):
            digits = sum(map(int, str(abs(start + (n - 1) * step))))
            if blocks is None and at < length:
                block.append(digits)
            elif at % length >= len(block) or block[at % length] != digits:
                return False
    return True
