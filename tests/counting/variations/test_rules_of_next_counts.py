"""The rules of next counts, each worked out again from the listed values of random counts of all kinds and levels."""

import re
from fractions import Fraction
from itertools import pairwise

from hypothesis import assume, given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Kind
from routines.counting.outcome import Outcome
from routines.words import SpokenVariation, next_counts
from tests.counting.any_count import KINDS, grids

ANY = st.sampled_from(KINDS).flatmap(grids)
LEVELS = st.integers(0, 8)
LANGUAGES = st.sampled_from(["en", "es"])
TENS = Count.parse(kind="whole", start="27", step="1", terms=24)


def following(grid: Grid, level: int, language: str = "en") -> list[SpokenVariation]:
    return [one for way in tuple(Outcome) for one in next_counts(grid, way, audience=Audience(level, language))]


def values(grid: Grid) -> list[Fraction]:
    start, step = Fraction(grid.count.start), Fraction(grid.count.step)
    return [start + n * step for n in range(grid.terms)]


@given(ANY, st.data(), LEVELS, LANGUAGES)
def test_empty_cells_are_kept_only_where_what_is_round_stands_at_an_end(
    grid: Grid, data: st.DataObject, level: int, language: str
) -> None:
    old = Grid(grid.count, grid.line_length, grid.fill, data.draw(st.integers(0, grid.line_length - 1)))
    for one in following(old, level, language):
        new = one.grid
        same_cells = (new.count.start, new.line_length) == (old.count.start, old.line_length)
        if new.lead and not same_cells:
            size = new.count.form.round_number()
            places = {(new.lead + n) % new.line_length for n, value in enumerate(values(new)) if value % size == 0}
            assert places in ({0}, {new.line_length - 1})
        said = re.search(r"with (?:no|\d+) empty cells?|(?:sin|con \d+) celdas? vacías?", one.what)
        assert (said is not None) == (new.lead != old.lead), one.what


def test_a_count_that_goes_on_has_the_tens_where_they_were() -> None:
    old = Grid(TENS, 10, lead=6)
    on = next(one for one in next_counts(old, "as-planned", 0) if "going on" in one.what)
    assert on.grid.place(1) == (1, 1)  # 51, as 31 and 41 stood in column 1
    back = next(one for one in next_counts(old, "as-planned", 1) if "other way" in one.what)
    assert {back.grid.place(n)[1] for n in range(1, 25) if back.grid.count.value(n) % 10 == 0} == {1}


def test_counting_back_is_for_a_class_that_is_ready_for_it() -> None:
    """In K no more than ten numbers back; of a count that went back the way forwards is the easier one."""
    by_twos, back_from_20 = (
        Grid(Count.parse(kind="whole", start=start, step=step, terms=20), 5)
        for start, step in (("2", "2"), ("20", "-1"))
    )
    found = {
        way: [one.what for one in next_counts(by_twos, way, 0)] for way in ("not-yet", "as-planned", "ready-for-more")
    }
    assert [way for way, whats in found.items() for what in whats if "other way, from 20 to 2 by 2" in what] == [
        "ready-for-more"
    ]
    assert any("other way, from 1 to 20" in one.what for one in next_counts(back_from_20, "not-yet", 0))


def test_times_that_go_on_stop_at_noon() -> None:
    grid = Grid(Count.parse(kind="clock", start="9:05 am", step="5 min", terms=24), 6)
    on = next(one for one in next_counts(grid, "as-planned", 2) if "going on" in one.what)
    assert on.grid.count.value(on.grid.terms) == 720


@given(ANY, LEVELS, LANGUAGES)
def test_a_count_that_stops_early_or_has_other_lines_says_so(grid: Grid, level: int, language: str) -> None:
    for one in following(grid, level, language):
        if one.grid.terms < grid.terms:
            assert re.search(rf"(?:[Oo]nly|solo|primeros) .*\b{one.grid.terms}\b", one.what, re.IGNORECASE), one.what
        if one.grid.line_length != grid.line_length:
            assert re.search(rf"(?:in lines of|en líneas de) {one.grid.line_length}\b", one.what), one.what


