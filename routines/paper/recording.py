"""Recording sheets: the grid with some counts given, to be filled in from these alone, at three amounts."""

from django.utils.safestring import SafeString
from django.utils.translation import gettext_lazy as _

from routines.counting import Fill, Grid
from routines.drawing import Entry
from routines.paper.fitting import ALONE_FIT
from routines.paper.full_page import full_page, room_for
from routines.paper.picture import draw, place
from routines.paper.print import Print
from routines.paper.subject import Subject

AMOUNTS = ("most", "some", "few")
TASK, LINES_TO_WRITE = 60.0, 158.0  # points
LINE, ALSO = 27.0, 34.0
MOST_JUMPS = 12  # between the two counts of the sheet with few given: dividing by more is another lesson


def recording_sheets(subject: Subject, amounts: tuple[str, ...] = AMOUNTS) -> list[SafeString]:
    """One page for each amount. No answers, no title that gives the pattern away, no place for a name."""
    return [_sheet(subject, amount) for amount in amounts]


def _sheet(subject: Subject, amount: str) -> SafeString:
    given = {n: Entry() for n in givens(subject.grid, amount, subject.routine.grade.level)}
    taken = TASK + LINES_TO_WRITE + ALSO * (len(subject.say.languages) - 1)
    title = subject.phrase("fill_in")
    drawn = draw(subject, entries=given, landmarks=False, title=title)
    kind, room = room_for(subject, drawn, taken, taken_across=taken - 2 * LINE)
    picture = place(drawn, room)
    # What a low grid leaves of the page is for writing.
    lines = range((2 if kind == "sheet-wide" else 4) + int((room[1] - picture.height) / LINE))
    foot = {"foot_right": subject.phrase(f"given_{amount}")}
    return full_page("recording.html", subject, kind, picture=picture, lines=lines, **foot)


def givens(grid: Grid, amount: str, level: int = 3) -> list[int]:
    """The terms that are given; from them, with their places, the whole count follows.

    Two different places fix start and step. On a clock only neighbours do: two times that are further apart leave open
    how often the hand went round between them. The last count is given with "most" and "some", to check by.
    """
    terms, line, begins = grid.terms, grid.line_length, [run[0] for run in _runs(grid)]
    if terms < 4:
        return [1, 2]
    if amount == "most":
        first_line = range(1, line - grid.lead + 1) if line > 2 and len(begins) > 1 else ()
        return _leaving_some({1, 2, terms, *first_line, *range(terms, 0, -2)}, terms)
    if amount == "some":
        return _leaving_some({1, 2, 3, terms, *begins[:3]}, terms)
    # Few: the first count and the one that begins the next line, which says what a whole line makes. The youngest, and
    # classes that count on a clock, get two neighbours.
    neighbours = level <= 1 or grid.count.wrap is not None or len(begins) == 1 or begins[1] > MOST_JUMPS + 1
    return [1, 2] if neighbours else [1, begins[1]]


def _leaving_some(given: set[int], terms: int) -> list[int]:
    """Where a short count would be given whole, its third cell stays to be filled."""
    return sorted(given - {3} if len(given) == terms else given)


def _runs(grid: Grid) -> list[tuple[int, ...]]:
    """The lines that the fill runs along, in counting order."""
    runs = grid.lines("column" if grid.fill is Fill.DOWN else "row")
    return sorted(runs)


RECORDING = Print(
    title=_("Recording sheets"),
    about=_("Some counts are given; the rest follows from these. Nobody writes a name."),
    button=_("Print the sheets"),
    picture_title=_("The grid with some counts given"),
    picture=lambda shown: {"entries": {n: Entry() for n in givens(shown.grid, "some", shown.audience.level)}},
    choices="paper/_recording_choices.html",
    sheets=lambda subject, wishes: recording_sheets(subject, tuple(wishes.amounts) or AMOUNTS),
    pages=len(AMOUNTS),
    fit=ALONE_FIT,
    for_children=lambda wishes: True,
)
