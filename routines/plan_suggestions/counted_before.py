"""Has one of this teacher's classes counted this count already this school year? And what did she note for herself?"""

from datetime import date

from routines.counting import Count
from routines.models import Lesson

GROUPS = {
    2: "twos", 3: "threes", 4: "fours", 5: "fives", 6: "sixes", 7: "sevens", 8: "eights", 9: "nines", 10: "tens",
    11: "elevens", 12: "twelves",
}  # fmt: skip


def counted_before(count: Count, teacher, today: date) -> str:
    """One sentence naming class and month of the latest lesson with this start and step; "" without one."""
    lesson = (
        Lesson.objects.counted()
        .filter(
            class_group__teachers=teacher,
            year__starts_on__lte=today,
            year__ends_on__gte=today,
            routine__kind=count.kind,
            routine__start_numerator=count.start.numerator,
            routine__start_denominator=count.start.denominator,
            routine__step_numerator=count.step.numerator,
            routine__step_denominator=count.step.denominator,
        )
        .select_related("class_group", "version")
        .order_by("-taught_on")
        .first()
    )
    return f"{lesson.class_group.name} counted this in {lesson.taught_on:%B}{_folded(lesson)}." if lesson else ""


def _folded(lesson: Lesson) -> str:
    """How it was folded then: ", in fours" is what a teacher says; beyond twelve, the number."""
    length = lesson.version.plan["fold"]["line_length"]
    return f", in {GROUPS[length]}" if length in GROUPS else f", {length} in a line"


def notes_to_self(routine, teacher) -> list[tuple[date, str]]:
    """What this teacher wrote to her next year's self about this count, or the one it was copied from. For her alone."""
    counts = [routine.pk, *([routine.copied_from_id] if routine.copied_from_id else [])]
    mine = Lesson.objects.taught_by(teacher).filter(routine__in=counts).exclude(reflection=None)
    noted = mine.exclude(reflection__to_next_year="").order_by("-taught_on")
    return list(noted.values_list("taught_on", "reflection__to_next_year")[:5])
