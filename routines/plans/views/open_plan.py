"""The plan a person is writing: a routine she may edit, or a new one known by the key of its page.

Once a new plan is saved, its page stands for the routine it became: Back and Save again, a second tab or a late autosave
go on with that routine and never make another.
"""

from dataclasses import dataclass, field
from typing import Any
from uuid import UUID, uuid4

from django.core.exceptions import PermissionDenied
from django.db import transaction
from django.http import Http404, QueryDict
from django.shortcuts import get_object_or_404
from django.urls import reverse

from accounts.models import School, SentForm, User
from accounts.requests import SignedInRequest
from accounts.typed_numbers import typed_whole
from grade_bands.models import Grade
from routines.counting import Fill, Kind
from routines.models import PlanDraft, Routine, RoutineVersion
from routines.plans.actions import keep_draft
from routines.plans.forms.draft import DraftFields, fields_of, only, read_draft, read_fields
from routines.plans.forms.limits import too_long
from routines.plans.forms.marks import read_posted

STEPS_KEPT = 10
HIGHEST_VERSION = 999_999


class TooLong(Exception):
    """More is typed than can be kept; `str()` says so."""


@dataclass
class OpenPlan:
    """`draft` is what autosave kept, `steps` the changes that can be undone, newest last.

    `key` is that of a new plan's page, `saved_here` the version that page saved last, once it has saved one.
    """

    user: User
    school: School
    grades: list[Grade]
    routine: Routine | None = None
    key: UUID | None = None
    saved_here: int = 0
    draft: PlanDraft | None = None
    steps: list[dict[str, Any]] = field(default_factory=list)

    @property
    def kwargs(self) -> dict[str, Any]:
        return {"pk": self.routine.pk} if self.routine else {"key": self.key}

    def url(self, name: str) -> str:
        return reverse(name, kwargs=self.kwargs)

    @property
    def saved(self) -> Routine:
        """The routine. Raises Http404 for a new plan, which is none yet."""
        if self.routine is None:
            raise Http404
        return self.routine

    @property
    def kept_typed(self) -> DraftFields:
        return read_draft(self.draft.fields)[0] if self.draft else {}

    def typed(self) -> DraftFields:
        """What the form holds when the page opens: the draft, else the saved plan, else a fresh sheet."""
        if self.kept_typed:
            return self.kept_typed
        if self.routine:
            version = self.routine.newest_save
            return {**fields_of(version.read_plan()), "based_on": [str(version.number)]}
        return fresh_sheet(self.user, self.school, self.grades)

    def read(self, posted: QueryDict) -> DraftFields:
        """What a request holds of the plan. The page of a new plan knows no version: what it saved last is its version."""
        typed = read_posted(posted)
        return typed if "based_on" in typed or not self.saved_here else {**typed, "based_on": [str(self.saved_here)]}

    def based_on(self, typed: DraftFields) -> RoutineVersion | None:
        """The version this text was started from."""
        number = typed_whole(only(typed, "based_on"), 1, HIGHEST_VERSION)
        if self.routine is None or number is None:
            return None
        current = self.routine.newest_save
        return current if current.number == number else self.routine.versions.filter(number=number).first()

    @transaction.atomic
    def keep(self, typed: DraftFields, step: dict[str, Any] | None = None) -> None:
        """Keep what is typed; `step` says how to undo the change that was just made. Raises TooLong and keeps the last."""
        if sentence := too_long(typed):
            raise TooLong(sentence)
        if step is not None:
            self.steps = [*self.steps, step][-STEPS_KEPT:]
        fields = {"typed": typed, "steps": self.steps}
        self.draft = keep_draft(
            by=self.user, fields=fields, routine=self.routine, key=self.key, based_on=self.based_on(typed)
        )


