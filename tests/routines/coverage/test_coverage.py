"""Coverage: what the bank holds and what lessons touched, never by teacher, and not more than one may know."""

import re
from datetime import date

import pytest
from django.urls import reverse

from routines.coverage.queries import coverage, gaps
from tests.factories import ClassGroupFactory, GradeFactory
from tests.routines.making import make_lesson

FIRST, LAST = date(2026, 8, 17), date(2026, 11, 20)


def cell_of(rows, grade, area):
    return next(cell for row in rows if row.grade.name == grade for cell in row.cells if cell.area == area)


def test_a_coach_sees_what_was_available_and_taught(taught, coach, year):
    rows = coverage(user=coach, year=year, first=FIRST, last=LAST)
    assert [row.grade.name for row in rows] == ["2", "5"]
    cell = cell_of(rows, "2", "whole")
    assert (cell.available, cell.taught, cell.amount) == (2, 2, "few")
    assert sum(rows[0].weeks) == rows[0].lessons == 2


def test_ratios_are_no_gap_while_no_count_can_be_made_for_them(taught, coach, year, grade_two):
    grade_two.areas = ["whole", "ratios", "money"]
    grade_two.save()
    rows = coverage(user=coach, year=year, first=FIRST, last=LAST)
    assert not cell_of(rows, "2", "ratios").expected
    assert {gap.area for gap in gaps(rows) if gap.grade == grade_two} == {"money"}


def test_the_window_counts_its_own_days_alone(taught, coach, year):
    rows = coverage(user=coach, year=year, first=date(2026, 9, 16), last=date(2026, 9, 22))
    assert cell_of(rows, "2", "whole").taught == 1


def test_a_teacher_sees_her_own_grades(taught, owner, year):
    rows = coverage(user=owner, year=year, first=FIRST, last=LAST)
    assert [row.grade.name for row in rows] == ["2"]


def test_an_administrator_sees_no_numbers_of_a_grade_with_one_class(taught, administrator, year):
    rows = coverage(user=administrator, year=year, first=FIRST, last=LAST)
    assert cell_of(rows, "2", "whole").taught == 2
    assert cell_of(rows, "5", "whole").taught is None
    assert next(row for row in rows if row.grade.name == "5").weeks is None


def test_the_number_of_queries_is_the_same_whatever_the_size(taught, coach, year, django_assert_num_queries):
    with django_assert_num_queries(6):
        coverage(user=coach, year=year, first=FIRST, last=LAST)


@pytest.mark.parametrize(
    ("name", "sees_lessons"), [("owner", True), ("teammate", True), ("coach", True), ("administrator", False)]
)
def test_behind_a_cell_stand_lessons_that_took_place_never_what_was_written(
    request, taught, visit, grade_two, name, sees_lessons
):
    person = request.getfixturevalue(name)
    client = visit(person)
    page = client.get(reverse("coverage_cell", args=[grade_two.pk, "whole"]) + "?first=2026-08-17&last=2026-11-20").text
    assert ("2 Wren" in page) is sees_lessons
    assert "medlar" not in page
    others = {"Owner Ota", "Teammate Tao"} - {person.display_name}
    assert not [teacher for teacher in others if teacher in page]


def test_more_lessons_than_fit_a_page_are_counted_and_reached(taught, owner, coach, visit, grade_two, monkeypatch):
    monkeypatch.setattr("routines.coverage.behind.PAGE_SIZE", 2)
    make_lesson(taught, owner, taught_on=date(2026, 10, 1))
    cell, client = reverse("coverage_cell", args=[grade_two.pk, "whole"]), visit(coach)
    window = {"first": "2026-08-17", "last": "2026-11-20"}
    first = client.get(cell, window).text
    assert "3 lessons, the latest first; 1 to 2 are on this page." in first
    assert "first=2026-08-17&amp;last=2026-11-20&amp;page=2" in first
    last = client.get(cell, {**window, "page": "2"}).text
    assert ("October 1, 2026" in first, "September 15, 2026" in first) == (True, False)
    assert ("October 1, 2026" in last, "September 15, 2026" in last) == (False, True)


def test_one_page_of_lessons_says_nothing_of_pages(taught, coach, visit, grade_two):
    page = visit(coach).get(reverse("coverage_cell", args=[grade_two.pk, "whole"])).text
    assert "on this page" not in page


def test_another_grades_cell_is_not_found(taught, owner, visit, grade_five):
    assert visit(owner).get(reverse("coverage_cell", args=[grade_five.pk, "whole"])).status_code == 404


@pytest.mark.parametrize("area", ["wholes", "x"])
def test_an_area_that_is_none_is_not_found(taught, coach, visit, grade_two, area):
    assert visit(coach).get(reverse("coverage_cell", args=[grade_two.pk, area])).status_code == 404


def test_the_page_says_what_coverage_is_and_is_not(taught, coach, visit):
    page = visit(coach).get(reverse("coverage")).text
    assert "not how well anyone teaches" in page
    assert "Lessons that were not recorded are not here" in page
    assert "medlar" not in page


def test_gaps_offer_to_find_or_design_one(taught, coach, visit):
    page = visit(coach).get(reverse("coverage")).text
    assert "Grade 5, fractions" in page
    assert "Design one" in page
    assert "design=1#tool-design" in page


