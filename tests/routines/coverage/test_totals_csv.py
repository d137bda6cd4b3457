"""The totals as a file: what the page tells this reader, by grade, never by class or teacher."""

import csv
import io
from datetime import date

import pytest
from django.urls import reverse

from accounts.models import School
from grade_bands.models import Grade
from routines.coverage.queries import coverage
from tests.factories import UserFactory

DAYS = {"first": "2026-09-16", "last": "2026-11-20"}
HEAD = [
    "grade", "area", "expected", "in the bank today", "lessons taught",
    "target patterns seen", "not yet", "not recorded", "from", "to",
]  # fmt: skip
NOT_SAID = ["", "", ""]
MONDAYS = [
    "2026-09-14", "2026-09-21", "2026-09-28", "2026-10-05", "2026-10-12",
    "2026-10-19", "2026-10-26", "2026-11-02", "2026-11-09", "2026-11-16",
]  # fmt: skip


def lines_of(answer) -> list[list[str]]:
    assert answer.status_code == 200
    return list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))


def fetched(client, **days):
    return client.get(reverse("coverage_csv"), days or DAYS)


def test_it_holds_each_grade_and_area_with_its_days(taught, coach, visit):
    head, *lines = lines_of(fetched(visit(coach)))
    assert head == HEAD + MONDAYS
    assert len(lines) == 2 * 8
    assert lines[0] == [
        "2",
        "whole numbers",
        "yes",
        "2",
        "1",
        *NOT_SAID,
        "2026-09-16",
        "2026-11-20",
        "0",
        "1",
        *["0"] * 8,
    ]
    assert ["2", "fractions", "no", "0", "0", *NOT_SAID, "2026-09-16", "2026-11-20", *["0"] * 10] in lines
    assert ["5", "fractions", "yes", "0", "0", *NOT_SAID, "2026-09-16", "2026-11-20", *["0"] * 10] in lines


def test_the_weeks_of_all_areas_are_those_of_the_bars(taught, coach, year, visit):
    _, *lines = lines_of(fetched(visit(coach)))
    rows = coverage(user=coach, year=year, first=date(2026, 9, 16), last=date(2026, 11, 20))
    for row in rows:
        of_grade = [line[len(HEAD) :] for line in lines if line[0] == row.grade.name]
        assert tuple(sum(map(int, week)) for week in zip(*of_grade, strict=True)) == row.weeks


def test_spreadsheets_read_it_as_utf8_under_the_name_of_its_days(taught, coach, visit):
    answer = fetched(visit(coach))
    assert answer.content.startswith(b"\xef\xbb\xbf")
    assert answer["Content-Type"] == "text/csv; charset=utf-8"
    assert answer["Content-Disposition"] == 'attachment; filename="coverage-2026-09-16-to-2026-11-20.csv"'


@pytest.mark.parametrize(
    ("name", "whole"),
    [
        ("owner", {"2": "1"}),
        ("teammate", {"2": "1"}),
        ("other_teacher", {"5": "1"}),
        ("coach", {"2": "1", "5": "1"}),
        ("administrator", {"2": "1", "5": "under two classes: not shown"}),
    ],
)
def test_each_gets_what_the_page_tells_her(request, taught, visit, name, whole):
    client = visit(request.getfixturevalue(name))
    _, *lines = lines_of(answer := fetched(client))
    assert {line[0]: line[4] for line in lines if line[1] == "whole numbers"} == whole
    hidden = ["medlar", "Wren", "Finch", "Slate", "Ota", "Tao", "Oyelaran", "Sevens", "Fives", "Never taught"]
    assert [word for word in hidden if word in answer.content.decode()] == []


def test_a_grade_with_one_class_gives_an_administrator_no_number_of_lessons_at_all(taught, administrator, visit):
    _, *lines = lines_of(fetched(visit(administrator)))
    assert {line[4] for line in lines if line[0] == "5"} == {"under two classes: not shown"}
    assert {number for line in lines if line[0] == "5" for number in line[len(HEAD) :]} == {""}


@pytest.mark.parametrize("name", ["=1+1", "+7", "@sum", "\tx", "-2+3"])
def test_no_name_of_a_grade_is_run(taught, coach, visit, name):
    Grade.objects.filter(name="5").update(name=name)
    assert f"'{name}" in {line[0] for line in lines_of(fetched(visit(coach)))}


def test_days_that_cannot_be_are_said_on_the_page(taught, coach, visit):
    answer = fetched(visit(coach), first="2026-10-01", last="2026-09-01")
    assert answer.status_code == 422
    assert "not before the first" in answer.text


def test_who_has_no_grade_finds_no_file_and_the_signed_out_sign_in(taught, visit, signed_out):
    assert fetched(visit(UserFactory())).status_code == 404
    assert reverse("accounts:sign_in") in fetched(signed_out)["Location"]


def test_without_a_year_there_is_no_file(coach, visit):
    assert School.objects.exists()
    assert fetched(visit(coach)).status_code == 404


def test_it_is_only_read(taught, coach, visit):
    assert visit(coach).post(reverse("coverage_csv")).status_code == 405


def test_the_page_leads_to_it_with_its_days(taught, coach, visit):
    page = visit(coach).get(reverse("coverage"), DAYS).text
    assert f'href="{reverse("coverage_csv")}?first=2026-09-16&amp;last=2026-11-20"' in page


def test_its_queries_do_not_grow(taught, coach, visit, django_assert_num_queries):
    client = visit(coach)
    with django_assert_num_queries(11):
        fetched(client)
