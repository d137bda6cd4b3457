"""A substitute can lead the count from this paper alone."""

import re
from datetime import time

import pytest

from routines.models.plan_document import CountSection, Fold, Stop
from routines.paper.subject import Subject
from routines.paper.substitute import stops_of, substitute_sheet
from tests.routines.making import SEVENS, make_routine
from tests.routines.paper.plans import BY_KIND, FULL, plan_of
from tests.routines.paper.test_recording import DEMO


@pytest.fixture
def sheet(owner, school, words):
    def of(plan, language="", **wishes) -> str:
        subject = Subject(make_routine(owner, plan=plan).current_version, school, language)
        return words(substitute_sheet(subject, **wishes))

    return of


def test_it_says_what_a_choral_count_is_and_that_nothing_else_is_needed(sheet):
    said = sheet(SEVENS)
    assert "the whole class counts aloud together" in said
    assert "No computer and no phone." in said


@pytest.mark.parametrize("kind", BY_KIND)
def test_every_count_is_written_out_and_said(kind, sheet):
    plan = plan_of(BY_KIND[kind], Fold(4))
    said, count = sheet(plan), plan.grid().count
    for n in range(1, count.terms + 1):
        assert f"{count.text(n)} {count.words(n)}".replace("-", "−") in said.replace("-", "−")


def test_of_many_counts_those_that_cross_a_ten_are_said(sheet):
    said = sheet(plan_of(CountSection("whole", "1", "1", 200), Fold(10)))
    assert " 37 38 39 40 forty 41 " in said


CROSSINGS = [
    # kind, start, step, terms, line length; what is told of the bold ones, and which they are
    (CountSection("whole", "4", "7", 20), "the hundreds change", ["102"]),
    (CountSection("whole", "27", "1", 15), "the tens change", ["30", "40"]),
    (CountSection("whole", "43", "-3", 10), "the tens change", ["37", "28", "19"]),
    (CountSection("fraction", "1/3", "1/3", 7, {"wholes": "number"}), "the wholes change", ["1", "2"]),
    (CountSection("clock", "7:10", "20 min", 9), "the hours change", ["8:10", "9:10"]),
    (CountSection("length", "1 ft 2 in", "4 in", 8, {"units": "two"}), "the feet change", ["2 ft 2 in", "3 ft 2 in"]),
    (CountSection("money", "$0.35", "$0.25", 8), "the dollars change", ["$1.10", "$2.10"]),
    (CountSection("whole", "10", "10", 9), "", []),
]


@pytest.mark.parametrize(("count", "told", "bold"), CROSSINGS, ids=lambda value: str(value)[:40])
def test_the_counts_where_something_is_crossed_are_bold(count, told, bold, owner, school, words):
    subject = Subject(make_routine(owner, plan=plan_of(count, Fold(5))).current_version, school)
    html = str(substitute_sheet(subject))
    listed = re.search(r'<div class="how-said.*?</div>', html, re.DOTALL)[0]
    assert [words(text) for text in re.findall("<b>(.*?)</b>", listed)] == bold
    assert re.findall("Bold: ([^.]*)", words(html)) == ([told] if told else [])


def test_the_steps_follow_the_stops(sheet):
    said = sheet(FULL)
    order = [
        said.index(words)
        for words in (
            "Say: “Today we count together, by 7 from 4.",
            "Count together from 11 to 67.",
            "Stop and ask: What is under 11?",
            "Count together from 74 to 137. Stop and ask: Will 200 come?",
            "Read the last line",
        )
    ]
    assert order == sorted(order)


def test_each_step_has_its_minute(sheet):
    # A minute to begin, 9 counts of 5 s, a stop of 170 s, 10 counts of 5 s, a stop of 90 s.
    said = sheet(FULL)
    for words in (
        "minute 0 Begin",
        "minute 1 Count together from 11 to 67. Stop and ask:",
        "minute 4 Count together from 74 to 137. Stop and ask:",
        "minute 6 End",
    ):
        assert words in said


