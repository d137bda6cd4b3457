"""Every kind of lesson event: the parts of its data, within which bounds, and which devices may send and hear it.

The table in docs/lessons.md is compared with these declarations by a test. A part that may be null may be left out.
"""

import unicodedata
import uuid
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any

from django.utils.translation import gettext as _

from routines.models import Lesson, TargetOutcome

PAST_THE_END = 50
"""So many terms past the end of a plan may be written, marked or guessed."""

CELL_TEXT, PHRASE, NOTICE = 40, 280, 280
PHRASE_CELLS = 12
MARKS = ("tint", "ring", "underline", "hatch")
VOICES = ("strong", "mixed", "faded", "alone")
SEEN = (*TargetOutcome.Seen.values, "")
LISTED = 40
"""A plan lists at most so many stops, targets or answers."""
LINES = 250
THINK_SECONDS = 1800
"""As long as a plan may give a class to share."""


class EventRefused(ValueError):
    """An event that is not taken. `reason` is a code of docs/lessons.md, `str()` a sentence for the teacher."""

    def __init__(self, reason: str, words: str) -> None:
        super().__init__(words)
        self.reason = reason


def of_another_version(part: str) -> str:
    """The sentence for what only a page older or newer than the server sends; `part` is for whoever mends it."""
    words = _("This page and the server no longer match (%(part)s). Load it again after the lesson.")
    return words % {"part": part[:40]}


@dataclass(frozen=True, slots=True)
class Bounds:
    """What the bounds of parts depend on: the highest term that may be named."""

    last_term: int


Check = Callable[[Any, Bounds], None]


@dataclass(frozen=True, slots=True)
class Part:
    check: Check
    nullable: bool = False


@dataclass(frozen=True, slots=True)
class Kind:
    """Who may send and hear it beside the lesson's teacher, who sends and hears everything. both_ways: `from` and `to` differ."""

    parts: Mapping[str, Part]
    board_sends: bool = True
    board_hears: bool = True
    substitute_sends: bool = True
    both_ways: bool = False

    def check(self, data: Mapping[str, Any], bounds: Bounds) -> None:
        """Raises: EventRefused for a part that is missing, unknown, of the wrong type or out of bounds."""
        for name in data:
            if name not in self.parts:
                raise EventRefused("malformed", of_another_version(name))
        for name, part in self.parts.items():
            value = data.get(name)
            if value is None:
                if not part.nullable:
                    raise EventRefused("malformed", of_another_version(name))
            else:
                part.check(value, bounds)
        if self.both_ways and data["from"] == data["to"]:
            raise EventRefused("malformed", _("A jump goes from one count to another."))
        if "from" in self.parts and not self.both_ways and data["from"] > data["to"]:
            raise EventRefused("malformed", _("A stretch goes from its first count to its last."))


def _whole(low: int, high: int) -> Part:
    def check(value: Any, bounds: Bounds) -> None:
        if isinstance(value, bool) or not isinstance(value, int) or not low <= value <= high:
            words = _("A whole number from %(low)s to %(high)s is needed here.") % {"low": low, "high": high}
            raise EventRefused("malformed", words)

    return Part(check)


def _one_of(*choices: str) -> Part:
    def check(value: Any, bounds: Bounds) -> None:
        if value not in choices:
            listed = ", ".join(filter(None, choices))
            raise EventRefused("malformed", _("One of these is needed here: %(choices)s.") % {"choices": listed})

    return Part(check)


def _text(limit: int) -> Part:
    def check(value: Any, bounds: Bounds) -> None:
        if not isinstance(value, str):
            raise EventRefused("malformed", _("A text is needed here."))
        refuse_unwritable(value)
        if not value.strip():
            raise EventRefused("text", _("Nothing is written there."))
        if len(value) > limit:
            words = _("That is %(length)s characters long; %(limit)s is the most here.")
            raise EventRefused("text", words % {"length": len(value), "limit": limit})

    return Part(check)


UNWRITABLE = ("Cc", "Cs", "Zl", "Zp")
TURNING = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"


def refuse_unwritable(text: str) -> None:
    """Line breaks and other control characters, turned writing directions and half characters are no part of what is said."""
    for sign in text:
        if unicodedata.category(sign) in UNWRITABLE or sign in TURNING:
            raise EventRefused("text", _("The text holds a sign that cannot be shown. Type it again."))


