"""Coverage by standard: what each grade's standards have in the bank, in lessons, and in what classes saw of them."""

import csv
import io
import re
from datetime import date
from urllib.parse import parse_qs, urlsplit

import pytest
from django.urls import reverse

from grade_bands.actions import lay_grades, load_standards
from grade_bands.models import Standard
from grade_bands.standards import COMMON_CORE, common_core
from routines.coverage.by_standard import by_standard, gaps_by_standard, is_expected, kind_for
from routines.coverage.forms import Window
from routines.coverage.ways import Ways
from tests.factories import ClassGroupFactory, StandardFactory, UserFactory
from tests.routines.coverage.test_patterns import say
from tests.routines.making import make_lesson, make_routine
from tests.routines.printed import Printed, pango

__all__ = ["pango"]

DAYS = {"first": "2026-08-17", "last": "2026-11-20"}
LONG = "Count on and back by tens from any number to a thousand, " * 5


@pytest.fixture
def tens(grade_two):
    """Grade 2's: one with a count, one without."""
    StandardFactory(code="LS.2.B", framework="Larkfield scheme", grade=grade_two, area="whole", summary=LONG)
    return StandardFactory(code="LS.2.A", framework="Larkfield scheme", grade=grade_two, area="whole", summary="Tens.")


@pytest.fixture
def named(tens, owner, teammate, other_teacher):
    """A count that names it, taught once in each class of grade 2, and once in grade 5."""
    sevens = make_routine(owner, title="Sevens", standards=("LS.2.A",))
    assert [one.code for one in sevens.standards.all()] == ["LS.2.A"]
    make_routine(owner, title="Names none")
    make_lesson(sevens, owner, taught_on=date(2026, 9, 15), seen="planted medlar")
    make_lesson(sevens, teammate, taught_on=date(2026, 9, 22))
    make_lesson(sevens, owner, practice=True)
    make_lesson(sevens, other_teacher, taught_on=date(2026, 10, 6))
    return sevens


@pytest.fixture
def window(year):
    return Window(year, date(2026, 8, 17), date(2026, 11, 20))


def row_of(rows, code, grade="2"):
    return next(row for row in rows if row.standard.code == code and row.grade.name == grade)


def test_counts_and_lessons_stand_at_their_grade_and_standard(named, coach, window, grade_two, grade_five):
    rows = by_standard(coach, window, [grade_two, grade_five])
    assert [(row.grade.name, row.standard.code) for row in rows] == [("2", "LS.2.A"), ("2", "LS.2.B"), ("5", "LS.2.A")]
    first = rows[0]
    assert (first.expected, first.available, first.taught, first.amount) == (True, 1, 2, "few")
    assert (first.weeks[4], first.weeks[5], sum(first.weeks)) == (1, 1, 2)  # the weeks of September 14 and 21
    elsewhere = row_of(rows, "LS.2.A", "5")
    assert (elsewhere.expected, elsewhere.available, elsewhere.taught) == (False, 0, 1)
    assert gaps_by_standard(rows) == [row_of(rows, "LS.2.B")]


def test_it_looks_at_its_own_days_and_class(named, coach, owner, year, grade_two):
    one_week = Window(year, date(2026, 9, 21), date(2026, 9, 27))
    assert row_of(by_standard(coach, one_week, [grade_two]), "LS.2.A").taught == 1
    one_class = Window(year, date(2026, 8, 17), date(2026, 11, 20), class_group=owner.class_groups.get())
    assert row_of(by_standard(coach, one_class, [grade_two]), "LS.2.A").taught == 1


def test_drafts_and_retired_counts_are_not_available(named, coach, window, grade_two, owner):
    make_routine(owner, shared=False, standards=("LS.2.B",))
    make_routine(owner, standards=("LS.2.B",)).retire()
    assert row_of(by_standard(coach, window, [grade_two]), "LS.2.B").available == 0


