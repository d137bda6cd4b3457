"""The plan form as typed: flat field names with lists of texts, readable or not. This is what autosave keeps.

Rows are named by section and number: "stops-0-question". Everything a browser may send goes through `posted_fields`.
"""

import json
import re
from collections.abc import Iterable, Mapping
from typing import Any

from django.http import QueryDict

from accounts.text import mended
from routines.models.declared import declared
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, NextCount, Part, Plan, Stop, Story

DraftFields = dict[str, list[str]]

# The names of the form's fields are those of the document, a part's inside it joined to it: "story_text", "stops-0-after".
ABOUT = (
    *(name for name, field in declared(Plan).items() if field.type is str),
    *(f"story_{name}" for name in declared(Story)),
    "standards",
)
COUNT = (*(name for name in declared(CountSection) if name != "style"), *declared(Fold))
ROWS: dict[str, tuple[str, ...]] = {
    "expected": tuple(declared(ExpectedAnswer)),
    "stops": tuple(declared(Stop)),
    "next": (
        *(name for name in declared(NextCount) if name not in ("count", "fold")),
        *COUNT[:-1],
    ),  # it leads with none
}
CHOICES = ("target", "lit", "lit_before", "lit_by_itself", "words_of", "words", "based_on", "all_found")
HIGHEST_ROW = 999  # rows are named by up to three digits

_KNOWN = re.compile(
    rf"(?:{'|'.join((*ABOUT, *COUNT, *CHOICES))}|style-[a-z_]+"
    + "".join(rf"|{section}-[0-9]{{1,3}}-(?:{'|'.join(names)})" for section, names in ROWS.items())
    + ")"
)


def posted_fields(posted: QueryDict) -> DraftFields:
    """The plan's own fields of a request, whole but for what is no text: what is too much is said, never cut."""
    return {name: [mended(text) for text in texts] for name, texts in posted.lists() if _KNOWN.fullmatch(name)}


def read_fields(stored: object) -> DraftFields:
    """What a draft holds, whatever wrote it: only known names with lists of texts."""
    if not isinstance(stored, Mapping):
        return {}
    return {
        name: [mended(text) for text in texts if isinstance(text, str)]
        for name, texts in stored.items()
        if isinstance(name, str) and _KNOWN.fullmatch(name) and isinstance(texts, list)
    }


def read_draft(fields: object) -> tuple[DraftFields, list[dict[str, Any]]]:
    """What a draft holds, whatever wrote it: the form as typed, and the changes that can be undone, newest last."""
    if not isinstance(fields, Mapping):
        return {}, []
    steps = fields.get("steps")
    listed = [step for step in steps if isinstance(step, Mapping)] if isinstance(steps, list) else []
    return read_fields(fields.get("typed")), [
        {
            "section": str(step.get("section", "")),
            "said": mended(str(step.get("said", ""))),
            "fields": read_fields(step.get("fields")),
        }
        for step in listed
    ]


def fields_of(plan: Plan) -> DraftFields:
    """The plan form filled from a saved plan."""
    typed: DraftFields = {
        **{name: _texts(getattr(plan, name)) for name, field in declared(Plan).items() if field.type is str},
        **{f"story_{name}": _texts(getattr(plan.story, name)) for name in declared(Story)},
        "standards": [", ".join(plan.standards)],
        **count_fields(plan.count),
        **fold_fields(plan.fold),
        "target": [claim_text(target.claim) for target in plan.targets],
        "words_of": [claim_text(target.claim) for target in plan.targets],
        "words": [target.words for target in plan.targets],
    }
    for number, answer in enumerate(plan.expected):
        add_row(typed, "expected", number, **{**_values(answer), "n": answer.n or ""})
    for number, stop in enumerate(plan.stops):
        add_row(typed, "stops", number, **_values(stop))
    for number, following in enumerate(plan.next_counts):
        count, fold = following.count or CountSection(kind=plan.count.kind, start="", step=""), following.fold or Fold()
        add_row(typed, "next", number, **_values(following), **_values(count), **_values(fold))
    return typed


def _values(part: Part) -> dict[str, object]:
    return {name: getattr(part, name) for name in declared(type(part))}


def _texts(value: object) -> list[str]:
    """A value as typed; a list of texts one a line."""
    return ["\n".join(value) if isinstance(value, tuple) else str(value)]


def count_fields(count: CountSection) -> DraftFields:
    style = {f"style-{name}": ["" if value is None else str(value)] for name, value in count.style.items()}
    return {**{name: _texts(value) for name, value in _values(count).items() if name != "style"}, **style}


def fold_fields(fold: Fold) -> DraftFields:
    return {name: _texts(value) for name, value in _values(fold).items()}


def claim_text(claim: Mapping[str, Any]) -> str:
    """A claim as the value of a tick box: one text per claim, whatever the order of its keys."""
    return json.dumps(dict(claim), sort_keys=True, separators=(",", ":"))


def only(typed: DraftFields, name: str, default: str = "") -> str:
    return typed.get(name, [default])[-1] if typed.get(name) else default


def lit_was_chosen(typed: DraftFields) -> bool:
    """Whether somebody lit or put out a pattern; False where the boxes are as the page filled them by itself."""
    if "lit" not in typed:
        return False
    return "lit_by_itself" not in typed or set(typed["lit"]) != {"", *typed.get("lit_before", [])}


# Rows


def row_numbers(typed: Mapping[str, list[str]], section: str) -> list[int]:
    """The numbers of a section's rows, in order."""
    prefix = f"{section}-"
    found = {int(name.split("-")[1]) for name in typed if name.startswith(prefix)}
    return sorted(found)


def add_row(typed: DraftFields, section: str, number: int | None = None, **values: object) -> int:
    """Write a row's fields; without a number after the last one. Fields left out are empty."""
    if number is None:
        number = max(row_numbers(typed, section), default=-1) + 1
    for name in ROWS[section]:
        typed[f"{section}-{number}-{name}"] = _texts(values.get(name, ""))
    return number


def rows(typed: DraftFields, section: str) -> list[dict[str, str]]:
    """The rows of a section as plain texts."""
    return [
        {name: only(typed, f"{section}-{number}-{name}") for name in ROWS[section]}
        for number in row_numbers(typed, section)
    ]


def with_rows(typed: DraftFields, section: str, new_rows: Iterable[Mapping[str, object]]) -> DraftFields:
    """The same typed plan with a section's rows replaced and numbered anew."""
    changed = {name: texts for name, texts in typed.items() if not name.startswith(f"{section}-")}
    for number, row in enumerate(new_rows):
        add_row(changed, section, number, **row)
    return changed
