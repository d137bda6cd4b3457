"""Grades, classes and years: what the database itself refuses, and which year a day belongs to."""

from datetime import date

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError
from django.db.models import ProtectedError

from grade_bands.models import Area, ClassGroup, Grade, SchoolYear
from tests.factories import ClassGroupFactory, GradeFactory, SchoolYearFactory, StandardFactory

pytestmark = pytest.mark.django_db


def test_a_grade_expects_the_areas_it_names_and_no_others():
    grade = GradeFactory(areas=["whole", "money"])
    assert grade.expects(Area.MONEY)
    assert not grade.expects("time")
    assert grade.area_labels() == ["whole numbers", "money"]


@pytest.mark.parametrize("areas", [["algebra"], ["whole", "whole"], "whole"])
def test_areas_that_are_none_are_refused(areas):
    with pytest.raises(ValidationError, match="Choose each area once"):
        GradeFactory.build(areas=areas, band=None).full_clean(exclude=["band"])


def test_a_level_over_8_is_refused():
    with pytest.raises(IntegrityError):
        GradeFactory(level=9)


def test_a_year_ends_after_it_starts():
    with pytest.raises(IntegrityError):
        SchoolYearFactory(name="odd", starts_on=date(2026, 8, 17), ends_on=date(2026, 8, 17))


@pytest.mark.parametrize(
    ("day", "name"),
    [
        (date(2026, 8, 17), "2026-27"),
        (date(2027, 6, 18), "2026-27"),
        (date(2027, 7, 20), "2026-27"),
        (date(2027, 8, 16), "2027-28"),
        (date(2020, 1, 1), "2026-27"),
    ],
)
def test_a_day_belongs_to_the_latest_year_that_has_begun(day, name):
    SchoolYearFactory()
    SchoolYearFactory(name="2027-28", starts_on=date(2027, 8, 16), ends_on=date(2028, 6, 16))
    assert SchoolYear.objects.on(day).name == name


def test_without_years_there_is_none():
    assert SchoolYear.objects.on(date(2026, 9, 1)) is None


def test_two_classes_of_one_year_cannot_share_a_name():
    group = ClassGroupFactory(name="2B")
    with pytest.raises(IntegrityError):
        ClassGroupFactory(name="2B", year=group.year)


def test_a_grade_with_classes_cannot_be_deleted():
    group = ClassGroupFactory()
    with pytest.raises(ProtectedError):
        group.grade.delete()


def test_classes_and_grades_of_a_teacher(owner, teammate, grade_two):
    assert [group.name for group in ClassGroup.objects.taught_by(owner)] == ["2 Wren"]
    assert list(Grade.objects.taught_by(owner)) == [grade_two]


def test_a_code_is_there_once_in_a_framework_and_may_be_in_another():
    StandardFactory(code="LS.1")
    StandardFactory(code="LS.1", framework="Another scheme")
    with pytest.raises(IntegrityError):
        StandardFactory(code="LS.1")
