"""Counts in the bank that are like one: a teacher who looked at this one may want to see them."""

from django.db.models import Case, IntegerField, QuerySet, Value, When

from accounts.compiled_once import compiled_once
from routines.models import Routine


def alike(routine: Routine, *, at_most: int = 3) -> list[Routine]:
    """Shared counts of the same area, most alike first: same number kind, same grade, same step, same direction, same fold.

    What it was copied from and its copies are named elsewhere on the page, so they are left out. They come `as_cards`.
    """
    step = routine.step_numerator, routine.step_denominator
    return _alike(
        routine.pk,
        sorted({routine.pk, routine.copied_from_id or routine.pk}),
        routine.grade_id,
        *step,
        routine.line_length,
        area=routine.area,
        kind=routine.kind,
        direction=routine.direction,
        at_most=at_most,
    )


@compiled_once
def _alike(
    routine: int,
    left_out: list[int],
    grade: int,
    numerator: int,
    denominator: int,
    line_length: int,
    *,
    area: str,
    kind: str,
    direction: str,
    at_most: int,
) -> QuerySet[Routine]:
    points = (
        (4, {"kind": kind}),
        (3, {"grade": grade}),
        (3, {"step_numerator": numerator, "step_denominator": denominator}),
        (2, {"direction": direction}),
        (1, {"line_length": line_length}),
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
        .for_areas([area])
        .exclude(pk__in=left_out)
        .exclude(copied_from=routine)
        .annotate(likeness=likeness)
        .order_by("-likeness", "-shared_at", "-pk")
        .as_cards()[:at_most]
    )