def test_what_was_said_of_target_patterns_is_added_up(named, owner, window, grade_two):
    lessons = list(named.lessons.counted().filter(teacher=owner))
    say(lessons[0], t0="seen", t1="not-yet")
    say(make_lesson(named, owner, taught_on=date(2026, 10, 1)), t0="seen")
    targets = row_of(by_standard(owner, window, [grade_two]), "LS.2.A").targets
    assert (targets.seen, targets.not_yet, targets.not_recorded, targets.classes) == (2, 1, 1, 1)


@pytest.mark.parametrize(("name", "open_logs"), [("owner", 1), ("teammate", 1), ("coach", 0), ("administrator", None)])
def test_logs_that_the_reader_may_not_open_add_nothing(request, named, window, grade_two, name, open_logs):
    """Each of the two lessons is open to its own teacher alone."""
    targets = row_of(by_standard(request.getfixturevalue(name), window, [grade_two]), "LS.2.A").targets
    assert (targets.classes if targets else 0) == (open_logs or 0)


def test_an_administrator_is_told_no_lessons_of_a_grade_with_one_class(named, administrator, window, grade_five):
    row = row_of(by_standard(administrator, window, [grade_five]), "LS.2.A", "5")
    assert (row.taught, row.weeks) == (None, None)


def test_the_schools_own_standards_stand_before_the_bundled_ones(tens, coach, window, grade_two):
    load_standards()
    rows = by_standard(coach, window, [grade_two])
    assert [row.standard.framework for row in rows[:3]] == ["Larkfield scheme"] * 2 + [COMMON_CORE]


def test_nothing_is_expected_that_one_count_cannot_be_made_for(db):
    """Of the bundled table: no ratios, none that takes two counts (`pair`), and only areas that the grade expects."""
    lay_grades()
    load_standards()
    expected = {one.code for one in Standard.objects.select_related("grade") if is_expected(one, one.grade)}
    rows = {row.code: row for row in common_core()}
    assert expected
    assert not [code for code in expected if rows[code].area == "ratios" or "pair=" in rows[code].count_features]
    assert {"4.OA.C.5", "2.NBT.A.2"} <= expected
    assert "6.RP.A.3.a" in rows
    assert "6.RP.A.3.a" not in expected


@pytest.mark.parametrize(
    ("area", "features", "expected"),
    [
        ("whole", "", True),
        ("ratios", "", False),
        ("money", "", False),  # which this grade does not expect
        ("whole", "fit=direct; step=2; pair=two counts", False),
        ("whole", "fit=direct; step=several", True),  # what nobody can read takes nothing away
    ],
)
def test_what_a_grade_expects_of_a_standard_of_its_own(grade_two, area, features, expected):
    grade_two.areas = ["whole", "ratios"]
    assert is_expected(StandardFactory(grade=grade_two, area=area, count_features=features), grade_two) is expected


@pytest.mark.parametrize(
    ("area", "features", "kind"),
    [
        ("measurement", "fit=direct; kind=mass", "mass"),
        ("measurement", "", "length"),
        ("time", "fit=direct; kind=time", "clock"),
        ("whole", "fit=direct; step=several", "whole"),
        ("integers", "fit=direct; kind=integer", "whole"),
    ],
)
def test_a_design_begins_with_the_kind_that_the_standard_asks_for(db, area, features, kind):
    assert kind_for(StandardFactory(area=area, count_features=features)) == kind


def test_the_queries_do_not_grow(named, owner, coach, window, grade_two, grade_five, django_assert_num_queries):
    for number in range(5):
        StandardFactory(code=f"N.{number}", grade=grade_two, area="whole")
        make_lesson(make_routine(owner, standards=(f"N.{number}",)), owner, sharing="team-coach")
    with django_assert_num_queries(7):
        by_standard(coach, window, [grade_two, grade_five])


# The page


def page_of(client, grade, **query):
    return client.get(reverse("coverage_standards"), {**DAYS, "grade": grade.pk, **query})


def test_the_page_shows_one_grade_with_the_whole_text_of_each_standard(named, coach, visit, grade_two, grade_five):
    page = page_of(visit(coach), grade_two)
    assert LONG.strip() in page.text
    assert "1 of 2 expected standards has a count" not in page.text
    assert "1 of 2 expected standards have a count" in page.text
    assert "few · 1" in page.text
    assert "All rights reserved." in page.text  # the notice of those whose codes may be listed
    assert "of grade 2" in page_of(visit(coach), grade_five).text
    assert "medlar" not in page.text


