"""Reading plan documents by what `plan_document` declares, with a sentence at the path of what is wrong.

A document of an older schema goes through STEPS, one schema after the other, before it is read.
"""

from collections.abc import Callable, Mapping
from dataclasses import fields
from functools import cache
from typing import TYPE_CHECKING, Any

from django.utils.translation import gettext as _

from accounts.text import DEEPEST, is_text, mended
from routines.counting import CountError, Style
from routines.errors import say
from routines.models.declared import declared_at
from routines.models.plan_document import SCHEMA, Plan
from routines.models.plan_taking import NotTaken, taken

if TYPE_CHECKING:
    from pydantic import TypeAdapter
    from pydantic_core import ErrorDetails

STEPS: dict[int, Callable[[dict[str, Any]], dict[str, Any]]] = {}
"""By schema: what makes a document of the next schema of it, named after what changed. Nothing has changed yet."""

STYLE_NAMES = frozenset(field.name for field in fields(Style))


class PlanError(ValueError):
    """A plan document that cannot be read. `field` is the path of the part at fault, `str()` says what to do."""

    def __init__(self, field: str, message: str) -> None:
        super().__init__(message)
        self.field = field


def read_document(document: Any) -> Plan:
    """Read a document whole. Raises PlanError naming the part that is wrong; never drops a part silently."""
    if not isinstance(document, Mapping):
        raise PlanError("plan", '"plan" should be a group of named parts.')
    _require_text(document)
    parts = {name: part for name, part in _brought_up(document).items() if name != "schema"}
    try:
        plan = taken(parts)
    except NotTaken:
        plan = _validated(parts)
    _require_sense(plan)
    return plan


def _validated(parts: dict[str, Any]) -> Plan:
    from pydantic import ValidationError  # see plan_field.py

    try:
        return _reader().validate_python(parts)
    except ValidationError as error:
        raise _said(error.errors(include_url=False)[0]) from error


@cache
def _reader() -> "TypeAdapter[Plan]":
    from pydantic import TypeAdapter

    return TypeAdapter(Plan)


def schema_of_plans() -> dict[str, Any]:
    """The JSON Schema of one plan, with its parts under "$defs"."""
    return _reader().json_schema(ref_template="#/$defs/{model}")


def _brought_up(document: Mapping[str, Any]) -> Mapping[str, Any]:
    schema = document.get("schema")
    while type(schema) is int and schema in STEPS:
        document = STEPS[schema](dict(document))
        schema = document.get("schema")
    if type(schema) is not int or schema != SCHEMA:
        raise PlanError(
            "schema",
            _("This plan has schema %(schema)s; this school's Countfold reads %(newest)s.")
            % {"schema": str(schema)[:20], "newest": SCHEMA},
        )
    return document


def _require_sense(plan: Plan) -> None:
    """What its parts must be together: a count that can be folded so, targets that are claims, stops within it."""
    for count in (plan.count, *(following.count for following in plan.next_counts if following.count)):
        for name in count.style:
            if name not in STYLE_NAMES:
                raise PlanError("style", _('There is no style called "%(name)s".') % {"name": name})
    try:
        plan.grid()
        plan.claims()
        for following in plan.next_counts:
            following.grid()
    except CountError as error:
        raise PlanError(error.field, say(error)) from error
    for stop in plan.stops:
        if stop.after > plan.count.terms:
            raise PlanError(
                "stops",
                _("A stop comes after count %(after)s, but there are %(terms)s counts.")
                % {"after": stop.after, "terms": plan.count.terms},
            )


def _require_text(value: Any, path: str = "", depth: int = DEEPEST) -> None:
    """Every text of a document is one (see `accounts.text`), in parts that are read and in parts that are only kept."""
    if isinstance(value, str) and not is_text(value):
        raise PlanError(
            mended(path), _('"%(path)s" holds signs that cannot be shown; type it again.') % {"path": mended(path)}
        )
    parts = value.items() if isinstance(value, Mapping) else enumerate(value) if isinstance(value, list) else ()
    for name, part in parts:
        here = f"{path}.{name}" if path else str(name)
        if not depth:
            raise PlanError(mended(here[:60]), _("This plan holds parts inside parts that no plan has."))
        if isinstance(name, str):
            _require_text(name, here, depth)
        _require_text(part, here, depth - 1)


# What is wrong, said


def _said(error: "ErrorDetails") -> PlanError:
    """The sentence for one thing that is wrong, by its code and its place."""
    place, code, given = error["loc"], error["type"], error["input"]
    if code == "unexpected_keyword_argument":
        *group, name = place
        where = f'"{_path(tuple(group))}"' if group else _("A plan")
        return PlanError(
            _path(place)[:80],
            _('%(where)s has no part called "%(name)s".') % {"where": where, "name": str(name)[:60]},
        )
    path = _path(place)
    if path == "title" and code in ("missing", "string_too_short"):
        return PlanError("title", _("Give the count a title, so that colleagues can find it."))
    if code == "string_too_long":
        limit = error["ctx"]["max_length"]
        return PlanError(
            path,
            _('"%(path)s" is %(number)s characters long; %(limit)s is the most.')
            % {"path": path, "number": len(given), "limit": limit},
        )
    return PlanError(path, _('"%(path)s" should be %(what)s.') % {"path": path, "what": _should_be(place)})


def _should_be(place: tuple[int | str, ...]) -> str:
    field = declared_at(Plan, place)
    if field.choices:
        return _("one of %(choices)s") % {"choices": ", ".join(field.choices)}
    if field.type is tuple:
        return _("a list of at most %(limit)s") % {"limit": field.limit}
    if field.type is int:
        return _("a whole number from %(low)s to %(high)s") % {"low": field.low, "high": field.high}
    return "text" if field.type is str else "a group of named parts"


def _path(place: tuple[int | str, ...]) -> str:
    return ".".join(str(step) for step in place)
