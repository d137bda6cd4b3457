"""Looking for words as a job: its row holds their keyed hash, never the words; what it finds is kept for an hour."""

import time
from dataclasses import asdict, dataclass
from typing import Self
from uuid import UUID

from django.utils.translation import gettext as _

from accounts.models import User
from routines.erasing.doing import PAUSE
from routines.erasing.looking import Findings, look_for
from routines.erasing.taking_out import rows_to_read
from routines.jobs.claim import Claim, Refused
from routines.jobs.queue import ask
from routines.models import Job
from routines.words_erased.matching import Sought, mark_of


@dataclass(frozen=True, slots=True)
class Look:
    """What is looked for: how many words, their hash, in whose texts (None: everybody's)."""

    length: int
    mark: str
    whose: int | None

    @classmethod
    def of(cls, job: Job) -> Self:
        asked = job.payload
        return cls(asked["length"], asked["mark"], asked["whose"])

    def sought(self) -> Sought:
        return Sought([(self.length, self.mark)])

    def allowed_to(self, person: User) -> bool:
        return person.is_active and (person.is_administrator or self.whose == person.pk)


def ask_to_look(words: str, *, by: User, whose: int | None) -> Job:
    """In the place of what this person looked for before. Raises: QueueFull."""
    return _ask(Look(*mark_of(words), whose), by)


def look_again(job: Job) -> Job:
    """Raises: QueueFull."""
    return _ask(Look.of(job), job.owner)


def _ask(look: Look, by: User) -> Job:
    return ask(Job.Kind.LOOKING, owner=by, title="", total=0, payload=asdict(look))


def look_of(person: User, key: UUID | None = None) -> Job | None:
    """What this person looks for, or has found within the hour; only if it has this key, where one is given."""
    looks = Job.objects.of(person).filter(kind=Job.Kind.LOOKING).still_kept()
    return (looks if key is None else looks.filter(key=key)).last()


def drop_look(job: Job) -> None:
    """Stop it, or forget what it has found."""
    Job.objects.filter(pk=job.pk).delete()


def findings_of(job: Job) -> Findings:
    return Findings.read(bytes(job.file.content))


def make_look(claim: Claim) -> None:
    """The job. Raises: Lost, Refused."""
    look = Look.of(claim.job)
    if not look.allowed_to(claim.job.owner):
        raise Refused(_("This account may not look through these texts."))
    claim.begin_part("", rows_to_read(whose=look.whose))

    def on_rows(rows: int) -> None:
        claim.progress(claim.job.done + rows)
        time.sleep(PAUSE)

    claim.finish(content=look_for(look.sought(), whose=look.whose, on_rows=on_rows).written())
