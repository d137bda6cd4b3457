"""Writing a booklet that was asked for, from its row to its PDF. Only in the process of booklets: it takes a whole core."""

from collections.abc import Callable
from dataclasses import dataclass

from django.utils.translation import gettext as _
from django.utils.translation import ngettext

from accounts.models import School
from routines.jobs.claim import Refused
from routines.models import Job, Routine, RoutineVersion
from routines.paper.booklet import Booklet, Part, pages_expected
from routines.paper.styles import BOOKLET_LOOK, paper_css
from routines.paper.subject import Subject
from routines.paper.worker import Press

LARGEST = 80_000_000  # characters of HTML

Told = Callable[[Part, int, int], None]
"""Hears which part it is at, how far it is in it, and how much there is in it."""


@dataclass(frozen=True, slots=True)
class Written:
    """`said` is a sentence for its owner."""

    pdf: bytes
    said: str


def write_booklet(job: Job, press: Press, told: Told) -> Written:
    """What may be printed is decided now: a count that its owner may not see any more is left out, and that is said.

    Raises Refused.
    """
    asked = job.payload
    if not job.owner.is_active:
        raise Refused(_("This account was closed."))
    subjects = _subjects(job, asked["versions"], asked["language"])
    if not subjects:
        raise Refused(_("None of these counts can be printed any more. Choose again."))
    document = Booklet(job.title, subjects, asked["contents"]).document(
        lambda count: told(Part.COUNTS, count, len(subjects))
    )
    html = document.html()
    if len(html) > LARGEST:
        raise Refused(_("This is too long to print in one go. Print fewer counts at a time."))
    expected = pages_expected(len(subjects), asked["contents"])
    pdf, pages = press.pdf(
        html, paper_css(document.paper), [BOOKLET_LOOK], on_page=lambda page: told(Part.PAGES, page, expected)
    )
    counts = ngettext("%(number)s count", "%(number)s counts", len(subjects)) % {"number": len(subjects)}
    on_pages = ngettext("%(number)s page", "%(number)s pages", pages) % {"number": pages}
    made = _("%(counts)s on %(pages)s.") % {"counts": counts, "pages": on_pages}
    return Written(pdf, f"{made} {_left_out(len(asked['versions']) - len(subjects))}".strip())


def _subjects(job: Job, wanted: list[list[int]], language: str) -> list[Subject]:
    routines = Routine.objects.visible_to(job.owner).for_cards().in_bulk([routine for routine, _ in wanted])
    versions = RoutineVersion.objects.in_bulk([version for _, version in wanted])
    school = School.objects.get()
    subjects = []
    for routine_pk, version_pk in wanted:
        routine, version = routines.get(routine_pk), versions.get(version_pk)
        if routine is not None and version is not None:
            version.routine = routine
            subjects.append(Subject(version, school, language))
    return subjects


def _left_out(number: int) -> str:
    if not number:
        return ""
    words = ngettext(
        "%(number)s count was left out: it was taken out of the bank, or removed, after you chose it.",
        "%(number)s counts were left out: they were taken out of the bank, or removed, after you chose them.",
        number,
    )
    return words % {"number": number}
