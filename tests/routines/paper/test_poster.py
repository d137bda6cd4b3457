"""Posters: plain they give nothing away, lit they say what is lit, of a lesson they show what was said."""

import re

import pytest
from django.urls import reverse

from routines.models.plan_document import CountSection, Fold, Target
from routines.paper.plan_page import sign
from routines.paper.poster import poster_sheets
from routines.paper.subject import Subject
from tests.routines.making import SEVENS, make_lesson, make_routine
from tests.routines.paper.plans import ALWAYS_FOUR_LEFT, FULL, plan_of


@pytest.fixture
def subject(owner, school):
    return lambda plan, language="": Subject(make_routine(owner, plan=plan).current_version, school, language)


def test_a_plain_poster_gives_nothing_away(subject, words):
    (sheet,) = poster_sheets(subject(FULL.changed(title="Planted damson")))
    assert "damson" not in sheet
    assert "5 jumps of 7" not in words(sheet)
    assert "By 7 from 4" in words(sheet)


def test_a_lit_poster_says_what_is_lit(subject, words):
    printed = subject(SEVENS)
    (sheet,) = poster_sheets(printed, lit=True)
    for item in printed.shown.lit:
        assert item.pattern.statement in words(sheet)


def test_each_pattern_on_a_lit_poster_stands_beside_its_own_sign(subject, words):
    """Two that always hold have the sign of what always holds, whatever else is lit; the corners are said last."""
    printed = subject(FULL.changed(targets=(Target(ALWAYS_FOUR_LEFT), *FULL.targets)))
    (sheet,) = poster_sheets(printed, lit=True)
    lines = re.findall(r'<p class="poster-words">(.*?)</p>', sheet, re.DOTALL)
    lit = [item.pattern for item in printed.shown.lit]
    assert [one.holds for one in lit].count("always") == 2
    assert len(lines) == len(lit) + 1
    for line, pattern in zip(lines, lit, strict=False):
        assert str(sign(printed, pattern.holds)) in line
        assert pattern.statement in words(line)
    assert "landmark" in words(lines[-1])


def test_a_wide_grid_lies_across_the_page(subject):
    (wide,) = poster_sheets(subject(plan_of(CountSection("whole", "1", "1", 30), Fold(10))))
    (tall,) = poster_sheets(subject(plan_of(CountSection("whole", "1", "1", 30), Fold(3))))
    assert "sheet-wide" in wide
    assert "sheet-upright" in tall


def test_a_story_is_on_its_poster(subject):
    (sheet,) = poster_sheets(subject(FULL))
    assert re.findall(r">bag (\d+)<", sheet) == [str(n) for n in range(1, 21)]


def test_the_poster_of_a_lesson_is_for_those_who_may_read_the_lesson(owner, teammate, coach, visit):
    routine = make_routine(owner)
    lesson = make_lesson(routine, owner, sharing="team")
    address = reverse("print_html", args=[routine.pk, "poster"])
    wish = {"show": "lesson", "lesson": str(lesson.key)}
    for person, allowed in ((owner, True), (teammate, True), (coach, False)):
        answer = visit(person).get(address, wish)
        assert (answer.status_code == 200) is allowed
        assert ("as it happened, 2 Wren, September 15, 2026" in answer.text) is allowed


def test_a_lesson_of_another_count_is_not_taken(owner, visit):
    routine, other = make_routine(owner), make_routine(owner, title="Another")
    lesson = make_lesson(other, owner)
    answer = visit(owner).get(
        reverse("print_html", args=[routine.pk, "poster"]), {"show": "lesson", "lesson": str(lesson.key)}
    )
    assert answer.status_code == 422


def test_a_poster_is_one_page(owner, printed):
    routine = make_routine(owner, plan=FULL)
    lesson = make_lesson(routine, owner)
    for wish in ({}, {"show": "lit"}, {"show": "lesson", "lesson": str(lesson.key)}):
        assert len(printed(routine, "poster", language="both", **wish).pdf.pages) == 1


@pytest.mark.parametrize("length", [2, 10])
@pytest.mark.parametrize("language", ["", "both"])
def test_long_words_leave_a_poster_on_one_page(length, language, owner, printed):
    """A title as long as one may be, and statements that take two lines, above and below grids upright and across."""
    half_hours = plan_of(CountSection("clock", "8:00", "30 min", 20), Fold(length)).changed(
        title="Half hours from the morning to the evening " * 2,
        targets=(Target({"family": "remainder", "modulus": "60", "along": "column"}), *FULL.targets),
    )
    routine = make_routine(owner, plan=half_hours)
    assert len(printed(routine, "poster", language=language, show="lit").pdf.pages) == 1


def test_the_day_of_a_lesson_is_written_as_each_language_writes_it(owner, visit):
    """Source: CLDR, dates of English and Spanish in their long form."""
    routine = make_routine(owner)
    wish = {"show": "lesson", "lesson": str(make_lesson(routine, owner).key), "language": "both"}
    page = visit(owner).get(reverse("print_html", args=[routine.pk, "poster"]), wish).text
    assert "September 15, 2026" in page
    assert "15 de septiembre de 2026" in page
