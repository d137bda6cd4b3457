"""Saving, copying, drafting and restoring plans."""

from collections.abc import Sequence
from typing import Any
from uuid import UUID

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.utils import timezone
from django.utils.translation import gettext as _

from accounts.models import User
from grade_bands.models import Grade, Standard
from routines import worked_out
from routines.counting.claims import LandmarksClaim
from routines.models import PlanDraft, Routine, RoutinePattern, RoutineVersion
from routines.models.bank_total import count_bank_again
from routines.models.facts import Facts, facts_of
from routines.models.plan_document import Plan
from routines.models.search_word import write_words
from routines.models.shown_families import shown_bits
from routines.words import SpokenPattern


class StaleSave(Exception):
    """Somebody saved in between. `theirs` is the version now current; nothing was written."""

    def __init__(self, theirs: RoutineVersion) -> None:
        super().__init__(_("Somebody saved this plan while you were writing."))
        self.theirs = theirs


@transaction.atomic
def start_routine(*, plan: Plan, by: User, copied_from: RoutineVersion | None = None) -> Routine:
    """Make a routine and its first version, as a draft of `by`. Raises CountError for a plan that is no count."""
    grade = Grade.objects.select_related("band").get(name=plan.grade)
    facts = facts_of(plan, grade.level)
    routine = Routine.objects.create(
        title=plan.title,
        story=plan.story.text,
        band=grade.band,
        grade=grade,
        area=plan.area,
        owner=by,
        copied_from=copied_from.routine if copied_from else None,
        copied_from_version=copied_from,
        **facts.columns,
    )
    _freeze(routine, plan, facts, by, number=1)
    return routine


@transaction.atomic
def save_version(*, routine: Routine, plan: Plan, based_on: RoutineVersion | None, by: User) -> RoutineVersion:
    """Freeze the plan as the routine's next version.

    Raises StaleSave when `based_on` is no longer the current version, PermissionDenied when `by` may not edit,
    CountError for a plan that is no count. Saving a plan equal to the current one makes no new version.
    """
    # The version is read after the wait for the row: in one query PostgreSQL looks for it as of before the wait.
    routine = Routine.objects.select_for_update().get(pk=routine.pk)
    if not routine.may_edit(by):
        raise PermissionDenied
    current = routine.newest_save
    # Before asking who was first: of the same text sent twice the second finds what it wanted.
    if current.plan == plan.as_dict():
        PlanDraft.objects.of(by).filter(routine=routine).delete()
        return current
    if based_on is None or based_on.pk != current.pk:
        raise StaleSave(current)
    grade = Grade.objects.select_related("band").get(name=plan.grade)
    facts = facts_of(plan, grade.level)
    before = (routine.grade_id, routine.area)
    for name, value in facts.columns.items():
        setattr(routine, name, value)
    routine.title, routine.story, routine.area = plan.title, plan.story.text, plan.area
    routine.grade, routine.band = grade, grade.band
    worked_out.forget(current)
    version = _freeze(routine, plan, facts, by, number=current.number + 1)
    if routine.status == Routine.Status.SHARED and before != (routine.grade_id, routine.area):
        count_bank_again({before, (routine.grade_id, routine.area)})
    PlanDraft.objects.of(by).filter(routine=routine).delete()
    return version


def _freeze(routine: Routine, plan: Plan, facts: Facts, by: User, *, number: int) -> RoutineVersion:
    version = RoutineVersion.objects.create(routine=routine, number=number, by=by, plan=plan.as_dict())
    routine.current_version = version
    routine.save()
    routine.standards.set(Standard.objects.filter(code__in=plan.standards))
    write_patterns(routine, facts.patterns)
    write_words(routine)
    # When everything is written, so that nobody who saves waits for drawings; if it fails, the pages make it.
    level = routine.grade.level
    transaction.on_commit(lambda: worked_out.work_out(worked_out.save_of(version, level)), robust=True)
    return version


def pattern_rows(routine: Routine, patterns: Sequence[SpokenPattern]) -> list[RoutinePattern]:
    """What is stored of these patterns, most noticeable first; not stored yet."""
    return [
        RoutinePattern(
            routine=routine,
            position=position,
            family=pattern.claim.family,
            holds=pattern.holds,
            lie=(pattern.claim.lie or "") if isinstance(pattern.claim, LandmarksClaim) else "",
            claim=pattern.claim.as_dict(),
        )
        for position, pattern in enumerate(patterns)
    ]


def write_patterns(routine: Routine, patterns: Sequence[SpokenPattern]) -> None:
    """Replace the stored patterns of a routine by these, most noticeable first, and what it says of them itself."""
    rows = pattern_rows(routine, patterns)
    RoutinePattern.objects.filter(routine=routine).delete()
    RoutinePattern.objects.bulk_create(rows)
    routine.shows = shown_bits((row.family, row.holds, row.lie) for row in rows)
    routine.save(update_fields=["shows"])


def copy_routine(*, routine: Routine, by: User) -> Routine:
    """A draft of `by`'s own, remembering what it was copied from."""
    version = routine.newest_save
    plan = version.read_plan()
    return start_routine(plan=plan, by=by, copied_from=version)


def restore_version(*, version: RoutineVersion, by: User) -> RoutineVersion:
    """Make an older version the newest again, as a save of its own: history only grows."""
    routine = version.routine
    if routine.current_version is None:  # a damaged row: the save itself stands, so it is pointed to again
        routine.current_version = version
        routine.save(update_fields=["current_version"])
        return version
    return save_version(routine=routine, plan=version.read_plan(), based_on=routine.current_version, by=by)


@transaction.atomic
def keep_draft(
    *,
    by: User,
    fields: dict[str, Any],
    routine: Routine | None = None,
    key: UUID | None = None,
    based_on: RoutineVersion | None = None,
) -> PlanDraft:
    """Keep what a person is typing, readable or not. One draft per person and routine; new plans are told apart by `key`."""
    if routine is not None:
        draft, made = PlanDraft.objects.get_or_create(
            person=by, routine=routine, defaults={"fields": fields, "based_on": based_on}
        )
    elif key is not None:
        draft, made = PlanDraft.objects.get_or_create(person=by, routine=None, key=key, defaults={"fields": fields})
    else:
        draft, made = PlanDraft.objects.create(person=by, fields=fields), True
    if not made:
        draft.fields, draft.kept_at = fields, timezone.now()
        draft.save(update_fields=["fields", "kept_at"])
    return draft
