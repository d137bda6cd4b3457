"""The five answers suggested: each short and a child's own, no two alike, the false one false (EXACT 29, 30)."""

import itertools
import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid
from routines.plans.suggestions.answers import AnswerSuggestion, suggest_answers
from routines.plans.suggestions.near_misses import near_misses
from tests.counting.any_count import KINDS, grids

MOST_WORDS = {0: 12, 1: 12, 2: 12, 3: 16, 4: 16, 5: 16, 6: 20, 7: 20, 8: 20}
AUDIENCES = st.builds(Audience, st.integers(0, 8), st.sampled_from(["en", "es"]))
SORTS = ["easy", "deeper", "not-for-long", "not-so", "slip"]


def a_grid(start: str, step: str, terms: int, length: int, kind: str = "whole", fill: str = "across") -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill)


def of_sort(sort: str, grid: Grid, level: int, language: str = "en") -> AnswerSuggestion | None:
    found = suggest_answers(grid, Audience(level, language))
    return next((one for one in found if one.sort == sort), None)


@given(st.sampled_from(KINDS), st.data(), AUDIENCES)
def test_no_two_begin_or_are_answered_alike(kind: str, data: st.DataObject, audience: Audience) -> None:
    grid = data.draw(grids(kind))
    answers = suggest_answers(grid, audience)
    assert [one.sort for one in answers] == [sort for sort in SORTS if sort in {one.sort for one in answers}]
    # Two answers of one word, such as two numbers, do not begin alike; a slip is what is heard, one number.
    openings = [tuple(one.words.casefold().split()[:2]) for one in answers]
    assert len(set(openings)) == len(openings), openings
    replies = [one.reply for one in answers]
    assert len(set(replies)) == len(replies)
    for one in answers:
        assert "?" in one.reply


@given(st.sampled_from(KINDS), st.data(), AUDIENCES)
def test_what_does_not_last_ends_near_the_view(kind: str, data: st.DataObject, audience: Audience) -> None:
    grid = data.draw(grids(kind))
    for one in suggest_answers(grid, audience, rounds=9):
        if one.sort == "not-for-long":
            assert grid.line_length + 1 < one.n <= Fraction(3, 2) * grid.terms  # the second line bears it out at first
            assert not re.search(r"adds? |suma", one.words)  # no totals


def test_the_first_line_is_not_believed_to_hold_all_the_fives() -> None:
    for start, terms in (("1", 30), ("93", 28)):
        assert of_sort("not-for-long", a_grid(start, "1", terms, 10), 0) is None


@given(st.sampled_from(KINDS), st.data(), AUDIENCES)
def test_what_is_false_is_short_and_speaks_of_what_is_near(kind: str, data: st.DataObject, audience: Audience) -> None:
    grid = data.draw(grids(kind))
    for miss in near_misses(grid, audience):
        for words in miss.words:
            assert len(words.split()) <= MOST_WORDS[audience.level] or kind not in ("whole", "decimal", "fraction")
            assert not re.search(r"(?<!\d)\s0[.0]*\.$", words)
        assert miss.why.startswith("No")


@pytest.mark.parametrize(
    ("grid", "level", "words"),
    [
        # Tens come every 5th, but 140 is between 136 and 142.
        (a_grid("16", "6", 20, 5), 2, "We will land on 140."),
        # A row of five is four jumps long, but five lead to the next row.
        (a_grid("1", "1", 30, 10), 0, "When I go down one, it is 9 more."),
        # 58 is 2 less than 60: no table of 6.
        (a_grid("58", "6", 24, 6), 3, "We are counting the 6 times table."),
        (a_grid("9:05 am", "5 min", 24, 6, "clock"), 2, "When I go down one, it is 25 minutes later."),
        (a_grid("240", "100", 16, 4), 2, "We will land on 2,000."),
        # -5, -10, -15: the digits grow, and the numbers do not.
        (a_grid("15", "-5", 16, 4), 5, "Below 0 the numbers get bigger again."),
        (a_grid("2 1/2", "-3/4", 16, 4, "fraction"), 7, "Below 0 the numbers get bigger again."),
        # 4.75 to 4.50 the tenths go down 2, to 4.25 they go down 3.
        (a_grid("4.75", "-0.25", 16, 4, "decimal"), 5, "I notice that each time the tenths digit goes down by 2."),
    ],
)
def test_the_false_one_is_a_near_miss(grid: Grid, level: int, words: str) -> None:
    found = of_sort("not-so", grid, level)
    assert found is not None
    assert found.words == words


