"""Digits and parts: blocks that repeat, and runs that go up or down by the same amount."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from ..claims import Claim
from ..grid import Grid
from .arcs import Arcs, overlap
from .blocks import Lines, block_lengths, lines_for
from .congruences import Span
from .numbers import Numbers
from .wants import NEVER, Narrowing, Want
from .wheels import Wheel


@dataclass(frozen=True, slots=True)
class Group:
    """Terms that all show one number, each with its own amount more: (term, amount). `bases`: which number may be."""

    terms: tuple[tuple[int, int], ...]
    bases: Sequence[int]


Groups = list[Group]


def digit(claim: Claim, along: str, wheel: Wheel, numbers: Numbers) -> Want:
    """Along every line the numbers on the wheel repeat in a block."""

    def on(fold: Grid) -> Narrowing:
        lines = lines_for(claim, along, fold)
        if lines is None:
            return NEVER
        blocks = claim.get("blocks")
        if blocks is not None:
            ways = [_given_blocks(lines, blocks, claim.length or 1)]
        else:
            ways = [_open_blocks(lines, length, wheel) for length in block_lengths(claim, lines)]
        longest = max(lines, key=len)
        gaps = [(longest[length] - longest[0], 0) for length in block_lengths(claim, lines)]
        return _narrowing(ways, gaps, wheel, numbers)

    return on


def digit_run(claim: Claim, along: str, wheel: Wheel, numbers: Numbers) -> Want:
    """From each term of a line to the next the number on the wheel changes by the same."""

    def on(fold: Grid) -> Narrowing:
        lines = fold.lines(along)
        longest = max(lines, key=len)
        if len(longest) < 3:
            return NEVER
        most = (wheel.numbers - 1) // (len(longest) - 1)
        change = claim.get("change")
        changes = range(-most, most + 1) if change is None else (change,)
        ways = [_run(lines, by, wheel) for by in changes if by and abs(by) <= most]
        gaps = [(longest[1] - longest[0], by) for by in changes if by and abs(by) <= most]
        return _narrowing(ways, gaps, wheel, numbers) if ways else NEVER

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
    ways: Sequence[Groups | None], gaps: Iterable[tuple[int, int]], wheel: Wheel, numbers: Numbers
) -> Narrowing:
    possible = [groups for groups in ways if groups is not None]
    if not possible:
        return NEVER

    def starts(step: int, span: Span) -> Iterable[int]:
        return {start for groups in possible for start in _starts(groups, step, span, wheel)}

    if wheel.by_size and not numbers.all_above_zero:
        return Narrowing(None, starts)
    # A number goes up by `change` only if the value goes up by (change - 1 .. change + 1) units, whole turns apart.
    windows = [(gap, ((change - 1) * wheel.unit) % wheel.turn) for gap, change in gaps]
    steps = [
        step
        for step in numbers.steps.members()
        if any(0 < (gap * step - low) % wheel.turn < 2 * wheel.unit for gap, low in windows)
    ]
    return Narrowing(steps, starts)


def _starts(groups: Groups, step: int, span: Span, wheel: Wheel) -> Iterator[int]:
    """Give the starts with which all groups of terms show what they should.

    Source: proof - term n shows number q exactly when start + (n-1) step lies in an arc of one unit on the circle of a
    full turn, that is, when the start lies in that arc turned back by (n-1) step: an overlap of arcs for each group and
    each number it may show, then what the groups have in common. Read from |value| this holds above zero and,
    mirrored, below; starts with terms on both sides are tried one by one.
    """
    if not wheel.by_size:
        yield from _on_one_side(groups, step, span, wheel)
        return
    last = max(n for group in groups for n, _ in group.terms)
    least_above, most_below = -min(0, (last - 1) * step), -max(0, (last - 1) * step)
    yield from _on_one_side(groups, step, span.narrowed(least_above, span.high), wheel)
    mirrored = Span(-min(span.high, most_below), -span.low, span.grain)
    for size in _on_one_side(groups, -step, mirrored, wheel):
        yield -size
    for start in span.narrowed(most_below + 1, least_above - 1).members():
        if _shows(groups, start, step, wheel):
            yield start


def _on_one_side(groups: Groups, step: int, span: Span, wheel: Wheel) -> Iterator[int]:
    if span.low > span.high:
        return
    common: Arcs | None = None
    for group in groups:
        arcs = _arcs(group, step, wheel)
        common = arcs if common is None else common.meet(arcs)
        if not common.stretches:
            return
    yield from span.members() if common is None else common.members(span)


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
