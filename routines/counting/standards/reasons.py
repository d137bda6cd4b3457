"""Why a count serves a standard, in one sentence built from the conditions it meets."""

from collections.abc import Callable, Mapping
from fractions import Fraction

from ..count import Count
from ..kinds.currency import currency_named
from ..kinds.names import Kind
from ..kinds.unit_names import NAMES
from ..locate.tongues import tongue
from ..texts.numbers import listing
from ..written_units import unit_to_reach
from .amounts import unit_size, written_denominator
from .conditions import Facts, meets, passes
from .features import Condition, Features

_MOST_PARTS = 4
_NAMED = {
    "0": ("zero", "el cero"),
    "1": ("a whole", "un entero"),
    "whole": ("a whole", "un entero"),
    "hour": ("a full hour", "una hora en punto"),
    "noon": ("noon", "el mediodía"),
    "midnight": ("midnight", "la medianoche"),
}


def reason(features: Features, facts: Facts, fit: str, language: str) -> str:
    """The reason in words, with the count's own numbers."""
    parts = [_by(facts, language)]
    for condition in features.conditions:
        told = _TOLD.get(condition.key)
        if told is not None and condition.value not in ("any", "both"):
            parts += [told(condition, facts, language)]
    for condition in features.with_key("cross"):
        reached = [name for name in map(str.strip, condition.value.split("|")) if passes(name, facts)]
        if reached:
            parts.append(
                _in(language, "reaches or passes ", "alcanza o pasa ") + _landmark(reached[-1], facts, language)
            )
    parts = list(dict.fromkeys(part for part in parts if part))
    parts = parts if len(parts) <= _MOST_PARTS else [*parts[: _MOST_PARTS - 1], parts[-1]]
    sentence = _in(language, "The count ", "El conteo ") + listing(parts, language)
    if features.with_key("pair"):
        sentence += _in(language, "; it takes a second count beside it", "; pide otro conteo al lado")
    elif features.direct and fit == "support":
        missed = _landmark(features.with_key("cross")[0].value.split("|")[0].strip(), facts, language)
        sentence += _in(language, "; it does not reach ", "; no alcanza ") + missed
    return sentence + "."


def _by(facts: Facts, language: str) -> str:
    count = facts.count
    size = count.difference_text(count.step)
    if count.step > 0:
        return _in(language, f"goes up by {size}", f"sube de {size} en {size}")
    return _in(language, f"goes down by {size}", f"baja de {size} en {size}")


def _from(condition: Condition, facts: Facts, language: str) -> str:
    if condition.only_if is not None and not meets(condition.only_if, facts):
        return ""
    first = tongue(language).value(facts.count.text(1), clock=facts.count.wrap is not None)
    return _in(language, f"starts at {first}", f"empieza en {first}")


def _within(condition: Condition, facts: Facts, language: str) -> str:
    count = facts.count
    largest = count.text(1 if count.step < 0 else facts.terms)
    return _in(language, f"has {largest} as its largest number", f"tiene {largest} como número mayor")


def _down_to(condition: Condition, facts: Facts, language: str) -> str:
    count = facts.count
    smallest = count.text(1 if count.step > 0 else facts.terms)
    return _in(language, f"has {smallest} as its smallest number", f"tiene {smallest} como número menor")


def _terms(condition: Condition, facts: Facts, language: str) -> str:
    return _in(language, f"has {facts.terms} numbers", f"tiene {facts.terms} números")


def _parts(condition: Condition, facts: Facts, language: str) -> str:
    if condition.value == "different":
        return _in(
            language, "has a start and a step in different parts", "tiene un comienzo y un paso en partes distintas"
        )
    over = written_denominator(facts.count)
    return _in(language, f"is written over {over}", f"se escribe con {over} abajo")


def _landmark(name: str, facts: Facts, language: str) -> str:
    """A landmark of a standard as it stands after "reaches"."""
    count = facts.count
    if name in _NAMED:
        return _in(language, *_NAMED[name])
    if name in ("100c", "unit") and count.kind == Kind.MONEY:
        return _in(language, "a whole ", "1 ") + currency_named(count.style.currency, language).main.one
    if name == "unit":
        larger = "h" if count.kind in (Kind.CLOCK, Kind.ELAPSED) else _symbol_to_reach(count)
        if larger is None:
            return _in(
                language, "a larger unit, for it is written in the largest", "otra mayor: ya va en la mayor unidad"
            )
        return _in(language, "a whole ", "1 ") + NAMES[larger, language].one
    multiple = count.difference_text(Fraction(name.removesuffix("c")) * unit_size(count))
    return _in(language, f"a multiple of {multiple}", f"un múltiplo de {multiple}")


def _symbol_to_reach(count: Count) -> str | None:
    larger = unit_to_reach(count)
    return larger.symbol if larger else None


def _in(language: str, english: str, spanish: str) -> str:
    return spanish if language == "es" else english


_TOLD: Mapping[str, Callable[[Condition, Facts, str], str]] = {
    "start": _from,
    "max": _within,
    "given": _within,
    "min": _down_to,
    "terms": _terms,
    "denominators": _parts,
}
