"""Where to stop, what to ask, and that every answer is the count's own."""

import re
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Claim, Count, CountError, Grid, Style
from routines.counting.stops.choosing import choose, seen_at
from routines.counting.stops.hard_spots import hard_spots
from routines.words import SpokenStop, find_patterns, suggest_stops
from routines.words.spoken_units import with_unit_names
from tests.counting.any_count import KINDS, grids
from tests.counting.claims import a_claim
from tests.counting.slips.table import EXAMPLE_GRIDS
from tests.words.slips.test_sentences import LENGTHS

LIMIT = 400  # what a plan keeps of one sentence


def grid_of(kind: str, start: str, step: str, terms: int, length: int, fill: str = "across") -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill)


BACK = grid_of("whole", "1,325", "-50", 16, 4)


def test_counting_back_stops_just_before_the_thousand_is_left() -> None:
    stops = suggest_stops(BACK)
    assert [stop.after for stop in stops] == [7, 16]
    assert "975" in stops[0].answer
    assert "1,000" in stops[0].why


@pytest.mark.parametrize(
    "target",
    [
        a_claim("neighbour", direction="down", difference="-200"),
        a_claim("digit", place=0, along="count", blocks=[[5]]),
        a_claim("digit", place=1, along="count", blocks=[[2, 7]]),
    ],
)
def test_that_stop_is_there_for_every_target(target: Claim) -> None:
    assert 7 in [stop.after for stop in suggest_stops(BACK, [target], 4)]


def test_a_run_of_digits_is_stopped_just_before_it_dies() -> None:
    elevens = grid_of("whole", "34", "11", 20, 5)
    stop = suggest_stops(elevens, (), 4)[0]
    assert stop.after == 6
    assert stop.answer.startswith("It stops at 100: ")


def test_the_first_stop_is_where_the_target_can_be_seen() -> None:
    grid = grid_of("fraction", "1/8", "1/8", 24, 8)
    wholes = a_claim("landmarks", multiple="1", every=8, first=8, lie="column", lines=[8])
    assert seen_at(wholes, grid) == 16
    assert 16 in [stop.after for stop in suggest_stops(grid, [wholes], 4)]
    down = a_claim("neighbour", direction="down", difference="1")
    assert seen_at(down, grid) == 10
    assert suggest_stops(grid, [down], 4)[0].after == 10


def test_an_answer_follows_only_from_what_makes_it_so() -> None:
    eighths = grid_of("fraction", "1/8", "1/8", 24, 8)
    down = suggest_stops(eighths, [a_claim("neighbour", direction="down", difference=1)], 4)[0]
    assert down.answer == "2 2/8, because each step down a column is 1 more."
    wholes = suggest_stops(eighths, [a_claim("landmarks", multiple=1, lie="column", lines=[8])], 4)
    answer = next(stop.answer for stop in wholes if stop.after == 16)
    assert answer.startswith("3, because ")


def test_a_measure_that_has_come_down_to_nothing_is_not_counted_on_below_it() -> None:
    grams = grid_of("mass", "3 kg", "-200 g", 16, 5)  # the 16th is 0 g
    end = suggest_stops(grams, (), 4)[-1]
    assert "100 g" in end.question  # a near miss: jumped over on the way from 200 g to 0 g
    assert end.answer.startswith("No.")
    assert "-" not in end.answer


def test_what_is_seen_says_until_when() -> None:
    # 1:16 1:21 ... 1:41 / 1:46 1:51 1:56 | 2:01: the hour is 1 up to the 9th count.
    clock = grid_of("clock", "1:16", "5 min", 6, 6)
    stop = suggest_stops(clock, [a_claim("digit", part="hours", along="count", blocks=[[1]])], 4)[0]
    assert "until 2:01" in stop.why


def test_a_time_in_spanish_takes_its_article_and_its_verb() -> None:
    clock = grid_of("clock", "1:16", "5 min", 6, 6)
    answers = [stop.answer for stop in suggest_stops(clock, audience=Audience(4, "es"))]
    assert answers[0].startswith("La 1:56, porque ")


def test_small_customary_units_go_by_the_unit_above() -> None:
    # 5 8 11 14 | 17 20 23 | 26 29 | 32 ...: the whole cups after the third count.
    assert [(spot.n, spot.landmark) for spot in hard_spots(grid_of("capacity", "5 fl oz", "3 fl oz", 12, 4))] == [
        (5, 16),
        (8, 24),
        (10, 32),
    ]


def test_targets_may_be_claims_patterns_or_their_data() -> None:
    claim = a_claim("neighbour", direction="down", difference="-200")
    pattern = next(pattern for pattern in find_patterns(BACK) if pattern.claim == claim)
    expected = suggest_stops(BACK, [claim], 3)
    assert suggest_stops(BACK, [pattern], 3) == expected
    assert suggest_stops(BACK, [claim.as_dict()], 3) == expected


