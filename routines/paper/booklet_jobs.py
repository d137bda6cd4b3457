"""Making booklets beside everything else: what was asked for is a row, and so is the PDF; any server process makes it.

A ready booklet is kept for an hour. One booklet for each person: starting another drops the one before.
"""

import uuid
from collections.abc import Sequence

from django.utils.translation import gettext as _

from accounts.models import School, User
from routines.jobs.claim import Claim, Refused
from routines.jobs.queue import ask
from routines.models import Job, Routine, RoutineVersion
from routines.paper.booklet import Booklet, pages_expected
from routines.paper.press import PaperError
from routines.paper.subject import Subject


def start_booklet(
    *, owner: User, title: str, versions: Sequence[RoutineVersion], contents: Sequence[str], language: str = ""
) -> Job:
    """Ask for it; the answer says under which key to ask how far it is. Raises QueueFull."""
    payload = {
        "versions": [[version.routine_id, version.pk] for version in versions],
        "contents": list(contents),
        "language": language,
    }
    total = pages_expected(len(versions), contents)
    return ask(Job.Kind.BOOKLET, owner=owner, title=title, total=total, payload=payload)


def find_booklet(key: uuid.UUID | str, *, owner: User) -> Job | None:
    """The booklet of this person, or None."""
    return Job.objects.of(owner).booklets().still_kept().filter(key=key).first()


def booklet_of(owner: User) -> Job | None:
    """The one that this person has, ready or not."""
    return Job.objects.of(owner).booklets().still_kept().first()


def drop_booklet(key: uuid.UUID | str, *, owner: User) -> None:
    Job.objects.of(owner).booklets().filter(key=key).delete()


def drop_all_booklets() -> None:
    """Remove every booklet, ready or not: after words were erased, none may hold them. One being made is not kept."""
    Job.objects.booklets().delete()


def make_booklet(claim: Claim) -> None:
    """What may be printed is decided now: a count that its owner may not see any more is left out, and that is said."""
    job, asked = claim.job, claim.job.payload
    if not job.owner.is_active:
        raise Refused(_("This account was closed."))
    subjects = _subjects(job, asked["versions"], asked["language"])
    if not subjects:
        raise Refused(_("None of these counts can be printed any more. Choose again."))

    def on_page(page: int) -> None:
        if page > job.done:  # the pages are laid out again once their numbers are known
            claim.progress(page)

    try:
        pdf = Booklet(job.title, subjects, asked["contents"]).document().booklet_pdf(on_page)
    except PaperError as error:
        raise Refused(str(error)) from error
    made = f"{len(subjects)} count{'s' * (len(subjects) > 1)} on {job.done} page{'s' * (job.done > 1)}."
    claim.finish(said=f"{made} {_left_out(len(asked['versions']) - len(subjects))}".strip(), content=pdf)


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
    if number == 1:
        return "1 count was left out: it was taken out of the bank, or removed, after you chose it."
    words = _("%(number)s counts were left out: they were taken out of the bank, or removed, after you chose them.")
    return words % {"number": number}
