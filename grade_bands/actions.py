"""Writes that lay out a school: grades, the first year, standards, and the whole of set-up."""

from collections.abc import Iterable
from datetime import date, timedelta

from django.db import transaction

from accounts.actions import found_school
from accounts.models import School, User

from .models import Grade, GradeBand, SchoolYear, Standard
from .standards import COMMON_CORE, StandardRow, common_core
from .starting_point import BANDS, EXPECTED_AREAS, GRADE_NAMES, USUAL_LEVELS, band_name


def lay_grades(levels: Iterable[int] = USUAL_LEVELS) -> None:
    """Make the grades of these levels (0 = K), in the usual bands."""
    chosen = sorted(set(levels))
    with transaction.atomic():
        for order, band_levels in enumerate(BANDS, start=1):
            in_band = [level for level in band_levels if level in chosen]
            if not in_band:
                continue
            band = GradeBand.objects.create(name=band_name(in_band), order=order)
            Grade.objects.bulk_create(
                Grade(
                    name=GRADE_NAMES[level],
                    order=level + 1,
                    level=level,
                    band=band,
                    areas=[str(area) for area in EXPECTED_AREAS[level]],
                )
                for level in in_band
            )


def open_school_year(*, school: School, day: date) -> SchoolYear:
    """The school year that holds `day`, by the school's own first day; made if it isn't there."""
    starts_on = date(day.year, school.year_starts_month, school.year_starts_day)
    if starts_on > day:
        starts_on = starts_on.replace(year=day.year - 1)
    next_start = starts_on.replace(year=starts_on.year + 1)
    name = f"{starts_on.year}-{next_start.year % 100:02}"
    year, _made = SchoolYear.objects.get_or_create(
        starts_on=starts_on, defaults={"name": name, "ends_on": next_start - timedelta(days=1)}
    )
    return year


def load_standards(*, rows: list[StandardRow] | None = None, framework: str = COMMON_CORE) -> int:
    """Add these standards (the bundled Common Core ones unless told otherwise), or bring those there up to date.

    Hands back how many. A grade the school doesn't have leaves the standard without a grade.
    """
    rows = common_core() if rows is None else rows
    grades = {grade.name: grade for grade in Grade.objects.all()}
    Standard.objects.bulk_create(
        [
            Standard(
                framework=framework,
                code=row.code,
                grade=grades.get(row.grade),
                area=row.area,
                summary=row.summary,
                number_limits=row.number_limits,
                count_features=row.count_features,
            )
            for row in rows
        ],
        update_conflicts=True,
        unique_fields=["framework", "code"],
        update_fields=["grade", "area", "summary", "number_limits", "count_features"],
    )
    return len(rows)


def set_up_school(
    *,
    school: School,
    administrator: User,
    passphrase: str | None,
    levels: Iterable[int] = USUAL_LEVELS,
    with_common_core: bool = True,
    day: date,
) -> School:
    """Everything a first visit makes, or nothing: the school, its first administrator, grades, a year, standards."""
    with transaction.atomic():
        found_school(school=school, administrator=administrator, passphrase=passphrase)
        lay_grades(levels)
        open_school_year(school=school, day=day)
        if with_common_core:
            load_standards()
    return school
