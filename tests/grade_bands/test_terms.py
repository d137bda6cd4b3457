"""Terms of a school year: none or two to six, each after the one before and within its year, and proposed for the next."""

import re
from datetime import date

import pytest
from django.core.exceptions import ValidationError

from grade_bands.models import SchoolYear
from grade_bands.models.term import MOST_TERMS, terms_from
from tests.factories import SchoolYearFactory

THREE = ["2026-08-17", "2026-11-30", "2027-03-15"]


@pytest.fixture
def year(school):
    return SchoolYearFactory(term_starts=THREE)


def fields(*terms: str, **changed: str) -> dict[str, str]:
    """What the page of the year sends: `terms` from the first field on, the others empty."""
    days = {f"term{number}": "" for number in range(1, MOST_TERMS + 1)}
    days |= {f"term{number}": day for number, day in enumerate(terms, 1)}
    return {"name": "2026-27", "starts_on": "2026-08-17", "ends_on": "2027-06-18", **days, **changed}


def test_each_ends_the_day_before_the_next_and_the_last_with_the_year(year):
    assert [(term.number, term.first, term.last) for term in year.terms] == [
        (1, date(2026, 8, 17), date(2026, 11, 29)),
        (2, date(2026, 11, 30), date(2027, 3, 14)),
        (3, date(2027, 3, 15), date(2027, 6, 18)),
    ]
    assert terms_from([], date(2027, 6, 18)) == []


@pytest.mark.parametrize(
    "starts", [["2026-08-17"], ["soon", "2027-01-11"], ["2027-01-11", "2027-01-11"], THREE[::-1], [1, 2], THREE * 3]
)
def test_days_that_are_no_terms_are_refused(school, starts):
    with pytest.raises(ValidationError):
        SchoolYearFactory.build(term_starts=starts).full_clean()


def test_they_are_typed_on_the_page_of_the_year_and_stand_among_the_classes(visit, administrator, year):
    browser, page = visit(administrator), f"/school/years/{year.pk}/"
    shown = browser.get(page).text
    for number, day in enumerate(THREE, 1):
        assert re.search(rf'name="term{number}" value="{day}"', shown)
    assert '<details class="year-terms" open>' in shown
    assert browser.post(page, fields("2026-08-24", "2027-01-11")).status_code == 302
    assert SchoolYear.objects.get().term_starts == ["2026-08-24", "2027-01-11"]
    assert "Term 2: January 11, 2027 to June 18, 2027" in browser.get("/school/classes/").text
    browser.post(page, fields())
    assert SchoolYear.objects.get().term_starts == []
    assert '<details class="year-terms">' in browser.get(page).text
    assert "Term 1" not in browser.get("/school/classes/").text


@pytest.mark.parametrize(
    ("typed", "field", "sentence"),
    [
        (("2026-08-17", "2026-08-17"), 2, "Choose a day after August 17, 2026, when the term before begins."),
        (("2026-12-01", "2026-09-01"), 2, "Choose a day after December 1, 2026, when the term before begins."),
        (("2026-08-16", "2027-01-11"), 1, "Choose a day of this year, from August 17, 2026 to June 18, 2027."),
        (("2026-08-17", "2027-06-19"), 2, "Choose a day of this year, from August 17, 2026 to June 18, 2027."),
        (("2026-08-17", "", "2027-01-11"), 2, "Choose the first day of this term too, or empty those after it."),
        (("2026-08-17",), 2, "Choose the first day of a second term, or empty the first."),
        (("2026-08-17", "in winter"), 2, "Write a date such as 2026-08-15."),
    ],
)
def test_what_is_wrong_is_said_at_its_field_alone_and_nothing_is_kept(
    visit, administrator, year, typed, field, sentence
):
    answer = visit(administrator).post(f"/school/years/{year.pk}/", fields(*typed))
    assert answer.status_code == 422
    assert re.findall(r'class="field-error" id="id_(\w+)_error">(.*?)</p>', answer.text) == [(f"term{field}", sentence)]
    assert '<details class="year-terms" open>' in answer.text
    assert f'value="{typed[0]}"' in answer.text
    assert SchoolYear.objects.get().term_starts == THREE


def test_a_year_that_is_cut_short_says_which_term_no_longer_lies_in_it(visit, administrator, year):
    answer = visit(administrator).post(f"/school/years/{year.pk}/", fields(*THREE, ends_on="2027-02-26"))
    assert 'id="id_term3_error">Choose a day of this year, from August 17, 2026 to February 26, 2027.' in answer.text
    assert SchoolYear.objects.get().ends_on == date(2027, 6, 18)


def test_the_next_years_are_proposed_as_its_days_are_and_kept_with_it(visit, administrator, year):
    browser = visit(administrator)
    page = browser.get("/school/years/new/").text
    proposed = re.findall(r'name="term\d" value="([^"]*)"', page)
    assert proposed == ["2027-08-16", "2027-11-29", "2028-03-13"]
    assert [date.fromisoformat(day).weekday() for day in (*proposed, *THREE)] == [0] * 6
    days = {"name": "2027-28", "starts_on": "2027-08-16", "ends_on": "2028-06-16"}
    assert browser.post("/school/years/new/", fields(*proposed, **days)).status_code == 302
    assert SchoolYear.objects.get(name="2027-28").term_starts == proposed
    assert SchoolYear.objects.get(name="2026-27").term_starts == THREE


def test_what_is_proposed_lies_in_the_year_that_is_proposed(visit, administrator, school):
    SchoolYearFactory(ends_on=date(2027, 8, 16), term_starts=THREE)  # a whole year of days, not of weeks
    page = visit(administrator).get("/school/years/new/").text
    assert 'name="starts_on" value="2027-08-17"' in page
    assert 'name="term1" value="2027-08-17"' in page


def test_of_a_year_without_terms_none_are_proposed(visit, administrator, school):
    SchoolYearFactory()
    page = visit(administrator).get("/school/years/new/").text
    assert not re.search(r'name="term\d" value=', page)
    assert '<details class="year-terms">' in page
