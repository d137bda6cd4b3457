"""Loading standards: the bundled table and a school's own file."""

import io

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.template import Context, Template

from grade_bands.actions import lay_grades, load_standards
from grade_bands.models import Area, Standard
from grade_bands.standards import COMMON_CORE, MOST_FAULTS, MOST_ROWS, StandardsFileError, common_core, read_standards
from grade_bands.starting_point import EXPECTED_AREAS
from tests.factories import StandardFactory

FIRST_LINE = "code,grade,area,summary"


def test_the_bundled_table_is_loaded_with_its_grades(db):
    lay_grades()
    # tests/reference/SOURCES.md: standards.csv has 110 rows.
    assert load_standards() == 110
    assert Standard.objects.filter(framework=COMMON_CORE).count() == 110
    assert not Standard.objects.filter(grade=None).exists()
    # Common Core State Standards for Mathematics, 4.OA.C.5 (grade 4, generate and analyze patterns).
    standard = Standard.objects.get(code="4.OA.C.5")
    assert (standard.grade.name, standard.area) == ("4", Area.WHOLE)


def test_loading_twice_brings_up_to_date_and_doubles_nothing(db):
    lay_grades()
    load_standards()
    Standard.objects.filter(code="4.OA.C.5").update(summary="old words")
    load_standards()
    assert Standard.objects.count() == 110
    assert Standard.objects.get(code="4.OA.C.5").summary != "old words"


def test_the_bundled_table_is_the_one_the_tests_refer_to():
    from pathlib import Path

    bundled = Path("grade_bands/data/standards.csv").read_bytes()
    assert bundled == Path("tests/reference/standards.csv").read_bytes()


def test_every_expected_area_up_to_grade_6_has_a_standard_of_that_grade():
    named = {(row.grade, row.area) for row in common_core()}
    for level, areas in enumerate(EXPECTED_AREAS[:7]):
        for area in areas:
            assert ("K123456"[level], area) in named


def test_a_grade_the_school_does_not_have_leaves_the_standard_without_one(db):
    rows = read_standards([FIRST_LINE, "X.1,13,whole,Count on."])
    load_standards(rows=rows, framework="Ours")
    assert Standard.objects.get().grade is None


@pytest.mark.parametrize(
    ("lines", "sentence"),
    [
        ([], "add code, area, summary"),
        (["code,grade"], "add area, summary"),
        (["code,area,summary,Code", "A.1,whole,Count.,A.2"], "The first line names code twice. Keep one."),
        ([FIRST_LINE], "no standards under its first line"),
        ([FIRST_LINE, ",2,whole,Count."], "Line 2: fill in code."),
        ([FIRST_LINE, "A.1,2,whole,Count.", "A.2,2,algebra,Count."], "Line 3: “algebra” is no area."),
        ([FIRST_LINE, "A.1,2,whole,Count, then write."], "Line 2 has more cells"),
        ([FIRST_LINE, "A.1,2,whole,Count.", "A.1,2,whole,Again."], "Line 3: A.1 is in line 2 too. Keep one."),
        ([FIRST_LINE, f"{'A' * 41},2,whole,Count."], "shorten code to 40"),
        ([FIRST_LINE, "A.1,2,whole,Count.", 'A.2,2,whole,"Count' + "x" * 200_000], "Line 3 can't be read as CSV."),
        ([FIRST_LINE + ",count_features", "A.1,2,whole,Count.," + "x" * 1001], "Line 2, count_features: Shorten the"),
    ],
)
def test_a_file_that_cannot_be_read_says_where_and_what_to_do(lines, sentence):
    with pytest.raises(StandardsFileError) as refused:
        read_standards(lines)
    assert sentence in str(refused.value)


def test_areas_may_be_written_by_name_or_by_label():
    rows = read_standards([FIRST_LINE, "A.1,2,whole,Count.", "A.2,2,Whole Numbers,Count."])
    assert [row.area for row in rows] == [Area.WHOLE, Area.WHOLE]


def upload(browser, content: bytes, framework: str = "Larkfield scheme"):
    file = SimpleUploadedFile("ours.csv", content)
    return browser.post("/school/standards/import/", {"framework": framework, "file": file})


def keep(browser, looked):
    """Press the button of the page that shows what is in the file."""
    assert looked.status_code == 200, looked.text
    sent = {"framework": looked.context["framework"], "content": looked.context["text"]}
    return browser.post("/school/standards/keep/", sent)


def test_a_school_loads_its_own_file(visit, administrator, grade_two):
    content = f"\ufeff{FIRST_LINE}\nLS.2,2,whole,Count on by tens.\n".encode()
    browser = visit(administrator)
    looked = upload(browser, content)
    assert not Standard.objects.exists()
    assert keep(browser, looked).status_code == 302
    standard = Standard.objects.get()
    assert (standard.framework, standard.grade, standard.summary) == (
        "Larkfield scheme",
        grade_two,
        "Count on by tens.",
    )