@pytest.mark.parametrize(
    ("name", "grades"),
    [("owner", ["2"]), ("other_teacher", ["5"]), ("coach", ["2", "5"]), ("administrator", ["2", "5"])],
)
def test_each_sees_her_own_grades(request, named, visit, grade_two, name, grades):
    page = page_of(visit(request.getfixturevalue(name)), grade_two)
    assert [grade.name for grade in page.context["grades"]] == grades
    assert f"<h2>Grade {'5' if grades == ['5'] else '2'}</h2>" in page.text


def test_every_link_keeps_the_days(named, coach, visit, grade_two, tens):
    page = page_of(visit(coach), grade_two).text
    cell = reverse("coverage_standard", args=[grade_two.pk, tens.pk])
    assert f'href="{cell}?first=2026-08-17&amp;last=2026-11-20"' in page
    assert f'href="{reverse("coverage")}?first=2026-08-17&amp;last=2026-11-20"' in page
    assert f'href="{reverse("coverage_standards_csv")}?first=2026-08-17&amp;last=2026-11-20"' in page
    by_area = visit(coach).get(reverse("coverage"), DAYS).text
    assert f'href="{reverse("coverage_standards")}?first=2026-08-17&amp;last=2026-11-20"' in by_area


def test_a_gap_leads_on_with_its_grade_standard_and_kind(coach, visit, grade_two, year):
    StandardFactory(code="LS.M", grade=grade_two, area="measurement", count_features="fit=direct; kind=mass")
    ClassGroupFactory(grade=grade_two, year=year)
    page = page_of(visit(coach), grade_two)
    ways = Ways.for_standard(grade_two, Standard.objects.get())
    assert parse_qs(urlsplit(ways.find).query) == {"grade": ["2"], "standard": ["LS.M"]}
    asked = parse_qs(urlsplit(ways.design).query)
    assert (asked["grade"], asked["standards"], asked["kind"]) == (["2"], ["LS.M"], ["mass"])
    plan = visit(coach).get(ways.design.split("#")[0], follow=True)
    assert 'value="LS.M"' in plan.text
    assert re.search(r'<option value="mass"[^>]*selected', plan.text) or re.search(
        r'value="mass"[^>]*checked', plan.text
    )
    for way in (ways.find, ways.design, ways.suggest):
        assert f'href="{way.replace("&", "&amp;")}"' in page.text
    bank = visit(coach).get(ways.find).text
    assert re.search(r'name="standard"[^>]*value="LS.M"', bank)
    assert re.search(r'name="grade"[^>]*value="2"[^>]*checked', bank)


def test_more_standards_than_fit_a_page_are_reached(tens, coach, visit, grade_two, year, monkeypatch):
    monkeypatch.setattr("routines.coverage.standard_views.ROWS_ON_A_PAGE", 1)
    monkeypatch.setattr("routines.coverage.drawn.GAPS_SHOWN", 0)
    monkeypatch.setattr("routines.coverage.drawn.GAPS_LISTED", 0)
    ClassGroupFactory(grade=grade_two, year=year)
    first = page_of(visit(coach), grade_two).text
    assert ("LS.2.A" in first, "LS.2.B" in first) == (True, False)
    assert "The codes after" in first
    assert "LS.2.B" in page_of(visit(coach), grade_two, page=2).text


def test_what_can_be_done_stands_beside_every_gap_however_many_there_are(tens, coach, visit, grade_two, year):
    ClassGroupFactory(grade=grade_two, year=year)
    gaps = [StandardFactory(code=f"LS.2.{n:02}", grade=grade_two, summary=f"Summary {n}.") for n in range(12)]
    page = page_of(visit(coach), grade_two).text
    assert page.count("Suggest one") == 12 + 2
    for gap in gaps:
        assert reverse("suggest_for_standard", args=[grade_two.pk, gap.pk]) in page
        assert page.count(gap.summary) == 2  # in the table, and at its gap


