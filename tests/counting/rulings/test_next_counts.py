"""What is offered as a next count, over random counts of every kind, level and way of folding."""

from collections.abc import Iterator
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, Grid, Kind, Outcome, Variation, next_counts
from routines.counting.slips.integers import BELOW_ZERO_FROM
from tests.counting.any_count import KINDS, grids

ANY = st.sampled_from(KINDS).flatmap(grids)
LEVELS = st.integers(0, 8)
FEW = 6


def values(grid: Grid) -> list[Fraction]:
    return [grid.count.value(n) for n in range(1, grid.terms + 1)]


def all_next(grid: Grid, level: int) -> Iterator[Variation]:
    for outcome in Outcome:
        yield from next_counts(grid, outcome, audience=Audience(level))


@given(ANY, LEVELS)
def test_no_count_is_offered_twice_under_two_intents(grid: Grid, level: int) -> None:
    offered = [
        (one.grid.count.start, one.grid.count.step, one.grid.line_length, one.outcome)
        for one in all_next(grid, level)
        if one.change != "other fold"
    ]
    for start, step, length, outcome in offered:
        assert all(other[-1] == outcome for other in offered if other[:3] == (start, step, length))


@given(ANY, LEVELS)
def test_there_is_enough_to_count(grid: Grid, level: int) -> None:
    for one in all_next(grid, level):
        assert one.grid.terms >= min(FEW, grid.terms), one.change


@given(st.sampled_from(("whole", "decimal", "fraction")).flatmap(grids), st.integers(0, BELOW_ZERO_FROM - 1))
def test_what_is_not_known_yet_stays_above_zero(grid: Grid, level: int) -> None:
    if 2 * sum(value < 0 for value in values(grid)) >= grid.terms:
        return
    for one in next_counts(grid, "not-yet", audience=Audience(level)):
        assert min(values(one.grid)) >= 0 or one.change == "other fold", one.change


@given(grids("clock").filter(lambda grid: grid.count.style.clock == 24), LEVELS)
def test_no_day_ends_within_a_next_count_but_where_one_did_before(grid: Grid, level: int) -> None:
    count = grid.count
    if not 0 <= _since_midnight(grid, 1) + (grid.terms - 1) * count.step < 24 * 60:
        return
    for one in all_next(grid, level):
        last = _since_midnight(one.grid, 1) + (one.grid.terms - 1) * one.grid.count.step
        assert 0 <= last < 24 * 60 or one.change == "other fold", one.change


def _since_midnight(grid: Grid, n: int) -> Fraction:
    """Read off the time as a 24-hour clock writes it."""
    hour, minute = grid.count.text(n).split(":")
    return Fraction(int(hour) * 60 + int(minute))


@given(ANY, LEVELS)
def test_smaller_numbers_are_other_numbers(grid: Grid, level: int) -> None:
    for one in next_counts(grid, "not-yet", audience=Audience(level)):
        if one.change in ("first jumps", "multiples", "round start"):
            same = set(values(grid)) & set(values(one.grid))
            assert 2 * len(same) < grid.terms, one.change


