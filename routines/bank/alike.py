"""Counts in the bank that are like one: a teacher who looked at this one may want to see them."""

from django.db.models import Case, IntegerField, Value, When

from routines.models import Routine
from routines.models.routine import RoutineQuerySet


def alike(routine: Routine, *, at_most: int = 3) -> RoutineQuerySet:
    """Shared counts of the same area, most alike first: same number kind, same grade, same step, same direction, same fold.

    What it was copied from and its copies are named elsewhere on the page, so they are left out.
    """
    points = (
        (4, {"kind": routine.kind}),
        (3, {"grade": routine.grade}),
        (3, {"step_numerator": routine.step_numerator, "step_denominator": routine.step_denominator}),
        (2, {"direction": routine.direction}),
        (1, {"line_length": routine.line_length}),
    )
    likeness = sum(
        (
            Case(When(**same, then=Value(worth)), default=Value(0), output_field=IntegerField())
            for worth, same in points
        ),
        start=Value(0),
    )
    return (
        Routine.objects.in_bank()
        .for_areas([routine.area])
        .exclude(pk__in=[routine.pk, routine.copied_from_id or routine.pk])
        .exclude(copied_from=routine)
        .annotate(likeness=likeness)
        .order_by("-likeness", "-shared_at", "-pk")[:at_most]
    )
