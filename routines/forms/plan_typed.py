"""The plan form as typed: flat field names with lists of texts, readable or not. This is what autosave keeps.

Rows are named by section and number: "stops-0-question". Everything a browser may send goes through `clean_typed`.
"""

import json
import re
from collections.abc import Iterable, Mapping
from typing import Any

from django.http import QueryDict

from accounts.text import mended
from routines.plan_document import CountTyped, Fold, Plan

Typed = dict[str, list[str]]

ABOUT = (
    "title",
    "grade",
    "area",
    "language",
    "story_text",
    "story_group",
    "story_goal",
    "landmark",
    "standards",
    "notes",
)
COUNT = ("kind", "start", "step", "terms", "line_length", "fill", "lead")
ROWS = {
    "expected": ("words", "reply", "sort", "n"),
    "stops": ("after", "question", "answer", "routes", "think", "partner", "share"),
    "next": ("outcome", "why", "kind", "start", "step", "terms", "line_length", "fill"),
}
CHOICES = ("target", "lit", "words_of", "words", "based_on", "all_found")
HIGHEST_ROW = 999  # rows are named by up to three digits

_KNOWN = re.compile(
    rf"(?:{'|'.join((*ABOUT, *COUNT, *CHOICES))}|style-[a-z_]+"
    + "".join(rf"|{section}-[0-9]{{1,3}}-(?:{'|'.join(names)})" for section, names in ROWS.items())
    + ")"
)


def clean_typed(posted: QueryDict) -> Typed:
    """The plan's own fields of a request, whole but for what is no text: what is too much is said, never cut."""
    return {name: [mended(text) for text in texts] for name, texts in posted.lists() if _KNOWN.fullmatch(name)}


def read_typed(stored: object) -> Typed:
    """What a draft holds, whatever wrote it: only known names with lists of texts."""
    if not isinstance(stored, Mapping):
        return {}
    return {
        name: [mended(text) for text in texts if isinstance(text, str)]
        for name, texts in stored.items()
        if isinstance(name, str) and _KNOWN.fullmatch(name) and isinstance(texts, list)
    }


def read_draft(fields: object) -> tuple[Typed, list[dict[str, Any]]]:
    """What a draft holds, whatever wrote it: the form as typed, and the changes that can be undone, newest last."""
    if not isinstance(fields, Mapping):
        return {}, []
    steps = fields.get("steps")
    listed = [step for step in steps if isinstance(step, Mapping)] if isinstance(steps, list) else []
    return read_typed(fields.get("typed")), [
        {
            "section": str(step.get("section", "")),
            "said": mended(str(step.get("said", ""))),
            "fields": read_typed(step.get("fields")),
        }
        for step in listed
    ]


def typed_from(plan: Plan) -> Typed:
    """The plan form filled from a saved plan."""
    typed: Typed = {
        "title": [plan.title],
        "grade": [plan.grade],
        "area": [plan.area],
        "language": [plan.language],
        "story_text": [plan.story.text],
        "story_group": [plan.story.group],
        "story_goal": [plan.story.goal],
        "landmark": [plan.landmark],
        "standards": [", ".join(plan.standards)],
        "notes": [plan.notes],
        **count_fields(plan.count),
        **fold_fields(plan.fold),
        "target": [claim_text(target.claim) for target in plan.targets],
        "words_of": [claim_text(target.claim) for target in plan.targets],
        "words": [target.words for target in plan.targets],
    }
    for number, answer in enumerate(plan.expected):
        add_row(typed, "expected", number, words=answer.words, reply=answer.reply, sort=answer.sort, n=answer.n or "")
    for number, stop in enumerate(plan.stops):
        add_row(
            typed,
            "stops",
            number,
            after=stop.after,
            question=stop.question,
            answer=stop.answer,
            routes="\n".join(stop.routes),
            think=stop.think,
            partner=stop.partner,
            share=stop.share,
        )
    for number, following in enumerate(plan.next_counts):
        count, fold = following.count or CountTyped(kind=plan.count.kind, start="", step=""), following.fold or Fold()
        add_row(
            typed,
            "next",
            number,
            outcome=following.outcome,
            why=following.why,
            kind=count.kind,
            start=count.start,
            step=count.step,
            terms=count.terms,
            line_length=fold.line_length,
            fill=fold.fill,
        )
    return typed


def count_fields(count: CountTyped) -> Typed:
    style = {f"style-{name}": ["" if value is None else str(value)] for name, value in count.style.items()}
    return {
        "kind": [count.kind],
        "start": [count.start],
        "step": [count.step],
        "terms": [str(count.terms)],
        **style,
    }


def fold_fields(fold: Fold) -> Typed:
    return {"line_length": [str(fold.line_length)], "fill": [fold.fill], "lead": [str(fold.lead)]}


def claim_text(claim: Mapping) -> str:
    """A claim as the value of a tick box: one text per claim, whatever the order of its keys."""
    return json.dumps(dict(claim), sort_keys=True, separators=(",", ":"))


def only(typed: Typed, name: str, default: str = "") -> str:
    return typed.get(name, [default])[-1] if typed.get(name) else default


# Rows


def row_numbers(typed: Mapping[str, list[str]], section: str) -> list[int]:
    """The numbers of a section's rows, in order."""
    prefix = f"{section}-"
    found = {int(name.split("-")[1]) for name in typed if name.startswith(prefix)}
    return sorted(found)


def add_row(typed: Typed, section: str, number: int | None = None, **values: object) -> int:
    """Write a row's fields; without a number after the last one. Fields left out are empty."""
    if number is None:
        number = max(row_numbers(typed, section), default=-1) + 1
    for name in ROWS[section]:
        typed[f"{section}-{number}-{name}"] = [str(values.get(name, ""))]
    return number


def rows(typed: Typed, section: str) -> list[dict[str, str]]:
    """The rows of a section as plain texts."""
    return [
        {name: only(typed, f"{section}-{number}-{name}") for name in ROWS[section]}
        for number in row_numbers(typed, section)
    ]


def with_rows(typed: Typed, section: str, new_rows: Iterable[Mapping[str, object]]) -> Typed:
    """The same typed plan with a section's rows replaced and numbered anew."""
    changed = {name: texts for name, texts in typed.items() if not name.startswith(f"{section}-")}
    for number, row in enumerate(new_rows):
        add_row(changed, section, number, **row)
    return changed
