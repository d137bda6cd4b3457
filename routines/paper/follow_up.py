"""The follow-up: missing counts that the targets find, whether others come soon, and the answers on a page of their own."""

from collections.abc import Iterable
from string import ascii_lowercase
from typing import Any, NamedTuple

from django.template.loader import render_to_string
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import gettext_lazy as _

from routines.counting import Audience, Grid
from routines.counting.audience import band_of
from routines.counting.probes import goes_below_zero
from routines.counting.written_units import in_both_units
from routines.drawing import Entry
from routines.models.shown_plan import ShownPlan
from routines.paper.asked_cells import Asked, asked_cells
from routines.paper.fitting import ALONE_FIT
from routines.paper.full_page import MARGIN, full_page
from routines.paper.picture import PAPER, draw, place
from routines.paper.plan_page import common, legend
from routines.paper.print import Print
from routines.paper.subject import Subject
from routines.words import SpokenPattern, SpokenProbe, locate, probes

ANSWERS_HEAD, ANSWER, SMALLEST_KEY = 250.0, 66.0, 150.0
MOST_LINES = 4
ROUTES = 2


class Asking(NamedTuple):
    """What a class is asked: so many cells, values that come and that don't; the heights of its parts on the page.

    Units: points; `also` is what a question takes more in a second language. lines: to write on, each so high (`line`).
    """

    cells: int
    coming: int
    missing: int
    head: float
    question: float
    also: float
    lines: int
    line: float


BY_BAND = (
    Asking(cells=2, coming=1, missing=0, head=150, question=78, also=26, lines=1, line=36),
    Asking(cells=3, coming=1, missing=1, head=140, question=88, also=20, lines=2, line=25),
    Asking(cells=3, coming=1, missing=1, head=140, question=80, also=18, lines=2, line=25),
    Asking(cells=3, coming=1, missing=1, head=140, question=80, also=18, lines=2, line=25),
)


def follow_up_sheets(subject: Subject) -> list[SafeString]:
    near = near_the_end(subject, BY_BAND[_band(subject)])
    questions: list[Asked | SpokenProbe] = [*_asked_of(subject.shown), *near]
    lettered = dict(zip(ascii_lowercase, questions, strict=False))
    return [_questions(subject, lettered), _answers(subject, lettered)]


def _band(subject: Subject) -> int:
    return band_of(subject.routine.grade.level)


def patterns_to_use(shown: ShownPlan) -> list[SpokenPattern]:
    """The targets; of a plan without any, what lights up by itself."""
    targets = [item.pattern for item in shown.patterns if item.target]
    return targets or [item.pattern for item in shown.lit]


def _asked_of(shown: ShownPlan) -> list[Asked]:
    return asked_cells(shown.grid, patterns_to_use(shown), BY_BAND[band_of(shown.audience.level)].cells)


def entries_with(grid: Grid, asked: Iterable[Asked]) -> dict[int, Entry]:
    """Every count but those around the cells asked for, which are to be written in."""
    asked = list(asked)
    empty = frozenset().union(*(cell.around for cell in asked))
    given = {n: Entry() for n in range(1, grid.terms + 1) if n not in empty}
    return given | {cell.n: Entry("next") for cell in asked}


def near_the_end(subject: Subject, asking: Asking) -> list[SpokenProbe]:
    """Values near what stands on the sheet: one that comes soon, and one that looks as if it might and does not."""
    grid = subject.grid
    found = probes(grid, audience=subject.shown.audience)
    last = grid.count.value(grid.terms)
    missing = sorted((probe for probe in found if not probe.appears), key=lambda probe: abs(probe.value - last))
    coming = [probe for probe in found if probe.appears]
    soon = [probe for probe in coming if probe.n and 1 < probe.n - grid.terms <= grid.line_length]
    soon += [probe for probe in [_a_line_on(subject)] if probe]
    return [*(soon or coming)[: asking.coming], *missing[: asking.missing]]


def _a_line_on(subject: Subject) -> SpokenProbe | None:
    """The value a whole line past the last, where it is not said sooner, as a time may be, and this class can say it."""
    grid, n = subject.grid, subject.grid.terms + subject.grid.line_length
    value, text = grid.count.value(n), grid.count.text(n)
    unknown = value < 0 and not goes_below_zero(grid, subject.routine.grade.level)
    if unknown or locate(grid, value, subject.shown.audience).n != n:
        return None
    return SpokenProbe(value, text, True, n, "lines", like=grid.terms, grid=grid, audience=subject.shown.audience)


