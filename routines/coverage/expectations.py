"""Where what each grade is expected to cover comes from: the school's own standards first, then others that it loaded."""

from collections import defaultdict
from collections.abc import Sequence

from django.db.models import QuerySet
from django.utils.translation import gettext as _

from accounts.compiled_once import compiled_once
from grade_bands.models import Area, Grade, Standard
from grade_bands.standards import COMMON_CORE
from grade_bands.starting_point import EXPECTED_AREAS, USUAL_LEVELS
from routines.coverage.queries import NOT_TO_BE_MADE


def expectations(grades: Sequence[Grade]) -> list[tuple[Grade, list[str]]]:
    """For each grade one line a source, such as "whole numbers, money: Larkfield scheme"."""
    frameworks: defaultdict[tuple[int | None, str], set[str]] = defaultdict(set)
    for grade_pk, area, framework in _expected_by([grade.pk for grade in grades]):
        frameworks[grade_pk, area].add(framework)
    lines = []
    for grade in grades:
        areas_of: dict[str, list[str]] = {}
        for area in Area:
            if grade.expects(area):
                source = _source(grade, area, frameworks[grade.pk, area.value])
                areas_of.setdefault(source, []).append(str(area.label))
        lines.append((grade, [f"{', '.join(areas)}: {source}" for source, areas in areas_of.items()]))
    return lines


def _source(grade: Grade, area: Area, frameworks: set[str]) -> str:
    if area in NOT_TO_BE_MADE:
        return _("not expected until counts can be made for it")
    own = sorted(frameworks - {COMMON_CORE})
    if own or frameworks:
        return ", ".join(own or sorted(frameworks))
    if area not in EXPECTED_AREAS[grade.level]:
        return _("the school’s own choice, on its page of grades")
    if grade.level in USUAL_LEVELS:
        return _("Countfold’s starting point, after %(standards)s") % {"standards": COMMON_CORE}
    return _("Countfold’s starting point; common practice, no source")


@compiled_once
def _expected_by(grades: list[int]) -> QuerySet[Standard, tuple[int | None, str, str]]:
    """In which areas which framework expects something of each grade."""
    named = Standard.objects.filter(grade__in=grades).order_by()
    return named.values_list("grade", "area", "framework").distinct()
