"""The prints of one routine by name, each a function from what is printed to its sheets."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import time

from django.utils.safestring import SafeString

from routines.models import Lesson
from routines.paper.document import Document
from routines.paper.fitting import Fit
from routines.paper.follow_up import follow_up_sheets
from routines.paper.plan_page import plan_sheet
from routines.paper.poster import lesson_poster_sheets, poster_sheets
from routines.paper.recording import AMOUNTS, recording_sheets
from routines.paper.subject import Subject
from routines.paper.substitute import substitute_sheet


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the reader chose beside the print itself. `lesson` is one she may read."""

    starts_at: time | None = None
    lit: bool = False
    lesson: Lesson | None = None
    cleaned: bool = False
    amounts: Sequence[str] = AMOUNTS


def _poster(subject: Subject, wishes: Wishes) -> list[SafeString]:
    if wishes.lesson is not None:
        return lesson_poster_sheets(subject, wishes.lesson, cleaned=wishes.cleaned)
    return poster_sheets(subject, lit=wishes.lit)


@dataclass(frozen=True, slots=True)
class Print:
    """What it is called, how many pages it usually has, how its sheets are made, and how one of them fits its page."""

    label: str
    pages: int
    sheets: Callable[[Subject, Wishes], list[SafeString]]
    fit: Fit


# Measured on the plans of the demo school, and a little wider; where a fit does not hold, a page is not as roomy as it might be.
PLAN_FIT = Fit(first=2, least=1.1, most=1.22)
PAGES_FIT = Fit(first=1, least=1.03, most=1.22)
ALONE_FIT = Fit(first=0, least=1.0, most=1.22)  # the grid is the page, and is as large as there is room

PRINTS: dict[str, Print] = {
    "plan": Print("plan page", 1, lambda subject, wishes: [plan_sheet(subject)], PLAN_FIT),
    "substitute": Print(
        "for a substitute",
        2,
        lambda subject, wishes: [substitute_sheet(subject, starts_at=wishes.starts_at)],
        PAGES_FIT,
    ),
    "poster": Print("poster", 1, _poster, ALONE_FIT),
    "recording": Print(
        "recording sheets", 3, lambda subject, wishes: recording_sheets(subject, tuple(wishes.amounts)), ALONE_FIT
    ),
    "follow-up": Print("follow-up", 2, lambda subject, wishes: follow_up_sheets(subject), ALONE_FIT),
}


def document_of(name: str, subject: Subject, wishes: Wishes) -> Document:
    # What children get says nothing of the plan's title: it may give away what is to be seen.
    for_children = name == "recording" or (name == "poster" and not wishes.lit)
    return Document(
        title=subject.phrase("our_count") if for_children else subject.plan.title,
        author=subject.routine.owner.display_name,
        language=subject.say.main,
        paper=subject.school.paper,
        sheets=PRINTS[name].sheets(subject, wishes),
        fit=PRINTS[name].fit,
    )
