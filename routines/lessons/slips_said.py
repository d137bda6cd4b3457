"""What was said otherwise in a lesson, named: slips, what was carried on from one, what was said again, skipped, or right in
another form.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field

from routines.counting import Audience, Carried, EqualName, Grid, Repeated, Right, SkippedAhead, Slip
from routines.lessons.state import LessonState
from routines.words import classify


@dataclass(slots=True)
class Said:
    """Something said at one count; `carried` are the later counts that were off only because this one was."""

    n: int
    text: str
    due: str
    sort: str
    note: str
    corrected: bool
    carried: list["Said"] = field(default_factory=list)


SORTS = {Slip: "slip", Carried: "carried", Repeated: "repeated", SkippedAhead: "skipped", EqualName: "equal"}


def said_otherwise(state: LessonState, grid: Grid, audience: Audience) -> list[Said]:
    """In counting order, carried ones under the first. A wrong entry that was never corrected is a slip too."""
    count = grid.count
    first_said: dict[int, str] = {}
    found: list[Said] = []
    by_term: dict[int, Said] = {}
    for n, text, corrected in _texts(state):
        heard = classify(grid, n, text, first_said, audience=audience)
        hearing = heard.hearing
        first_said.setdefault(n, text)
        if isinstance(hearing, Right):
            continue
        said = Said(n, text, count.text(n), SORTS.get(type(hearing), "other"), heard.note, corrected)
        root = by_term.get(hearing.since) if isinstance(hearing, Carried) else None
        (root.carried if root else found).append(said)
        by_term.setdefault(n, root or said)
    return found


def _texts(state: LessonState) -> Iterator[tuple[int, str, bool]]:
    """Everything that was said in a cell, term by term, in the order it was said; and whether the class corrected it."""
    for n in sorted(state.entries):
        for entry in state.entries[n]:
            yield from ((n, text, True) for text in entry.struck if text)
            if not entry.left_out:
                yield n, entry.text, False
