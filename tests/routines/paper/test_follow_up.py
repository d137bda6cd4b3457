"""The follow-up: cells that the targets find, one number far past the end, and the answers apart from the questions."""

import re

import pytest

from routines.counting import Audience
from routines.models.plan_document import CountSection, Fold
from routines.paper.asked_cells import AT_MOST, asked_cells
from routines.paper.follow_up import follow_up_sheets
from routines.paper.subject import Subject
from routines.words import find_patterns
from tests.routines.making import SEVENS, make_routine
from tests.routines.paper.plans import BY_KIND, FULL, plan_of
from tests.routines.paper.test_recording import DEMO


@pytest.mark.parametrize("plan", DEMO, ids=lambda plan: plan.title)
def test_cells_asked_for_are_found_by_the_pattern_and_not_by_their_neighbours(plan):
    grid = plan.grid()
    patterns = find_patterns(grid, audience=Audience())[:3]
    asked = asked_cells(grid, patterns)
    empty = frozenset().union(*(cell.around for cell in asked))
    assert 1 <= len(asked) <= AT_MOST
    assert len({cell.n for cell in asked}) == len(asked)
    for cell in asked:
        assert cell.n in empty
        assert cell.given not in empty
        assert {cell.n, cell.given} <= set(cell.pattern.cells)
        if abs(cell.n - cell.given) > 1:
            beside = {cell.n - 1, cell.n + 1} & set(range(1, grid.terms + 1))
            assert beside <= empty


def test_no_pattern_asks_for_nothing():
    assert asked_cells(SEVENS.grid(), []) == []


def questions_and_answers(plan, owner, school, words, language=""):
    subject = Subject(make_routine(owner, plan=plan).current_version, school, language)
    questions, answers = follow_up_sheets(subject)
    return questions, words(questions), words(answers)


def test_each_question_has_its_answer(owner, school, words):
    _, asked, answered = questions_and_answers(SEVENS, owner, school, words)
    letters = re.findall(r"\b([a-z])\. (?:Row|Will)", asked)
    assert len(letters) >= 3
    for letter, row, column in re.findall(r"\b([a-z])\. Row (\d+), column (\d+)", asked):
        # 4 + 7 (n - 1), five in a line.
        value = 4 + 7 * ((int(row) - 1) * 5 + int(column) - 1)
        assert f"{letter}. {value}" in answered


def test_one_number_comes_far_past_the_end_and_one_does_not(owner, school, words):
    _, asked, answered = questions_and_answers(SEVENS, owner, school, words)
    values = [int(value) for value in re.findall(r"Will (\d+) come", asked)]
    comes = [value for value in values if (value - 4) % 7 == 0]
    assert len(values) == 2
    assert len(comes) == 1
    assert comes[0] > 137 + 7 * 2  # the last count shown is 137
    for value in values:
        assert f"{'Yes' if value in comes else 'No'}, {value}" in answered


@pytest.mark.parametrize("kind", BY_KIND)
def test_the_questions_do_not_hold_the_answers(kind, owner, school, words):
    plan = plan_of(BY_KIND[kind], Fold(4), title="Planted damson")
    html, asked, _ = questions_and_answers(plan, owner, school, words)
    told = re.search(r"<desc>(.*?)</desc>", html)[1]
    count = plan.grid().count
    for row, column in re.findall(r"Row (\d+), column (\d+)", asked):
        n = plan.grid().at(int(row), int(column))
        assert not re.search(rf"(^|[,;:] ){re.escape(count.text(n).replace('-', '−'))}([,;.]|$)", told)
    assert "damson" not in html


def test_questions_and_answers_are_on_pages_of_their_own(owner, printed):
    for plan in (FULL, plan_of(CountSection("whole", "1", "1", 100), Fold(10))):
        assert len(printed(make_routine(owner, plan=plan), "follow-up", language="both").pdf.pages) >= 2
    assert len(printed(make_routine(owner), "follow-up").pdf.pages) == 2


def test_answers_speak_both_languages(owner, school, words):
    _, asked, answered = questions_and_answers(SEVENS, owner, school, words, "both")
    assert "How do you know?" in asked
    assert "¿Cómo lo sabes?" in asked
    assert "Respuestas" in answered
