"""Arcs of a circle of numbers: where a digit stays what it is while the number goes round and round.

The digit at one place is the same over a whole stretch of numbers (the tens digit of 40 to 49) and comes back after
every full turn (140 to 149), so the numbers with a wanted digit are an arc of a circle. Wanting digits at several
terms at once means the arcs must overlap.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import gcd

from .congruences import Residues, Span
from .runs import Runs

Stretch = tuple[int, int]
"""Numbers from the first up to, but not including, the second."""


@dataclass(frozen=True, slots=True)
class Arcs:
    """The numbers whose remainder by `turn` lies in one of the `stretches`, which are in order and apart."""

    turn: int
    stretches: tuple[Stretch, ...]

    @classmethod
    def starting(cls, at: Iterable[int], length: int, turn: int) -> Arcs:
        """Give the union of arcs of one length, each starting at one of the numbers `at`.

        >>> Arcs.starting([8, 0], 4, 10)
        Arcs(turn=10, stretches=((0, 4), (8, 10)))
        """
        if length >= turn:
            return cls(turn, ((0, turn),) if any(True for _ in at) else ())
        pieces = []
        for number in at:
            low = number % turn
            pieces.append((low, min(low + length, turn)))
            if low + length > turn:
                pieces.append((0, low + length - turn))
        return cls(turn, _joined(pieces))

    def meet(self, other: Arcs) -> Arcs:
        """Give the numbers in both; the larger turn must be a whole number of smaller ones.

        >>> Arcs(10, ((2, 5),)).meet(Arcs(20, ((4, 13),)))
        Arcs(turn=20, stretches=((4, 5), (12, 13)))
        """
        turn = max(self.turn, other.turn)
        mine, theirs = self.unrolled(turn), other.unrolled(turn)
        pieces = []
        i = j = 0
        while i < len(mine) and j < len(theirs):
            low, high = max(mine[i][0], theirs[j][0]), min(mine[i][1], theirs[j][1])
            if low < high:
                pieces.append((low, high))
            if mine[i][1] < theirs[j][1]:
                i += 1
            else:
                j += 1
        return Arcs(turn, tuple(pieces))

    def unrolled(self, turn: int) -> list[Stretch]:
        """Give the stretches within one larger turn."""
        return [(low + k, high + k) for k in range(0, turn, self.turn) for low, high in self.stretches]

    def pieces(self, span: Span) -> int:
        """Say into how many runs the numbers of a span that lie on the arcs fall, at most."""
        return min(self._by_turns(span), self._by_remainders(span))

    def members(self, span: Span) -> Runs:
        """Give the numbers of the span that lie on the arcs: turn by turn, or remainder by remainder where that is less.

        >>> Arcs(10, ((3, 5),)).members(Span(0, 100, 1))
        [range(3, 101, 10), range(4, 101, 10)]
        """
        if self._by_turns(span) < self._by_remainders(span):
            bases = range(span.low // self.turn * self.turn, span.high + 1, self.turn)
            turns = ((base + low, base + high - 1) for base in bases for low, high in self.stretches)
            return [run for low, high in turns if (run := span.narrowed(low, high).members())]
        apart = gcd(self.turn, span.grain)
        rests = (rest for low, high in self.stretches for rest in range(low + -low % apart, high, apart))
        return [run for rest in rests if (run := span.members(Residues(rest, self.turn)))]

    def _by_turns(self, span: Span) -> int:
        return max(0, span.high // self.turn - span.low // self.turn + 1) * len(self.stretches)

    def _by_remainders(self, span: Span) -> int:
        apart = gcd(self.turn, span.grain)
        return sum((high - low) // apart + 1 for low, high in self.stretches)


def overlap(starts: list[int], length: int, turn: int) -> Stretch | None:
    """Give where arcs of one length, not over half a turn, all overlap: where it starts and how long it is.

    Source: proof - measured from the first arc, another overlaps it exactly when it starts less than `length` before or
    after; no arc being over half a turn, it does so on one side only. The common part then runs from the latest start
    to the earliest start plus `length`.

    >>> overlap([8, 1], 4, 10)
    (11, 1)
    >>> overlap([0, 5], 4, 10) is None
    True
    """
    first = starts[0]
    half = turn // 2
    earliest = latest = 0
    for start in starts:
        ahead = (start - first + half) % turn - half
        earliest, latest = min(earliest, ahead), max(latest, ahead)
        if latest - earliest >= length:
            return None
    return first + latest, earliest + length - latest


def _joined(pieces: list[Stretch]) -> tuple[Stretch, ...]:
    joined: list[Stretch] = []
    for low, high in sorted(pieces):
        if joined and low <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(high, joined[-1][1]))
        else:
            joined.append((low, high))
    return tuple(joined)