@given(ANY, LEVELS)
def test_a_jump_that_lands_on_round_numbers_lands_there_as_often_as_is_said(grid: Grid, level: int) -> None:
    for one in next_counts(grid, "ready-for-more", level):
        size = one.grid.count.form.round_number()
        landed = sum(value % size == 0 for value in values(one.grid)[1:])
        if one.change == "unfriendly landing":
            assert landed >= 2
        if one.change == "unfriendly once":
            assert landed == 1
        if one.change == "unfriendly":
            assert not any(value % size == 0 for value in values(one.grid))


@given(ANY, LEVELS)
def test_a_landmark_that_is_passed_changes_what_is_written(grid: Grid, level: int) -> None:
    for one in next_counts(grid, "ready-for-more", level):
        if one.change.startswith("landmark") and one.grid.count.wrap is None:
            texts = [one.grid.count.text(n) for n in range(1, one.grid.terms + 1)]
            signs = [value < 0 for value in values(one.grid)]
            if grid.count.kind == Kind.FRACTION:
                assert len(set(signs)) == 2  # ten means nothing to parts: zero does
            else:
                assert any(len(a) != len(b) for a, b in pairwise(texts)) or len(set(signs)) == 2


@given(st.integers(0, 500), st.integers(1, 60), st.integers(8, 24), st.integers(3, 8), st.integers(2, 8))
def test_digits_that_are_kept_in_every_cell_are_no_trivial_ones(
    start: int, step: int, terms: int, length: int, level: int
) -> None:
    assume(length <= terms)
    grid = Grid(Count(kind="whole", start=start, step=step, terms=terms), length, lead=length // 2)  # type: ignore[arg-type]
    for one in next_counts(grid, "as-planned", level):
        of = {"ones digit kept": 10, "two digits kept": 100}.get(one.change)
        if of:
            then = {grid.place(n + 1): value % of for n, value in enumerate(values(grid))}
            now = {one.grid.place(n + 1): value % of for n, value in enumerate(values(one.grid))}
            assert all(then[cell] == kept for cell, kept in now.items())
            assert len(set(now.values())) > 1 or step == 100


@given(st.integers(-60, 500), st.integers(1, 60), st.integers(8, 24), LEVELS)
def test_numbers_that_a_class_is_said_to_know_are_those_of_its_tables(
    start: int, step: int, terms: int, level: int
) -> None:
    grid = Grid(Count(kind="whole", start=start, step=step, terms=terms), 4)  # type: ignore[arg-type]
    for one in next_counts(grid, "not-yet", level):
        if one.change == "multiples":
            counted = values(one.grid)
            assert all(value % step == 0 for value in counted)
            by_ending = str(step).rstrip("0") in ("1", "2", "5", "25")
            assert by_ending or (level >= 3 and max(map(abs, counted)) <= 12 * step)


@given(ANY, LEVELS)
def test_after_a_lesson_as_planned_no_amount_runs_far_past_what_was_counted(grid: Grid, level: int) -> None:
    assume(grid.count.base_unit in ("cm", "g", "mL", "in", "oz") or grid.count.kind == Kind.MONEY)
    farthest = max(values(grid))
    for one in next_counts(grid, "as-planned", level):
        if one.change == "round number more" and max(values(one.grid)) > 2 * farthest:
            assert one.grid.terms <= max(8, 2 * grid.line_length)


def test_past_ten_nothing_is_hard() -> None:
    grid = Grid(Count.parse(kind="whole", start="93", step="1", terms=28), 10)
    small = next(one for one in next_counts(grid, "not-yet", 1) if one.change.startswith("smaller place"))
    assert small.typed_start == "27"
    assert "so that we reach 30 and not 100" in small.what


@given(st.integers(3, 9), st.integers(1, 6), st.integers(8, 30))
def test_after_a_hard_lesson_a_count_of_the_table_stays_in_it(step: int, first: int, terms: int) -> None:
    grid = Grid(Count(kind="whole", start=first * step, step=step, terms=terms), 4)  # type: ignore[arg-type]
    for one in next_counts(grid, "not-yet", 3):
        hard = one.grid.count.value(4)
        assert one.change != "hard place" or step == 5 or hard <= 12 * step
