"""The rule of a count as algebra. The only module that uses sympy, and only inside functions: importing it is slow."""

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from .count import Count


@dataclass(frozen=True, slots=True)
class Rule:
    """The n-th count of a count: value(n) = start + (n - 1) * step, for every n from 1 on."""

    count: "Count"

    @property
    def text(self) -> str:
        """The rule in the count's own writing; a clock's names its start, because its times wrap.

        >>> from routines.counting import Count
        >>> Count.parse(kind="whole", start="58", step="6", terms=20).rule().text
        '6 × n + 52'
        >>> Count.parse(kind="clock", start="10:50", step="20 min", terms=12).rule().text
        '10:50 + (n - 1) × 20 min'
        """
        count = self.count
        one = not count.base_unit and abs(count.step) == 1
        jump = "n" if one else f"{count.difference_text(count.step)} × n"
        if count.wrap is not None:
            sign = "-" if count.step < 0 else "+"
            return f"{count.text(1)} {sign} (n - 1) × {count.difference_text(count.step)}"
        before = count.start - count.step
        if count.step < 0:
            return f"{count.text_of(before)} - {jump}" if before else f"-{jump}"
        if before == 0:
            return jump
        return f"{jump} {'-' if before < 0 else '+'} {count.difference_text(before)}"

    @property
    def expression(self) -> Any:
        """The rule as a sympy expression in the plain symbol n, so that `subs("n", 5)` finds it.

        Units: the base unit; a clock's minutes do not wrap.

        >>> from routines.counting import Count
        >>> Count.parse(kind="whole", start="58", step="6", terms=20).rule().expression
        6*n + 52
        """
        from sympy import Rational, Symbol, expand

        n = Symbol("n")
        start, step = self.count.start, self.count.step
        first = Rational(start.numerator, start.denominator)
        return expand(first + (n - 1) * Rational(step.numerator, step.denominator))

    def __str__(self) -> str:
        return self.text