@pytest.mark.parametrize(
    ("content", "sentence"),
    [(b"\xff\xfe", "CSV in UTF-8"), (b"", "This file is empty."), (b"code\n", "add area, summary")],
)
def test_a_bad_file_is_one_sentence_at_its_field(visit, administrator, content, sentence):
    response = upload(visit(administrator), content)
    assert response.status_code == 422
    assert sentence in response.content.decode()
    assert 'value="Larkfield scheme"' in response.content.decode()


def test_the_codes_are_never_shown_without_the_notice_of_their_owners(visit, administrator):
    lay_grades()
    visit(administrator).post("/school/standards/common-core/")
    page = visit(administrator).get("/school/grades/").content.decode()
    assert "4.OA.C.5" in page
    assert "Council of Chief State School Officers. All rights reserved." in page


def test_the_notice_has_a_tag_for_templates():
    assert "© Copyright 2010." in Template("{% load standards %}{% standards_notice %}").render(Context())


def test_features_that_cannot_be_read_are_refused_with_their_line(visit, administrator):
    lines = [FIRST_LINE + ",count_features", "A.1,2,whole,Count.,fit=direct; step=2", "A.2,2,whole,Count.,step=several"]
    file = SimpleUploadedFile("ours.csv", "\n".join(lines).encode())
    page = visit(administrator).post("/school/standards/import/", {"framework": "Ours", "file": file})
    assert page.status_code == 422
    assert "Line 3, count_features: Write amounts as in" in page.content.decode()
    assert not Standard.objects.filter(framework="Ours").exists()


def test_standards_that_stand_unreadable_are_named_to_the_administrator(visit, administrator, owner):
    StandardFactory(code="LS.1", count_features="fit=direct; step=several")
    StandardFactory(code="LS.2", count_features="fit=direct; step=2")
    StandardFactory(code="LS.3", count_features="")
    page = visit(administrator).get("/school/grades/")
    assert [standard.code for standard, why in page.context["unreadable"]] == ["LS.1"]
    text = page.content.decode()
    assert "1 standard that plans leave out" in text
    assert "“several” is none." in text
    assert visit(owner).get("/school/grades/").status_code == 403


def test_no_notice_stands_where_every_standard_can_be_read(visit, administrator):
    lay_grades()
    load_standards()
    assert "unreadable-standards" not in visit(administrator).get("/school/grades/").content.decode()


@pytest.mark.parametrize("encoding", ["utf-16", "latin-1"])
def test_a_file_in_other_letters_is_told_how_to_save_it(visit, administrator, encoding):
    file = SimpleUploadedFile("ours.csv", f"{FIRST_LINE}\nA.1,2,whole,Contar más\n".encode(encoding))
    page = visit(administrator).post("/school/standards/import/", {"framework": "Ours", "file": file})
    assert "Save the file as CSV in UTF-8" in page.content.decode()


def test_the_texts_of_a_file_are_mended(visit, administrator, grade_two):
    content = f'\ufeff{FIRST_LINE}\r\nA.\x001,2,whole,Count\ufdd0 on.\rA.2,2,whole,"Count\x1b\r\nback."'.encode()
    browser = visit(administrator)
    assert keep(browser, upload(browser, content, "O\x00urs")).status_code == 302
    found = Standard.objects.filter(framework="Ours").values_list("code", "summary")
    assert sorted(found) == [("A.1", "Count on."), ("A.2", "Count\nback.")]


def test_every_line_that_is_wrong_is_named_and_nothing_is_stored(visit, administrator, grade_two):
    lines = [
        FIRST_LINE,
        "A.1,2,whole,Count.",
        ",2,whole,Count.",
        "A.1,2,whole,Again.",
        "A.3,2,algebra,x",
        "A.4,2,whole,x",
    ]
    page = upload(visit(administrator), "\n".join(lines).encode())
    assert page.status_code == 422
    for sentence in ("Line 3: fill in code.", "Line 4: A.1 is in line 2 too.", "Line 5: “algebra” is no area."):
        assert page.text.count(sentence) == 1
    assert not Standard.objects.exists()


def test_of_very_many_wrong_lines_the_first_are_named():
    with pytest.raises(StandardsFileError) as refused:
        read_standards([FIRST_LINE, *[f"A.{n},2,algebra,x" for n in range(10_000)]])
    assert len(refused.value.sentences) == MOST_FAULTS + 1
    assert refused.value.sentences[-1] == "The lines after 21 were not looked at yet."


