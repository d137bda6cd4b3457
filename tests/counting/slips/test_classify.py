"""What was heard at a count, by the order of the house: right, equal name, repeated, carried, skipped, slip, other."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import (
    Audience,
    Carried,
    Count,
    CountError,
    EqualName,
    Grid,
    Other,
    Repeated,
    Right,
    SkippedAhead,
    Slip,
    Style,
    classify,
)
from routines.counting.slips.foreseeing import AREAS
from routines.words import SpokenHearing
from routines.words import classify as spoken
from tests.counting.any_count import KINDS, grids
from tests.counting.slips.table import EXAMPLE_GRIDS


def grid_of(kind: str, start: str, step: str, terms: int = 12, length: int = 4, **style: object) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style)), length)


BACK = grid_of("whole", "1,325", "-50", 16)
FEET = grid_of("length", "1 ft 3 in", "9 in")
CLOCK = grid_of("clock", "10:50", "20 min", 12, 3)
EIGHTHS = grid_of("fraction", "1/8", "1/8")
LEVELS = {rule.id: rule.grades[0] for area in AREAS for rule in area.rules}


def test_one_skip_ahead_and_one_carried() -> None:
    first = classify(BACK, 8, "925")
    assert isinstance(first, SkippedAhead)
    assert first.by == 1
    second = classify(BACK, 9, "875", earlier=[first])
    assert isinstance(second, Carried)
    assert second.since == 8


@pytest.mark.parametrize("earlier", [{8: "925"}, [(8, "925")], ["925"], ["1,025", "925"]])
def test_what_was_said_before_may_be_given_in_several_ways(earlier: object) -> None:
    assert isinstance(classify(BACK, 9, "875", earlier), Carried)  # type: ignore[arg-type]


def test_a_slip_carried_on_leads_back_to_the_count_where_it_lies() -> None:
    carried = classify(BACK, 11, "775", {8: "925", 9: "875", 10: "825"})
    assert isinstance(carried, Carried)
    assert carried.since == 8


def test_what_follows_a_count_that_was_right_again_is_not_carried() -> None:
    assert isinstance(classify(BACK, 10, "825", {8: "925", 9: "925"}), SkippedAhead)


def test_the_count_said_just_before_is_repeated() -> None:
    ones = grid_of("whole", "78", "1")
    again = classify(ones, 4, "80", {3: "80"}, audience=Audience(1))
    assert isinstance(again, Repeated)
    assert again.slip is not None
    assert again.slip.rule == "W04"
    assert isinstance(classify(ones, 4, "80"), Repeated)
    assert isinstance(classify(ones, 5, "81", {4: "80"}), Carried)
    assert isinstance(classify(ones, 5, "80", {4: "80"}), Repeated)


@pytest.mark.parametrize(
    ("grid", "n", "said", "renamed"),
    [
        (FEET, 2, "1 ft 12 in", False),
        (FEET, 2, "24 in", False),
        (CLOCK, 8, "13:10", False),
        (EIGHTHS, 9, "9/8", False),
        (EIGHTHS, 8, "8/8", False),
        (EIGHTHS, 6, "3/4", True),
        (grid_of("fraction", "1/4", "1/4"), 3, "6/8", True),
        (grid_of("fraction", "1 3/5", "1/5"), 3, "1 5/5", False),
        (grid_of("decimal", "0.30", "0.05"), 3, "0.4", True),
        (grid_of("capacity", "1 L 700 mL", "150 mL"), 3, "1 L 1000 mL", False),
        (grid_of("elapsed", "1 h 35 min", "35 min"), 2, "1 h 70 min", False),
        (grid_of("money", "$2.85", "5c"), 2, "290c", True),
    ],
)
def test_the_same_number_in_another_form_is_an_equal_name(grid: Grid, n: int, said: str, renamed: bool) -> None:
    heard = classify(grid, n, said)
    assert isinstance(heard, EqualName)
    assert heard.renamed is renamed


@pytest.mark.parametrize(
    ("grid", "n", "said", "rule"),
    [
        (FEET, 4, "3 ft 8 in", "L11"),
        (CLOCK, 2, "10:70", "T02"),
        (grid_of("clock", "9:50", "5 min"), 3, "9:60", "T01"),
        (grid_of("money", "$2.85", "5c"), 4, "$2.100", "M01"),
        (grid_of("decimal", "2.7", "0.1"), 4, "2.10", "D01"),
        (grid_of("decimal", "1.97", "0.01"), 4, "1.100", "D03"),
        (grid_of("whole", "57", "1"), 4, "fifty-ten", "W01"),
        (grid_of("whole", "57", "1"), 4, "Fifty-Ten", "W01"),
        (grid_of("whole", "374", "10"), 4, "304", "W14"),
        (grid_of("whole", "407", "1"), 4, "500", "W10"),
        (grid_of("whole", "99", "1"), 3, "200", "W09"),
        (EIGHTHS, 2, "2/16", "F01"),
    ],
)
def test_a_slip_of_the_table_is_named(grid: Grid, n: int, said: str, rule: str) -> None:
    heard = classify(grid, n, said, audience=Audience(LEVELS[rule]))
    assert isinstance(heard, Slip)
    assert (heard.rule, heard.n, heard.equal_name) == (rule, n, False)


def test_the_other_half_of_the_day_is_a_slip() -> None:
    heard = classify(CLOCK, 5, "12:10 a.m.")
    assert isinstance(heard, Slip)
    assert heard.rule == "T05"
    assert isinstance(classify(CLOCK, 5, "12:10 p.m."), EqualName)


def test_ten_hundred_is_another_name_of_a_thousand() -> None:
    assert isinstance(classify(grid_of("whole", "800", "100"), 3, "ten hundred"), EqualName)


@pytest.mark.parametrize(
    ("grid", "n", "said", "difference", "takes"),
    [
        (BACK, 5, "1,225", 100, "wrong-way"),
        (BACK, 6, "1,325", 250, "jumps"),
        (grid_of("whole", "58", "6"), 1, "52", -6, "jumps"),
        (BACK, 2, "1,725", 450, "swapped"),
        (BACK, 2, "1,775", 500, "jumps"),
        (BACK, 2, "1,308", 33, "difference"),
        (BACK, 2, "1,257", -18, "swapped"),
        (BACK, 2, "1,265", -10, "place"),
        (BACK, 3, "1,270", 45, "place"),
        (grid_of("whole", "58", "6"), 3, "700", 630, "place"),
        (grid_of("whole", "58", "6"), 3, "77", 7, "difference"),
        (FEET, 3, "2 ft 5 in", -4, "difference"),
    ],
)
def test_what_is_on_no_list_says_the_difference_and_what_it_would_take(
    grid: Grid, n: int, said: str, difference: int, takes: str
) -> None:
    heard = classify(grid, n, said)
    assert isinstance(heard, Other)
    assert (heard.difference, heard.takes) == (Fraction(difference), takes)
    assert SpokenHearing(heard, grid, Audience()).note


@pytest.mark.parametrize(
    "said", ["", "   ", "banana", "12 apples", "1/0", "--5", "∞", "½½", "9" * 500, "\x00", "1e5", "nan"]
)
def test_unreadable_text_is_other_without_a_difference(said: str) -> None:
    for grid in EXAMPLE_GRIDS:
        heard = classify(grid, 3, said)
        assert isinstance(heard, Other)
        assert heard.difference is None
        assert heard.takes is None


@pytest.mark.parametrize("n", [0, -1, True, 2.0, "3"])
def test_a_count_that_does_not_exist_is_refused(n: object) -> None:
    with pytest.raises(CountError) as error:
        classify(BACK, n, "925")  # type: ignore[arg-type]
    assert error.value.field == "n"


def test_the_note_is_in_the_language_asked_for() -> None:
    assert spoken(BACK, 8, "925", audience=Audience(4, "es")).note == "Se dejó fuera un número."


@given(st.sampled_from(KINDS).flatmap(grids), st.data())
def test_the_text_that_is_due_is_right_in_every_kind_and_style(grid: Grid, data: st.DataObject) -> None:
    n = data.draw(st.integers(1, grid.terms + 3))
    text = grid.count.text(n)
    for said in (text, f" {text} ", text.replace("-", "\u2212"), grid.count.words(n, "en"), grid.count.words(n, "es")):
        assert isinstance(classify(grid, n, said), Right)


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(1, 40), st.text(max_size=30), st.text(max_size=8))
def test_random_text_never_raises(grid: Grid, n: int, said: str, before: str) -> None:
    classify(grid, n, said, {1: before, n + 1: said})


@given(
    st.sampled_from(EXAMPLE_GRIDS),
    st.integers(1, 20),
    st.from_regex(r"[-$]?\d{1,5}([.,:/ ]\d{1,3}){0,2}( ?(in|ft|am|p\.m\.|min|h|c|€|kg))?", fullmatch=True),
)
def test_text_that_looks_like_a_number_never_raises(grid: Grid, n: int, said: str) -> None:
    heard = classify(grid, n, said)
    if isinstance(heard, Other) and heard.difference is not None:
        assert heard.difference != 0
