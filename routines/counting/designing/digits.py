"""Digits and parts: blocks that repeat, and runs that go up or down by the same amount."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import gcd

from ..claims import DigitClaim, DigitRunClaim
from ..grid import Along, Grid
from .arcs import Arcs, overlap
from .blocks import Lines, block_lengths, lines_for
from .congruences import Residues, Span, solve
from .numbers import Numbers
from .runs import Runs, how_many_in, just, mirrored
from .wants import NEVER, Narrowing, Want
from .wheels import Wheel
from .work import Work


@dataclass(frozen=True, slots=True)
class Group:
    """Terms that all show one number, each with its own amount more: (term, amount). `bases`: which number may be."""

    terms: tuple[tuple[int, int], ...]
    bases: Sequence[int]


Groups = list[Group]


def digit(claim: DigitClaim, along: Along, wheel: Wheel, numbers: Numbers, work: Work) -> Want:
    """Along every line the numbers on the wheel repeat in a block."""

    def on(fold: Grid) -> Narrowing:
        lines = lines_for(claim, along, fold)
        if lines is None:
            return NEVER
        blocks, lengths = claim.blocks, block_lengths(claim, lines)
        if blocks is not None:
            ways = [_given_blocks(lines, blocks, claim.block_length or 1)]
        else:
            work.will_take(fold.terms * len(lengths), "terms", "line_length")
            ways = [_open_blocks(lines, length, wheel) for length in lengths]
        longest = max(lines, key=len)
        gaps = [(longest[length] - longest[0], 0) for length in lengths]
        return _narrowing(ways, gaps, wheel, numbers, work)

    return on


def digit_run(claim: DigitRunClaim, along: Along, wheel: Wheel, numbers: Numbers, work: Work) -> Want:
    """From each term of a line to the next the number on the wheel changes by the same."""

    def on(fold: Grid) -> Narrowing:
        lines = fold.lines(along)
        longest = max(lines, key=len)
        if len(longest) < 3:
            return NEVER
        most = (wheel.numbers - 1) // (len(longest) - 1)
        changes = range(-most, most + 1) if claim.change is None else (claim.change,)
        work.will_take(fold.terms * len(changes), "start", "step", "terms", "line_length")
        ways = [_run(lines, by, wheel) for by in changes if by and abs(by) <= most]
        gaps = [(longest[1] - longest[0], by) for by in changes if by and abs(by) <= most]
        return _narrowing(ways, gaps, wheel, numbers, work) if ways else NEVER

    return on


def _given_blocks(lines: Lines, blocks: Sequence[Sequence[int]], length: int) -> Groups | None:
    terms = []
    for line, block in zip(lines, blocks, strict=True):
        for at, n in enumerate(line):
            if at % length >= len(block):
                return None
            terms.append((n, block[at % length]))
    return [Group(tuple(terms), (0,))]


def _open_blocks(lines: Lines, length: int, wheel: Wheel) -> Groups:
    repeating = [line[at::length] for line in lines for at in range(min(length, len(line) - length))]
    return [Group(tuple((n, 0) for n in terms), wheel.shown) for terms in repeating]


def _run(lines: Lines, change: int, wheel: Wheel) -> Groups:
    groups = []
    for line in lines:
        total = change * (len(line) - 1)
        bases = range(wheel.shown.start - min(total, 0), wheel.shown.stop - max(total, 0))
        groups.append(Group(tuple((n, at * change) for at, n in enumerate(line)), bases))
    return groups


def _narrowing(
    ways: Sequence[Groups | None], gaps: Iterable[tuple[int, int]], wheel: Wheel, numbers: Numbers, work: Work
) -> Narrowing:
    possible = [groups for groups in ways if groups is not None]
    if not possible:
        return NEVER

    def starts(step: int, span: Span) -> Runs:
        return [run for groups in possible for run in _starts(groups, step, span, wheel, work)]

    cells = sum(_cells(group, wheel) for groups in possible for group in groups)
    if wheel.by_size and not numbers.all_above_zero:
        return Narrowing(
            None, starts, lambda start, step: any(_shows(one, start, step, wheel) for one in possible), cells
        )
    steps = [run for gap, change in gaps for run in _steps(gap, change, wheel, numbers.steps, work)]
    return Narrowing(steps, starts, cells=cells)


def _cells(group: Group, wheel: Wheel) -> int:
    """Say how much looking it is to find the arcs of a group: its terms, and the numbers it may show if not all may."""
    return len(group.terms) + (0 if len(group.bases) == wheel.numbers else wheel.numbers)


def _steps(gap: int, change: int, wheel: Wheel, span: Span, work: Work) -> Runs:
    """Give the steps with which the number may change so, so many terms on.

    Source: proof - a number goes up by `change` only if the value goes up by (change - 1 .. change + 1) units, whole turns
    apart: gap * step = low + 1, low + 2, ... (mod turn) with low = (change - 1) units, each a residue class of steps.
    """
    low, shared = (change - 1) * wheel.unit, gcd(gap, wheel.turn)
    every = span.members()
    classes = range(low + 1 + (-low - 1) % shared, low + 2 * wheel.unit, shared)
    tried = min(how_many_in([classes]), how_many_in([every]))
    work.will_take(5 * tried, "step", "terms", "line_length")  # a congruence solved is five looks
    if tried < how_many_in([every]):
        solved = (solve(gap, more, wheel.turn) for more in classes)
        return [span.members(Residues(one.residue, one.modulus)) for one in solved if one is not None]
    return just(step for step in every if 0 < (gap * step - low) % wheel.turn < 2 * wheel.unit)


def _starts(groups: Groups, step: int, span: Span, wheel: Wheel, work: Work) -> Runs:
    """Give the starts with which all groups of terms show what they should.

    Source: proof - term n shows number q exactly when start + (n-1) step lies in an arc of one unit on the circle of a
    full turn, that is, when the start lies in that arc turned back by (n-1) step: an overlap of arcs for each group and
    each number it may show, then what the groups have in common. Read from |value| this holds above zero and,
    mirrored, below; starts with terms on both sides are all left to be tried.
    """
    if not wheel.by_size:
        return _on_one_side(groups, step, span, wheel, work)
    last = max(n for group in groups for n, _ in group.terms)
    least_above, most_below = -min(0, (last - 1) * step), -max(0, (last - 1) * step)
    above = _on_one_side(groups, step, span.narrowed(least_above, span.high), wheel, work)
    sizes_below = Span(-min(span.high, most_below), -span.low, span.grain)
    below = [mirrored(run) for run in _on_one_side(groups, -step, sizes_below, wheel, work)]
    return [*above, *below, span.narrowed(most_below + 1, least_above - 1).members()]


def _on_one_side(groups: Groups, step: int, span: Span, wheel: Wheel, work: Work) -> Runs:
    if span.low > span.high:
        return []
    common: Arcs | None = None
    for group in groups:
        arcs = _arcs(group, step, wheel)
        common = arcs if common is None else common.meet(arcs)
        if not common.stretches:
            return []
    if common is None:
        return [span.members()]
    work.will_take(common.pieces(span), "start", "step")
    return common.members(span)


def _arcs(group: Group, step: int, wheel: Wheel) -> Arcs:
    unit, turn = wheel.unit, wheel.turn
    both = overlap([amount * unit - (n - 1) * step for n, amount in group.terms], unit, turn)
    if both is None:
        return Arcs(turn, ())
    low, length = both
    if len(group.bases) == wheel.numbers:  # any number will do: the arcs of all of them come again with every unit
        return Arcs.starting([low], length, unit)
    return Arcs.starting([low + base * unit for base in group.bases], length, turn)


def _shows(groups: Groups, start: int, step: int, wheel: Wheel) -> bool:
    for group in groups:
        bases = {wheel.at(start + (n - 1) * step) - amount for n, amount in group.terms}
        if len(bases) > 1 or next(iter(bases)) not in group.bases:
            return False
    return True
