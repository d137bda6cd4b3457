"""Why a count serves a standard, in one sentence built from the conditions it meets."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property
from typing import Any

from routines.counting.audience import Audience
from routines.counting.grid import Grid
from routines.counting.kinds.currency import currency_named
from routines.counting.kinds.names import Kind
from routines.counting.kinds.unit_names import NAMES
from routines.counting.standards import StandardFit
from routines.counting.standards import suggest_standards as suggested
from routines.counting.standards.amounts import unit_size, written_denominator
from routines.counting.standards.conditions import Facts, meets, passes
from routines.counting.standards.features import Condition
from routines.counting.written_units import unit_to_reach

from .language import Language
from .languages import LANGUAGES

_MOST_PARTS = 4
_NAMED = ("0", "1", "whole", "hour", "noon", "midnight")


@dataclass(frozen=True, kw_only=True)
class SpokenFit(StandardFit):
    """A standard that a count serves, with the reason."""

    grid: Grid = field(repr=False)
    audience: Audience = field(repr=False)

    @cached_property
    def reason(self) -> str:
        """The reason in words, with the count's own numbers."""
        features, facts = self.features, Facts(self.grid.count, self.grid.terms)
        language = LANGUAGES[self.audience.language]
        phrases, crossed = language.standards, features.with_key("cross")
        parts = [_by(facts, language)]
        for condition in features.conditions:
            told = _TOLD.get(condition.key)
            if told is not None and condition.value not in ("any", "both"):
                parts += [told(condition, facts, language)]
        for condition in crossed:
            reached = [name for name in map(str.strip, condition.value.split("|")) if passes(name, facts)]
            if reached:
                parts.append(phrases["reaches"].format(landmark=_landmark(reached[-1], facts, language)))
        parts = list(dict.fromkeys(part for part in parts if part))
        parts = parts if len(parts) <= _MOST_PARTS else [*parts[: _MOST_PARTS - 1], parts[-1]]
        sentence = phrases["count"].format(parts=language.listing(parts))
        if features.with_key("pair"):
            sentence += phrases["pair"]
        elif features.direct and self.fit == "support":
            missed = crossed[0].value.split("|")[0].strip()
            sentence += phrases["missed"].format(landmark=_landmark(missed, facts, language))
        return sentence + "."


def suggest_standards(
    grid: Grid, standards: Iterable[Any], grade: int | None = None, *, audience: Audience | None = None
) -> list[SpokenFit]:
    """The standards a grid's count serves with their reasons: see `routines.counting.suggest_standards`."""
    return [
        SpokenFit(
            found.code,
            found.grade,
            found.area,
            found.summary,
            found.fit,
            found.hints,
            found.features,
            grid=grid,
            audience=audience or Audience(),
        )
        for found in suggested(grid, standards, grade, audience=audience)
    ]


def _by(facts: Facts, language: Language) -> str:
    count = facts.count
    return language.standards["up" if count.step > 0 else "down"].format(size=count.difference_text(count.step))


def _from(condition: Condition, facts: Facts, language: Language) -> str:
    if condition.only_if is not None and not meets(condition.only_if, facts):
        return ""
    first = language.value(facts.count.text(1), clock=facts.count.wrap is not None)
    return language.standards["from"].format(first=first)


def _within(condition: Condition, facts: Facts, language: Language) -> str:
    count = facts.count
    return language.standards["within"].format(largest=count.text(1 if count.step < 0 else facts.terms))


def _down_to(condition: Condition, facts: Facts, language: Language) -> str:
    count = facts.count
    return language.standards["down to"].format(smallest=count.text(1 if count.step > 0 else facts.terms))


def _terms(condition: Condition, facts: Facts, language: Language) -> str:
    return language.standards["terms"].format(terms=facts.terms)


def _parts(condition: Condition, facts: Facts, language: Language) -> str:
    if condition.value == "different":
        return language.standards["different parts"]
    return language.standards["over"].format(over=written_denominator(facts.count))


def _landmark(name: str, facts: Facts, language: Language) -> str:
    """A landmark of a standard as it stands after "reaches"."""
    count, phrases = facts.count, language.standards
    if name in _NAMED:
        return phrases[name]
    if name in ("100c", "unit") and count.kind == Kind.MONEY:
        return phrases["one"].format(unit=currency_named(count.style.currency, language.code).main.one)
    if name == "unit":
        larger = unit_to_reach(count)
        symbol = "h" if count.kind in (Kind.CLOCK, Kind.ELAPSED) else larger.symbol if larger else None
        return phrases["one"].format(unit=NAMES[symbol, language.code].one) if symbol else phrases["larger unit"]
    multiple = count.difference_text(Fraction(name.removesuffix("c")) * unit_size(count))
    return phrases["multiple"].format(multiple=multiple)


_TOLD: Mapping[str, Callable[[Condition, Facts, Language], str]] = {
    "start": _from,
    "max": _within,
    "given": _within,
    "min": _down_to,
    "terms": _terms,
    "denominators": _parts,
}
