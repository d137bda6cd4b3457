"""What is suggested as the answer at a stop tells how, shortly, and no two of a count begin alike.

Lengths: EXACT 30. That a bridge through the ten, a trade of units or the digits that change is what a child tells: Common
Core State Standards (2010), 1.OA.C.6 (making ten), 4.MD.A.1 (a larger unit in terms of a smaller one); the rest is common
practice, no source.
"""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, check, locate
from routines.counting.claims import LandmarksClaim
from routines.counting.stops.dying import dying_ideas
from routines.words import suggest_stops
from tests.counting.any_count import KINDS, grids
from tests.counting.claims import a_claim
from tests.what_a_teacher_hears.counts import COUNTS
from tests.words.test_word_bands import MOST_WORDS, words_in

ANY = (st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8), st.sampled_from(["en", "es"]))


@given(*ANY)
def test_no_two_answers_begin_with_the_same_two_words(grid: Grid, level: int, language: str) -> None:
    stops = suggest_stops(grid, audience=Audience(level, language))
    openings = [tuple(stop.answer.casefold().split()[:2]) for stop in stops]
    assert len(set(openings)) == len(openings), [stop.answer for stop in stops]


@given(*ANY)
def test_what_a_child_may_tell_is_short(grid: Grid, level: int, language: str) -> None:
    for stop in suggest_stops(grid, audience=Audience(level, language)):
        if stop.reason == "hard" or (stop.reason == "target" and stop.by != stop.claim):
            assert words_in(stop.answer, grid) <= MOST_WORDS[level], stop.answer


@given(*ANY)
def test_what_is_predicted_follows_from_what_is_told(grid: Grid, level: int, language: str) -> None:
    """A landmark where the line of landmarks is told; else the step that leads there holds however far the count goes."""
    for stop in suggest_stops(grid, audience=Audience(level, language)):
        if isinstance(stop.by, LandmarksClaim):
            assert stop.by.multiple is not None
            assert grid.count.value(stop.far) % stop.by.multiple == 0
            assert stop.after < stop.far <= grid.terms
        else:
            assert stop.by.family in ("step", "neighbour", "table")
            assert check(stop.by, grid.grown(stop.far)).holds == "always"


@given(*ANY)
def test_no_class_is_asked_when_each_whole_will_hold_another_number(grid: Grid, level: int, language: str) -> None:
    assert "how-many" not in {idea.claim.family for idea in dying_ideas(grid)}


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_hard_jump_of_the_forty_counts_is_told_with_how(language: str) -> None:
    for heard in COUNTS:
        for stop in suggest_stops(heard.grid(language), audience=Audience(heard.level, language)):
            assert stop.reason != "hard" or ": " in stop.answer, stop.answer


def answer(kind: str, start: str, step: str, level: int, after: str, length: int = 4) -> str:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=20), length)
    return next(stop.answer for stop in suggest_stops(grid, (), level) if grid.count.text(stop.after) == after)


@pytest.mark.parametrize(
    ("kind", "start", "step", "level", "after", "told"),
    [
        ("whole", "27", "1", 0, "39", "40: 9 and 1 make 10."),
        ("length", "1 ft 3 in", "9 in", 4, "5 ft 9 in", "6 ft 6 in: 9 in and 9 in more is 18 in, that is 1 ft 6 in."),
        ("fraction", "3/8", "3/8", 4, "2 5/8", "3: 5/8 and 3/8 make 1."),
        ("whole", "15", "-5", 5, "0", "-5: that is 5 below zero."),
    ],
)
def test_how_a_hard_jump_is_told(kind: str, start: str, step: str, level: int, after: str, told: str) -> None:
    assert answer(kind, start, step, level, after) == told


def test_the_digits_are_told_where_they_are_asked_for() -> None:
    grid = Grid(Count.parse(kind="whole", start="16", step="6", terms=20), 5)
    stop = suggest_stops(grid, (), 2)[0]
    assert "which digits will change" in stop.question
    assert stop.answer == "64: both digits change."


def test_a_landmark_too_far_on_gives_way_to_the_step_from_line_to_line() -> None:
    ounces = Grid(Count.parse(kind="mass", start="6 oz", step="6 oz", terms=20), 4)
    pounds = a_claim("landmarks", multiple=16, every=8, first=8, lie="column", lines=[4])
    stop = next(stop for stop in suggest_stops(ounces, [pounds], 4) if stop.reason == "target")
    assert "row 5, column 4" in stop.question
    assert stop.answer == "120 oz (7 lb 8 oz), because each step down a column is 24 oz more."


@pytest.mark.parametrize(
    ("number", "told"),
    [
        (2, "Yes, one step down from 50 is 10 more: 60."),
        (11, "Yes: 130 is the last in column 5, and one step down is 30 more: 160, in row 5, column 5."),
        (13, "Yes: 20 is the last in column 4, and one step down is 20 less: 0, in row 6, column 4."),
    ],
)
def test_a_count_past_the_end_is_found_from_the_grid(number: int, told: str) -> None:
    heard = COUNTS[number - 1]
    assert suggest_stops(heard.grid("en"), audience=Audience(heard.level))[-1].answer == told


@given(*ANY)
def test_the_grid_leads_past_the_end_and_jumps_stand_second(grid: Grid, level: int, language: str) -> None:
    stop = suggest_stops(grid, audience=Audience(level, language))[-1]
    n = None if stop.asked is None else locate(grid, stop.asked).n
    if n is not None and n > grid.terms:
        first, *second = re.split(r"(?:Another way|As a rule|Otra manera|Como regla): ", stop.answer)
        jumps = re.compile(r"\d (?:jumps?|saltos?) ")
        assert not jumps.search(first), stop.answer
        assert [bool(jumps.search(part)) for part in second] == [True] * (level >= 4), stop.answer
