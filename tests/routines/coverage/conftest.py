"""A school that has taught a little, this year and last."""

from datetime import date

import pytest

from tests.factories import ClassGroupFactory, SchoolYearFactory
from tests.routines.making import make_lesson, make_routine


@pytest.fixture
def taught(owner, teammate, other_teacher, grade_five):
    """Two counts in grade 2 (one taught twice, once as practice), one in grade 5."""
    sevens = make_routine(owner, title="Sevens")
    make_routine(owner, title="Never taught")
    fives = make_routine(other_teacher, title="Fives", grade="5")
    make_lesson(sevens, owner, taught_on=date(2026, 9, 15), seen="planted medlar")
    make_lesson(sevens, teammate, taught_on=date(2026, 9, 22))
    make_lesson(sevens, owner, practice=True)
    make_lesson(fives, other_teacher, taught_on=date(2026, 10, 6))
    return sevens


@pytest.fixture
def last_year(school):
    return SchoolYearFactory(name="2025-26", starts_on=date(2025, 8, 18), ends_on=date(2026, 6, 19))


@pytest.fixture
def last_years_class(last_year, grade_two, teammate):
    """Teammate's, in grade 2; owner had none."""
    return ClassGroupFactory(name="2 Robin", grade=grade_two, year=last_year, teachers=[teammate])
