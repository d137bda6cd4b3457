"""Adding the routines of a file, some at a time, so that a large file shows its progress and can go on after a stop."""

from django.db import transaction

from grade_bands.models import Grade
from routines.actions.plans import start_routine
from routines.exchange.reading import Read, read_plan, title_of
from routines.exchange.written import canonical
from routines.models import ImportFile, Routine
from routines.plan_document import Plan, PlanError

AT_A_TIME = 25


def hold_file(*, by, name: str, read: Read) -> ImportFile:
    """Keep a file that was read, to be looked at before anything is added. Earlier files that were not finished go."""
    ImportFile.objects.of(by).delete()
    return ImportFile.objects.create(
        by=by,
        name=shortened(name),
        plans=[plan.as_dict() for plan in read.plans],
        refused=[[entry.number, entry.title, entry.field, entry.reason] for entry in read.refused],
    )


def shortened(name: str, longest: int = 120) -> str:
    """A file's name as it is shown; a cut is seen."""
    return name if len(name) <= longest else f"{name[: longest - 1]}…"


@transaction.atomic
def add_some(*, file: ImportFile, by) -> ImportFile:
    """Add the next few plans as drafts of `by`, or into the bank; a plan that she can already see is not added again."""
    file = ImportFile.objects.select_for_update().get(pk=file.pk)
    changed = {"done", "already_here"}
    grades = set(Grade.objects.values_list("name", flat=True))
    for _ in range(min(AT_A_TIME, len(file.plans) - file.done)):
        document = file.plans[file.done]
        try:
            plan = read_plan(document, grades)
        except PlanError as error:  # the grade went since the file was read, or the row was damaged
            file.plans.pop(file.done)
            file.refused.append([len(file.plans) + len(file.refused) + 1, title_of(document), error.field, str(error)])
            changed |= {"plans", "refused"}
            continue
        if is_here(plan, by):
            file.already_here += 1
        else:
            routine = start_routine(plan=plan, by=by)
            if file.into_bank:
                routine.share()
        file.done += 1
    file.save(update_fields=changed)
    return file


def is_here(plan: Plan, user) -> bool:
    """True when a routine that the user can see has just this plan."""
    same_title = Routine.objects.visible_to(user).filter(title=plan.title).select_related("current_version")
    wanted = canonical(plan.as_dict())
    return any(routine.current_version and canonical(routine.current_version.plan) == wanted for routine in same_title)
