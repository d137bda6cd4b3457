"""The decimal mark in what is typed: the other one is read too, and all numbers are turned when the mark is changed.

The engine reads numbers in one mark alone. A text is brought into that mark first, as far as it can mean one thing only:
3,5 is no number with thousands. 1,325 is, so it is read as that, and `read_both_ways` says so.
"""

import re
from collections.abc import Callable, Mapping

from django.http import QueryDict
from django.utils.translation import gettext as _

from routines.counting import Kind
from routines.plans.forms.draft import DraftFields, only, posted_fields, row_numbers
from routines.plans.forms.number_kinds import STYLES_OF_KIND

POINT, COMMA = ".", ","
NUMBERS = ("start", "step", "landmark", "story_goal")  # of the plan; its sentences stay as they were written
_RUN = re.compile(r"[0-9.,]*[0-9]")
_SWAPPED = str.maketrans(POINT + COMMA, COMMA + POINT)


def mark_of(typed: Mapping[str, list[str]]) -> str:
    """The decimal mark of a typed plan."""
    return only(dict(typed), "style-decimal_mark") or POINT


def in_mark(text: str, mark: str, kind: str) -> str:
    """The text with its numbers in this mark, where they can only be meant in the other: 3,5 and 1.325,50 for a point.

    Times of day are left alone: 8.20 is a time in some places.
    """
    if kind == Kind.CLOCK:
        return text
    other = _other(mark)
    only_so = re.compile(rf"(?:[1-9][0-9]{{0,2}}(?:{re.escape(mark)}[0-9]{{3}})+|[0-9]*){re.escape(other)}[0-9]+")

    def read(run: str) -> str:
        if not only_so.fullmatch(run) or _thousands(other).fullmatch(run):
            return run
        return run.replace(mark, "").replace(other, mark)

    return _each_run(text, read)


def turned(text: str, old: str, new: str, kind: str) -> str:
    """A text typed while the mark was `old`, as it is typed where the mark is `new`: 1,325.5 turns into 1.325,5."""
    if old == new or kind == Kind.CLOCK:
        return text
    whole = rf"(?:[1-9][0-9]{{0,2}}(?:{re.escape(new)}[0-9]{{3}})+|[0-9]*)"
    number = re.compile(rf"{whole}(?:{re.escape(old)}[0-9]+)?")
    return _each_run(in_mark(text, old, kind), lambda run: run.translate(_SWAPPED) if number.fullmatch(run) else run)


def read_both_ways(text: str, mark: str, kind: str) -> str:
    """A sentence where a number may be meant with thousands or with the other mark; nothing where there is no doubt."""
    if "decimal_mark" not in STYLES_OF_KIND.get(kind, ()):
        return ""
    run = next((found[0] for found in _RUN.finditer(text) if _thousands(_other(mark)).fullmatch(found[0])), "")
    if not run:
        return ""
    values = {"typed": run, "whole": re.sub("[^0-9]", "", run), "decimal": run.replace(_other(mark), mark)}
    return _("“%(typed)s” is read as %(whole)s. If you mean the decimal, write %(decimal)s.") % values


def read_posted(posted: QueryDict) -> DraftFields:
    """The plan's fields of a request, all their numbers in the mark that is now chosen.

    The page says in which mark they were typed; it is not kept.
    """
    typed = posted_fields(posted)
    old = posted.get("mark_before", "")
    return turned_fields(typed, old) if old in (POINT, COMMA) else typed


def turned_fields(typed: DraftFields, old: str) -> DraftFields:
    """A typed plan whose numbers were typed while the mark was `old`, in its present mark."""
    new, kind = mark_of(typed), only(typed, "kind")
    if new == old:
        return typed
    names = dict.fromkeys(NUMBERS, kind)
    for number in row_numbers(typed, "next"):
        row = f"next-{number}-"
        names |= {row + name: only(typed, row + "kind") for name in ("start", "step")}
    for number in row_numbers(typed, "expected"):
        if only(typed, f"expected-{number}-sort") == "slip":
            names[f"expected-{number}-words"] = kind
    changed = {name: [turned(text, old, new, of) for text in typed.get(name, [])] for name, of in names.items()}
    if only(typed, "style-thousands") == new:
        changed["style-thousands"] = [""]
    return {**typed, **{name: texts for name, texts in changed.items() if texts}}


def _other(mark: str) -> str:
    return COMMA if mark == POINT else POINT


def _thousands(gap: str) -> re.Pattern[str]:
    """One number that may be whole, with this between its thousands, or a decimal of three places."""
    return re.compile(rf"[1-9][0-9]{{0,2}}{re.escape(gap)}[0-9]{{3}}")


def _each_run(text: str, change: Callable[[str], str]) -> str:
    return _RUN.sub(lambda found: change(found[0]), text)
