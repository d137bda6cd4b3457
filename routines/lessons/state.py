"""Reducing a lesson's events into what stands on the board. Pure, and the same whatever the order of arrival.

An event is a dict as devices exchange it (docs/lessons.md). The scripts reduce in the same way; both are held to
`tests/routines/lessons/vectors`. Unknown kinds and erased stubs are passed over. Removal and undo win and are final.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

Event = Mapping[str, Any]
Ink = dict[str, Any]

INK = frozenset({"mark.add", "jump.add", "phrase.add", "predict"})
"""What `mark.remove` takes away."""


@dataclass(slots=True)
class Entry:
    """What was written in one cell. `struck` are the texts said before a correction, oldest first ("": it was left out).

    `names` are the events that mean this entry: the one that wrote it, and those of other devices that wrote the same.
    """

    text: str
    event: str
    struck: list[str] = field(default_factory=list)
    left_out: bool = False
    names: set[str] = field(default_factory=set, compare=False, repr=False)

    def says_the_same(self, other: "Entry") -> bool:
        return (self.text, self.left_out) == (other.text, other.left_out)


@dataclass(slots=True)
class LessonState:
    """`entries` by term: more than one entry means that two devices differ, and the log asks."""

    opened: Mapping[str, Any] | None = None
    entries: dict[int, list[Entry]] = field(default_factory=dict)
    filled: list[tuple[int, int]] = field(default_factory=list)
    marks: list[Ink] = field(default_factory=list)
    jumps: list[Ink] = field(default_factory=list)
    phrases: list[Ink] = field(default_factory=list)
    predictions: dict[int, Ink] = field(default_factory=dict)
    covered: set[int] = field(default_factory=set)
    recounts: list[Ink] = field(default_factory=list)
    notices: list[Ink] = field(default_factory=list)
    voices: list[Ink] = field(default_factory=list)
    stops: dict[int, int] = field(default_factory=dict)
    at_stop: int | None = None
    think: Ink | None = None
    targets: dict[int, str] = field(default_factory=dict)
    line: int | None = None
    ended: bool = False

    @property
    def next(self) -> int:
        """The count that is said next: one past the highest that is written, left out or filled."""
        return 1 + max([0, *self.entries, *(last for _, last in self.filled)])

    def is_filled(self, n: int) -> bool:
        return any(first <= n <= last for first, last in self.filled)

    def voice(self, n: int) -> str | None:
        """How the class sounded at count n; where stretches overlap the later holds."""
        return next((voice["how"] for voice in reversed(self.voices) if voice["from"] <= n <= voice["to"]), None)

    def as_dict(self) -> dict[str, Any]:
        """The state as JSON, in the form that the scripts give too."""
        return {
            "opened": None if self.opened is None else dict(self.opened),
            "entries": {
                str(n): [
                    {"event": e.event, "text": e.text, "struck": e.struck, "left_out": e.left_out} for e in entries
                ]
                for n, entries in sorted(self.entries.items())
            },
            "filled": [list(stretch) for stretch in self.filled],
            "marks": self.marks,
            "jumps": self.jumps,
            "phrases": self.phrases,
            "predictions": {str(n): guess for n, guess in sorted(self.predictions.items())},
            "covered": sorted(self.covered),
            "recounts": self.recounts,
            "notices": self.notices,
            "voices": self.voices,
            "stops": {str(stop): ms for stop, ms in sorted(self.stops.items())},
            "at_stop": self.at_stop,
            "think": self.think,
            "targets": {str(position): seen for position, seen in sorted(self.targets.items())},
            "line": self.line,
            "next": self.next,
            "ended": self.ended,
        }


def reduce_events(events: Iterable[Event]) -> LessonState:
    """The state after all these events. Equal sets of events give equal states."""
    ordered = in_order(events)
    gone = _Gone(ordered)
    reducer = _Reducer(gone)
    for event in ordered:
        act = ACTS.get(event["kind"])
        if act is not None and not event.get("erased") and event not in gone:
            act(reducer, event, event["data"])
    state = reducer.state
    for n in [n for n in state.predictions if n in state.entries or state.is_filled(n)]:
        del state.predictions[n]
    return state


def in_order(events: Iterable[Event]) -> list[Event]:
    """Each event once, by (t, device, id)."""
    once = {event["id"]: event for event in events}
    return sorted(once.values(), key=lambda event: (event["t"], event["device"], event["id"]))


class _Gone:
    """Which events never were: gathered first, so that it is the same whether an undo comes before or after its event."""

    def __init__(self, events: Iterable[Event]) -> None:
        self.undone: set[str] = set()
        self.removed: set[str] = set()
        self.over: dict[str, str | None] = {}
        for event in events:
            if event.get("erased"):
                continue
            if event["kind"] == "undo":
                self.undone.add(event["data"]["event"])
            elif event["kind"] == "mark.remove":
                self.removed.add(event["data"]["event"])
            self.over[event["id"]] = event["data"].get("over")

    def __contains__(self, event: Event) -> bool:
        return event["id"] in self.undone or (event["kind"] in INK and event["id"] in self.removed)

    def meant(self, over: str | None) -> str | None:
        """What `over` names: where that event was undone, what it had been over itself."""
        seen: set[str] = set()
        while over in self.undone and over not in seen:
            seen.add(over)
            over = self.over.get(over)
        return over


class _Reducer:
    """The state so far, and what is needed only on the way."""

    def __init__(self, gone: _Gone) -> None:
        self.state = LessonState()
        self.gone = gone
        # When each device entered the stop at which the class is now, by its own clock.
        self.entered: dict[str, int] = {}

    def open(self, event: Event, data: Event) -> None:
        if self.state.opened is None:
            self.state.opened = data

    def write(self, event: Event, data: Event) -> None:
        self._enter(data, Entry(data["text"], event["id"]), strike=False)

    def correct(self, event: Event, data: Event) -> None:
        self._enter(data, Entry(data["text"], event["id"]), strike=True)

    def leave_out(self, event: Event, data: Event) -> None:
        self._enter(data, Entry("", event["id"], left_out=True), strike=False)

    def _enter(self, data: Event, new: Entry, *, strike: bool) -> None:
        """The new entry takes the place of the one that `over` names, else stands beside it; what says the same is one."""
        entries = self.state.entries.setdefault(data["n"], [])
        over = self.gone.meant(data.get("over"))
        new.names = {new.event}
        place = next((i for i, entry in enumerate(entries) if over in entry.names), len(entries))
        if place < len(entries):
            old = entries[place]
            new.struck = [*old.struck, old.text] if strike and not new.says_the_same(old) else old.struck
        entries[place : place + 1] = [new]
        first, *again = [entry for entry in entries if entry.says_the_same(new)]
        for entry in again:
            first.struck = [*first.struck, *entry.struck]
            first.names |= entry.names
            entries.remove(entry)

    def fill(self, event: Event, data: Event) -> None:
        self.state.filled.append((data["from"], data["to"]))

    def recount(self, event: Event, data: Event) -> None:
        self.state.recounts.append(_part(event, "from", "to"))

    def mark(self, event: Event, data: Event) -> None:
        self.state.marks.append(_part(event, "n", "mark", "place"))

    def jump(self, event: Event, data: Event) -> None:
        self.state.jumps.append(_part(event, "from", "to"))

    def pin(self, event: Event, data: Event) -> None:
        self.state.phrases.append({**_part(event, "text"), "cells": list(data.get("cells") or [])})

    def predict(self, event: Event, data: Event) -> None:
        self.state.predictions[data["n"]] = _part(event, "text")

    def cover(self, event: Event, data: Event) -> None:
        self.state.covered.add(data["n"])

    def uncover(self, event: Event, data: Event) -> None:
        self.state.covered.discard(data["n"])

    def think(self, event: Event, data: Event) -> None:
        parts = {name: event[name] for name in ("device", "ms", "at")}
        self.state.think = {**_part(event), **parts, "seconds": data["seconds"]} if data["seconds"] else None

    def enter_stop(self, event: Event, data: Event) -> None:
        if self.state.at_stop != data["stop"]:
            self._leave(event)
            self.state.at_stop = data["stop"]
        self.entered.setdefault(event["device"], event["ms"])

    def leave_stop(self, event: Event, data: Event) -> None:
        if self.state.at_stop == data["stop"]:
            self._leave(event)

    def _leave(self, event: Event) -> None:
        """The class leaves the stop it is at. Only a device that was there from the start can say for how long."""
        stop, began = self.state.at_stop, self.entered.get(event["device"])
        if stop is not None and began is not None:
            self.state.stops[stop] = self.state.stops.get(stop, 0) + max(0, event["ms"] - began)
        self.entered = {}
        self.state.at_stop = None

    def show(self, event: Event, data: Event) -> None:
        self.state.line = data.get("line")

    def notice(self, event: Event, data: Event) -> None:
        self.state.notices.append(_part(event, "text", "expected"))

    def edit_notice(self, event: Event, data: Event) -> None:
        for notice in self.state.notices:
            if notice["event"] == data["event"]:
                notice["text"] = data["text"]

    def hear(self, event: Event, data: Event) -> None:
        self.state.voices.append(_part(event, "from", "to", "how"))

    def target(self, event: Event, data: Event) -> None:
        if data["seen"]:
            self.state.targets[data["position"]] = data["seen"]
        else:
            self.state.targets.pop(data["position"], None)

    def end(self, event: Event, data: Event) -> None:
        self.state.ended = True

    def reopen(self, event: Event, data: Event) -> None:
        self.state.ended = False


def _part(event: Event, *names: str) -> Ink:
    """The event's id and these parts of its data; a part that older lists lack is null."""
    return {"event": event["id"], **{name: event["data"].get(name) for name in names}}


ACTS: dict[str, Callable[[_Reducer, Event, Event], None]] = {
    "lesson.open": _Reducer.open,
    "term.write": _Reducer.write,
    "term.correct": _Reducer.correct,
    "term.left-out": _Reducer.leave_out,
    "filled": _Reducer.fill,
    "recount": _Reducer.recount,
    "mark.add": _Reducer.mark,
    "jump.add": _Reducer.jump,
    "phrase.add": _Reducer.pin,
    "predict": _Reducer.predict,
    "cover": _Reducer.cover,
    "uncover": _Reducer.uncover,
    "think": _Reducer.think,
    "stop.enter": _Reducer.enter_stop,
    "stop.leave": _Reducer.leave_stop,
    "show": _Reducer.show,
    "notice.add": _Reducer.notice,
    "notice.edit": _Reducer.edit_notice,
    "voice": _Reducer.hear,
    "target": _Reducer.target,
    "lesson.end": _Reducer.end,
    "lesson.reopen": _Reducer.reopen,
}
