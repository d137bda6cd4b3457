"""Whether a count meets one condition of a standard."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from ..count import Count
from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind
from ..written_units import unit_to_reach, written_units
from .amounts import read_amounts, unit_size, written_denominator
from .features import Condition

_KINDS = {"duration": (Kind.ELAPSED,), "time": (Kind.CLOCK, Kind.ELAPSED)}
_LANDMARKS = {"hour": 60, "noon": 1440, "midnight": 1440, "100c": 100}


@dataclass(frozen=True)
class Facts:
    """What a count's terms in view come to. Units: see `unit_size`."""

    count: Count
    terms: int

    @cached_property
    def start(self) -> Fraction:
        return self.count.start / unit_size(self.count)

    @cached_property
    def step(self) -> Fraction:
        return self.count.step / unit_size(self.count)

    @cached_property
    def last(self) -> Fraction:
        return self.count.value(self.terms) / unit_size(self.count)

    @property
    def low(self) -> Fraction:
        return min(self.start, self.last)

    @property
    def high(self) -> Fraction:
        return max(self.start, self.last)

    @property
    def given(self) -> tuple[Fraction, Fraction]:
        """The smallest and the largest term that has a next one."""
        before_last = self.last - self.step
        return min(self.start, before_last), max(self.start, before_last)


def meets(condition: Condition, facts: Facts) -> bool:
    """Whether the count meets a condition that `read_features` has read."""
    if condition.only_if is not None and not meets(condition.only_if, facts):
        return True
    return _JUDGES[condition.key](condition, facts)


def _kind(condition: Condition, facts: Facts) -> bool:
    return any(_is_kind(name.strip(), facts) for name in condition.value.split("|"))


def _is_kind(name: str, facts: Facts) -> bool:
    if name == "integer":
        return facts.count.kind == Kind.WHOLE and facts.low < 0
    if name == "whole":
        return facts.count.kind == Kind.WHOLE and facts.low >= 0
    return facts.count.kind in _KINDS.get(name, (name,))


def _start(condition: Condition, facts: Facts) -> bool:
    return any(amount.allows(facts.start, facts.count) for amount in read_amounts(condition.value))


def _step(condition: Condition, facts: Facts) -> bool:
    return any(amount.allows(abs(facts.step), facts.count) for amount in read_amounts(condition.value))


def _min(condition: Condition, facts: Facts) -> bool:
    limit = _number(condition)
    return facts.low < limit if condition.sign == "<" else facts.low >= limit


def _max(condition: Condition, facts: Facts) -> bool:
    limit = _number(condition)
    if condition.sign == ">":
        return facts.high > limit
    return facts.high >= limit if condition.sign == ">=" else facts.high <= limit


def _direction(condition: Condition, facts: Facts) -> bool:
    return condition.value == "both" or (condition.value == "up") == (facts.step > 0)


def _terms(condition: Condition, facts: Facts) -> bool:
    """<=9 after 0: a count from 0 has one term more; "(up to 99 if step has two digits)" raises the limit."""
    limit, _, after_zero = condition.value.partition(" after ")
    most = int(_exact(limit))
    if condition.remark and 10 <= abs(facts.step) <= 99:
        raised = re.match(r"up to ([0-9]{1,9})", condition.remark)
        most = int(raised[1]) if raised else most
    return facts.terms - (1 if after_zero and facts.start == 0 else 0) <= most


def _given(condition: Condition, facts: Facts) -> bool:
    low, _, high = condition.value.partition("..")
    return _exact(low) <= facts.given[0] and facts.given[1] <= _exact(high)


def _denominators(condition: Condition, facts: Facts) -> bool:
    count = facts.count
    if condition.value == "different":
        ours, theirs = count.start.denominator, count.step.denominator
        return ours != theirs and ours > 1 and theirs > 1
    return written_denominator(count) in [int(_exact(part)) for part in condition.value.split("|")]


def _places(condition: Condition, facts: Facts) -> bool:
    form = facts.count.form
    if not isinstance(form, DecimalNumber):
        return False
    shown = form.places_shown
    if condition.sign == "<=":
        return shown <= _exact(condition.value)
    low, run, high = condition.value.partition("..")
    if run:
        return _exact(low) <= shown <= _exact(high)
    return shown in [int(_exact(part)) for part in condition.value.split("|")]


def _unit(condition: Condition, facts: Facts) -> bool:
    """Every unit the count is written in is one of those named; on a clock, minutes and hours."""
    units = written_units(facts.count)
    written = {unit.symbol for unit in units or () if unit}
    return written <= {name.strip() for name in condition.value.split("|")}


def _cross(condition: Condition, facts: Facts) -> bool:
    return any(passes(name.strip(), facts) for name in condition.value.split("|"))


def passes(name: str, facts: Facts) -> bool:
    """Whether a multiple of the landmark is reached or passed after the first count; for 0, whether it lies among them."""
    if name == "0":
        return facts.low <= 0 <= facts.high
    size = _landmark(name, facts)
    if size is None:
        return False
    # Noon comes once a day, at minute 720.
    shift, size = (720, 1440) if name == "noon" else (0, size)
    before, after = (facts.start - shift) / size, (facts.last - shift) / size
    return after // 1 > before // 1 if facts.step > 0 else -after // 1 > -before // 1


def _landmark(name: str, facts: Facts) -> int | Fraction | None:
    if name == "whole":
        return 1
    if name == "unit":
        if facts.count.kind == Kind.MONEY:
            return 100
        if facts.count.kind in (Kind.CLOCK, Kind.ELAPSED):
            return 60
        larger = unit_to_reach(facts.count)
        return larger.size / unit_size(facts.count) if larger else None
    return _LANDMARKS.get(name) or _exact(name)


def _pair(condition: Condition, facts: Facts) -> bool:
    return False


def _number(condition: Condition) -> Fraction:
    return _exact(condition.value)


def _exact(text: str) -> Fraction:
    return Fraction(text.strip())


_JUDGES: Mapping[str, Callable[[Condition, Facts], bool]] = {
    "kind": _kind,
    "start": _start,
    "step": _step,
    "min": _min,
    "max": _max,
    "direction": _direction,
    "terms": _terms,
    "given": _given,
    "denominators": _denominators,
    "places": _places,
    "unit": _unit,
    "cross": _cross,
    "pair": _pair,
}
