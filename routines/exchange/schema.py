"""The published JSON Schema of a file of routines, made from what the plan document and the engine declare."""

from functools import cache
from typing import Any

from grade_bands.models import Area
from routines.counting.claims import FAMILIES
from routines.counting.kinds.registry import KINDS
from routines.counting.style import CHOICES, LARGEST_DENOMINATOR, MOST_PLACES
from routines.exchange.reading import ENTRIES_LIMIT
from routines.exchange.writing import FORMAT, VERSION
from routines.models.plan_document import SCHEMA
from routines.models.plan_reading import schema_of_plans

# What is not chosen from a list.
OTHER_STYLES: dict[str, dict[str, Any]] = {
    "places": {"type": ["integer", "null"], "minimum": 0, "maximum": MOST_PLACES},
    "currency": {"type": "string", "pattern": "^[A-Z]{3}$"},
    "small": {"type": ["string", "null"]},
    "large": {"type": ["string", "null"]},
    "halves": {"type": "boolean"},
    "decimals": {"type": ["boolean", "null"]},
    "over": {"type": "integer", "minimum": 1, "maximum": LARGEST_DENOMINATOR},
}


@cache
def schema() -> dict[str, Any]:
    """JSON Schema 2020-12. It names forms; what a count or a claim means is judged when a file is read."""
    plan = schema_of_plans()
    parts = plan.pop("$defs")
    plan["properties"] = {"schema": {"const": SCHEMA}, **plan["properties"]}
    plan["required"] = ["schema", *plan["required"]]
    plan["properties"]["area"]["enum"] = list(Area.values)
    parts["CountSection"]["properties"]["kind"]["enum"] = list(KINDS)
    parts["CountSection"]["properties"]["style"] |= {"additionalProperties": False, "properties": _styles()}
    parts["Target"]["properties"]["claim"] = {"$ref": "#/$defs/Claim"}
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Countfold routines",
        "description": (
            "A file of routines (plans of choral counts). It holds plan documents and nothing of the school it comes from. "
            "Numbers are text as typed and are read exactly by the kind they belong to."
        ),
        "type": "object",
        "required": ["format", "version", "routines"],
        "additionalProperties": False,
        "properties": {
            "format": {"const": FORMAT},
            "version": {"const": VERSION},
            "routines": {
                "type": "array",
                "minItems": 1,
                "maxItems": ENTRIES_LIMIT,
                "items": {"$ref": "#/$defs/Plan"},
            },
        },
        "$defs": {"Plan": plan, "Claim": _claim(), **parts},
    }


def _styles() -> dict[str, Any]:
    chosen = {name: {"enum": list(choices)} for name, choices in CHOICES.items()}
    chosen["thousands"]["enum"].insert(0, "auto")
    return {**chosen, **OTHER_STYLES}


def _claim() -> dict[str, Any]:
    return {
        "type": "object",
        "required": ["family"],
        "properties": {"family": {"enum": list(FAMILIES)}},
        "description": (
            "A pattern as data. Exact values are text in lowest terms, such as 3/4 or -7; blocks are lists of lists, "
            "one repeating block per line."
        ),
        "additionalProperties": True,
    }
