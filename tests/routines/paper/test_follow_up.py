"""The follow-up: cells that the targets find, numbers near the end, and the answers apart from the questions."""

import re

import pytest

from routines.counting import Audience
from routines.counting.audience import band_of
from routines.models.plan_document import CountSection, Fold
from routines.paper.asked_cells import AT_MOST, asked_cells
from routines.paper.follow_up import BY_BAND, MOST_LINES, follow_up_sheets, near_the_end
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


def test_one_number_comes_soon_and_one_does_not(owner, school, words):
    _, asked, answered = questions_and_answers(SEVENS, owner, school, words)
    values = [int(value) for value in re.findall(r"Will (\d+) come", asked)]
    comes = [value for value in values if (value - 4) % 7 == 0]
    assert len(values) == 2
    assert len(comes) == 1
    for value in values:
        assert f"{'Yes' if value in comes else 'No'}, {value}" in answered


@pytest.mark.parametrize("plan", DEMO[::3], ids=lambda plan: plan.title)
def test_what_is_asked_for_lies_near_the_grid(plan, owner, school):
    subject = Subject(make_routine(owner, plan=plan.changed(grade="2")).current_version, school)
    grid = subject.grid
    for asking in BY_BAND:
        near = near_the_end(subject, asking)
        assert len(near) <= asking.coming + asking.missing
        for probe in near:
            ends = (grid.count.value(1), grid.count.value(grid.terms))
            jumps = min(abs(probe.value - end) for end in ends) / abs(grid.count.step)
            assert jumps <= 2 * grid.line_length + 1, (probe.text, jumps)


@pytest.mark.parametrize(("level", "below"), [(0, False), (3, False), (6, True)])
def test_what_lies_below_zero_is_asked_of_those_who_know_of_it(level, below, owner, school):
    plan = plan_of(CountSection("whole", "20", "-1", 20), Fold(5))
    version = make_routine(owner, plan=plan).current_version
    version.routine.grade.level = level
    near = near_the_end(Subject(version, school), BY_BAND[band_of(level)])
    assert near
    assert (min(probe.value for probe in near) < 0) is below


@pytest.mark.parametrize(
    ("level", "most", "said"),
    [
        (0, 3, "Write what is missing in the boxes with a letter."),
        (2, 5, "How do you know?"),
        (4, 5, "What did you use to find it?"),
        (7, 5, "How can you be sure without counting on?"),
    ],
)
def test_questions_fit_the_class_in_number_and_words(level, most, said, owner, school, words):
    routine = make_routine(owner)
    routine.grade.level = level
    version = routine.current_version
    version.routine = routine
    questions, _ = follow_up_sheets(Subject(version, school))
    asked = re.findall(r'<p class="question">(.*?)</p>', questions)
    assert 1 < len(asked) <= most
    assert said in words(questions)
    assert f"asked-of-{band_of(level)}" in questions
    longest = (14, 22, 28, 28)[band_of(level)]  # what is asked fits the grade; common practice, no source
    assert all(len(words(question).split()) <= longest for question in asked)


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


def test_a_low_grid_leaves_more_lines_for_each_answer(owner, school, words):
    written = [
        questions_and_answers(plan_of(BY_KIND["length"], Fold(line)), owner, school, words)[0] for line in (3, 10)
    ]
    tall, low = (page.count('class="ruled"') / page.count('class="question"') for page in written)
    assert 1 <= tall < low <= MOST_LINES