def open_plan(request: SignedInRequest, pk: int | None, key: UUID | None) -> OpenPlan:
    """404 for a plan one may not see or another's draft, 403 for one that may be seen but not edited."""
    opened = OpenPlan(request.user, request.school, Grade.objects.in_order(), key=key)
    if key is not None:
        pk, opened.saved_here = became(key, request.user)
    if pk is not None:
        opened.routine = get_object_or_404(
            Routine.objects.visible_to(request.user)
            .select_related("current_version", "owner", "grade")
            .prefetch_related("co_authors"),
            pk=pk,
        )
        if not opened.routine.may_edit(request.user):
            raise PermissionDenied
        opened.draft = PlanDraft.objects.of(request.user).filter(routine=opened.routine).first()
        if key is not None:
            take_over_late_words(opened, opened.routine, key)
    elif key is not None:
        opened.draft = PlanDraft.objects.filter(key=key).first()
        if opened.draft and (opened.draft.person_id != request.user.pk or opened.draft.routine_id):
            raise Http404
    if opened.draft:
        _typed, opened.steps = read_draft(opened.draft.fields)
    return opened


@transaction.atomic
def own_words_apart(person: User, pk: int, posted: QueryDict) -> UUID | None:
    """The key under which what she typed in a plan that she may not change, or no longer, is kept as a new one of her own.

    None where she typed nothing, or more than can be kept. Whether there is such a plan at all makes no difference.
    """
    typed = read_posted(posted)
    typed.pop("based_on", None)
    draft = PlanDraft.objects.of(person).select_for_update().filter(routine__pk=pk).first()
    if too_long(typed) or not (draft or only(typed, "start") or only(typed, "title")):
        return None
    if draft is None:
        return keep_draft(by=person, fields={"typed": typed, "steps": []}).key
    draft.routine = draft.based_on = None
    if typed:
        draft.fields = {"typed": typed, "steps": []}
    draft.save(update_fields=["routine", "based_on", "fields"])
    return draft.key


def became(key: UUID, person: User) -> tuple[int | None, int]:
    """The routine that this person's new plan has become, and the version its page saved last; none, 0 before."""
    sent = SentForm.objects.of(person, key)
    if sent is None:
        return None, 0
    routine = Routine.objects.filter(pk=sent.made.get("routine")).first()
    return (routine.pk, sent.made["version"]) if routine else (None, 0)


def take_over_late_words(opened: OpenPlan, routine: Routine, key: UUID) -> None:
    """An autosave that was under way while the new plan was saved: its words go on as changes to the routine, or, where
    there are other changes already, as an unfinished plan of their own.
    """
    late = PlanDraft.objects.of(opened.user).filter(key=key, routine=None).first()
    if late is None:
        return
    late.key = uuid4()
    if opened.draft is None:
        late.routine = routine
        late.based_on = routine.versions.filter(number=opened.saved_here).first()
        late.fields["typed"] = {**read_fields(late.fields.get("typed")), "based_on": [str(opened.saved_here)]}
        opened.draft = late
    late.save()


def fresh_sheet(user: User, school: School, grades: list[Grade]) -> DraftFields:
    """An empty plan in the habits of the school, for the grade this person teaches."""
    taught = Grade.objects.taught_by(user).first()
    grade = taught or (grades[0] if grades else None)
    return {
        "grade": [grade.name if grade else ""],
        "language": ["en"],
        "kind": [Kind.WHOLE.value],
        "start": [""],
        "step": [""],
        "terms": ["25"],
        "line_length": ["5"],
        "fill": [Fill.ACROSS.value],
        "lead": ["0"],
        **school_marks(school),
    }


def school_marks(school: School) -> DraftFields:
    """The school's marks, currency and clock, as far as they differ from the engine's own habit."""
    marks: DraftFields = {"style-currency": [school.currency]}
    if school.decimal_mark == ",":
        marks["style-decimal_mark"] = [","]
    if school.thousands != ("." if school.decimal_mark == "," else ","):
        marks["style-thousands"] = [school.thousands or "none"]
    if school.clock == School.Clock.TWENTY_FOUR:
        marks["style-clock"] = ["24"]
    return marks
