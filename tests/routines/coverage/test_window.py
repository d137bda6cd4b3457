"""From which day to which: the days decide the school year, and every link keeps them."""

import re
from collections import Counter
from datetime import date, timedelta
from itertools import combinations_with_replacement

import pytest
from django.urls import reverse

from routines.coverage.forms import WindowForm
from routines.coverage.queries import coverage, weeks_between
from routines.lessons.recording import record_paper_lesson
from routines.models import Lesson
from tests.routines.making import make_lesson, make_routine

TODAY = date(2026, 11, 29)
LAST_YEAR = "?first=2025-08-18&last=2026-06-19"


@pytest.fixture
def form(year, last_year, coach):
    def asked(**days):
        return WindowForm(days, years=[year, last_year], today=TODAY, user=coach)

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


@pytest.fixture
def two_classes(taught, owner, teammate):
    """The owner's and the teammate's; each had the sevens once."""
    return owner.class_groups.get(), teammate.class_groups.get()


def test_a_class_by_itself_counts_its_own_lessons_in_its_own_grade(two_classes, coach, visit, grade_two):
    wren, _other = two_classes
    client = visit(coach)
    page = client.get(reverse("coverage"), {"class": wren.pk})
    assert [(row.grade.name, row.lessons) for row in page.context["rows"]] == [("2", 1)]
    assert f'<option value="{wren.pk}" selected>' in page.text
    inside = client.get(reverse("coverage_cell", args=[grade_two.pk, "whole"]), {"class": wren.pk}).text
    assert ("September 15, 2026" in inside, "September 22, 2026" in inside) == (True, False)


@pytest.mark.parametrize(
    ("name", "offered"),
    [("owner", ["2 Wren"]), ("other_teacher", ["5 Slate"]), ("administrator", [])],
)
def test_only_her_own_classes_stand_by_themselves(request, two_classes, visit, teammate, name, offered):
    client = visit(request.getfixturevalue(name))
    theirs = teammate.class_groups.get()
    page = client.get(reverse("coverage"), {"class": theirs.pk})
    menu = page.text.partition('name="class"')[2].partition("</select>")[0]
    assert re.findall(r'<option value="\d+">([^<]*)</option>', menu) == offered
    assert page.context["window"].class_group is None
    assert page.context["window"].query == ""
    assert theirs.name not in page.text


def test_nothing_that_is_taken_along_holds_one_class(two_classes, coach, visit):
    wren, _other = two_classes
    client = visit(coach)
    for name in ("coverage_csv", "coverage_print"):
        answer = client.get(reverse(name), {"class": wren.pk})
        assert answer.content == client.get(reverse(name)).content
    page = client.get(reverse("coverage"), {"class": wren.pk}).text
    assert f"{reverse('coverage_csv')}?class" not in page
    assert "never one class" in page


def test_a_band_by_itself_has_its_own_grades_on_page_and_in_files(taught, coach, visit, grade_two, grade_five):
    client, of_five = visit(coach), {"band": grade_five.band_id}
    page = client.get(reverse("coverage"), of_five)
    assert {row.grade for row in page.context["rows"]} == {grade_five}
    assert f"{reverse('coverage_csv')}?band={grade_five.band_id}" in page.text
    assert "2,whole numbers" not in client.get(reverse("coverage_csv"), of_five).content.decode()


def test_a_teacher_of_one_band_is_offered_no_other(taught, owner, visit, grade_five):
    page = visit(owner).get(reverse("coverage"), {"band": grade_five.band_id})
    assert [band.pk for band in page.context["bands"]] == [owner.class_groups.get().grade.band_id]
    assert 'name="band"' not in page.text
    assert [row.grade.name for row in page.context["rows"]] == ["2"]


@pytest.mark.parametrize("query", [{"class": "x"}, {"band": "99999"}, {"class": "-1", "band": "0"}])
def test_what_is_not_on_offer_is_left_out(taught, coach, visit, query):
    page = visit(coach).get(reverse("coverage"), query)
    assert [row.grade.name for row in page.context["rows"]] == ["2", "5"]


def test_a_class_of_another_year_is_left_out_and_it_is_said(two_classes, last_year, coach, administrator, visit):
    wren, _other = two_classes
    said = "The class that was asked for is not among those of 2025-26 here: all are shown."
    page = visit(coach).get(reverse("coverage") + f"{LAST_YEAR}&class={wren.pk}").text
    assert said in page
    assert said in visit(coach).get(reverse("coverage_standards") + f"{LAST_YEAR}&class={wren.pk}").text
    assert "class=" not in "".join(re.findall('href="[^"]*"', page))
    assert "was asked for" in visit(administrator).get(reverse("coverage"), {"class": wren.pk}).text
    assert "was asked for" not in visit(coach).get(reverse("coverage"), {"class": wren.pk}).text


def test_a_class_that_is_not_of_the_grades_is_shown_by_itself_and_it_is_said(two_classes, coach, visit, grade_five):
    wren, _other = two_classes
    page = visit(coach).get(reverse("coverage"), {"class": wren.pk, "band": grade_five.band_id})
    assert [row.grade.name for row in page.context["rows"]] == ["2"]
    assert "2 Wren is not of the grades that were chosen: the class is shown." in page.text
    assert "grades that were asked for" in visit(coach).get(reverse("coverage"), {"band": "99999"}).text


def test_a_class_that_moved_up_keeps_the_lessons_of_its_old_grade_apart(taught, owner, coach, visit, grade_five):
    wren = owner.class_groups.get()
    wren.grade = grade_five
    wren.save()
    assert Lesson.objects.counted().filter(class_group=wren).exists()
    page = visit(coach).get(reverse("coverage"), {"class": wren.pk})
    assert [(row.grade.name, row.lessons) for row in page.context["rows"]] == [("5", 0)]


def test_each_window_is_counted_to_the_day_whether_it_has_whole_weeks_or_parts_of_some(owner, coach, year):
    """Against a look at every lesson, for each first and last day of three weeks."""
    routine = make_routine(owner)
    days = [date(2026, 9, 7) + timedelta(days=at) for at in range(21)]
    taught_on = [days[at] for at in (0, 0, 3, 6, 7, 9, 9, 13, 14, 20)]
    for day in taught_on:
        make_lesson(
            routine, owner, taught_on=day, sharing="team-coach"
        )  # with two targets, of which nothing is recorded
    for first, last in combinations_with_replacement(days, 2):
        right = Counter(day - timedelta(days=day.weekday()) for day in taught_on if first <= day <= last)
        rows = coverage(user=coach, year=year, first=first, last=last)
        row = next(row for row in rows if row.grade.pk == routine.grade_id)
        assert row.weeks == tuple(right[monday] for monday in weeks_between(first, last)), (first, last)
        assert sum(cell.targets.not_recorded for cell in row.cells) == 2 * right.total(), (first, last)
