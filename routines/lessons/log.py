"""What a lesson's log says: what was said otherwise in each cell, voices, noticings, targets. Read from the lesson's state,
and kept by appending the events that lead from what stands to what is wanted: what is undone stays in the list.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Protocol

from routines.counting import Count
from routines.lessons.kinds import WRITES
from routines.lessons.state import Entry, Event, LessonState, in_order, reduce_events

IN_CELL = WRITES - {"filled"}


@dataclass(frozen=True, slots=True)
class CellLog:
    """One cell: what was said otherwise, in order; whether it was left out first, counted again, or stayed wrong."""

    said: tuple[str, ...] = ()
    left_out: bool = False
    again: bool = False
    stayed: bool = False

    @property
    def texts(self) -> tuple[tuple[str, ...], bool, bool]:
        """What its entries come to; counting again is an event of its own."""
        return self.said, self.left_out, self.stayed

    def __bool__(self) -> bool:
        return bool(self.said or self.left_out or self.again)


@dataclass(frozen=True, slots=True)
class Log:
    cells: Mapping[int, CellLog] = field(default_factory=dict)
    voices: tuple[tuple[int, int, str], ...] = ()
    noticed: tuple[tuple[str, int | None], ...] = ()
    targets: Mapping[int, str] = field(default_factory=dict)


def log_of(state: LessonState, count: Count) -> Log:
    """The log as it stands. Where two devices differ in a cell, `differing` tells; here both count as said."""
    again = {n for stretch in state.recounts for n in range(stretch["from"], stretch["to"] + 1)}
    cells = {n: _cell(entries, count.text(n), n in again) for n, entries in state.entries.items()}
    cells |= {n: CellLog(again=True) for n in again - set(cells)}
    return Log(
        cells={n: cell for n, cell in sorted(cells.items()) if cell},
        voices=tuple((voice["from"], voice["to"], voice["how"]) for voice in state.voices),
        noticed=tuple((notice["text"], notice["expected"]) for notice in state.notices),
        targets=dict(state.targets),
    )


def _cell(entries: Sequence[Entry], due: str, again: bool) -> CellLog:
    said = [text for entry in entries for text in entry.struck if text]
    left_out = any(entry.left_out or "" in entry.struck for entry in entries)
    wrong = [entry.text for entry in entries if not entry.left_out and entry.text != due]
    return CellLog((*said, *wrong), left_out, again, stayed=bool(wrong) and entries[-1].text != due)


def differing(state: LessonState) -> dict[int, list[Entry]]:
    """Cells in which two devices wrote differently: the teacher is asked which it was."""
    return {n: entries for n, entries in sorted(state.entries.items()) if len(entries) > 1}


Change = tuple[str, dict[str, Any]]


class Make(Protocol):
    """Makes an event of a kind and its data, and hands back its id."""

    def __call__(self, kind: str, /, **data: Any) -> str: ...


class LogChanges:
    """Gathers events from what stands to what is wanted."""

    def __init__(self, events: Iterable[Event], count: Count, make: Make) -> None:
        self.events = in_order(events)
        self.state = reduce_events(self.events)
        self.count = count
        self.make = make
        self.undone = {event["data"]["event"] for event in self.events if event["kind"] == "undo" and event["data"]}

    def write(self, wanted: Log) -> None:
        standing = log_of(self.state, self.count)
        for n in sorted(set(standing.cells) | set(wanted.cells)):
            before, after = standing.cells.get(n, CellLog()), wanted.cells.get(n, CellLog())
            if before.texts != after.texts:
                self._write_cell(n, after)
            if before.again != after.again:
                self._count_again(n, after.again)
        self._write_voices(wanted.voices)
        self._write_noticed(wanted.noticed)
        for position in sorted(set(standing.targets) | set(wanted.targets)):
            if standing.targets.get(position) != wanted.targets.get(position):
                self.make("target", position=position, seen=wanted.targets.get(position, ""))

    def choose(self, n: int, event: str) -> None:
        """Two devices differed in this cell; this entry is how it was."""
        for entry in self.state.entries.get(n, []):
            if entry.event != event:
                for name in sorted(entry.names):
                    self._undo(name)

    def _undo(self, event: str) -> None:
        if event not in self.undone:
            self.undone.add(event)
            self.make("undo", event=event)

    def _write_cell(self, n: int, wanted: CellLog) -> None:
        for event in self.events:
            if event["kind"] in IN_CELL and not event.get("erased") and event["data"]["n"] == n:
                self._undo(event["id"])
        said = list(wanted.said)
        if not wanted.stayed and (said or (not wanted.left_out and not self.state.is_filled(n))):
            said.append(self.count.text(n))
        write_cell(self.make, n, said, left_out=wanted.left_out)

    def _count_again(self, n: int, again: bool) -> None:
        if again:
            self.make("recount", **{"from": n, "to": n})
            return
        for stretch in self.state.recounts:
            if stretch["from"] <= n <= stretch["to"]:
                self._undo(stretch["event"])

    def _write_voices(self, wanted: Sequence[tuple[int, int, str]]) -> None:
        left = list(wanted)
        for voice in self.state.voices:
            stretch = (voice["from"], voice["to"], voice["how"])
            if stretch in left:
                left.remove(stretch)
            else:
                self._undo(voice["event"])
        for first, last, how in left:
            self.make("voice", **{"from": first, "to": last, "how": how})

    def _write_noticed(self, wanted: Sequence[tuple[str, int | None]]) -> None:
        left = list(wanted)
        for notice in self.state.notices:
            kept = (notice["text"], notice["expected"])
            if kept in left:
                left.remove(kept)
            else:
                self._undo(notice["event"])
        for text, expected in left:
            self.make("notice.add", text=text, expected=expected)


def write_cell(make: Make, n: int, said: Iterable[str], *, left_out: bool = False) -> None:
    """What was said in one cell, in order, each struck by the next."""
    over = make("term.left-out", n=n, over=None) if left_out else None
    for text in said:
        over = make("term.correct" if over else "term.write", n=n, text=text, over=over)