def test_gaps_that_are_not_shown_are_counted(taught, coach, visit, monkeypatch):
    monkeypatch.setattr("routines.coverage.drawn.GAPS_SHOWN", 1)
    monkeypatch.setattr("routines.coverage.drawn.GAPS_LISTED", 2)
    answer = visit(coach).get(reverse("coverage"))
    there = answer.text.count('class="gap"')
    assert answer.text.count("Suggest one") == 3 < there
    assert f"And {there - 3} more: each cell above that says none." in answer.text


def test_what_can_be_done_stands_beside_every_gap_however_many_there_are(taught, coach, administrator, owner, visit):
    grades = [GradeFactory(areas=["whole", "money"]) for _ in range(6)]
    page = visit(coach).get(reverse("coverage")).text
    for grade in grades:
        assert f'href="{reverse("suggest_for_gap", args=[grade.pk, "money"])}"' in page
    assert "Suggest one" not in visit(administrator).get(reverse("coverage")).text
    assert ("Put one in the week" in page, "Put one in the week" in visit(owner).get(reverse("coverage")).text) == (
        False,
        True,
    )


@pytest.mark.parametrize(
    ("area", "kind"),
    [
        ("whole", "whole"),
        ("integers", "whole"),
        ("decimals", "decimal"),
        ("fractions", "fraction"),
        ("measurement", "length"),
        ("money", "money"),
        ("time", "clock"),
    ],
)
def test_a_gap_opens_the_bank_with_its_filters_and_a_design_of_its_kind(year, coach, visit, grade_five, area, kind):
    grade_five.areas = [area]
    grade_five.save()
    client = visit(coach)
    page = client.get(reverse("coverage")).text.replace("&amp;", "&")
    bank = client.get(re.search(rf'href="({reverse("bank")}\?[^"]*)">Find one in the bank', page)[1]).text
    for name, value in (("grade", "5"), ("area", area)):
        assert re.search(rf'name="{name}"[^>]*value="{value}"[^>]*checked', bank)
    plan = client.get(re.search(r'href="([^"#]*)#tool-design">Design one', page)[1], follow=True).text
    assert re.search(r'<select[^>]*id="id_grade".*?<option value="5" selected', plan, re.DOTALL)
    assert re.search(rf'<option value="{kind}"[^>]*selected', plan) or re.search(rf'value="{kind}"[^>]*checked', plan)


def test_who_has_no_class_this_year_is_told_so(school, year, visit):
    from tests.factories import UserFactory

    page = visit(UserFactory()).get(reverse("coverage")).text
    assert "no grade of yours" in page
    assert "No grades" not in page


@pytest.mark.parametrize(("name", "words"), [("coach", "An administrator sets up"), ("administrator", "Set up grades")])
def test_a_school_without_a_year_says_who_does_what(request, school, visit, name, words):
    for page in ("coverage", "coverage_standards"):
        text = visit(request.getfixturevalue(name)).get(reverse(page)).text
        assert "No grades or school year yet" in text
        assert words in text
        assert (f'href="{reverse("grade_bands:classes")}"' in text) is (name == "administrator")


def test_the_bars_stand_in_numbers_too_and_lead_to_their_weeks(taught, coach, visit):
    days = {"first": "2026-09-16", "last": "2026-10-08"}
    page = visit(coach).get(reverse("coverage"), days).text
    weeks = page.partition("coverage-numbers")[2].partition("</table>")[0]
    rows = re.findall(r'<tr><th scope="row"><a href="([^"]*)">(.*?)</a></th>(.*?)</tr>', weeks)
    assert [(words, re.findall(r"<td>(.*?)</td>", numbers)) for _link, words, numbers in rows] == [
        ("September 16, 2026", ["0", "0"]),
        ("September 21, 2026", ["1", "0"]),
        ("September 28, 2026", ["0", "0"]),
        ("October 5, 2026", ["0", "1"]),
    ]
    links = [link.replace("&amp;", "&") for link, _words, _numbers in rows]
    assert links[0].endswith("?first=2026-09-16&last=2026-09-20")
    assert links[-1].endswith("?first=2026-10-05&last=2026-10-08")
    assert [row.lessons for row in visit(coach).get(links[1]).context["rows"]] == [1, 0]


def test_an_administrator_finds_no_weeks_of_a_grade_with_one_class(taught, administrator, visit):
    page = visit(administrator).get(reverse("coverage"), {"first": "2026-10-05", "last": "2026-10-11"}).text
    (row,) = re.findall(r"<tr>(.*?)</tr>", page.partition("coverage-numbers")[2].partition("</table>")[0])[1:]
    assert re.findall(r"<td>(.*?)</td>", row) == [
        "0",
        '<span aria-hidden="true">—</span><span class="visually-hidden">not shown</span>',
    ]


def test_the_page_asks_as_much_whatever_the_number_of_classes_and_gaps(
    taught, coach, year, grade_two, visit, django_assert_num_queries
):
    client = visit(coach)
    client.get(reverse("coverage"))
    with django_assert_num_queries(12):
        client.get(reverse("coverage"))
    for number in range(12):
        grade = GradeFactory(areas=["whole", "money", "time"])
        ClassGroupFactory(name=f"9 Finch {number}", grade=grade, year=year)
    client.get(reverse("coverage"))
    with django_assert_num_queries(12):
        assert "9 Finch 11" in client.get(reverse("coverage")).text