@pytest.mark.parametrize("asked", ["99999", "x", "-1"])
def test_a_grade_that_is_not_there_is_said_and_has_no_sheet(named, coach, visit, asked):
    page = visit(coach).get(reverse("coverage_standards"), {**DAYS, "grade": asked})
    assert "The grade that was asked for is not among these: grade 2 is shown." in page.text
    for name in ("coverage_standards_pdf", "coverage_standards_print"):
        assert visit(coach).get(reverse(name), {**DAYS, "grade": asked}).status_code == 404
    assert "was asked for" not in visit(coach).get(reverse("coverage_standards"), DAYS).text


def test_another_grades_sheet_is_not_a_teachers_own_under_its_address(named, owner, visit, grade_five):
    answer = visit(owner).get(reverse("coverage_standards_print"), {**DAYS, "grade": grade_five.pk})
    assert answer.status_code == 404


@pytest.mark.parametrize(("name", "link"), [("coach", False), ("administrator", True)])
def test_without_standards_the_page_leads_to_loading_them(request, visit, grade_two, year, name, link):
    ClassGroupFactory(grade=grade_two, year=year)
    page = visit(request.getfixturevalue(name)).get(reverse("coverage_standards")).text
    assert "No standards yet" in page
    assert (f'{reverse("grade_bands:grades")}#load-standards"' in page) is link
    assert "under School, Grades and standards" in page or link


def test_who_has_no_class_is_told_so(tens, year, visit):
    page = visit(UserFactory()).get(reverse("coverage_standards")).text
    assert "no grade of yours" in page
    assert "No grades" not in page


def test_days_that_cannot_be_say_so(named, coach, visit, grade_two, tens):
    client, wrong = visit(coach), {"first": "2026-10-01", "last": "2026-09-01"}
    for address in (
        reverse("coverage_standards"),
        reverse("coverage_standard", args=[grade_two.pk, tens.pk]),
        reverse("coverage_standards_csv"),
        reverse("coverage_standards_print"),
    ):
        answer = client.get(address, wrong)
        assert (answer.status_code, "not before the first" in answer.text) == (422, True), address


# Behind a standard


@pytest.mark.parametrize(
    ("name", "sees_lessons"), [("owner", True), ("teammate", True), ("coach", True), ("administrator", False)]
)
def test_behind_a_standard_stand_lessons_never_what_was_written(
    request, named, visit, grade_two, tens, name, sees_lessons
):
    page = visit(request.getfixturevalue(name)).get(reverse("coverage_standard", args=[grade_two.pk, tens.pk]), DAYS)
    assert ("2 Wren" in page.text) is sees_lessons
    assert "medlar" not in page.text
    assert [card.routine.title for card in page.context["cards"]] == ["Sevens"]
    assert ("September 15, 2026" in page.text) is sees_lessons
    assert "October 6, 2026" not in page.text  # grade 5's


def test_another_grades_standard_is_not_found(named, owner, visit, grade_five, tens):
    assert visit(owner).get(reverse("coverage_standard", args=[grade_five.pk, tens.pk])).status_code == 404


def test_a_suggestion_for_a_standard_offers_counts_that_name_it(named, coach, visit, grade_five, tens):
    page = visit(coach).get(reverse("suggest_for_standard", args=[grade_five.pk, tens.pk]))
    assert [routine.title for routine, _says, _chosen in page.context["counts"]] == ["Sevens"]
    assert "A count for grade 5, LS.2.A" in page.text


def test_where_no_count_names_it_those_of_its_area_are_offered(named, coach, visit, grade_two):
    other = Standard.objects.get(code="LS.2.B")
    page = visit(coach).get(reverse("suggest_for_standard", args=[grade_two.pk, other.pk]))
    assert {routine.title for routine, _says, _chosen in page.context["counts"]} == {"Sevens", "Names none"}


def test_who_may_not_suggest_or_see_the_grade(named, owner, administrator, visit, grade_two, grade_five, tens):
    of_five = reverse("suggest_for_standard", args=[grade_five.pk, tens.pk])
    assert visit(owner).get(of_five).status_code == 404
    assert visit(administrator).get(of_five).status_code == 403


# Files


