"""Taking a plan out of a document that stands as plans are written, which nearly every stored one does.

It goes by what `plan_document` declares, as pydantic does, and takes nothing that pydantic would not take or would read as
something else. It does not say what is wrong: of a document that it does not take, pydantic says so, or reads it, and only
then are its 9 MB loaded.
"""

from collections.abc import Callable, Mapping
from dataclasses import MISSING, fields
from enum import Enum
from functools import cache
from types import UnionType
from typing import Annotated, Any, Literal, get_args, get_origin, get_type_hints

from routines.models.plan_document import Part, Plan
from routines.models.plan_field import Field

Take = Callable[[Any], Any]


class NotTaken(ValueError):
    """Something stands otherwise than plans are written; it may be right all the same."""


def taken(parts: Any) -> Plan:
    """The plan of these parts. Raises NotTaken."""
    plan: Plan = _group(Plan)(parts)
    return plan


@cache
def _group(part: type[Part]) -> Take:
    hints = get_type_hints(part, include_extras=True)
    takes = {name: _field(hint) for name, hint in hints.items()}
    needed = {one.name for one in fields(part) if one.default is MISSING and one.default_factory is MISSING}

    def take(value: Any) -> Part:
        _require(type(value) is dict and needed <= value.keys() <= takes.keys())
        return part(**{name: takes[name](inner) for name, inner in value.items()})

    return take


def _field(hint: Any) -> Take:
    """What takes the value of a field; what is declared last of it holds, as for pydantic."""
    base, *extras = get_args(hint) if get_origin(hint) is Annotated else (hint,)
    take = _kind(base)
    for bounds in extras:
        if isinstance(bounds, Field):
            take = _within(bounds, take)
    return take


def _kind(base: Any) -> Take:
    inner = get_args(base)
    match get_origin(base) or base:
        case origin if origin is Literal:
            return lambda value: _checked(value, type(value) is str and value in inner)
        case origin if origin is UnionType:
            some = _field(next(one for one in inner if one is not type(None)))
            return lambda value: None if value is None else some(value)
        case origin if origin is tuple:
            item = _field(inner[0])
            return lambda value: tuple(map(item, _checked(value, type(value) is list)))
        case origin if origin is Mapping:
            return lambda value: dict(_checked(value, type(value) is dict and all(type(name) is str for name in value)))
        case origin if issubclass(origin, Part):
            return _group(origin)
        case origin if issubclass(origin, Enum):
            members = {member.value: member for member in origin}
            return lambda value: members[_checked(value, type(value) is str and value in members)]
        case origin:
            return lambda value: _checked(value, type(value) is origin)


def _within(bounds: Field, take: Take) -> Take:
    low, high, shortest, longest = bounds.ge, bounds.le, bounds.min_length, bounds.max_length

    def take_within(given: Any) -> Any:
        value = take(given)
        _require(low is None or value >= low)
        _require(high is None or value <= high)
        _require(shortest is None or len(value) >= shortest)
        _require(longest is None or len(value) <= longest)
        _require(not bounds.strip_whitespace or value == value.strip())
        return value

    return take_within


def _checked(value: Any, right: bool) -> Any:
    _require(right)
    return value


def _require(right: bool) -> None:
    if not right:
        raise NotTaken
