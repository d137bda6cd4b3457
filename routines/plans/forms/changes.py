"""What one button changes in a typed plan: a row more or less, another fold, another count. Each can be undone."""

from dataclasses import dataclass
from typing import Any

from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.text import read_json
from accounts.typed_numbers import typed_whole
from routines.counting import Kind
from routines.counting.count import MOST_TERMS
from routines.models.declared import declared
from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, NextCount, Stop
from routines.plans.forms.draft import (
    COUNT,
    HIGHEST_ROW,
    ROWS,
    DraftFields,
    add_row,
    lit_was_chosen,
    only,
    row_numbers,
    rows,
    with_rows,
)
from routines.plans.forms.limits import rows_left, section_is_full

ADDED = {
    "expected": gettext_lazy("A guess was added."),
    "stops": gettext_lazy("A stop was added."),
    "next": gettext_lazy("A next count was added."),
}
TAKEN_OUT = {
    "expected": gettext_lazy("The guess was taken out."),
    "stops": gettext_lazy("The stop was taken out."),
    "next": gettext_lazy("The next count was taken out."),
}
NEW_ROWS: dict[str, dict[str, object]] = {
    section: {name: field.default for part in parts for name, field in declared(part).items() if field.starts_filled}
    for section, parts in {
        "expected": (ExpectedAnswer,),
        "stops": (Stop,),
        "next": (NextCount, CountSection, Fold),
    }.items()
}


class UnknownChange(ValueError):
    """A button that this page does not have."""


@dataclass(frozen=True, slots=True)
class Change:
    """`typed` after the change; `parts` are the sections that look different now; `step` says how to undo it.

    `refused` says why nothing was changed. `arrived` is what was taken: a row's number, a claim as text, or a part's name.
    """

    typed: DraftFields
    parts: tuple[str, ...]
    step: dict[str, Any] | None
    focus: str = ""
    refused: str = ""
    arrived: int | str | None = None


def apply_change(typed: DraftFields, asked: str, steps: list[dict[str, Any]]) -> Change:
    """asked: what the button says, such as "stops.add", "stops.remove.2", "fold {...}". Raises UnknownChange."""
    what, _, given = asked.partition(" ")
    if what == "undo":
        return _undone(typed, steps)
    if what in ("fold", "count"):
        return _another_count(typed, what, _values(given))
    section, _, verb = what.partition(".")
    if section in ROWS and verb == "add":
        return _row_added(typed, section, _values(given) if given else {})
    if section in ROWS and verb.startswith("remove."):
        return _row_removed(typed, section, verb.removeprefix("remove."))
    if section == "target" and verb == "add":
        return _target_added(typed, given)
    if section == "standards" and verb == "add":
        return _standard_added(typed, given)
    raise UnknownChange(asked)


def _values(given: str) -> dict[str, Any]:
    try:
        values = read_json(given)
    except ValueError as error:
        raise UnknownChange(given) from error
    if not isinstance(values, dict) or not all(isinstance(value, str | int) for value in values.values()):
        raise UnknownChange(given)
    return values


def _step(typed: DraftFields, section: str, said: str) -> dict[str, Any]:
    """Remembers a section's fields as they were."""
    fields = {name: texts for name, texts in typed.items() if _belongs(name, section)}
    return {"section": section, "said": said, "fields": fields}


def _belongs(name: str, section: str) -> bool:
    if section == "count":
        return name in COUNT or name.startswith("style-")
    return name == section or name.startswith(f"{section}-")


def _undone(typed: DraftFields, steps: list[dict[str, Any]]) -> Change:
    if not steps:
        return Change(typed, (), None)
    step = steps.pop()
    section = step.get("section", "")
    kept = {name: texts for name, texts in typed.items() if not _belongs(name, section)}
    return Change({**kept, **step.get("fields", {})}, (section,), None)


def _another_count(typed: DraftFields, what: str, values: dict[str, Any]) -> Change:
    names = ("line_length", "fill", "lead") if what == "fold" else COUNT
    changed = {**typed, **{name: [str(values[name])] for name in names if name in values}}
    said = _("The fold was changed.") if what == "fold" else _("The count was changed.")
    return Change(changed, ("count",), _step(typed, "count", said), arrived=what)


def _row_added(typed: DraftFields, section: str, values: dict[str, Any]) -> Change:
    if not rows_left(typed, section):
        return Change(typed, (section,), None, refused=section_is_full(section))
    row = {**NEW_ROWS[section], **{name: value for name, value in values.items() if name in ROWS[section]}}
    if section == "next" and "kind" not in values:
        row["kind"] = only(typed, "kind", Kind.WHOLE.value)
    if section == "stops" and "after" not in values:
        row["after"] = next_stop(typed)
    changed = dict(typed)
    number = add_row(changed, section, **row)
    first = {"expected": "words", "stops": "question", "next": "why"}[section]
    taken = any(name in values for name in (first, "reply", "answer"))
    if taken and rows(changed, section)[-1] in rows(typed, section):  # the same suggestion, pressed twice
        return Change(typed, (section,), None)
    if section == "stops" and taken:
        row_taken = rows(changed, section)[-1]
        changed = in_counting_order(changed)
        number = rows(changed, section).index(row_taken)
    focus = "" if taken else f"id_{section}-{number}-{first}"
    return Change(
        changed,
        (section,),
        _step(typed, section, str(ADDED[section])),
        focus,
        arrived=number if taken else None,
    )


def next_stop(typed: DraftFields) -> int:
    """A place for one more stop: a line further than the last one, the end at most."""
    length, terms = (typed_whole(only(typed, name), 1, MOST_TERMS) or 5 for name in ("line_length", "terms"))
    places = [place for row in rows(typed, "stops") if (place := typed_whole(row["after"], 1, MOST_TERMS))]
    return max(1, min(max(places, default=length) + length, terms))


def in_counting_order(typed: DraftFields) -> DraftFields:
    """Stops by the count after which they come; those that cannot be read yet stay last."""

    def place(row: dict[str, str]) -> int:
        return typed_whole(row["after"], 1, MOST_TERMS) or MOST_TERMS + 1

    ordered = sorted(rows(typed, "stops"), key=place)
    return with_rows(typed, "stops", ordered)


def _row_removed(typed: DraftFields, section: str, number: str) -> Change:
    numbers = row_numbers(typed, section)
    gone = typed_whole(number, 0, HIGHEST_ROW)
    if gone not in numbers:
        return Change(typed, (section,), None)
    kept = [row for at, row in zip(numbers, rows(typed, section), strict=True) if at != gone]
    said = str(TAKEN_OUT[section])
    return Change(with_rows(typed, section, kept), (section,), _step(typed, section, said), f"add-{section}")


def _target_added(typed: DraftFields, claim: str) -> Change:
    targets = typed.get("target", [])
    if claim in targets:
        return Change(typed, ("target",), None)
    changed = {**typed, "target": [*targets, claim]}
    if lit_was_chosen(typed):  # else targets light up by themselves
        changed["lit"] = [*typed["lit"], claim]
    return Change(changed, ("target",), _step(typed, "target", _("A pattern was ticked.")), arrived=claim)


def _standard_added(typed: DraftFields, code: str) -> Change:
    codes = [part.strip() for part in only(typed, "standards").split(",") if part.strip()]
    if code and code not in codes:
        codes.append(code)
    return Change(
        {**typed, "standards": [", ".join(codes)]},
        ("standards",),
        _step(typed, "standards", _("A standard was added.")),
        arrived="standards",
    )
