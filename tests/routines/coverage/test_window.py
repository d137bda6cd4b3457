"""From which day to which: the days decide the school year, and every link keeps them."""

import re
from datetime import date

import pytest
from django.urls import reverse

from routines.coverage.forms import WindowForm
from routines.lessons.recording import record_paper_lesson

TODAY = date(2026, 11, 29)
LAST_YEAR = "?first=2025-08-18&last=2026-06-19"


@pytest.fixture
def form(year, last_year):
    def asked(**days):
        return WindowForm(days, years=[year, last_year], today=TODAY)

    return asked


@pytest.mark.parametrize(
    ("days", "name", "first", "last", "query"),
    [
        ({}, "2026-27", (2026, 8, 17), (2026, 11, 29), ""),
        ({"first": "2026-10-01"}, "2026-27", (2026, 10, 1), (2026, 11, 29), "first=2026-10-01&last=2026-11-29"),
        ({"first": "2027-01-11"}, "2026-27", (2027, 1, 11), (2027, 1, 11), "first=2027-01-11&last=2027-01-11"),
        ({"last": "2026-10-01"}, "2026-27", (2026, 8, 17), (2026, 10, 1), "first=2026-08-17&last=2026-10-01"),
        ({"first": "2026-01-12"}, "2025-26", (2026, 1, 12), (2026, 6, 19), "first=2026-01-12&last=2026-06-19"),
        ({"last": "2025-12-19"}, "2025-26", (2025, 8, 18), (2025, 12, 19), "first=2025-08-18&last=2025-12-19"),
    ],
)
def test_days_that_are_left_out_are_those_of_the_year_so_far(form, days, name, first, last, query):
    window = form(**days).window()
    assert (window.year.name, window.first, window.last) == (name, date(*first), date(*last))
    assert window.query == query


@pytest.mark.parametrize(
    ("query", "field", "words"),
    [
        ("?first=soon", "first", "year-month-day"),
        ("?first=2026-10-01&last=2026-09-01", "last", "Choose a last day that is not before the first."),
        ("?first=2026-07-04", "first", "2026-27 is from August 17, 2026 to June 18, 2027."),
        ("?last=2031-01-01", "last", "Choose a day of a school year;"),
        ("?first=2026-05-01&last=2026-10-01", "last", "in the same school year, which ends on June 19, 2026."),
    ],
)
@pytest.mark.parametrize("inside", [False, True])
def test_days_that_cannot_be_say_so_at_their_field(
    taught, coach, visit, last_year, grade_two, query, field, words, inside
):
    page = reverse("coverage_cell", args=[grade_two.pk, "whole"]) if inside else reverse("coverage")
    answer = visit(coach).get(page + query)
    assert answer.status_code == 422
    assert words in re.search(rf'<p class="field-error" id="id_{field}_error">(.*?)</p>', answer.text)[1]
    assert "taught 2" in answer.text  # the year so far, as if nothing had been chosen
    assert query.split("=")[1].split("&")[0] not in "".join(re.findall('href="[^"]*"', answer.text))


def test_last_year_is_one_click_away_and_counts_its_own_lessons(taught, last_years_class, teammate, coach, visit):
    record_paper_lesson(
        version=taught.current_version,
        class_group=last_years_class,
        teacher=teammate,
        taught_on=date(2026, 5, 4),
        practice=False,
    )
    client = visit(coach)
    now = client.get(reverse("coverage")).text
    assert f'href="{reverse("coverage")}{LAST_YEAR.replace("&", "&amp;")}"' in now
    then = client.get(reverse("coverage") + LAST_YEAR)
    assert ("taught 2" in now, "taught 1" in then.text) == (True, True)
    assert "taught 2" not in then.text
    assert then.context["window"].year.name == "2025-26"


def test_every_link_to_a_cell_and_back_keeps_the_days(taught, coach, visit, grade_two):
    days, client = {"first": "2026-09-01", "last": "2026-09-30"}, visit(coach)
    kept = "?first=2026-09-01&amp;last=2026-09-30"
    cells = re.findall(r'href="(/coverage/\d+/\w+/(?:\?[^"]*)?)"', client.get(reverse("coverage"), days).text)
    assert len(cells) > 2
    assert all(link.endswith(kept) for link in cells)
    inside = client.get(reverse("coverage_cell", args=[grade_two.pk, "whole"]), days).text
    assert f'href="{reverse("coverage")}{kept}"' in inside


def test_a_teacher_sees_the_grades_that_she_taught_in_that_year(taught, last_years_class, owner, teammate, visit):
    assert [row.grade.name for row in visit(teammate).get(reverse("coverage") + LAST_YEAR).context["rows"]] == ["2"]
    answer = visit(owner).get(reverse("coverage") + LAST_YEAR)
    assert "You had no class in 2025-26" in answer.text
    assert 'name="first"' in answer.text  # the way to other days