@pytest.mark.parametrize("at", [None, time(12, 58)])
def test_no_minute_is_stated_twice(at, sheet):
    quick = SEVENS.changed(stops=tuple(Stop(n, f"At {n}?", think=5, partner=0, share=0) for n in (3, 4, 5, 20)))
    said = sheet(quick, starts_at=at)
    stated = re.findall(r"minute \d+ |\b\d+:\d\d ", said)
    assert len(stated) == len(set(stated)) > 2
    assert "Say 25 together. Stop and ask: At 4?" in said


def test_a_stop_at_the_count_just_said_is_asked_without_counting_on(sheet):
    said = sheet(SEVENS.changed(stops=(Stop(5, "First?"), Stop(5, "Second?"))))
    assert "Stop after 32. Ask: Second?" in said


def test_with_a_starting_time_the_steps_are_on_the_clock(sheet, school):
    assert "12:59 Count together from 11" in sheet(FULL, starts_at=time(12, 58))
    assert "1:02 Count together from 74" in sheet(FULL, starts_at=time(12, 58))
    school.clock = 24
    assert "13:02 Count together from 74" in sheet(FULL, starts_at=time(12, 58))


def test_without_stops_in_the_plan_the_engine_suggests_some(owner, school, sheet):
    bare = SEVENS.changed(stops=())
    subject = Subject(make_routine(owner, plan=bare).current_version, school)
    assert stops_of(subject)
    assert all(stop.question in sheet(bare) for stop in stops_of(subject))


def test_it_says_how_the_grid_is_filled(sheet):
    assert "5 counts in each row, left to right" in sheet(SEVENS)
    assert "5 counts in each column, top to bottom" in sheet(SEVENS.changed(fold=Fold(5, "down"), targets=()))
    said = sheet(SEVENS.changed(fold=Fold(5, "across-up", 2), targets=()))
    assert "Begin with the bottom row" in said
    assert "Leave the first 2 cells" in said


def test_it_says_what_not_to_do(sheet):
    said = sheet(SEVENS)
    for words in ("write names", "say “correct”", "give the answer", "use phones"):
        assert words in said


def test_in_spanish(sheet):
    said = sheet(SEVENS, "es")
    assert "«Hoy contamos juntos, de 7 en 7 desde 4." in said
    assert "once" in said
    assert "Please" not in said


@pytest.mark.parametrize("language", ["en", "es"])
def test_it_is_one_sheet(language, owner, printed):
    """Those of the demo school that take most room, and a plan with everything."""
    fullest = [
        plan
        for plan in DEMO
        if plan.title in ("Ferry tickets", "Dimes from a nickel", "Tens come home every fifth time")
    ]
    assert len(fullest) == 3
    for plan in (*fullest, FULL):
        assert (
            len(printed(make_routine(owner, plan=plan.changed(grade="2")), "substitute", language=language).pdf.pages)
            == 1
        ), plan.title


@pytest.fixture
def heights(owner, printed):
    """The texts on the substitute's page of a plan of the demo school, with their heights."""

    def of(title) -> list[tuple[float, str]]:
        (plan,) = (plan for plan in DEMO if plan.title == title)
        return printed(make_routine(owner, plan=plan.changed(grade="2")), "substitute").heights()

    return of


def height_of(words, found) -> float:
    return next(height for height, text in found if text.startswith(words))


def test_the_headings_of_both_columns_stand_at_one_height(heights):
    found = heights("Tens come home every fifth time")
    assert height_of("If you hear this", found) == pytest.approx(height_of("Please do not", found), abs=0.5)


def test_there_is_no_hole_between_the_grid_and_the_steps(heights):
    found = heights("Tens come home every fifth time")
    steps = height_of("Step by step", found)
    assert min(height for height, _ in found if height > steps) - steps < 36
