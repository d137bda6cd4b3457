"""The table on paper: what the page tells this reader, tagged, on one page where it fits, without anybody's name."""

import re

import pytest
from django.urls import reverse

from routines.paper.press import PaperError, printing
from tests.factories import ClassGroupFactory, GradeFactory, UserFactory
from tests.routines.printed import Printed, pango

__all__ = ["pango"]

DAYS = {"first": "2026-09-16", "last": "2026-11-20"}


@pytest.fixture
def printed(visit, pango):
    def made(person, **days) -> Printed:
        answer = visit(person).get(reverse("coverage_pdf"), days or DAYS)
        assert answer["Content-Type"] == "application/pdf", answer.text
        return Printed(answer.content)

    return made


def sheet_words(client, **days) -> str:
    page = client.get(reverse("coverage_print"), days or DAYS)
    assert page.status_code == 200
    return " ".join(re.sub(r"<[^>]+>", " ", page.text).split())


def test_it_is_one_tagged_page_across_with_a_table_and_bars_that_are_said(taught, coach, printed):
    document = printed(coach)
    root = document.pdf.Root
    assert root.MarkInfo.Marked
    assert str(root.Lang) == "en"
    assert b"pdfuaid" in root.Metadata.read_bytes()
    assert str(document.pdf.docinfo["/Title"]) == "Coverage, September 16, 2026 to November 20, 2026"
    assert document.sizes() == {(792.0, 612.0)}
    assert len(document.pdf.pages) == 1
    assert len(document.of_type("/S", "/Table")) == 1
    assert len(document.of_type("/S", "/TH")) == 1 + 8 + 1 + 2  # the grades' column, areas, weeks; two grades
    said = [str(figure.get("/Alt", "")) for figure in document.of_type("/S", "/Figure")]
    assert len(said) == 3
    assert all(said)
    assert "Lessons week by week: 0, 1, 0, 0, 0, 0, 0, 0, 0, 0" in said  # grade 2, from the week of September 14
    for font in document.of_type("/Type", "/FontDescriptor"):
        assert "CountfoldHand" in str(font.FontName).replace("-", "")


def test_each_field_of_the_table_names_its_headers(taught, coach, printed):
    """As PDF/UA-1 asks of a table whose headers have no scope (ISO 14289-1, 7.5)."""
    document = printed(coach)
    heads = {str(head.ID) for head in document.of_type("/S", "/TH")}
    fields = document.of_type("/S", "/TD")
    assert len(fields) == 2 * (8 + 1)
    named = [[str(one) for one in field.A.Headers] for field in fields]
    assert all(len(names) == 2 and set(names) <= heads for names in named)


def test_it_says_what_coverage_is_and_names_the_gaps(taught, coach, printed):
    text = printed(coach).text()
    assert "This is what the bank and the lessons have touched: opportunities for children" in text
    assert "not how well anyone teaches. Lessons that were not recorded are not here." in text
    assert "Grade 2: measurement, money, time" in text
    assert "Grade 5: decimals, fractions" in text
    assert "few · 2" in text
    assert "Larkfield School" in text


def test_the_grades_of_a_large_school_keep_to_one_page(taught, coach, year, school, printed):
    school.paper = "a4"
    school.save()
    for number in range(11):
        GradeFactory(name=f"Y{number}", order=30 + number, areas=["whole", "fractions", "time"])
    document = printed(coach, first="2026-08-17", last="2027-06-18")
    assert "Y10" in document.text()
    assert document.sizes() == {(841.89, 595.28)}
    assert len(document.pdf.pages) == 1


def test_what_fits_no_page_goes_on_with_the_names_of_its_columns(taught, coach, printed):
    for number in range(40):
        GradeFactory(name=f"Y{number}", order=30 + number)
    document = printed(coach)
    assert len(document.pdf.pages) > 1
    assert all("whole numbers" in document.text(slice(n, n + 1)) for n in range(2))
    assert "Y39" in document.text()


@pytest.mark.parametrize(
    ("name", "grades", "lessons"),
    [
        ("owner", ["2"], ["1 lesson"]),
        ("teammate", ["2"], ["1 lesson"]),
        ("other_teacher", ["5"], ["1 lesson"]),
        ("coach", ["2", "5"], ["1 lesson", "1 lesson"]),
        ("administrator", ["2", "5"], ["1 lesson", "under two classes: not shown"]),
    ],
)
def test_each_gets_what_the_page_tells_her(request, taught, visit, name, grades, lessons):
    client = visit(request.getfixturevalue(name))
    page = client.get(reverse("coverage_print"), DAYS).text
    assert re.findall(r'<th scope="row">(.*?)</th>', page) == grades
    words = sheet_words(client)
    assert re.findall(r"\b\d+ lessons?\b|under two classes: not shown", words) == lessons
    hidden = ["medlar", "Wren", "Finch", "Slate", "Ota", "Tao", "Oyelaran", "Sevens", "Fives", "Coach Cruz", "Ames"]
    assert [word for word in hidden if word in page] == []


def test_an_administrators_sheet_has_no_number_for_a_grade_with_one_class(taught, administrator, visit):
    page = visit(administrator).get(reverse("coverage_print"), DAYS).text
    row = page[page.index('<th scope="row">5</th>') :].split("</tr>")[0]
    assert "few · 1" in row
    assert "taught" not in row
    assert "<svg" not in row  # bars and marks


def test_where_nothing_can_be_printed_the_page_leads_to_one_for_the_browser(taught, coach, visit, monkeypatch):
    def broken(*args, **kwargs):
        raise PaperError("No press here.")

    monkeypatch.setattr(printing, "pdf", broken)
    client = visit(coach)
    answer = client.get(reverse("coverage_pdf"), DAYS)
    assert answer.status_code == 503
    assert "No press here." in answer.text
    link = f"{reverse('coverage_print')}?first=2026-09-16&amp;last=2026-11-20"
    assert f'href="{link}"' in answer.text
    assert "taught 1" in sheet_words(client)


@pytest.mark.parametrize("name", ["coverage_pdf", "coverage_print"])
def test_nobody_gets_a_sheet_of_nothing(name, taught, coach, visit, signed_out):
    backwards = {"first": "2026-10-01", "last": "2026-09-01"}
    assert visit(coach).get(reverse(name), backwards).status_code == 422
    assert visit(coach).post(reverse(name)).status_code == 405
    assert visit(UserFactory()).get(reverse(name)).status_code == 404
    assert reverse("accounts:sign_in") in signed_out.get(reverse(name))["Location"]


def test_the_page_leads_to_it_with_its_days(taught, coach, visit):
    page = visit(coach).get(reverse("coverage"), DAYS).text
    assert f'href="{reverse("coverage_pdf")}?first=2026-09-16&amp;last=2026-11-20"' in page


def test_its_queries_do_not_grow(taught, coach, year, visit, django_assert_num_queries):
    client = visit(coach)
    for number in range(5):
        ClassGroupFactory(grade=GradeFactory(name=f"Y{number}", order=30 + number), year=year)
    with django_assert_num_queries(11):
        client.get(reverse("coverage_print"), DAYS)
