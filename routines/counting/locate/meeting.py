"""Where a count meets a value, or passes it by."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import gcd

from ..count import Count
from ..kinds.clock import DAY
from .clock import since_midnight


@dataclass(frozen=True, slots=True)
class Meeting:
    """The term at which a count says a value, or None; and the values it says just before and just after.

    `half_of_day`: the value was asked for as a.m. or p.m.
    `jumps` is the number of whole jumps from the first term to the last one before or at the value, None where the
    count goes away from it. `distance` is how far the value is ahead of the first term, in the counting direction.
    """

    value: Fraction
    n: int | None
    before: Fraction | None
    after: Fraction
    jumps: int | None
    distance: Fraction
    half_of_day: bool = False


def meet(count: Count, value: Fraction, half_of_day: bool = False) -> Meeting:
    """Find the first term that shows `value`, as if the count went on for ever.

    half_of_day: the time was asked for as a.m. or p.m., so the other half of the day does not count.
    Units: base unit; on a clock a value is met whenever the hands show it, however often they went round.
    Source: proof - the value is `distance` ahead and a jump covers `length`: it is said exactly when distance / length
    is whole. Going round a clock of w minutes adds w to the distance again and again: jumps * length = distance
    (mod w), which has a solution exactly when gcd(length, w) divides the distance.
    """
    length = abs(count.step)
    distance = value - count.start if count.step > 0 else count.start - value
    if count.wrap is not None:
        turn = count.wrap
        if half_of_day:
            turn = DAY
            ahead = value - since_midnight(count, count.start)
            distance = ahead if count.step > 0 else -ahead
        distance %= turn
        jumps = _jumps_on_clock(distance, length, turn)
        if jumps is not None:
            return _said(count, value, jumps, jumps * length, half_of_day)
    elif distance < 0:
        return Meeting(value, None, None, count.value(1), None, distance)
    jumps = distance // length
    if jumps * length == distance:
        return _said(count, value, jumps, distance, half_of_day)
    return Meeting(value, None, count.value(jumps + 1), count.value(jumps + 2), jumps, distance, half_of_day)


def _said(count: Count, value: Fraction, jumps: int, distance: Fraction, half_of_day: bool) -> Meeting:
    before = count.value(jumps) if jumps else None
    return Meeting(value, jumps + 1, before, count.value(jumps + 2), jumps, distance, half_of_day)


def _jumps_on_clock(distance: Fraction, length: Fraction, wrap: int) -> int | None:
    scale = (distance.denominator * length.denominator) // gcd(distance.denominator, length.denominator)
    ahead, jump, turn = int(distance * scale), int(length * scale), wrap * scale
    shared = gcd(jump, turn)
    if ahead % shared:
        return None
    rest = turn // shared
    return ahead // shared * pow(jump // shared, -1, rest) % rest