def test_a_target_that_is_no_claim_is_refused() -> None:
    with pytest.raises(CountError):
        suggest_stops(BACK, [{"family": "rhyme"}])


def test_hard_spots_are_the_landmarks_met_least_often() -> None:
    assert (hard_spots(BACK)[0].n, hard_spots(BACK)[0].landmark) == (8, 1000)
    zero = grid_of("whole", "14", "-3", 12, 4)
    assert hard_spots(zero)[0].landmark == 0
    hours = grid_of("clock", "9:30", "10 min", 12, 4)
    assert [spot.landmark for spot in hard_spots(hours)][:2] == [600, 660]


def test_times_grow_with_the_grade() -> None:
    young, old = suggest_stops(BACK, (), 0)[0], suggest_stops(BACK, (), 7)[0]
    assert young.think < old.think
    assert young.share < old.share


def shortened(text: str, grid: Grid) -> str:
    count = grid.count
    written = {count.text(n) for n in range(1, grid.terms + 60)} | {count.difference_text(count.step)}
    for value in sorted(written, key=len, reverse=True):
        text = text.replace(value, "#")
    return text


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
def test_a_question_is_as_long_as_the_grade_can_take(grid: Grid) -> None:
    for level, (least, most) in LENGTHS.items():
        for language in ("en", "es"):
            for stop in suggest_stops(grid, (), audience=Audience(level, language)):
                assert "?" in stop.question
                words = len(shortened(stop.question, grid).split())
                assert least <= words <= most, (words, stop.question)


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
def test_every_place_and_answer_is_where_the_grid_has_it(grid: Grid) -> None:
    """ "... stands in row 3, column 2" and "... comes next" are read from the sentences and looked up in the count."""
    count = grid.count
    for level in LENGTHS:
        for choice, stop in zip(choose(grid, ()), suggest_stops(grid, (), level), strict=True):
            if found := re.search(r"^(?:There stands |I say )?(.+?)(?: \([^)]+\))?, because ", stop.answer):
                place = re.search(r"row (\d+), column (\d+)", stop.question)
                assert place is not None
                n = grid.grown(grid.terms + 2 * grid.line_length).at(int(place[1]), int(place[2]))
                assert n is not None
                assert found[1] == with_unit_names(count.text(n), "en")
            elif choice.reason == "target":
                assert stop.answer.startswith(with_unit_names(count.text(stop.far), "en")), stop.answer
            elif choice.reason != "end":
                said = re.escape(with_unit_names(count.text(stop.after + 1), "en"))
                ahead = "Next is |We get |It stops at |Not at |Up to here, not at |No, |Then we get "
                assert re.match(rf"(?:{ahead})?{said}\b", stop.answer), stop.answer
            if choice.reason == "hard":
                assert count.text(stop.after) in stop.question


def holds_of(stops: list[SpokenStop], grid: Grid) -> None:
    after = [stop.after for stop in stops]
    assert 1 <= len(after) <= 4
    assert after[-1] == grid.terms
    assert after[0] >= min(3, grid.terms)
    assert all(later - sooner >= max(3, grid.terms // 6) for sooner, later in pairwise(after[:-1]))
    assert all(grid.terms - stop.after >= 3 or (stop.spot and stop.spot.is_zero) for stop in stops[:-1])
    for stop in stops:
        for text in (stop.question, stop.answer, stop.why, *stop.routes):
            assert text
            assert "{" not in text
            assert len(text) <= LIMIT
        assert len(stop.routes) <= 3
        assert min(stop.think, stop.partner, stop.share) > 0


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8), st.sampled_from(["en", "es"]))
def test_stops_are_two_to_four_well_apart_and_the_end_is_one(grid: Grid, level: int, language: str) -> None:
    holds_of(suggest_stops(grid, (), audience=Audience(level, language)), grid)


@given(st.sampled_from(KINDS).flatmap(grids), st.data())
def test_any_pattern_of_the_grid_may_be_the_target(grid: Grid, data: st.DataObject) -> None:
    patterns = find_patterns(grid)
    if patterns:
        holds_of(suggest_stops(grid, [data.draw(st.sampled_from(patterns))], 4), grid)


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_sentence_that_ends_in_a_time_has_one_stop(language: str) -> None:
    for start, step in (("9:45 a.m.", "20 min"), ("3:10 p.m.", "-25 min"), ("11:30 p.m.", "5 min")):
        count = Count.parse(kind="clock", start=start, step=step, terms=16, style=Style(language=language))
        for level in (0, 2, 4, 6):
            for stop in suggest_stops(Grid(count, 4), audience=Audience(level, language)):
                assert ".." not in " ".join([stop.question, stop.answer, stop.why, *stop.routes])