@given(st.integers(1, 300), st.integers(-40, 40).filter(bool), st.integers(8, 40), st.integers(3, 10), AUDIENCES)
def test_each_false_one_is_false(start: int, step: int, terms: int, length: int, audience: Audience) -> None:
    grid = a_grid(str(start), str(step), terms, min(length, terms))
    values = [start + i * step for i in range(400)]
    for miss in near_misses(grid, Audience(audience.level)):
        words = miss.words[0]
        number = int((re.search(r"-?\d[\d,]*", words) or ["0"])[0].replace(",", ""))
        if words.startswith("We will land on"):
            assert number not in values
            assert min(values[0], values[terms - 1]) - 1000 < number
        elif "times table" in words:
            assert values[0] % number
        elif words.startswith("When I go down one"):
            assert number != abs(step) * min(length, terms)
        elif "double" in words:
            far, near = (int(n) for n in re.findall(r"(\d+)(?:st|nd|rd|th)", words))
            assert values[far - 1] != 2 * values[near - 1]
        elif "get bigger" in words:
            shown = values[:terms]
            assert any(b < a < 0 for a, b in itertools.pairwise(shown))
            assert not any(b > a for a, b in itertools.pairwise(shown))
        elif re.search(r"digits?\b|\b(?:ones|tens|hundreds) go", words):
            place = ("ones", "tens", "hundreds").index((re.search("ones|tens|hundreds", words) or [""])[0])
            digits = [value // 10**place % 10 for value in values[:length]]
            changes = [b - a for a, b in itertools.pairwise(digits)]
            told = number if "up" in words else -number
            assert changes[0] == told  # so it looks at first
            assert any(change != told for change in changes)
        else:
            assert "even" in words
            assert values[0] % 2 == 0
            assert abs(step) > 2


def test_no_idea_that_lasts_too_long_is_offered() -> None:
    # 5 10 15 ... 120: what ends with 1,000 is no news to this class, and nothing else ends near the view.
    found = of_sort("not-for-long", a_grid("6", "6", 10, 5), 0)
    assert found is None or found.n <= 15


def test_column_totals_are_never_the_idea_that_does_not_last() -> None:
    for start in ("16", "75", "7"):
        for round_of_answers in suggest_answers(a_grid(start, "25", 18, 5), Audience(2), rounds=6):
            assert "add" not in round_of_answers.words


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_time_brings_its_full_stop_with_it(language: str) -> None:
    said = of_sort("not-so", a_grid("11:10 am", "20 min", 18, 3, "clock", "down"), 3, language)
    assert said is not None
    assert said.words.endswith("m.")
    assert not said.words.endswith("..")


@given(st.integers(1, 99), st.integers(2, 12), st.integers(8, 30), st.integers(3, 8), st.integers(0, 3))
def test_classes_without_remainders_hear_of_the_round_ones_beside(
    start: int, step: int, terms: int, length: int, level: int
) -> None:
    """Where the tens fill one column: the last of them, the next one past the board, and that they are so far apart."""
    grid = a_grid(str(start), str(step), terms, min(length, terms))
    for miss in near_misses(grid, Audience(level)):
        told = re.search(
            r"column (\d+) the (tens|hundreds) come (\d+) apart: (\d+), then (\d+)\. We jump over (\d+)", miss.why
        )
        if told:
            column, apart, a, b, value = (int(told[i]) for i in (1, 3, 4, 5, 6))
            size = {"tens": 10, "hundreds": 100}[told[2]]
            said = [start + step * k for k in range(terms)]
            round_ones = [one for one in said if one % size == 0]
            assert {said.index(one) % grid.line_length + 1 for one in round_ones} == {column}
            assert round_ones[-1] == a < value < b == a + apart
            assert {y - x for x, y in itertools.pairwise(round_ones)} == {apart}
            assert (b - start) % step == 0
            assert (value - start) % step


@pytest.mark.parametrize(
    ("kind", "start", "step", "terms", "level", "language", "words", "why"),
    [
        (
            "whole",
            "16",
            "6",
            20,
            2,
            "en",
            "140",
            "No: in column 5 the tens come 30 apart: 130, then 160. We jump over 140.",
        ),
        ("elapsed", "25 min", "25 min", 15, 3, "en", "7 hours", "No"),
        ("elapsed", "25 min", "25 min", 15, 3, "es", "7 horas", "No"),
    ],
)
def test_what_is_jumped_over_is_told_of_as_the_class_speaks(
    kind: str, start: str, step: str, terms: int, level: int, language: str, words: str, why: str
) -> None:
    miss = of_sort("not-so", a_grid(start, step, terms, 5, kind), level, language)
    assert miss is not None
    assert words in miss.words
    assert miss.why.startswith(why)


def test_what_the_second_line_belies_at_once_is_not_said_of_the_board() -> None:
    # 4.75 4.50 4.25 4.00 | 3.75: the ones digit is 4 in the first row; to 5 the whole parts go up by 1 in the first column.
    assert of_sort("not-for-long", a_grid("4.75", "-0.25", 16, 4, "decimal"), 5) is None
    told = of_sort("not-for-long", a_grid("5/6", "5/6", 18, 6, "fraction", "down"), 6)
    assert told is None or told.n != 7
