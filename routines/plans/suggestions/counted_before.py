"""Has one of this teacher's classes counted this count already this school year? And what did she note for herself?"""

from dataclasses import dataclass
from datetime import date

from django.db.models import Q, QuerySet
from django.utils.dates import MONTHS
from django.utils.translation import gettext as _

from accounts.compiled_once import compiled_once
from accounts.models import User
from routines.counting import Count
from routines.models import Lesson, Routine

NOTES_SHOWN = 5
COPIES_FOLLOWED = 5


@dataclass(frozen=True, slots=True)
class NoteToSelf:
    """What a teacher wrote to her next year's self after a lesson; she alone reads it."""

    taught_on: date
    class_name: str
    text: str


def counted_before(count: Count, teacher: User, today: date) -> str:
    """One sentence naming class and month of the latest lesson with this start and step; "" without one."""
    start, step = count.start.as_integer_ratio(), count.step.as_integer_ratio()
    lesson = next(iter(_latest(teacher, today, *start, *step, kind=count.kind)), None)
    if lesson is None:
        return ""
    return _("%(class)s counted this in %(month)s, %(folded)s.") % {
        "class": lesson.class_group.name,
        "month": MONTHS[lesson.taught_on.month],
        "folded": in_lines_of(lesson.version.plan["fold"]["line_length"]),
    }


@compiled_once
def _latest(
    teacher: User,
    today: date,
    start_numerator: int,
    start_denominator: int,
    step_numerator: int,
    step_denominator: int,
    *,
    kind: str,
) -> QuerySet[Lesson]:
    counted = Lesson.objects.counted().filter(
        routine__kind=kind,
        routine__start_numerator=start_numerator,
        routine__start_denominator=start_denominator,
        routine__step_numerator=step_numerator,
        routine__step_denominator=step_denominator,
        class_group__teachers=teacher,
        year__starts_on__lte=today,
        year__ends_on__gte=today,
    )
    return counted.select_related("class_group", "version").order_by("-taught_on")[:1]


def in_lines_of(length: int) -> str:
    """How it was folded: "in fours" is what a teacher says; beyond twelve, the number."""
    said = {
        2: _("in twos"), 3: _("in threes"), 4: _("in fours"), 5: _("in fives"), 6: _("in sixes"), 7: _("in sevens"),
        8: _("in eights"), 9: _("in nines"), 10: _("in tens"), 11: _("in elevens"), 12: _("in twelves"),
    }  # fmt: skip
    return said.get(length) or _("%(length)s in a line") % {"length": length}


def notes_to_self(teacher: User, *, routine: Routine | None = None, count: Count | None = None) -> list[NoteToSelf]:
    """This teacher's notes about this routine, what it was copied from, or the same start and step; the newest first."""
    if routine and count is None:
        return [NoteToSelf(*row) for row in _noted_about(teacher, _with_origins(routine))]
    about = Q(routine__in=_with_origins(routine)) if routine else Q()
    if count is not None:
        about |= _of_count(count)
    return [NoteToSelf(*row) for row in _noted(teacher, about)] if about else []


def _noted(teacher: User, about: Q) -> QuerySet[Lesson, tuple[date, str, str]]:
    noted = (
        Lesson.objects.taught_by(teacher).filter(about).exclude(reflection=None).exclude(reflection__to_next_year="")
    )
    rows = noted.order_by("-taught_on", "-pk").values_list("taught_on", "class_group__name", "reflection__to_next_year")
    return rows[:NOTES_SHOWN]


@compiled_once
def _noted_about(teacher: User, routines: list[int]) -> QuerySet[Lesson, tuple[date, str, str]]:
    return _noted(teacher, Q(routine__in=routines))


def _with_origins(routine: Routine) -> list[int]:
    """The routine and those that it was copied from, a few steps back, in one query at most."""
    if routine.copied_from_id is None:
        return [routine.pk]
    back = ["copied_from" + "__copied_from" * steps for steps in range(COPIES_FOLLOWED)]
    found = Routine.objects.filter(pk=routine.pk).values_list(*back).first() or ()
    return [routine.pk, *(pk for pk in found if pk)]


def _of_count(count: Count) -> Q:
    return Q(
        routine__kind=count.kind,
        routine__start_numerator=count.start.numerator,
        routine__start_denominator=count.start.denominator,
        routine__step_numerator=count.step.numerator,
        routine__step_denominator=count.step.denominator,
    )
