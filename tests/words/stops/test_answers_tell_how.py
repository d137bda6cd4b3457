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
        if stop.reason != "target" or stop.by.family in ("step", "neighbour"):
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
        ("length", "1 ft 3 in", "9 in", 4, "5 ft 9 in", "6 feet 6 inches: it goes under 3 feet 6 inches, 3 feet more."),
        ("fraction", "3/8", "3/8", 4, "2 5/8", "3: it goes under 1 4/8, 1 4/8 more."),
        ("whole", "15", "-5", 5, "0", "-5: that is 5 below zero."),
    ],
)
def test_how_a_hard_jump_is_told(kind: str, start: str, step: str, level: int, after: str, told: str) -> None:
    assert answer(kind, start, step, level, after) == told


def test_the_digits_are_told_where_they_are_asked_for() -> None:
    grid = Grid(Count.parse(kind="whole", start="16", step="6", terms=20), 5)
    stop = suggest_stops(grid, (), 2)[0]
    assert "which digits will change" in stop.question
    assert stop.answer == "64: both digits change; 2 to 60, then 4 more."


@pytest.mark.parametrize(
    ("number", "after", "told"),
    [
        (7, "95", "It stops at 100: in row 4, after 80 comes 100."),
        (10, "95¢", "It stops at 100¢: in column 4, after 80¢ comes 100¢."),
        (13, "50", "45: it goes under 65, 20 less."),
        (14, "9:55 a.m.", "It stops at 10:00 a.m.: the minutes go from 55 to 00."),
        (13, "100", "95: 10 is 5 and 5, so 100 is 95 and 5."),
        (23, "11:50 a.m.", "12:10 p.m.: the hour, 11 to 12, and the minutes, 50 to 10."),
        (25, "89", "It stops at 100: the tens digit goes from 8 to 0."),
        (27, "0", "-1/3: that is 1/3 below zero; or under 2/3, 1 less."),
        (38, "5", "It stops at 5 5/6: the whole part stays 5."),
        (
            29,
            "42 oz",
            "48 ounces (3 pounds): it goes under 24 ounces, 24 ounces more; 2 pounds 10 ounces and 6 ounces make 3 pounds.",
        ),
        (30, "2.7", "3.0: 0.7 and 0.3 make 1.0; or under 1.5, 1.5 more."),
        (32, "2,250 mL", "3,000 milliliters (3 liters), because each step down a column is 750 milliliters more."),
        (35, "$8.00", "$7.25: $0.75 less than $1.00 is $0.25; or under $11.00, $3.75 less."),
        (38, "7 1/2", "8 1/3: 1/2 to 8, then 1/3 more; or beside 3 1/3, 5 more."),
        (40, "98", "113: 2 to 100, then 13 more; or under 53, 60 more."),
    ],
)
def test_the_answer_answers_the_question(number: int, after: str, told: str) -> None:
    heard = COUNTS[number - 1]
    grid = heard.grid("en")
    stops = suggest_stops(grid, audience=Audience(heard.level))
    assert next(stop.answer for stop in stops if grid.count.text(stop.after) == after) == told


@given(*ANY)
def test_who_asks_what_on_the_grid_helps_hears_of_the_grid(grid: Grid, level: int, language: str) -> None:
    for stop in suggest_stops(grid, audience=Audience(level, language)):
        n, asks_grid = (
            stop.after + 1,
            re.search("on the grid (?:can )?help|cuadrícula te ayuda|te ayuda en la", stop.question),
        )
        if stop.reason == "hard" and asks_grid and n > grid.line_length > 1:
            assert re.search("it goes (?:under|beside|above) |van? (?:debajo|al lado|encima) ", stop.answer), (
                stop.answer
            )


@given(*ANY)
def test_no_question_is_asked_of_hard_jumps_more_than_twice(grid: Grid, level: int, language: str) -> None:
    asked = [
        re.sub(r"\S*\d\S*", "#", stop.question)
        for stop in suggest_stops(grid, audience=Audience(level, language))
        if stop.reason == "hard"
    ]
    assert all(asked.count(question) <= 2 for question in asked), asked


