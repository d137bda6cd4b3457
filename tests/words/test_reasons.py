"""A reason explains: by what a line holds, without saying one amount twice, and with why an idea ends where it ends."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting import Audience, Count, Fill, Grid, Kind, Style
from routines.words import SpokenPattern, find_patterns, ideas, patterns_to_say
from routines.words.languages import LANGUAGES
from tests.counting.any_count import KINDS, grids

PER_KIND = settings(max_examples=max(settings.default.max_examples // 4, 10))
AUDIENCES = st.builds(Audience, st.integers(0, 8), st.sampled_from(["en", "es"]))
A_LINE_HOLDS = re.compile(r"(\d+) (?:in a (?:row|column)|por (?:fila|columna))")
STRAIGHT_OR_DIAGONAL = {"right": (1, 0), "down": (0, 1), "down-right": (1, 1), "down-left": (-1, 1)}


def moved(grid: Grid, direction: str) -> int:
    """How many counts one cell on in a direction is, whichever way."""
    right, down = STRAIGHT_OR_DIAGONAL[direction]
    length = grid.line_length
    across, along = {Fill.ACROSS: (1, length), Fill.DOWN: (length, 1), Fill.ACROSS_UP: (1, -length)}[grid.fill]
    return abs(right * across + down * along)


def says_why_it_ends(pattern: SpokenPattern, grid: Grid) -> bool:
    """Whether the reason names the count with which the idea ends."""
    assert pattern.breaks_at is not None
    count = grid.count
    names = {count.text(pattern.breaks_at), count.text(pattern.breaks_at).split(" = ")[-1]}
    # A clock time with "noon" stands with a preposition in Spanish.
    return any(name.split(" medio")[0].split(" medianoche")[0] in pattern.because for name in names)


@pytest.mark.parametrize("kind", KINDS)
def test_reasons_name_the_line_and_say_no_amount_twice(kind: str) -> None:
    @PER_KIND
    @given(grids(kind), AUDIENCES)
    def each(grid: Grid, audience: Audience) -> None:
        for pattern in find_patterns(grid, audience=audience):
            held = A_LINE_HOLDS.search(pattern.because)
            if pattern.claim.family == "neighbour":
                apart = moved(grid, pattern.claim.parameters["direction"])
                assert bool(held) == (apart > 1 and abs(apart - grid.line_length) <= 1), pattern.because
            assert held is None or int(held[1]) == grid.line_length
            # "1 is 1 whole", "3.0 is 3 wholes", "10, which is 1 ten"
            assert not re.search(
                r"(?<![\d.,/:])(\d+)(?:[.,]0+)?(?:,? which| and \S+)? (?:is|es|o sea,) \1 (?!below|above|more|más|less|menos)\w",
                pattern.because,
            )
            assert not re.search(r"make 10, which is 1 ten|hacen 10, o sea, 1 decena", pattern.because)

    each()


@pytest.mark.parametrize("kind", KINDS)
def test_a_step_is_told_the_way_the_count_goes(kind: str) -> None:
    """Up a page that is filled upwards: whatever the direction, the neighbor is more where the count goes up."""
    more, less = r"\b(?:more|later|más|más tarde)$", r"\b(?:less|earlier|menos|antes)$"

    @PER_KIND
    @given(grids(kind), AUDIENCES)
    def each(grid: Grid, audience: Audience) -> None:
        for pattern in find_patterns(grid, audience=audience):
            if pattern.claim.family == "neighbour":
                assert re.search(more if grid.count.step > 0 else less, pattern.statement), pattern.statement

    each()


def test_the_line_in_which_an_idea_ends_is_told_of() -> None:
    """8 by 15, four in a row after an empty cell: 203 stands in row 4, where the hundreds digits were 1."""
    grid = Grid(Count.parse(kind="whole", start="8", step="15", terms=16), 4, lead=1)
    told = [
        idea.pattern.because
        for idea in ideas(grid, Audience(8))
        if idea.claim.parameters.get("place") == 2 and idea.claim.parameters["along"] == "row" and idea.dies_at == 14
    ]
    assert any("173 to 188" in because and "row 4" in because and "203" in because for because in told), told


@pytest.mark.parametrize("kind", KINDS)
def test_an_idea_that_ends_says_why(kind: str) -> None:
    """Digits, runs of digits and landmarks in line: the reason names the count that ends them, at every level."""

    @PER_KIND
    @given(grids(kind), AUDIENCES)
    def each(grid: Grid, audience: Audience) -> None:
        for idea in ideas(grid, audience):
            pattern = idea.pattern
            until = {"en": ", until ", "es": ", hasta llegar "}[audience.language]
            if pattern.claim.family in ("digit", "digit-run") and until in pattern.statement:
                assert says_why_it_ends(pattern, grid), (pattern.statement, pattern.because)

    each()


@pytest.mark.parametrize(
    ("kind", "start", "step", "terms", "length", "level", "language", "because"),
    [
        ("whole", "1", "1", 30, 10, 0, "en", "Each jump is 1. At 10, 10 ones make 1 ten."),
        ("whole", "1", "1", 30, 10, 0, "es", "Cada salto es de 1. En el 10, 10 unidades hacen 1 decena."),
        ("whole", "10", "10", 12, 4, 0, "en", "Each jump is 1 ten. At 100, 10 tens make 1 hundred."),
        ("whole", "10", "10", 12, 4, 0, "es", "Cada salto es de 1 decena. En el 100, 10 decenas hacen 1 centena."),
        (
            "whole",
            "140",
            "-10",
            9,
            3,
            3,
            "en",
            "Each jump is 1 ten. At 90 a hundred is opened into 10 tens, and the tens digit is 9.",
        ),
        (
            "clock",
            "9:05 am",
            "5 min",
            24,
            6,
            2,
            "en",
            "Each jump is 5 min. At 10:00 a.m. the minutes we write go from 55 back to 00.",
        ),
        (
            "clock",
            "9:05 am",
            "5 min",
            24,
            6,
            2,
            "es",
            "Cada salto es de 5 min. A las 10:00 a. m. los minutos que escribimos vuelven de 55 a 00.",
        ),
        (
            "decimal",
            "0.2",
            "0.2",
            20,
            5,
            4,
            "en",
            "Each jump is 0.2, and 0.2 more is 2 tenths more. At 1.0, 10 tenths make 1 whole.",
        ),
    ],
)
def test_why_a_run_ends(
    kind: str, start: str, step: str, terms: int, length: int, level: int, language: str, because: str
) -> None:
    count = Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(language=language))
    runs = [
        idea.pattern.because
        for idea in ideas(Grid(count, length), Audience(level, language))
        if idea.claim.family == "digit-run" and idea.claim.parameters["along"] == "count"
    ]
    assert because in runs


@pytest.mark.parametrize("kind", [Kind.LENGTH, Kind.MASS, Kind.CAPACITY, Kind.CLOCK, Kind.FRACTION, Kind.DECIMAL])
def test_halves_are_called_halves_alone_only_where_no_whole_stands_among_them(kind: str) -> None:
    @PER_KIND
    @given(grids(kind), AUDIENCES)
    def each(grid: Grid, audience: Audience) -> None:
        names = LANGUAGES[audience.language].landmark_nouns
        for pattern in find_patterns(grid, audience=audience):
            multiple = pattern.claim.parameters.get("multiple")
            noun = names.get((grid.count.base_unit or grid.count.kind, str(multiple)))
            if kind == Kind.CLOCK:
                noun = LANGUAGES[audience.language].clock_landmarks.get(str(multiple), noun)
            if pattern.claim.family != "landmarks" or noun is None or noun.among is None:
                continue
            with_wholes = any(grid.count.value(n) % (2 * multiple) == 0 for n in pattern.cells)
            named = {noun.among.one, noun.among.many} if with_wholes else {noun.one, noun.many}
            said = re.sub("( y|,) l[oa]s |( o) una? ", r"\1\2 ", pattern.statement.lower())
            said = said.replace(" o hora ", " u hora ")
            assert any(name in said for name in named), said
            assert with_wholes or noun.among.many not in said, said

    each()


@pytest.mark.parametrize("kind", KINDS)
def test_how_many_begins_where_the_first_whole_stretch_begins(kind: str) -> None:
    begins = {"en": ("From ", "Below "), "es": ("A partir de", "Por debajo de")}

    @PER_KIND
    @given(grids(kind), AUDIENCES)
    def each(grid: Grid, audience: Audience) -> None:
        for pattern in find_patterns(grid, audience=audience):
            if pattern.claim.family == "how-many":
                count, multiple = grid.count, pattern.claim.parameters["multiple"]
                one_line_each = re.search(
                    r", (?:one (?:row|column) each|una (?:fila|columna) entera)$", pattern.statement
                )
                at_once = (count.step > 0 and count.value(1) % multiple == 0) or bool(one_line_each)
                assert pattern.statement.startswith(begins[audience.language]) != at_once, pattern.statement

    each()


def test_rows_of_a_grid_filled_from_below_are_named_as_printed() -> None:
    """58 by 6, six in a row, the bottom row first: the tens go on to 160, in the second row from the top."""
    grid = Grid(Count.parse(kind="whole", start="58", step="6", terms=24), 6, "across-up")
    tens = next(
        idea.pattern
        for idea in ideas(grid, Audience(3, "en"))
        if idea.claim.family == "landmarks" and idea.claim.parameters["multiple"] == 10 and idea.dies_at == 18
    )
    assert grid.place(18) == (2, 6)
    assert tens.because.endswith("160 lands on a ten too, but it goes in row 2, column 6.")


@pytest.mark.parametrize("kind", KINDS)
def test_marks_that_come_more_than_once_in_a_line_are_told_by_how_often_they_come(kind: str) -> None:
    """They come every k counts, so that is what the reason says: not what a whole line of jumps makes."""
    beside = {Fill.DOWN: ("row", "rows"), Fill.ACROSS: ("column", "columns"), Fill.ACROSS_UP: ("column", "columns")}

    @PER_KIND
    @given(grids(kind), AUDIENCES)
    def each(grid: Grid, audience: Audience) -> None:
        for pattern in find_patterns(grid, audience=audience):
            if pattern.claim.family != "landmarks" or pattern.claim.parameters["lie"] not in beside[grid.fill]:
                continue
            every = pattern.claim.parameters["every"]
            if every < grid.line_length and grid.line_length % every == 0:
                times = grid.line_length // every
                assert re.search(rf"(?:is|son) {times} (?:times|veces) {every}\b", pattern.because), pattern.because

    each()


@pytest.mark.parametrize(
    ("kind", "start", "step", "terms", "length"),
    [("fraction", "4", "-1/3", 15, 3), ("decimal", "-1.2", "0.4", 24, 6), ("fraction", "2 1/2", "-3/4", 12, 4)],
)
def test_how_many_in_each_whole_is_not_said_first_below_zero(
    kind: str, start: str, step: str, terms: int, length: int
) -> None:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)
    said = patterns_to_say(grid, Audience(6))
    assert "how-many" not in [one.claim.family for one in said[:6]]
    assert not [one for one in said if one.claim.family == "how-many" and one.statement.startswith("Each ")]
