"""What measuring jugs and scales have in common: an instrument a term, all marked alike from 0 to one top."""

from dataclasses import dataclass
from fractions import Fraction

from routines.counting import Count

from .ladders import multiples, rungs

SMALLEST_JUMP = Fraction(1, 40)  # of the top; a smaller one could hardly be seen


def shows_jumps(count: Count) -> bool:
    return abs(count.step) >= SMALLEST_JUMP * top_of(count, 1, count.terms)


def top_of(count: Count, first: int, last: int) -> Fraction:
    """What an instrument for terms first..last holds: whole rungs, of the coarsest that goes twice into the largest term.

    Always more than the largest term: a pointer that has gone right round would read 0.
    """
    largest = max(count.value(max(first - 1, 1)), count.value(last))
    rung = max((rung for rung in rungs(count) if 2 * rung <= largest), default=rungs(count)[0])
    return (largest // rung + 1) * rung


@dataclass(frozen=True, slots=True)
class Marks:
    """The marks of an instrument. numbered: the values that carry a number; fine: all others."""

    top: Fraction
    numbered: tuple[Fraction, ...]
    fine: tuple[Fraction, ...]


def marks_of(count: Count, top: Fraction, long: float, fine_gap: float, number_gap: float) -> Marks:
    """Marks for an instrument whose scale is `long` px; gaps are the least distances along it. Numbers go by ones or twos."""
    ladder = [rung for rung in rungs(count) if rung <= top]
    fine = next((rung for rung in ladder if float(rung / top) * long >= fine_gap), ladder[-1])
    steps = [many * rung for rung in ladder if rung >= fine for many in (1, 2)]
    numbered = next((step for step in steps if float(step / top) * long >= number_gap), top)
    values = tuple(multiples(numbered, Fraction(0), top))
    return Marks(top, values, tuple(value for value in multiples(fine, Fraction(0), top) if value % numbered))
