"""Making the file of somebody's words beside the pages; a ready one is kept for an hour, for her alone."""

import uuid
from tempfile import TemporaryFile

from django.utils import timezone, translation
from django.utils.translation import gettext as _

from accounts.models import School, User
from routines.jobs.claim import Claim, Refused
from routines.jobs.queue import ask
from routines.models import Job

from .gathering import rows_written
from .writing import write_words


def start_gathering(*, owner: User) -> Job:
    """Ask for it, in the language that is spoken now. Raises QueueFull."""
    payload = {"language": translation.get_language() or ""}
    return ask(Job.Kind.OWN_WORDS, owner=owner, title="", total=rows_written(owner), payload=payload)


def gathered_for(owner: User, key: uuid.UUID | None = None) -> Job | None:
    """The one that this person has asked for, ready or not; only if it has this key, where one is given."""
    asked = Job.objects.of(owner).filter(kind=Job.Kind.OWN_WORDS).still_kept()
    return (asked if key is None else asked.filter(key=key)).first()


def make_words(claim: Claim) -> None:
    """The work of the job."""
    owner, school = claim.job.owner, School.objects.first()
    if not owner.is_active or school is None:
        raise Refused(_("This account was closed."))
    done = 0

    def on_rows(rows: int) -> None:
        nonlocal done
        done += rows
        claim.progress(done)

    language = claim.job.payload["language"] or None
    with translation.override(language), timezone.override(school.time_zone), TemporaryFile() as file:
        write_words(file, person=owner, school=school, on_rows=on_rows)
        file.seek(0)
        claim.finish(content=file.read())
