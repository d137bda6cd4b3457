"""The prints of one routine by name, each a function from what is printed to its sheets."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import time

from django.utils.safestring import SafeString
from django.utils.translation import gettext_lazy as _

from accounts.translated import Translated
from routines.models import Lesson
from routines.paper.document import Document
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
    """What it is called, how many pages it usually has, and how its sheets are made."""

    label: Translated
    pages: int
    sheets: Callable[[Subject, Wishes], list[SafeString]]


PRINTS: dict[str, Print] = {
    "plan": Print(_("plan page"), 1, lambda subject, wishes: [plan_sheet(subject)]),
    "substitute": Print(
        _("for a substitute"), 2, lambda subject, wishes: [substitute_sheet(subject, starts_at=wishes.starts_at)]
    ),
    "poster": Print(_("poster"), 1, _poster),
    "recording": Print(
        _("recording sheets"), 3, lambda subject, wishes: recording_sheets(subject, tuple(wishes.amounts))
    ),
    "follow-up": Print(_("follow-up"), 2, lambda subject, wishes: follow_up_sheets(subject)),
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
    )
