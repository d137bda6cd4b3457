"""A measuring line laid out in lines of the page: which jumps stand on each, and where every value lies, exactly."""

from dataclasses import dataclass
from fractions import Fraction

from routines.counting import Count


@dataclass(frozen=True, slots=True)
class Stretch:
    """One line of the page. terms: in counting order, the first one repeated from the line before.

    low, high: the values at its ends, smaller at the left; px: px a base unit, exact; left: where low stands.
    """

    terms: range
    low: Fraction
    high: Fraction
    px: Fraction
    left: int

    def x(self, value: Fraction) -> float:
        return float(self.left + (value - self.low) * self.px)


def stretches(count: Count, first: int, last: int, width: float, need: float, margin: int) -> list[Stretch]:
    """Lay the jumps that lead to terms first..last on as few lines as their labels need, about equally long.

    need: px that one jump takes at least. margin: kept free left and right of the outermost values. The line that holds
    the lowest value begins at 0 where that is one jump away at most and costs no line more.
    """
    begin = max(first - 1, 1)
    jumps = max(last - begin, 1)
    step = abs(count.step)
    lowest = min(count.value(begin), count.value(last))
    room = Fraction(int(width) - 2 * margin)

    def jumps_a_line(lead: Fraction) -> int:
        most = max(1, (room / Fraction(need) - lead) // 1)
        return -(-jumps // -(-jumps // most))

    each, lead = jumps_a_line(Fraction(0)), Fraction(0)
    if 0 < lowest <= step and jumps_a_line(lowest / step) == each:
        lead = lowest / step
    px = (room / (each + lead) // 1) / step
    found = []
    for start in range(begin, begin + jumps, each):
        terms = range(start, min(start + each, last) + 1)
        low, high = sorted((count.value(terms[0]), count.value(terms[-1])))
        found.append(Stretch(terms, Fraction(0) if lead and low == lowest else low, high, px, margin))
    return found
