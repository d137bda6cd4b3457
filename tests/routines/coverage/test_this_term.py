"""This term is one click away, on the page, in files and behind each field; a school without terms sees none of it."""

import csv
import io
import re
from datetime import date

import pytest
from django.urls import reverse

from routines.coverage.forms import WindowForm
from tests.factories import StandardFactory

TERMS = ["2026-08-17", "2026-09-21", "2027-01-11"]


@pytest.fixture
def terms(year):
    """Of the two lessons on the sevens one lies in the first, one in the second."""
    year.term_starts = TERMS
    year.save()
    return year


def offered(years, today, user) -> list[tuple[str, str, date, date]]:
    form = WindowForm({}, years=years, today=today, user=user)
    return [(words, name, one.first, one.last) for name, words, one in form.offered()]


@pytest.mark.parametrize(
    ("today", "name", "first", "last"),
    [
        (date(2026, 8, 17), "1 of 3", date(2026, 8, 17), date(2026, 8, 17)),
        (date(2026, 9, 20), "1 of 3", date(2026, 8, 17), date(2026, 9, 20)),
        (date(2026, 9, 21), "2 of 3", date(2026, 9, 21), date(2026, 9, 21)),
        (date(2027, 6, 18), "3 of 3", date(2027, 1, 11), date(2027, 6, 18)),
        (date(2027, 7, 20), "3 of 3", date(2027, 1, 11), date(2027, 6, 18)),  # summer: the last that began
    ],
)
def test_it_is_the_term_of_today_else_the_last_that_began(terms, last_year, coach, today, name, first, last):
    words = [("This term", name, first, last)]
    assert [one for one in offered([terms, last_year], today, coach) if one[0] == "This term"] == words
    assert [one[0] for one in offered([terms, last_year], today, coach)] == ["This term", "This year", "Last year"]


def test_before_the_first_term_of_the_year_it_is_the_last_of_the_year_before(terms, last_year, coach):
    last_year.term_starts = ["2025-08-18", "2026-01-12"]
    terms.term_starts = ["2026-08-24", "2027-01-11"]
    assert ("This term", "2 of 2", date(2026, 1, 12), date(2026, 6, 19)) in offered(
        [terms, last_year], date(2026, 8, 18), coach
    )


def test_a_school_without_terms_sees_none(taught, last_year, coach, visit):
    for name in ("coverage", "coverage_standards"):
        assert "This term" not in visit(coach).get(reverse(name)).text


@pytest.fixture
def this_term(terms, taught, grade_two, coach, visit):
    """The address that the page leads to, by area; a standard of grade 2 is taught as often as the sevens."""
    standard = StandardFactory(code="LS.1", grade=grade_two)
    taught.standards.add(standard)
    page = visit(coach).get(reverse("coverage")).text
    return re.search(r'class="chip" href="([^"]*)"[^>]*>This term, \d of 3</a>', page)[1].replace("&amp;", "&")


def test_it_counts_its_own_lessons_by_area_and_by_standard(this_term, coach, visit, grade_two):
    query = this_term.partition("?")[2]
    assert query.startswith("first=2026-09-21&last=")
    client = visit(coach)
    page = client.get(this_term)
    assert ("taught 1" in page.text, "taught 2" in page.text) == (True, False)
    assert re.findall(r'aria-current="true">(.*?),', page.text) == ["This term"]
    assert len(page.context["rows"][0].weeks) < len(client.get(reverse("coverage")).context["rows"][0].weeks)
    standards = client.get(f"{reverse('coverage_standards')}?grade={grade_two.pk}&{query}")
    assert [row.taught for row in standards.context["page"]] == [1]
    assert re.findall(r'aria-current="true">(.*?),', standards.text) == ["This term"]
    inside = client.get(f"{reverse('coverage_cell', args=[grade_two.pk, 'whole'])}?{query}").text
    assert ("September 22, 2026" in inside, "September 15, 2026" in inside) == (True, False)


def test_every_link_and_file_keeps_it(this_term, coach, visit):
    query, client = this_term.partition("?")[2], visit(coach)
    page = client.get(this_term).text.replace("&amp;", "&")
    for name in ("coverage_standards", "coverage_pdf", "coverage_csv"):
        assert f'href="{reverse(name)}?{query}"' in page
    cells = re.findall(r'href="(/coverage/\d+/\w+/(?:\?[^"]*)?)"', page)
    assert cells
    assert all(link.endswith(f"?{query}") for link in cells)
    file = client.get(f"{reverse('coverage_csv')}?{query}").content.decode("utf-8-sig")
    whole = next(row for row in csv.DictReader(io.StringIO(file)) if row["grade"] == "2")
    assert (whole["from"], whole["lessons taught"]) == ("2026-09-21", "1")
    sheet = client.get(f"{reverse('coverage_print')}?{query}").text
    assert "lessons taught from September 21, 2026 to" in sheet
    assert "taught 1" in sheet


def test_in_the_first_term_the_year_so_far_is_marked_alone(terms, taught, coach, visit, monkeypatch):
    monkeypatch.setattr("routines.coverage.views.timezone.localdate", lambda: date(2026, 9, 18))
    page = visit(coach).get(reverse("coverage")).text
    assert re.findall(r'aria-current="true">(.*?),', page) == ["This year"]