def _term(value: Any, bounds: Bounds) -> None:
    if isinstance(value, bool) or not isinstance(value, int):
        raise EventRefused("malformed", _("The number of a count is a whole number."))
    if not 1 <= value <= bounds.last_term:
        words = _("There is no count number %(number)s here; the last is %(last)s.")
        raise EventRefused("unknown-term", words % {"number": value, "last": bounds.last_term})


def _terms(value: Any, bounds: Bounds) -> None:
    if not isinstance(value, list) or not 1 <= len(value) <= PHRASE_CELLS:
        raise EventRefused("malformed", _("A phrase is pinned to 1 to %(most)s counts.") % {"most": PHRASE_CELLS})
    for n in value:
        _term(n, bounds)


def _identity(value: Any, bounds: Bounds) -> None:
    if not is_identity(value):
        raise EventRefused("malformed", _("The event that is meant is not named properly."))


def is_identity(value: Any) -> bool:
    """A UUID in its one usual form, so that equal ids are equal texts."""
    try:
        return isinstance(value, str) and str(uuid.UUID(value)) == value
    except ValueError:
        return False


def _day(value: Any, bounds: Bounds) -> None:
    try:
        date.fromisoformat(value)
    except (TypeError, ValueError):
        raise EventRefused("malformed", _("The day of the lesson cannot be read.")) from None


def _flag(value: Any, bounds: Bounds) -> None:
    if not isinstance(value, bool):
        raise EventRefused("malformed", _("Yes or no is needed here."))


TERM, EVENT = Part(_term), Part(_identity)
OVER = Part(_identity, nullable=True)
STRETCH = {"from": TERM, "to": TERM}
ROW_ID = _whole(1, 2**63 - 1)

KINDS: dict[str, Kind] = {
    "lesson.open": Kind(
        {
            "version": ROW_ID,
            "plan": _text(64),
            "class_group": ROW_ID,
            "teacher": ROW_ID,
            "taught_on": Part(_day),
            "practice": Part(_flag),
            "surface": _one_of(*Lesson.Surface.values),
        },
        board_sends=False,
        board_hears=False,
        substitute_sends=False,
    ),
    "term.write": Kind({"n": TERM, "text": _text(CELL_TEXT), "over": OVER}),
    "term.correct": Kind({"n": TERM, "text": _text(CELL_TEXT), "over": OVER}),
    "term.left-out": Kind({"n": TERM, "over": OVER}),
    "filled": Kind(STRETCH, board_sends=False),
    "recount": Kind(STRETCH),
    "mark.add": Kind(
        {"n": TERM, "mark": _one_of(*MARKS), "place": Part(_whole(0, CELL_TEXT - 1).check, nullable=True)}
    ),
    "mark.remove": Kind({"event": EVENT}),
    "jump.add": Kind(STRETCH, both_ways=True),
    "phrase.add": Kind({"text": _text(PHRASE), "cells": Part(_terms)}),
    "predict": Kind({"n": TERM, "text": _text(CELL_TEXT)}),
    "cover": Kind({"n": TERM}),
    "uncover": Kind({"n": TERM}),
    "think": Kind({"seconds": _whole(0, THINK_SECONDS)}),
    "stop.enter": Kind({"stop": _whole(0, LISTED - 1)}),
    "stop.leave": Kind({"stop": _whole(0, LISTED - 1)}),
    "show": Kind({"line": _whole(0, LINES)}),
    "notice.add": Kind(
        {"text": _text(NOTICE), "expected": Part(_whole(0, LISTED - 1).check, nullable=True)},
        board_sends=False,
        board_hears=False,
    ),
    "notice.edit": Kind({"event": EVENT, "text": _text(NOTICE)}, board_sends=False, board_hears=False),
    "voice": Kind({**STRETCH, "how": _one_of(*VOICES)}, board_sends=False, board_hears=False),
    "target": Kind({"position": _whole(0, LISTED - 1), "seen": _one_of(*SEEN)}, board_sends=False, board_hears=False),
    "undo": Kind({"event": EVENT}),
    "lesson.end": Kind({}, board_sends=False, substitute_sends=False),
    "lesson.reopen": Kind({}, board_sends=False, substitute_sends=False),
}

TAKES_BACK = frozenset({"undo", "mark.remove"})
"""Kinds that are about another event: who may not send or hear that one may not send or hear these."""

WRITES = frozenset({"term.write", "term.correct", "term.left-out", "filled"})
"""From the first of these on a lesson counts in coverage."""
