"""The rule of a count as algebra, and a typed rule judged by it.

The only module that uses sympy, and only inside functions: importing it is slow.
"""

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from .errors import CountError
from .kinds.currency import currency_named
from .kinds.measure import Measure
from .kinds.money import Money
from .typed_rules import FIELD, read_rule

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


@dataclass(frozen=True, slots=True)
class RuleVerdict:
    """What becomes of a typed rule: the count's own for every n from 1 on, or not from `differs_at` on.

    Units: values are in the base unit; a rule's numbers are multiples of `unit`, in which the class writes (dollars where
    it writes dollars). gives: what the rule gives for the first n.
    said, counted: what the rule gives at `differs_at`, and what the class counts there; None where it is the count's own.
    from_zero: it is the count's own if the first place is 0. always_off: what it gives too much, at every n alike.
    """

    holds: bool
    unit: Fraction
    gives: tuple[Fraction, ...]
    differs_at: int | None = None
    said: Fraction | None = None
    counted: Fraction | None = None
    from_zero: bool = False
    always_off: Fraction | None = None


MOST_GIVEN = 3


def rule_unit(count: "Count") -> Fraction:
    """What a bare 1 in a typed rule is worth, in the base unit: the small unit that is written, of money the main one.

    Raises: CountError on `rule` for a clock, whose times come round again and are no numbers.
    """
    if count.wrap is not None:
        raise CountError(FIELD, "rule-on-a-clock")
    form = count.form
    if isinstance(form, Money):
        return Fraction(1 if form.in_small_units else 10 ** currency_named(count.style.currency, "en").digits)
    return form.small.size if isinstance(form, Measure) else Fraction(1)


def judge_rule(typed: str, count: "Count") -> RuleVerdict:
    """Judge a typed rule for the n-th count, n from 1 on.

    Source: proof - two different polynomials of degree d or less agree at no more than d numbers, so that one of the
    first d + 1 places tells them apart.
    Raises: CountError on `rule` for what cannot be read, or on a clock.

    >>> from routines.counting import Count
    >>> count = Count.parse(kind="whole", start="14", step="-6", terms=12)
    >>> judge_rule("20 - 6n", count).holds, judge_rule("14 - 6n", count).from_zero
    (True, True)
    """
    unit = rule_unit(count)
    coefficients = read_rule(typed, count.style)

    from sympy import Poly, Rational, Symbol

    n = Symbol("n")
    size = Rational(unit.numerator, unit.denominator)
    numbers = [size * Rational(one.numerator, one.denominator) for one in reversed(coefficients)]
    rule = Poly(numbers or [0], n, domain="QQ")
    counted = Poly(count.rule().expression, n, domain="QQ")
    gives = tuple(_fraction(rule.eval(place)) for place in range(1, MOST_GIVEN + 1))
    apart = rule - counted
    if apart.is_zero:
        return RuleVerdict(holds=True, unit=unit, gives=gives)
    first = next(place for place in range(1, apart.degree() + 2) if apart.eval(place) != 0)
    return RuleVerdict(
        holds=False,
        unit=unit,
        gives=gives,
        differs_at=first,
        said=_fraction(rule.eval(first)),
        counted=count.value(first),
        from_zero=rule.compose(Poly(n - 1, n, domain="QQ")) == counted,
        always_off=_fraction(apart.eval(1)) if apart.degree() == 0 else None,
    )


def _fraction(number: Any) -> Fraction:
    return Fraction(int(number.p), int(number.q))