def test_no_two_stops_ask_for_the_same_count() -> None:
    for heard in COUNTS:
        stops = suggest_stops(heard.grid("en"), audience=Audience(heard.level))
        asked = [stop.far if stop.reason == "target" else stop.after + 1 for stop in stops[:-1]]
        assert len(set(asked)) == len(asked), (heard, asked)


@given(*ANY)
def test_a_jump_back_is_stopped_at_for_what_changes(grid: Grid, level: int, language: str) -> None:
    for stop in suggest_stops(grid, audience=Audience(level, language)):
        assert not re.search("leaves .* behind|deja atrás", stop.why)
        assert not re.search(r": *\.", stop.why), stop.why


def test_a_landmark_too_far_on_gives_way_to_the_step_from_line_to_line() -> None:
    ounces = Grid(Count.parse(kind="mass", start="6 oz", step="6 oz", terms=20), 4)
    pounds = a_claim("landmarks", multiple=16, every=8, first=8, lie="column", lines=[4])
    stop = next(stop for stop in suggest_stops(ounces, [pounds], 4) if stop.reason == "target")
    assert "row 5, column 4" in stop.question
    assert stop.answer == "120 ounces (7 pounds 8 ounces), because each step down a column is 24 ounces more."


@pytest.mark.parametrize(
    ("number", "told"),
    [
        (2, "Yes, 60: under 50, 10 more."),
        (4, "Yes, 200: 8 more jumps from 120."),
        (11, "Yes, in row 5, column 5: under 130, 30 more."),
        (13, "Yes, in row 6, column 4: under 20, 20 less."),
        (35, "Yes, in row 4, column 2: under $4.25, $3.75 less; or 16 jumps from $12.50."),
        (36, "Yes. Rule: go on in whole jumps of 3 from -20; 67 is 87 more, 29 × 3."),
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
        if re.search(" more jumps| saltos más", stop.answer):
            # Kindergarten adds within 10 (K.OA.A.2): more than that is gone jump by jump.
            assert level == 0
            assert abs(grid.line_length * grid.count.step) * -(-(n - grid.terms) // grid.line_length) > 10
            return
        if re.match(r"(?:Yes|Sí)\. (?:Rule|Regla):", stop.answer):
            assert level >= 6
            assert grid.count.wrap is None
            return
        first, *second = stop.answer.split(";")
        jumps = re.compile(r"\d (?:jumps|saltos)\b")
        assert not jumps.search(first), stop.answer
        assert [bool(jumps.search(part)) for part in second] == [True] * (level >= 4), stop.answer


@given(grids("whole"), st.sampled_from(["en", "es"]))
def test_nobody_in_k_is_asked_about_digits(grid: Grid, language: str) -> None:
    for stop in suggest_stops(grid, audience=Audience(0, language)):
        for text in (stop.question, stop.answer):
            assert not re.search("digit|cifra", text), text


@pytest.mark.parametrize(
    ("start", "step", "language", "asked", "told"),
    [
        (
            "1",
            "1",
            "en",
            "“Each time it ends in 1 more.” How does the next one end?",
            "10 ends in 0: after 9 it starts again.",
        ),
        (
            "1",
            "1",
            "es",
            "«Cada vez termina en 1 más.» ¿En qué termina el siguiente?",
            "El 10 termina en 0: después del 9 se empieza otra vez.",
        ),
        (
            "25",
            "-1",
            "en",
            "“Each time it ends in 1 less.” How does the next one end?",
            "19 ends in 9: after 0 comes 9.",
        ),
        (
            "10",
            "10",
            "en",
            "“Each time the front number goes up by 1.” How does the next one begin?",
            "100 begins with 1: ten tens make a hundred.",
        ),
        (
            "10",
            "10",
            "es",
            "«Cada vez el número de adelante sube 1.» ¿Con qué empieza el siguiente?",
            "El 100 empieza con 1: diez decenas hacen una centena.",
        ),
        ("9", "9", "en", "“Each time the tens go up by 1.” And the next one?", "It stops at 99."),
    ],
)
def test_k_looks_at_the_end_or_at_the_front(start: str, step: str, language: str, asked: str, told: str) -> None:
    grid = Grid(Count.parse(kind="whole", start=start, step=step, terms=20), 5)
    stop = next(stop for stop in suggest_stops(grid, audience=Audience(0, language)) if stop.reason == "dies")
    assert (stop.question, stop.answer) == (asked, told)