@given(ANY, LEVELS)
def test_what_is_said_of_a_round_number_is_so(grid: Grid, level: int) -> None:
    """Crossed only, landed on too, or met more seldom than before: reckoned from every count in view."""
    round_by = grid.count.form.round_number()
    for one in next_counts(grid, "ready-for-more", audience=Audience(level)):
        met = any(value % round_by == 0 for value in values(one.grid))
        if one.change == "unfriendly":
            assert not met
            assert round_by % grid.count.step == 0
        elif one.change == "unfriendly landing":
            assert met
        elif one.change == "unfriendly seldom":
            assert not met
            assert int(one.written["every"]) > int(one.written["often"])
        if one.change.startswith("unfriendly"):
            jumps = zip(values(one.grid), values(one.grid)[1:], strict=False)
            crossed = [a for a, b in jumps if b % round_by and a % round_by and a // round_by != b // round_by]
            assert crossed


@given(ANY, LEVELS)
def test_a_place_further_the_start_is_moved_too(grid: Grid, level: int) -> None:
    for one in next_counts(grid, "ready-for-more", audience=Audience(level)):
        times = {"ten times": Fraction(10), "finer": Fraction(1, 10)}.get(one.change.removesuffix(" from zero"))
        if times:
            assert one.grid.count.start == times * grid.count.start
            assert one.grid.count.step == times * grid.count.step


@given(st.integers(0, 200), st.integers(1, 60), st.integers(3, 8), st.integers(4, 6), LEVELS)
def test_what_slides_stood_in_line_before(start: int, step: int, length: int, lines: int, level: int) -> None:
    """Some multiple, or some digit of every count in a line across, is in line in the old fold and not in the new."""
    count = Count(Kind.WHOLE, Fraction(start), Fraction(step), length * lines)
    grid = Grid(count, length)
    for one in next_counts(grid, "ready-for-more", audience=Audience(level)):
        if one.change == "one more":
            assert any(
                _in_line(grid, m) and not _in_line(one.grid, m)
                for m in (*grid.count.friendly_multiples(), *_places(grid))
            )


def _places(grid: Grid) -> list[Fraction]:
    return [Fraction(10) ** place for place in range(-3, 7)]


def _in_line(grid: Grid, size: Fraction) -> bool:
    """Whether what is left past `size`, or the digit below it, is the same all along lines across the fill."""
    lines: dict[int, list[Fraction]] = {}
    for i, value in enumerate(values(grid)):
        lines.setdefault((i + grid.lead) % grid.line_length, []).append(value)
    if grid.terms <= grid.line_length:
        return False
    digits = all(len({abs(v) * 10 // size % 10 for v in line}) == 1 for line in lines.values())
    met = [any(v % size == 0 for v in line) for line in lines.values()]
    whole = all(len({v % size == 0 for v in line}) == 1 for line in lines.values()) and any(met) and not all(met)
    along = [
        set(values(grid)[max(0, k - grid.lead) : k - grid.lead + grid.line_length])
        for k in range(0, grid.terms + grid.lead, grid.line_length)
    ]
    rows = [{v % size == 0 for v in line} for line in along if line]
    one_row = all(len(row) == 1 for row in rows) and len({frozenset(row) for row in rows}) == 2
    one_line = sum(met) == 1 or sum(any(v % size == 0 for v in line) for line in along) == 1
    return digits or whole or one_row or one_line


@given(st.sampled_from((5, 10, 25)), st.integers(1, 24), st.integers(6, 24), st.integers(0, 1))
def test_the_first_grades_count_money_by_tens_and_quarters(step: int, many: int, terms: int, level: int) -> None:
    grid = Grid(Count.parse(kind="money", start=f"{many * 5}c", step=f"{step}c", terms=terms), min(4, terms))
    for one in next_counts(grid, "ready-for-more", audience=Audience(level)):
        assert abs(one.grid.count.step) in (step, 10, 25), one.change


@given(ANY, LEVELS)
def test_a_landmark_is_reached_where_it_is_a_count_and_passed_where_it_is_none(grid: Grid, level: int) -> None:
    for one in all_next(grid, level):
        if one.change.startswith(("landmark", "smaller place")) and grid.count.wrap is None:
            landmark = one.grid.count.read(one.written["landmark"])
            assert (landmark in values(one.grid)) is one.change.endswith(" reached"), one.written


@given(ANY, LEVELS)
def test_a_hard_place_is_met_again_in_lines_that_fit_the_classs_own(grid: Grid, level: int) -> None:
    own = grid.line_length
    for one in next_counts(grid, "not-yet", audience=Audience(level)):
        if one.change == "hard place":
            length = one.grid.line_length
            assert one.grid.terms % length == 0
            assert one.grid.terms <= 12
            assert one.grid.terms < max(grid.terms, 9)
            if 3 <= own <= 6 and grid.terms > 12:
                assert length == own
            assert length == 4 or own % length == 0
