"""Has one of this teacher's classes counted this count already this school year?"""

from datetime import date

from routines.counting import Count
from routines.models import Lesson


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
        .select_related("class_group")
        .order_by("-taught_on")
        .first()
    )
    return f"{lesson.class_group.name} counted this in {lesson.taught_on:%B}." if lesson else ""
