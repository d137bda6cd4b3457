"""What a part of the plan document declares of each of its fields, for whoever reads, draws or lists them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields
from enum import Enum
from types import UnionType
from typing import Annotated, Any, Literal, get_args, get_origin, get_type_hints

from routines.models.plan_document import Part, Words
from routines.models.plan_field import Field


@dataclass(frozen=True, slots=True)
class Declared:
    """One field: its type, its label, a hint of what to write and bounds; `choices` is empty where anything may stand."""

    type: Any
    title: str = ""
    hint: str = ""
    limit: int | None = None
    low: int | None = None
    high: int | None = None
    choices: tuple[str, ...] = ()
    is_words: bool = False
    item: "Declared | None" = None
    default: Any = None

    @property
    def starts_filled(self) -> bool:
        """True where a new row of a form begins with the default rather than empty."""
        return bool(self.default) and (self.type is int or bool(self.choices))


_KNOWN: dict[type[Part], Mapping[str, Declared]] = {}


def declared(part: type[Part]) -> Mapping[str, Declared]:
    """The fields of a part by name, in their order."""
    if part not in _KNOWN:
        _KNOWN[part] = _declared_by(part)
    return _KNOWN[part]


def _declared_by(part: type[Part]) -> Mapping[str, Declared]:
    hints = get_type_hints(part, include_extras=True)
    defaults = {field.name: field.default for field in fields(part)}
    return {name: _declared(hints[name], default) for name, default in defaults.items()}


def declared_at(part: type[Part], place: tuple[int | str, ...]) -> Declared:
    """The field at a place such as ("stops", 0, "think")."""
    found = Declared(part)
    for step in place:
        if isinstance(step, int):
            found = found.item or found
        elif isinstance(found.type, type) and issubclass(found.type, Part):
            found = declared(found.type)[step]
    return found


def paths_of_words(part: type[Part]) -> Iterator[str]:
    """Where people's own words stand in a document: "title", "stops.*.routes.*"."""
    for name, field in declared(part).items():
        yield from _paths_of_words(name, field)


def _paths_of_words(path: str, field: Declared) -> Iterator[str]:
    if field.is_words:
        yield path
    elif field.item is not None:
        yield from _paths_of_words(f"{path}.*", field.item)
    elif isinstance(field.type, type) and issubclass(field.type, Part):
        yield from (f"{path}.{inner}" for inner in paths_of_words(field.type))


def _declared(hint: Any, default: Any = None) -> Declared:
    base, *extras = get_args(hint) if get_origin(hint) is Annotated else (hint,)
    said = [one for one in reversed(extras) if isinstance(one, Field)]

    def first(name: str) -> Any:
        """What is said last stands above what it is made of."""
        return next((found for one in said if (found := getattr(one, name)) not in (None, "")), None)

    of = {
        "title": first("title") or "",
        "hint": first("example") or "",
        "limit": first("max_length"),
        "low": first("ge"),
        "high": first("le"),
        "is_words": Words in extras,
        "default": default,
    }
    if get_origin(base) is Literal:
        return Declared(str, **of | {"choices": get_args(base)})
    if isinstance(base, type) and issubclass(base, Enum):
        return Declared(str, **of | {"choices": tuple(one.value for one in base)})
    if get_origin(base) is tuple:
        return Declared(tuple, **of | {"item": _declared(get_args(base)[0]), "is_words": False})
    if get_origin(base) is UnionType:
        return Declared(next(one for one in get_args(base) if one is not type(None)), **of)
    return Declared(get_origin(base) or base, **of)
