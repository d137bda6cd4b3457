"""A lesson's grid as cells to draw: as it happened, or clean for the wall."""

from collections.abc import Iterable, Sequence

from routines.counting import Count, Grid
from routines.drawing import Entry, Ink, JumpArc, Mark, Phrase, VoiceLine
from routines.lessons.kinds import PAST_THE_END
from routines.lessons.log import CellLog, Log
from routines.lessons.shown_count import jumps
from routines.lessons.state import LessonState

STRUCK_ROOM = 12
"""So many characters of what was said may stand struck in a cell; beyond that, the last alone."""

BESIDE = " | "
"""Between two texts that two devices wrote in one cell."""


def cells_as_said(state: LessonState, count: Count) -> dict[int, Entry]:
    """What stands in each cell: as it was said, what was struck beside its correction.

    Where two devices wrote different texts and nobody has said yet which holds, both stand, as on the board.
    """
    cells = {n: Entry("written", count.text(n)) for first, last in state.filled for n in range(first, last + 1)}
    for n, entries in state.entries.items():
        text = BESIDE.join(entry.text for entry in entries if not entry.left_out)
        said = list(dict.fromkeys(text for entry in entries for text in entry.struck if text))
        if not text:
            cells[n] = Entry("left-out")
        elif said:
            cells[n] = Entry("corrected", text, struck_together(said))
        else:
            cells[n] = Entry("written", text)
    return cells


def cells_on_board(state: LessonState, count: Count) -> dict[int, Entry]:
    """As said, and what else stood on the board: guesses in cells that were not reached, slips of paper over cells."""
    cells = cells_as_said(state, count)
    cells |= {n: Entry("prediction", guess["text"]) for n, guess in state.predictions.items()}
    return cells | {n: Entry("covered") for n in state.covered}


def ink_of(state: LessonState, grid: Grid) -> Ink:
    """The class's marks, its jumps, each named by how far it goes, its phrases and what it counted again."""
    marks = [Mark(mark["n"], mark["mark"], mark["place"]) for mark in state.marks if mark["n"] not in state.covered]
    named = jumps(grid, grid.terms + PAST_THE_END) if state.jumps else {}
    arcs = [JumpArc(jump["from"], jump["to"], named.get(str(jump["to"] - jump["from"]), "")) for jump in state.jumps]
    phrases = [Phrase(phrase["text"], phrase["cells"]) for phrase in state.phrases]
    return Ink(marks, arcs, phrases, [(again["from"], again["to"]) for again in state.recounts])


def voices_of(state: LessonState) -> Ink:
    """How the class sounded, as lines along the foot of the cells."""
    return Ink(voices=[VoiceLine(voice["from"], voice["to"], voice["how"]) for voice in state.voices])


def cells_of_log(log: Log, written: Iterable[int], count: Count) -> dict[int, Entry]:
    """The same of a log that is still being filled in. `written` are the terms that stand."""
    cells = {n: Entry("written", count.text(n)) for n in written}
    return cells | {n: _of_cell(cell, count.text(n)) for n, cell in log.cells.items()}


def _of_cell(cell: CellLog, due: str) -> Entry:
    *struck, last = [*cell.said, *([] if cell.stayed else [due])]
    if cell.left_out and not cell.said:
        return Entry("left-out")
    return Entry("corrected", last, struck_together(struck)) if struck else Entry("written", last)


def struck_together(said: Sequence[str]) -> str:
    """Everything that was said before, in order, where it finds room; else the last."""
    together = ", ".join(said)
    return together if len(together) <= STRUCK_ROOM else said[-1]


def written_terms(state: LessonState) -> set[int]:
    """The terms that stand in the grid, as said or as they should be."""
    return set(state.entries) | {n for first, last in state.filled for n in range(first, last + 1)}


def cells_clean(state: LessonState) -> dict[int, Entry]:
    """The true counts as far as the class came, and nothing else: no guess, and nothing wrong that stayed."""
    return {n: Entry() for n in range(1, state.next)}
