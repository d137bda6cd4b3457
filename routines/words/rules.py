"""A typed rule judged, in words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, fields
from fractions import Fraction
from functools import cached_property

from routines.counting.algebra import RuleVerdict
from routines.counting.algebra import judge_rule as judged
from routines.counting.audience import Audience
from routines.counting.count import Count
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.measure import Measure
from routines.counting.kinds.money import Money
from routines.counting.kinds.unit_names import NAMES

from .languages import LANGUAGES
from .numbers import series
from .sentences import filled


@dataclass(frozen=True, kw_only=True)
class SpokenRule(RuleVerdict):
    """A verdict on a typed rule with its sentences for an audience."""

    count: Count = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def because(self) -> str:
        """Whether it is the count's own, or where it first differs; and what is right about it all the same."""
        rules, facts = LANGUAGES[self.audience.language].rules, self._facts()
        return " ".join(filled(rules[name], facts) for name in self._sentences())

    def _sentences(self) -> Iterator[str]:
        if self.differs_at is None:
            yield "holds"
            return
        yield "differs" if self.differs_at == 1 else "differs later"
        if self.from_zero:
            yield "from zero"
        elif self.always_off is not None:
            yield "too much" if self.always_off > 0 else "too little"

    def _facts(self) -> dict[str, str]:
        facts = {"gives": series([self._text(value) for value in self.gives])}
        if self.differs_at is not None and self.said is not None and self.counted is not None:
            facts |= {"n": str(self.differs_at), "before": str(self.differs_at - 1)}
            facts |= {"said": self._text(self.said), "counted": self._text(self.counted)}
        if self.always_off is not None:
            facts["off"] = self.count.difference_text(abs(self.always_off))
        return facts

    def _text(self, value: Fraction) -> str:
        return self.count.text_of(value)


def judge_rule(typed: str, count: Count, audience: Audience | None = None) -> SpokenRule:
    """Whether a typed rule is the count's own, in words: see `routines.counting.judge_rule`."""
    verdict = judged(typed, count)
    facts = {one.name: getattr(verdict, one.name) for one in fields(RuleVerdict)}
    return SpokenRule(**facts, count=count, audience=audience or Audience())


def unit_of_rule(count: Count, language: str) -> str:
    """In what the numbers of a typed rule are meant ("dollars", "inches"); "" for plain numbers."""
    form = count.form
    if isinstance(form, Money):
        currency = currency_named(count.style.currency, language)
        return currency.small.several if form.in_small_units else currency.main.several
    return NAMES[form.small.symbol, language].several if isinstance(form, Measure) else ""