def test_empty_lines_that_a_spreadsheet_leaves_are_passed_over():
    lines = ["", ",,,", f"{FIRST_LINE}", "A.1,2,whole,Count.", *[",,," for _line in range(900)], "A.2,2,whole,Back.,,"]
    assert [row.code for row in read_standards(lines)] == ["A.1", "A.2"]


def test_a_line_is_named_by_where_it_begins_though_its_text_runs_over_more():
    lines = f'{FIRST_LINE}\nA.1,2,whole,"Count\non and\nback"\n\nA.2,2,algebra,"x\ny"\nA.1,2,whole,Again.\n'
    with pytest.raises(StandardsFileError) as refused:
        read_standards(io.StringIO(lines, newline=""))
    area, twice = refused.value.sentences
    assert area.startswith("Line 6: “algebra”")
    assert twice == "Line 8: A.1 is in line 2 too. Keep one."


def test_an_open_quotation_mark_swallows_no_standards():
    """Read leniently the file has one standard, whose summary is all the others."""
    lines = [FIRST_LINE, "A.1,2,whole,Count.", 'A.2,2,whole,"Back by tens', "A.3,2,whole,On.", "A.4,2,whole,On."]
    with pytest.raises(StandardsFileError) as refused:
        read_standards([f"{line}\n" for line in lines])
    assert str(refused.value).startswith("Line 3 can't be read as CSV.")


def test_cells_may_be_parted_by_tabs():
    (row,) = read_standards(["code\tarea\tsummary", "A.1\twhole\tCount, then; write."])
    assert (row.code, row.summary) == ("A.1", "Count, then; write.")


def test_cells_may_be_parted_by_semicolons_and_columns_named_in_any_case():
    (row,) = read_standards(["Code; Grade ;AREA;Summary", "A.1;2;whole;Count, then write."])
    assert (row.code, row.grade, row.summary) == ("A.1", "2", "Count, then write.")


def test_what_is_in_a_file_is_shown_before_anything_is_stored(visit, administrator, grade_two):
    """One is new, one changed, one the same; a grade that is not here, and one that the file leaves out."""
    for code in ("A.1", "A.2", "A.9"):
        StandardFactory(code=code, framework="Ours", grade=grade_two, summary="Count.")
    lines = [FIRST_LINE, "A.1,2,whole,Count.", "A.2,2,whole,Count on.", '"=A.3",13,whole,<b>Count</b>.']
    browser = visit(administrator)
    page = upload(browser, "\n".join(lines).encode(), "Ours")
    assert [what for _row, _grade, what in page.context["rows"]] == ["same", "changed", "new"]
    for words in (
        "New: 1. Changed: 1. As they are here: 1.",
        "Nothing is stored yet.",
        "1 standard has no grade of this school",
        "grades that are not here: 13.",
        "1 standard of this name is not in the file and stays as it is.",
        "&lt;b&gt;Count&lt;/b&gt;.",
        "=A.3",
    ):
        assert words in page.text, words
    assert Standard.objects.get(code="A.2").summary == "Count."
    assert keep(browser, page).status_code == 302
    assert set(Standard.objects.values_list("code", "summary")) == {
        ("A.1", "Count."),
        ("A.2", "Count on."),
        ("=A.3", "<b>Count</b>."),
        ("A.9", "Count."),
    }


def test_a_long_file_is_shown_by_its_first_lines_and_loaded_whole(visit, administrator, grade_two):
    browser = visit(administrator)
    page = upload(browser, "\n".join([FIRST_LINE, *[f"A.{n},2,whole,Count." for n in range(MOST_ROWS)]]).encode())
    assert "And 1940 more." in page.text
    assert "Load 2000 standards" in page.text
    keep(browser, page)
    assert Standard.objects.count() == MOST_ROWS


@pytest.mark.parametrize(
    ("sent", "sentence"),
    [
        ({"framework": "Ours"}, "Choose the file again."),
        ({"framework": "Ours", "content": f"{FIRST_LINE}\nA.1,2,algebra,x"}, "Line 2: “algebra” is no area."),
        ({"content": f"{FIRST_LINE}\nA.1,2,whole,x"}, "Write what these standards are called."),
    ],
)
def test_what_was_changed_on_the_way_is_read_again(visit, administrator, sent, sentence):
    page = visit(administrator).post("/school/standards/keep/", sent)
    assert (page.status_code, sentence in page.text) == (422, True)
    assert not Standard.objects.exists()


def test_a_file_of_more_standards_than_are_ever_held_against_a_count_is_refused():
    rows = [f"X.{n},2,whole,Count on." for n in range(MOST_ROWS + 1)]
    assert len(read_standards([FIRST_LINE, *rows[:-1]])) == MOST_ROWS
    with pytest.raises(StandardsFileError, match="over 2,000 standards"):
        read_standards([FIRST_LINE, *rows])
