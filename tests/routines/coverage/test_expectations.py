"""Each expected area has a line on where it comes from: the school's own standards first."""

import pytest
from django.urls import reverse

from grade_bands.actions import lay_grades, load_standards
from grade_bands.models import Grade
from grade_bands.standards import COMMON_CORE
from routines.coverage.expectations import expectations
from tests.factories import ClassGroupFactory, StandardFactory

pytestmark = pytest.mark.django_db


def lines_of(name: str) -> list[str]:
    ((_grade, lines),) = expectations([Grade.objects.get(name=name)])
    return lines


@pytest.fixture(autouse=True)
def grades():
    lay_grades(range(9))


def test_without_standards_the_starting_point_says_what_it_goes_by():
    after = f"Countfold’s starting point, after {COMMON_CORE}"
    assert lines_of("2") == [f"whole numbers, measurement, money, time: {after}"]
    assert lines_of("7") == [
        "integers, decimals: Countfold’s starting point; common practice, no source",
        "ratios: not expected until counts can be made for it",
    ]


def test_loaded_standards_are_named_and_the_schools_own_first():
    load_standards()
    assert lines_of("2") == [f"whole numbers, measurement, money, time: {COMMON_CORE}"]
    StandardFactory(framework="Larkfield scheme", grade=Grade.objects.get(name="2"), area="money")
    assert lines_of("2") == [
        f"whole numbers, measurement, time: {COMMON_CORE}",
        "money: Larkfield scheme",
    ]


def test_what_the_school_added_is_its_own_choice():
    Grade.objects.filter(name="K").update(areas=["whole", "money"])
    assert lines_of("K")[1] == "money: the school’s own choice, on its page of grades"


def test_it_costs_one_query_and_stands_on_both_pages(coach, year, visit, django_assert_num_queries):
    ClassGroupFactory(grade=Grade.objects.get(name="2"), year=year)
    load_standards()
    grades = list(Grade.objects.all())
    with django_assert_num_queries(1):
        expectations(grades)
    for name in ("coverage", "coverage_standards"):
        page = visit(coach).get(reverse(name)).text
        assert "Where what is expected comes from" in page, name
        assert COMMON_CORE in page
