"""Adding the routines of a file: asked for once, then some at a time until all are in, whoever looks on."""

import logging
import time
from typing import Any
from uuid import UUID

from django.db import InterfaceError, OperationalError, transaction
from django.utils.translation import gettext as _

from accounts.models import User
from grade_bands.models import Grade
from routines.exchange.reading import Read, read_plan, title_of
from routines.exchange.removed_words import without_removed_words
from routines.exchange.writing import canonical
from routines.jobs.claim import Claim, Refused
from routines.jobs.queue import ask
from routines.models import ImportFile, Job, Routine
from routines.models.plan_document import Plan
from routines.models.plan_reading import PlanError
from routines.plans.actions import start_routine
from routines.words_erased.list_of_erasures import known

logger = logging.getLogger(__name__)

AT_A_TIME = 5  # few, because on SQLite everyone else who saves waits for these
PAUSE = 0.05  # seconds between them, in which a lesson's counts get their turn


class StillAdding(Exception):
    """A file of this person is being added; another has to wait. `file` is that file."""

    def __init__(self, file: ImportFile) -> None:
        super().__init__(_("The counts of %(name)s are still being added.") % {"name": file.name})
        self.file = file


@transaction.atomic
def hold_file(*, by: User, name: str, read: Read) -> ImportFile:
    """Keep a file that was read, to be looked at before anything is added. The earlier file goes.

    Raises StillAdding while that one is being added, ListDamaged where it can't be known which words were removed here.
    """
    adding = file_being_added(by)
    if adding is not None:
        raise StillAdding(adding)
    cleaned = without_removed_words(read, name=name)
    Job.objects.of(by).imports().delete()
    ImportFile.objects.of(by).delete()
    return ImportFile.objects.create(
        by=by,
        name=shortened(cleaned.name),
        plans=cleaned.plans,
        refused=cleaned.refused,
        left_out=cleaned.left_out,
    )


def shortened(name: str, longest: int = 120) -> str:
    """A file's name as it is shown; a cut is seen."""
    return name if len(name) <= longest else f"{name[: longest - 1]}…"


def file_being_added(user: User) -> ImportFile | None:
    return ImportFile.objects.of(user).filter(key__in=Job.objects.of(user).imports().unfinished().values("key")).first()


def job_of(file: ImportFile) -> Job | None:
    """A file and its job have one key. None: not begun, stopped by its owner, or finished long ago."""
    return Job.objects.imports().filter(key=file.key).first()


def start_adding(*, file: ImportFile, into_bank: bool) -> None:
    """Add what the file holds, or go on after a stop. Asked for twice, it is added once. Raises QueueFull."""
    with transaction.atomic():
        file = ImportFile.objects.select_for_update().get(pk=file.pk)
        if file.finished or Job.objects.imports().unfinished().filter(key=file.key).exists():
            return
        if file.done == 0:
            file.into_bank = into_bank and may_move_the_bank(file.by)
            file.save(update_fields=["into_bank"])
        ask(Job.Kind.IMPORT, owner=file.by, title=file.name, total=len(file.plans), key=file.key)


def stop_adding(*, file: ImportFile) -> None:
    """What was added stays; the rest can be added later."""
    Job.objects.imports().filter(key=file.key).delete()


def add_all(claim: Claim) -> None:
    """The work of the job: goes on where the file is, so that nothing is added twice after a stop."""
    plans = HeldPlans(claim.job.key)
    while add_some(claim, plans):
        time.sleep(PAUSE)
    claim.finish()


class HeldPlans:
    """A file's plans, read once, for a large file takes long, and again where words were taken out of it meanwhile."""

    def __init__(self, key: UUID) -> None:
        self.key = key
        self.read()

    def read(self) -> list[dict[str, Any]]:
        self._erased = known().stamp
        plans: list[dict[str, Any]] = ImportFile.objects.get(key=self.key).plans
        self._plans = plans
        return plans

    def current(self) -> list[dict[str, Any]]:
        return self._plans if self._erased == known().stamp else self.read()


def add_some(claim: Claim, held_plans: HeldPlans) -> bool:
    """Add the next few plans as drafts of the file's owner, or into the bank; False when all are dealt with.

    A plan that she can already see is not added again; one that cannot be added is put to those that were refused.
    """
    with claim.held() as job:
        held = ImportFile.objects.select_for_update(of=("self",)).select_related("by").defer("plans")
        file = held.get(key=job.key)
        if not file.by.is_active:
            raise Refused(_("This account was closed."))
        if file.into_bank and not may_move_the_bank(file.by):
            raise Refused(_("Only coaches and administrators put counts straight into the bank."))
        plans = held_plans.current()
        grades = set(Grade.objects.values_list("name", flat=True))
        added = []
        for document in plans[file.done : file.done + AT_A_TIME]:
            added += _added(document, file, grades)
            file.done += 1
        if file.into_bank:
            # In one order, as the bank's totals are held: two files that are brought in at one moment wait in no ring.
            for routine in sorted(added, key=lambda added: (added.grade_id, added.area)):
                routine.share()
        file.save(update_fields=["done", "already_here", "not_added", "refused"])
        claim.job.done = job.done = file.done
        job.save(update_fields=["done"])
    return file.done < len(plans)


def _added(document: dict[str, Any], file: ImportFile, grades: set[str]) -> list[Routine]:
    """The routine made of it; none where it is here already or is refused, which the file then says."""
    try:
        with transaction.atomic():
            plan = read_plan(document, grades)
            if is_here(plan, file.by):
                file.already_here += 1
                return []
            return [start_routine(plan=plan, by=file.by)]
    except PlanError as error:  # the grade went since the file was read, or the row was damaged
        _refuse(document, file, error.field, str(error))
    except (OperationalError, InterfaceError):
        raise  # the database is not there: nothing is wrong with the plan
    except Exception:
        logger.exception("A plan of an import could not be added")
        _refuse(document, file, "", _("It could not be added as the school is now. Look at its grade and its numbers."))
    return []


def _refuse(document: Any, file: ImportFile, field: str, reason: str) -> None:
    file.refused.append(["", title_of(document), field, reason])
    file.not_added += 1


def is_here(plan: Plan, user: User) -> bool:
    """True when a routine that the user can see has just this plan."""
    same_title = Routine.objects.visible_to(user).filter(title=plan.title).select_related("current_version")
    wanted = canonical(plan.as_dict())
    return any(routine.current_version and canonical(routine.current_version.plan) == wanted for routine in same_title)


def may_move_the_bank(user: User) -> bool:
    return user.is_coach or user.is_administrator
