"""Next counts: valid, one change each, chosen for what happened, and showing what they say."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, CountError, Grid, Outcome, classify
from routines.words import SpokenVariation, check, find_patterns, likely_slips, next_counts
from tests.counting.any_count import KINDS, grids
from tests.counting.claims import a_claim
from tests.counting.slips.table import EXAMPLE_GRIDS


def grid_of(kind: str, start: str, step: str, terms: int, length: int, fill: str = "across") -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length, fill)


BACK = grid_of("whole", "1,325", "-50", 16, 4)
SIXES = grid_of("whole", "58", "6", 20, 5)


def said(variation: SpokenVariation) -> tuple[str, str, int, int]:
    count = variation.grid.count
    return variation.typed_start, variation.typed_step, count.terms, variation.grid.line_length


def test_the_other_way_runs_between_the_same_ends() -> None:
    other_way = next(one for one in next_counts(BACK, "not-yet") if "other way" in one.what)
    assert other_way.what == "The same numbers the other way, from 575 to 1,325 by 50."
    assert said(other_way)[:2] == ("575", "50")


def test_times_in_spanish_take_their_article() -> None:
    clock = grid_of("clock", "1:16", "5 min", 6, 6)
    full_hour = next_counts(clock, "not-yet", audience=Audience(3, "es"))[0]
    assert full_hour.what == "Los mismos saltos de 5 min, desde la 1:00."


def test_small_customary_units_go_by_the_unit_above() -> None:
    ounces = grid_of("capacity", "8 fl oz", "12 fl oz", 13, 6)
    whats = [one.what for one in next_counts(ounces, "as-planned")]
    assert "The same start, each time a jump of 20 fl oz: 8 fl oz more in each jump." in whats


def test_a_slip_that_was_heard_is_counted_again_early_in_a_short_count() -> None:
    heard = classify(BACK, 8, "925")
    first = next_counts(BACK, "not-yet", 4, slips=[heard])[0]
    assert said(first) == ("1,125", "-50", 8, 4)
    assert first.grid.count.position_of(BACK.count.value(8)) == 4
    assert "1,025" in first.why
    assert "975" in first.why


def test_another_slip_gives_another_count() -> None:
    starts = {next_counts(BACK, "not-yet", 4, slips=[n])[0].typed_start for n in (8, 10, 12)}
    assert len(starts) == 3


@pytest.mark.parametrize("outcome", ["not-yet", "as-planned"])
def test_a_pattern_that_was_not_seen_is_folded_so_that_it_lines_up(outcome: str) -> None:
    grid = grid_of("whole", "58", "6", 20, 4)
    tens = a_claim("landmarks", multiple="10", every=5, first=3, lie="scattered", lines=[])
    first = next_counts(grid, outcome, 3, unseen=[tens])[0]
    assert said(first) == ("58", "6", 20, 5)
    assert first.shows[0].parameters.get("lie") == "column"


def test_friendlier_numbers_are_multiples_of_the_step() -> None:
    found = [one for one in next_counts(SIXES, "not-yet", 3) if one.typed_start == "6"]
    assert found
    assert found[0].grid.count.value(found[0].grid.terms) <= 12 * 6  # as far as the table is known
    assert found[0].shows == (a_claim("remainder", modulus="6", along="count", blocks=[["0"]]),)


def test_after_a_lesson_as_planned_one_thing_changes_and_one_stays() -> None:
    first, second, third = next_counts(SIXES, "as-planned", 3)
    assert said(first) == ("58", "16", 20, 5)
    ones = [SIXES.count.value(n) % 10 for n in range(1, 21)]
    assert [first.grid.count.value(n) % 10 for n in range(1, 21)] == ones
    assert second.typed_step == "6"
    assert second.shows == (a_claim("neighbour", direction="down", difference="30"),)
    assert said(third) == ("172", "-6", 20, 5)


def test_who_is_ready_for_more_passes_a_larger_landmark() -> None:
    first = next_counts(SIXES, "ready-for-more", 3)[0]
    count = first.grid.count
    assert count.value(1) < 1000 <= count.value(count.terms)
    assert "1,000" in first.what
    assert count.step == 6


def test_older_classes_that_count_back_go_below_zero() -> None:
    grid = grid_of("whole", "90", "-7", 12, 4)
    first = next_counts(grid, "ready-for-more", 6)[0]
    assert first.grid.count.value(1) > 0 > first.grid.count.value(12)
    below = next_counts(grid, "ready-for-more", 3)
    assert all(one.grid.count.value(one.grid.count.terms) >= 0 or "7" not in one.typed_step for one in below[:1])


def test_a_first_grade_does_not_count_past_what_it_knows_nor_by_nines() -> None:
    ones = grid_of("whole", "1", "1", 30, 10)
    for one in next_counts(ones, "ready-for-more", 1):
        assert one.typed_step in ("1", "10")
    assert all("1,000" not in one.what for one in next_counts(grid_of("whole", "60", "5", 16, 4), "ready-for-more", 1))


def test_no_change_is_one_more_at_the_start() -> None:
    for grid in EXAMPLE_GRIDS:
        for outcome in tuple(Outcome):
            for one in next_counts(grid, outcome, 4):
                count = one.grid.count
                same = (count.step, count.terms, one.grid.line_length) == (
                    grid.count.step,
                    grid.count.terms,
                    grid.line_length,
                )
                assert not (same and count.start - grid.count.start == 1 and grid.count.kind == "whole")


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
@pytest.mark.parametrize("outcome", tuple(Outcome))
def test_what_is_said_of_the_new_count_is_true_of_it(grid: Grid, outcome: str) -> None:
    """Start, step, number of counts and line length are read back from the sentence."""
    for one in next_counts(grid, outcome, 4):
        count = one.grid.count
        if found := re.search(r"starting at (.+?)(?:, so that|: past|, in lines|, with|\.$|\. Only)", one.what):
            assert found[1] == count.text(1)
        if found := re.search(r"Jumps of (.+?) instead of (.+?)(?:, starting|, with|\. Only|\.$)", one.what):
            assert (found[1], found[2]) == (
                count.difference_text(count.step),
                grid.count.difference_text(grid.count.step),
            )
        if found := re.search(r"lines of (\d+)", one.what):
            assert int(found[1]) == one.grid.line_length
        if found := re.search(r"only (?:the first )?(\d+)", one.what):
            assert int(found[1]) == count.terms
        if found := re.search(r"(?:passes|reaches) (\S+( \S+)?)\.", one.what):
            landmark = count.read(found[1])
            low, high = sorted((count.value(1), count.value(count.terms)))
            assert low <= landmark <= high or (count.wrap and low <= landmark + 720 <= high)
        if found := re.search(r"the one just \w+ it are (?:still|now) (.+?) apart", one.why):
            assert found[1] == count.difference_text(count.step * one.grid.line_length)


@pytest.mark.parametrize("grid", EXAMPLE_GRIDS)
@pytest.mark.parametrize("outcome", tuple(Outcome))
def test_what_is_typed_gives_the_same_count(grid: Grid, outcome: str) -> None:
    for one in next_counts(grid, outcome, 4):
        count = one.grid.count
        typed = Count.parse(
            kind=count.kind, start=one.typed_start, step=one.typed_step, terms=count.terms, style=count.style
        )
        assert [typed.text(n) for n in range(1, count.terms + 1)] == [count.text(n) for n in range(1, count.terms + 1)]
        assert typed.step == count.step


@given(st.integers(0, 400), st.integers(1, 60), st.integers(0, 8))
def test_the_arithmetic_of_the_reasons_is_right(start: int, step: int, level: int) -> None:
    grid = Grid(Count(kind="whole", start=start, step=step, terms=16), 4)  # type: ignore[arg-type]
    for one in next_counts(grid, "ready-for-more", level):
        if found := re.match(r"(\d[\d,]*) is nearly (\d[\d,]*):", one.why):
            nearly, friendly = (int(text.replace(",", "")) for text in found.groups())
            assert abs(nearly - friendly) == 1
            assert friendly % 5 == 0
        if found := re.match(r"One jump of (\d+) does what (\d+) jumps of (\d+) did", one.why):
            large, many, small = map(int, found.groups())
            assert large == many * small
    for one in next_counts(grid, "not-yet", level):
        if found := re.match(r"From (\d[\d,]*) every count is a multiple of (\d+)", one.why):
            first, size = (int(text.replace(",", "")) for text in found.groups())
            assert first % size == 0
            assert one.grid.count.step % size == 0


def test_an_unknown_outcome_is_refused() -> None:
    with pytest.raises(CountError) as error:
        next_counts(BACK, "so-so")
    assert error.value.field == "outcome"


@given(
    st.sampled_from(KINDS).flatmap(grids),
    st.sampled_from(tuple(Outcome)),
    st.integers(0, 8),
    st.sampled_from(["en", "es"]),
    st.data(),
)
def test_every_grid_has_a_next_count_and_what_it_claims_it_shows(
    grid: Grid, outcome: str, level: int, language: str, data: st.DataObject
) -> None:
    slips = data.draw(st.lists(st.integers(1, grid.terms), max_size=2))
    patterns = find_patterns(grid)
    unseen = data.draw(st.lists(st.sampled_from(patterns), max_size=2)) if patterns else []
    found = next_counts(grid, outcome, slips=slips, unseen=unseen, audience=Audience(level, language))
    assert 1 <= len(found) <= 3
    assert len({one.what for one in found}) == len(found)
    for one in found:
        assert one.outcome == outcome
        assert (one.grid.count, one.grid.line_length) != (grid.count, grid.line_length)
        assert "{" not in one.what + one.why
        assert len(f"{one.what} {one.why}") <= 400  # what a plan keeps of one sentence
        for claim in one.shows:
            verdict = check(claim, one.grid)
            assert verdict.true
            assert verdict.seen


def test_slips_may_be_given_as_they_were_foreseen() -> None:
    foreseen = likely_slips(BACK, 4)
    assert next_counts(BACK, "not-yet", 4, slips=foreseen[:1]) == next_counts(BACK, "not-yet", 4, slips=[foreseen[0].n])


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8), st.sampled_from(list(Outcome)))
def test_what_jumps_are_said_to_make_is_reached_on_the_board(grid: Grid, level: int, outcome: str) -> None:
    for one in next_counts(grid, outcome, audience=Audience(level)):
        if re.search("make .*, so we land on every", one.reason):
            count, landmark = one.grid.count, one.grid.count.form.round_number()
            assert any(count.value(n) and count.value(n) % landmark == 0 for n in range(1, count.terms + 1))


def test_landing_is_said_of_the_counts_that_are_left() -> None:
    """25 min lands on whole hours at 300 and 600 min, of which a school day's counts reach the first alone."""
    quarters = Grid(Count.parse(kind="elapsed", start="0 min", step="15 min", terms=32), 11, "down")
    harder = next(one for one in next_counts(quarters, "ready-for-more", audience=Audience(8)) if "25 min" in one.what)
    landed = [n for n in range(2, harder.grid.terms + 1) if harder.grid.count.value(n) % 60 == 0]
    assert ("only one jump" in harder.reason) == (len(landed) == 1)


@pytest.mark.parametrize(("language", "starts"), [("en", "11"), ("es", "17")])
def test_the_hard_jump_is_one_that_is_hard_in_the_language(language: str, starts: str) -> None:
    """Fourteen runs into fifteen in English; in Spanish nineteen leads on to "diecidiez"."""
    ones = grid_of("whole", "1", "1", 30, 10)
    assert next_counts(ones, "not-yet", audience=Audience(0, language))[0].typed_start == starts
