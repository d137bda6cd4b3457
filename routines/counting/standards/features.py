"""The language of `count_features`: what a count must have to serve a standard.

Items `key=value`, joined by `; `. Alternatives in a value are joined by `|`, and `x..y` is a closed range. A value may
end in a remark in brackets. Conditions: kind, start, step, min, max, direction, terms, given, denominators, places,
unit, cross, pair. Hints for the teacher: look_for, ask, show, record, view, fold, contexts, prefer, also. `fit=direct`:
the count itself does what the standard names; `fit=support`: it rehearses the numbers.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from ..errors import CountError
from .amounts import FIELD, NUMBER, read_amounts

CONDITIONS = (
    "kind",
    "start",
    "step",
    "min",
    "max",
    "direction",
    "terms",
    "given",
    "denominators",
    "places",
    "unit",
    "cross",
    "pair",
)
HINTS = ("look_for", "ask", "show", "record", "view", "fold", "contexts", "prefer", "also")
DIFFERENT_DENOMINATORS = "start and step with different denominators"

_NUMBER = rf"(?:{NUMBER})"
_KINDS = "whole|integer|decimal|fraction|length|mass|capacity|money|clock|elapsed|time|duration"
_LANDMARKS = rf"(?:{_NUMBER}|whole|unit|hour|noon|midnight|100c)"
# Longer than any standard needs: the longest of the bundled table has 172 characters.
LONGEST = 1000
_VALUES = {
    "kind": rf"({_KINDS})(\|({_KINDS}))*",
    "min": _NUMBER,
    "max": _NUMBER,
    "direction": "up|down|both",
    "terms": r"\d{1,9}( after 0)?",
    "given": rf"{_NUMBER}\.\.{_NUMBER}",
    "denominators": rf"different|{_NUMBER}(\|{_NUMBER})*",
    "places": r"\d{1,9}(\.\.\d{1,9}|(\|\d{1,9})*)",
    "cross": rf"{_LANDMARKS}(\|{_LANDMARKS})*",
}
_ITEM = re.compile(r"(?P<key>[a-z_]+)(?P<sign><=|>=|<|>|=)(?P<value>.+)", re.DOTALL)
_REMARK = re.compile(r" \((?P<remark>[^()]*)\)$")


@dataclass(frozen=True, slots=True)
class Condition:
    """One item that a count must meet.

    only_if: a second item it depends on, as in "start=0|1 if step=1". remark: what stood in brackets.
    """

    key: str
    sign: str
    value: str
    only_if: "Condition | None" = None
    remark: str = ""


@dataclass(frozen=True, slots=True)
class Features:
    direct: bool
    conditions: tuple[Condition, ...]
    hints: Mapping[str, str]

    @property
    def is_served_directly(self) -> bool:
        """Whether one count can do what the standard names: not where it takes two."""
        return self.direct and not self.with_key("pair")

    def with_key(self, key: str) -> tuple[Condition, ...]:
        return tuple(condition for condition in self.conditions if condition.key == key)


def read_features(text: str) -> Features:
    """Read a standard's features.

    Raises: CountError on `count_features` for an item that is not in the language.

    >>> features = read_features("fit=direct; step=1|10; start=0|10 if step=10; max=100 (from K.CC.A.1); view=number_line")
    >>> features.direct, [condition.key for condition in features.conditions], features.hints
    (True, ['step', 'start', 'max'], {'view': 'number_line'})
    """
    if len(text) > LONGEST:
        raise CountError(FIELD, "features-too-long", most=LONGEST)
    fit, conditions, hints = "", [], {}
    for item in filter(None, (part.strip() for part in text.split(";"))):
        if item == DIFFERENT_DENOMINATORS:
            conditions.append(Condition("denominators", "=", "different"))
            continue
        condition = _read_item(item)
        if condition.key == "fit":
            fit = condition.value
        elif condition.key in HINTS:
            hints[condition.key] = item.partition("=")[2]
        elif condition.key in CONDITIONS:
            conditions.append(condition)
        else:
            raise CountError(FIELD, "unknown-feature", key=condition.key)
    if fit not in ("direct", "support"):
        raise CountError(FIELD, "no-fit")
    return Features(fit == "direct", tuple(conditions), hints)


def _read_item(item: str, nested: bool = False) -> Condition:
    found = _ITEM.fullmatch(item)
    if found is None:
        raise CountError(FIELD, "feature-unreadable", typed=item[:40])
    key, sign, value = found["key"], found["sign"], found["value"]
    if nested and (key not in CONDITIONS or " if " in value):
        raise CountError(FIELD, "condition-unreadable", typed=item[:40])
    if key not in CONDITIONS:
        return Condition(key, sign, value)
    remark = ""
    if bracket := _REMARK.search(value):
        value, remark = value[: bracket.start()], bracket["remark"]
    value, _, depends = value.partition(" if ")
    if key in ("start", "step"):
        read_amounts(value)
    elif not _may_stand(key, sign, value):
        raise CountError(FIELD, "value-unreadable", typed=value[:40], key=key, sign=sign)
    return Condition(key, sign, value, _read_item(depends, nested=True) if depends else None, remark)


def _may_stand(key: str, sign: str, value: str) -> bool:
    if key in _VALUES and not re.fullmatch(_VALUES[key], value, re.ASCII):
        return False
    if key == "places" and sign != "=":
        return value.isdecimal()
    # Zero is passed where it stands as "0"; in any other writing it would be a multiple of nothing.
    return key != "cross" or not any(_is_zero(name) for name in value.split("|") if name != "0")


def _is_zero(text: str) -> bool:
    return bool(re.fullmatch(_NUMBER, text)) and Fraction(text) == 0
