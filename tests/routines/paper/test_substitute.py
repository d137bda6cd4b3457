"""A substitute can lead the count from this paper alone."""

from datetime import time

import pytest

from routines.models.plan_document import CountSection, Fold
from routines.paper.subject import Subject
from routines.paper.substitute import stops_of, substitute_sheet
from tests.routines.making import SEVENS, make_routine
from tests.routines.paper.plans import BY_KIND, FULL, plan_of


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


def test_of_many_counts_the_hard_ones_are_said(sheet):
    said = sheet(plan_of(CountSection("whole", "1", "1", 200), Fold(10)))
    assert "100" in said
    assert " 37 38 39 40 " in said  # written without words


def test_the_steps_follow_the_stops(sheet):
    said = sheet(FULL)
    order = [
        said.index(words)
        for words in (
            "Say: “Today we count together, by 7 from 4.",
            "Count together from 11 to 67.",
            "Stop after 67. Ask: What is under 11?",
            "Count together from 74 to 137.",
            "Stop after 137. Ask: Will 200 come?",
            "Read the last line",
        )
    ]
    assert order == sorted(order)


def test_each_step_has_its_minute(sheet):
    # A minute to begin, 9 counts of 5 s, a stop of 170 s, 10 counts of 5 s, a stop of 90 s.
    said = sheet(FULL)
    for words in (
        "minute 1 Count together from 11",
        "minute 1 Stop after 67",
        "minute 4 Count together from 74",
        "minute 5 Stop after 137",
        "minute 6 End",
    ):
        assert words in said


def test_with_a_starting_time_the_steps_are_on_the_clock(sheet, school):
    assert "12:59 Stop after 67" in sheet(FULL, starts_at=time(12, 58))
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
