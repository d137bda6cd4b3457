"""A lesson on the board told in a few steps, and the events that board and lectern would have made of it.

Every event goes through the same door as those of a real lesson; only the hands are missing.
"""

import uuid
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from routines.counting import Count

Step = tuple[Any, ...]

# Seconds that each step takes, as a class takes them: five a count, longer where somebody comes to the board.
COUNTED, INKED, TOLD, SAID = 5, 8, 6, 7


def count_to(n: int) -> Step:
    """The class counts on to the n-th, all of it right."""
    return ("count_to", n)


def said(n: int, text: str) -> Step:
    """Something else was said at the n-th, and written as said."""
    return ("said", n, text)


def corrected(n: int) -> Step:
    """The class corrects what stands at the n-th."""
    return ("corrected", n)


def left_out(n: int) -> Step:
    return ("left_out", n)


def at_stop(stop: int, *, think: int = 20, talk: int = 75) -> Step:
    """The class stops: think time, then talk. What happens at the stop follows; `go_on` ends it. Units: seconds."""
    return ("at_stop", stop, think, talk)


def go_on(stop: int) -> Step:
    return ("go_on", stop)


def marked(mark: str, *terms: int, place: int | None = None) -> Step:
    return ("marked", mark, terms, place)


def jump(first: int, last: int) -> Step:
    return ("jump", first, last)


def phrase(text: str, *cells: int) -> Step:
    return ("phrase", text, cells)


def predicted(n: int, text: str) -> Step:
    return ("predicted", n, text)


def covered(*terms: int) -> Step:
    return ("covered", terms)


def uncovered(*terms: int) -> Step:
    return ("uncovered", terms)


def recounted(first: int, last: int) -> Step:
    return ("recounted", first, last)


def noticed(text: str, expected: int | None = None) -> Step:
    """`expected` is the position of the planned answer that was heard."""
    return ("noticed", text, expected)


def voice(first: int, last: int, how: str) -> Step:
    return ("voice", first, last, how)


def target(position: int, seen: str) -> Step:
    return ("target", position, seen)


@dataclass(slots=True)
class _Recording:
    """The two devices while the lesson is told: one clock for both, one Lamport counter, what stands in each cell."""

    count: Count
    begins: datetime
    events: list[dict[str, Any]] = field(default_factory=list)
    seconds: int = 0
    written: dict[int, str] = field(default_factory=dict)
    board: str = field(default_factory=lambda: f"board-{uuid.uuid4().hex[:8]}")
    lectern: str = field(default_factory=lambda: f"lectern-{uuid.uuid4().hex[:8]}")

    def add(self, device: str, kind: str, **data: Any) -> str:
        identity = str(uuid.uuid4())
        self.events.append(
            {
                "v": 1,
                "id": identity,
                "t": len(self.events) + 2,  # 1 is the opening of the lesson
                "device": device,
                "at": self.begins + timedelta(seconds=self.seconds),
                "ms": self.seconds * 1000,
                "kind": kind,
                "data": data,
            }
        )
        return identity

    def write(self, n: int, text: str) -> None:
        self.seconds += COUNTED
        self.written[n] = self.add(self.board, "term.write", n=n, text=text, over=None)


def events_of(script: Sequence[Step], *, count: Count, begins: datetime) -> list[dict[str, Any]]:
    """The events of a script, in the order in which they happened; the lesson ends with the last step."""
    told = _Recording(count, begins)
    for step in script:
        _record(told, step)
    told.seconds += TOLD
    told.add(told.lectern, "lesson.end")
    return told.events


def _record(told: _Recording, step: Step) -> None:
    board, lectern = told.board, told.lectern
    match step:
        case ("count_to", n):
            for term in range(max(told.written, default=0) + 1, n + 1):
                told.write(term, told.count.text(term))
        case ("said", n, text):
            told.write(n, text)
        case ("corrected", n):
            told.seconds += SAID
            text = told.count.text(n)
            told.written[n] = told.add(board, "term.correct", n=n, text=text, over=told.written[n])
        case ("left_out", n):
            told.seconds += COUNTED
            told.written[n] = told.add(lectern, "term.left-out", n=n, over=None)
        case ("at_stop", stop, think, talk):
            told.add(lectern, "stop.enter", stop=stop)
            told.add(lectern, "think", seconds=think)
            told.seconds += think + talk
        case ("go_on", stop):
            told.seconds += TOLD
            told.add(lectern, "stop.leave", stop=stop)
        case ("marked", mark, terms, place):
            told.seconds += INKED
            for n in terms:
                told.add(board, "mark.add", n=n, mark=mark, place=place)
        case ("jump", first, last):
            told.seconds += INKED
            told.add(board, "jump.add", **{"from": first, "to": last})
        case ("phrase", text, cells):
            told.seconds += INKED
            told.add(board, "phrase.add", text=text, cells=list(cells))
        case ("predicted", n, text):
            told.seconds += INKED
            told.add(board, "predict", n=n, text=text)
        case ("covered" | "uncovered" as how, terms):
            told.seconds += TOLD
            for n in terms:
                told.add(board, "cover" if how == "covered" else "uncover", n=n)
        case ("recounted", first, last):
            told.seconds += COUNTED * (last - first + 1)
            told.add(board, "recount", **{"from": first, "to": last})
        case ("noticed", text, expected):
            told.seconds += TOLD
            told.add(lectern, "notice.add", text=text, expected=expected)
        case ("voice", first, last, how):
            told.add(lectern, "voice", **{"from": first, "to": last, "how": how})
        case ("target", position, seen):
            told.add(lectern, "target", position=position, seen=seen)
        case _:
            raise ValueError(f"There is no such step: {step!r}")
