"""Reducing a lesson's events into what stands on the board: pure, in the order (t, device), so that arrival never matters.

An event is a dict as devices exchange it (`id, t, device, kind, data`). Unknown kinds are kept in the list and ignored here.
Removal and undo win and are final.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

# What each kind's data must hold. Kinds not listed are accepted and ignored, so that newer devices can talk to older servers.
KINDS: dict[str, set[str]] = {
    "term.write": {"n", "text"},
    "term.correct": {"n", "text"},
    "mark.add": {"n", "mark"},
    "mark.remove": {"event"},
    "jump.add": {"from", "to"},
    "phrase.add": {"text"},
    "predict": {"n", "text"},
    "cover": {"n"},
    "uncover": {"n"},
    "notice.add": {"text"},
    "notice.edit": {"event", "text"},
    "voice": {"from", "to", "how"},
    "stop.enter": {"stop"},
    "stop.leave": {"stop"},
    "show": set(),
    "undo": {"event"},
    "lesson.end": set(),
    "lesson.reopen": set(),
}


@dataclass(frozen=True, slots=True)
class Entry:
    """What was written in one cell. `struck` are the texts said before a correction, oldest first."""

    text: str
    event: str
    struck: tuple[str, ...] = ()


@dataclass(slots=True)
class LessonState:
    """`entries` by term; a term with more than one entry was written differently by two devices, and the log asks."""

    entries: dict[int, list[Entry]] = field(default_factory=dict)
    marks: dict[str, Mapping[str, Any]] = field(default_factory=dict)
    jumps: dict[str, Mapping[str, Any]] = field(default_factory=dict)
    phrases: dict[str, Mapping[str, Any]] = field(default_factory=dict)
    predictions: dict[int, str] = field(default_factory=dict)
    covered: set[int] = field(default_factory=set)
    notices: dict[str, str] = field(default_factory=dict)
    voices: list[Mapping[str, Any]] = field(default_factory=list)
    stop_times: dict[int, int] = field(default_factory=dict)
    ended: bool = False

    def text(self, n: int) -> str | None:
        """What stands in cell n, or None."""
        return self.entries[n][-1].text if self.entries.get(n) else None

    def slips(self) -> list[tuple[int, str]]:
        """Every text that was said and later struck, with its term, in counting order."""
        return [(n, said) for n in sorted(self.entries) for entry in self.entries[n] for said in entry.struck]


def reduce_events(events: Iterable[Mapping[str, Any]]) -> LessonState:
    """The state after all these events. Equal sets of events give equal states, whatever their order."""
    unique = {str(event["id"]): event for event in events}
    ordered = sorted(unique.values(), key=lambda event: (event["t"], str(event["device"]), str(event["id"])))
    gone = {str(event["data"].get("event")) for event in ordered if event["kind"] in ("undo", "mark.remove")}
    state = LessonState()
    entered: dict[tuple[str, int], int] = {}
    for event in ordered:
        if str(event["id"]) in gone:
            continue
        _apply(state, event, entered)
    return state


def _apply(state: LessonState, event: Mapping[str, Any], entered: dict[tuple[str, int], int]) -> None:
    kind, data, identity = event["kind"], event["data"], str(event["id"])
    if kind in ("term.write", "term.correct"):
        _write(state, int(data["n"]), str(data["text"]), data.get("over"), identity, strike=kind == "term.correct")
    elif kind == "mark.add":
        state.marks[identity] = data
    elif kind == "jump.add":
        state.jumps[identity] = data
    elif kind == "phrase.add":
        state.phrases[identity] = data
    elif kind == "predict":
        state.predictions[int(data["n"])] = str(data["text"])
    elif kind == "cover":
        state.covered.add(int(data["n"]))
    elif kind == "uncover":
        state.covered.discard(int(data["n"]))
    elif kind == "notice.add":
        state.notices[identity] = str(data["text"])
    elif kind == "notice.edit" and str(data["event"]) in state.notices:
        state.notices[str(data["event"])] = str(data["text"])
    elif kind == "voice":
        state.voices.append(data)
    elif kind == "stop.enter":
        entered[str(event["device"]), int(data["stop"])] = int(event.get("ms", 0))
    elif kind == "stop.leave":
        began = entered.pop((str(event["device"]), int(data["stop"])), None)
        if began is not None:
            stayed = max(0, int(event.get("ms", 0)) - began)
            state.stop_times[int(data["stop"])] = state.stop_times.get(int(data["stop"]), 0) + stayed
    elif kind in ("lesson.end", "lesson.reopen"):
        state.ended = kind == "lesson.end"


def _write(state: LessonState, n: int, text: str, over: Any, identity: str, *, strike: bool) -> None:
    """`over` names the entry replaced. An entry by another device on the same cell: same text is one entry, other text both."""
    entries = state.entries.setdefault(n, [])
    for position, entry in enumerate(entries):
        if over is not None and entry.event == str(over):
            struck = (*entry.struck, entry.text) if strike and entry.text != text else entry.struck
            entries[position] = Entry(text, identity, struck)
            return
    if any(entry.text == text for entry in entries):
        return
    entries.append(Entry(text, identity))