def _questions(subject: Subject, lettered: dict[str, Asked | SpokenProbe]) -> SafeString:
    cells = {letter: asked for letter, asked in lettered.items() if isinstance(asked, Asked)}
    width, height = PAPER[subject.school.paper]
    asking = BY_BAND[_band(subject)]
    each = asking.question + asking.also * (len(subject.say.languages) - 1)
    drawn = draw(
        subject,
        entries=entries_with(subject.grid, cells.values()),
        landmarks=False,
        labels={asked.n: letter for letter, asked in cells.items()},
        title=subject.phrase("missing"),
    )
    room = (width - 2 * MARGIN, height - asking.head - each * len(lettered))
    picture = place(drawn, room)
    left = (room[1] - picture.height) / max(1, len(lettered))  # by a low grid, for more to be written
    lines = range(min(MOST_LINES, asking.lines + int(left / asking.line)))
    questions = [_question(subject, letter, asked) for letter, asked in lettered.items()]
    told = {
        "band": _band(subject),
        "task": subject.say[f"missing_how_{_band(subject)}"],
        "questions": questions,
        "lines": lines,
    }
    return full_page("follow_up.html", subject, "sheet-upright", picture=picture, **told)


def _question(subject: Subject, letter: str, asked: Asked | SpokenProbe) -> SafeString:
    if isinstance(asked, SpokenProbe):
        return subject.say.tell(f"will_come_{_band(subject)}", letter=letter, value=asked.text)
    row, column = subject.grid.place(asked.n)
    return subject.say.tell(f"which_cell_{_band(subject)}", letter=letter, row=row, column=column)


def _answers(subject: Subject, lettered: dict[str, Asked | SpokenProbe]) -> SafeString:
    width, height = PAPER[subject.school.paper]
    lit = [item.pattern for item in subject.shown.lit]
    each = ANSWER * len(subject.say.languages)
    room = (width - 100, max(height - ANSWERS_HEAD - each * len(lettered), SMALLEST_KEY))
    picture = place(draw(subject, lit=lit), room)
    context = {
        **common(subject),
        "picture": picture,
        "legend": legend(subject, lit),
        "answers": list(_answer_rows(subject, lettered)),
    }
    return mark_safe(render_to_string("paper/sheets/answers.html", context))  # noqa: S308 - our own template


def _answer_rows(subject: Subject, lettered: dict[str, Asked | SpokenProbe]) -> Iterable[dict[str, Any]]:
    for letter, asked in lettered.items():
        yield _cell_row(subject, letter, asked) if isinstance(asked, Asked) else _probe_row(subject, letter, asked)


def _cell_row(subject: Subject, letter: str, asked: Asked) -> dict[str, Any]:
    return {
        "answer": subject.say.tell("cell_answer", letter=letter, text=subject.in_both(asked.n)),
        "why": [subject.pattern_words(asked.pattern, part) for part in ("statement", "because")],
    }


def _probe_row(subject: Subject, letter: str, probe: SpokenProbe) -> dict[str, Any]:
    say, level = subject.say, subject.routine.grade.level
    told = {language: locate(subject.grid, probe.value, Audience(level, language)) for language in say.languages}
    place = told[say.main]
    facts = {"nth": subject.nth(place.n)} if place.n else {}

    def route(i: int) -> SafeString:
        return say.each(lambda language: str(told[language].routes[i]))

    return {
        "answer": say.tell(
            "yes_at" if place.appears else "no_not",
            letter=letter,
            value=in_both_units(subject.grid.count, probe.value),
            **facts,
        ),
        "why": [say.each(lambda language: told[language].reason), *map(route, range(min(ROUTES, len(place.routes))))],
    }


FOLLOW_UP = Print(
    title=_("Follow-up"),
    about=_(
        "Missing counts that the targets find, and whether others come soon. The answers have a page of their own."
    ),
    button=_("Print the follow-up"),
    picture_title=_("The grid with cells to find"),
    picture=lambda shown: {"entries": entries_with(shown.grid, _asked_of(shown))},
    sheets=lambda subject, wishes: follow_up_sheets(subject),
    pages=2,
    fit=ALONE_FIT,
)
