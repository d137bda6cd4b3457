"""A lesson's grid as cells to draw: as it happened, or clean for the wall."""

from routines.counting import Count
from routines.drawing import Entry
from routines.lessons.state import LessonState


def cells_as_said(state: LessonState, count: Count) -> dict[int, Entry]:
    """What stands in each cell: as it was said, what was struck beside its correction; a count left out stays empty."""
    cells = {n: Entry("written", count.text(n)) for first, last in state.filled for n in range(first, last + 1)}
    for n, entries in state.entries.items():
        last = entries[-1]
        if last.left_out:
            cells[n] = Entry("free")
        elif said := [text for text in last.struck if text]:
            cells[n] = Entry("corrected", last.text, said[-1])
        else:
            cells[n] = Entry("written", last.text)
    return cells


def cells_clean(state: LessonState) -> dict[int, Entry]:
    """The true counts as far as the class came, and nothing else."""
    return {n: Entry() for n in range(1, state.next)}