def lines_of(answer) -> list[list[str]]:
    assert answer.status_code == 200
    return list(csv.reader(io.StringIO(answer.content.decode("utf-8-sig"))))


def test_the_file_holds_each_grade_and_standard_with_its_weeks(named, coach, visit):
    head, *lines = lines_of(visit(coach).get(reverse("coverage_standards_csv"), DAYS))
    assert head[:9] == [
        "grade", "standards", "code", "standard", "area", "expected", "in the bank today", "lessons taught",
        "target patterns seen",
    ]  # fmt: skip
    assert head[13:15] == ["2026-08-17", "2026-08-24"]
    assert lines[0][:8] == ["2", "Larkfield scheme", "LS.2.A", "Tens.", "whole numbers", "yes", "1", "2"]
    assert list(map(int, lines[0][13:])) == [0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0]


def test_patterns_are_passed_on_where_two_classes_logs_were_read(named, owner, teammate, coach, visit):
    first, second = named.lessons.counted().filter(grade__name="2").order_by("taught_on")
    say(first, t0="seen")
    client = visit(coach)

    def told():
        return lines_of(client.get(reverse("coverage_standards_csv"), DAYS))[1][8:11]

    first.sharing = "team-coach"
    first.save()
    assert told() == ["", "", ""]
    second.sharing = "team-coach"
    second.save()
    assert told() == ["1", "0", "3"]


@pytest.mark.parametrize("text", ["=1+1", "+7", "@sum", "-2+3"])
def test_no_text_of_a_standard_is_run(named, coach, visit, text):
    Standard.objects.filter(code="LS.2.B").update(summary=text, framework=text, code=text)
    line = next(line for line in lines_of(visit(coach).get(reverse("coverage_standards_csv"))) if "'" in line[2])
    assert line[1:4] == [f"'{text}"] * 3


def test_a_grade_with_one_class_gives_an_administrator_no_number_of_lessons(named, administrator, visit):
    _head, *lines = lines_of(visit(administrator).get(reverse("coverage_standards_csv"), DAYS))
    of_five = [line for line in lines if line[0] == "5"]
    assert {line[7] for line in of_five} == {"under two classes: not shown"}
    assert {cell for line in of_five for cell in line[13:]} == {""}


def test_no_file_holds_a_class_or_a_name(named, owner, coach, visit):
    client, wren = visit(coach), owner.class_groups.get()
    for name in ("coverage_standards_csv", "coverage_standards_print"):
        answer = client.get(reverse(name), {"class": wren.pk})
        assert answer.content == client.get(reverse(name)).content
        assert [word for word in ("Wren", "Ota", "Tao", "Sevens", "medlar") if word in answer.content.decode()] == []


@pytest.mark.parametrize("name", ["coverage_standards_csv", "coverage_standards_pdf", "coverage_standards_print"])
def test_nobody_gets_a_file_of_nothing(name, named, coach, visit, signed_out):
    assert visit(coach).post(reverse(name)).status_code == 405
    assert visit(UserFactory()).get(reverse(name)).status_code == 404
    assert reverse("accounts:sign_in") in signed_out.get(reverse(name))["Location"]


def test_its_sheet_is_tagged_and_goes_on_with_the_names_of_its_columns(named, coach, visit, grade_two, pango):
    for number in range(60):
        StandardFactory(code=f"N.{number:02}", grade=grade_two, area="whole", summary=LONG)
    answer = visit(coach).get(reverse("coverage_standards_pdf"), {**DAYS, "grade": grade_two.pk})
    assert answer["Content-Type"] == "application/pdf"
    document = Printed(answer.content)
    root = document.pdf.Root
    assert root.MarkInfo.Marked
    assert b"pdfuaid" in root.Metadata.read_bytes()
    assert len(document.of_type("/S", "/Table")) >= 1
    assert len(document.of_type("/S", "/TH")) >= 4 + 62
    assert len(document.pdf.pages) > 1
    assert all("target patterns" in document.text(slice(n, n + 1)) for n in range(2))
    text = document.text()
    assert "N.59" in text
    assert "not how well anyone teaches" in text
    assert "Larkfield scheme" in text
    assert "All rights reserved." in text
