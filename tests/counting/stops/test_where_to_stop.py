"""Where an experienced coach would stop: claims about classroom counts. Common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Claim, Count, Grid, Style
from routines.counting.stops.dying import dying_ideas
from routines.counting.stops.hard_spots import hard_spots
from routines.words import SpokenStop, ideas, suggest_stops
from tests.counting.any_count import KINDS, grids
from tests.counting.claims import a_claim


def grid_of(kind: str, start: str, step: str, terms: int, length: int) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), length)


def places(grid: Grid, level: int, targets: tuple[Claim, ...] = ()) -> list[int]:
    return [stop.after for stop in suggest_stops(grid, targets, level)]


ELEVENS = grid_of("whole", "34", "11", 12, 4)  # 34 45 56 67 78 89 | 100
EIGHTHS = grid_of("fraction", "1/8", "1/8", 24, 8)


class TestAnIdeaDies:
    def test_both_digits_go_up_one_until_a_hundred(self) -> None:
        assert places(ELEVENS, 3) == [6, 12]
        stop = suggest_stops(ELEVENS, (), 3)[0]
        assert "after 89" in stop.question
        assert stop.answer == "It stops at 100: the tens digit goes from 8 to 0."

    def test_nines_stop_before_ninety_nine(self) -> None:
        assert 10 in places(grid_of("whole", "9", "9", 20, 10), 3)

    def test_the_tops_of_eighths_stop_before_the_whole(self) -> None:
        stop = suggest_stops(EIGHTHS, (), 4)[0]
        assert stop.after == 7
        assert "the numerator goes up by 1" in stop.why

    def test_kindergarten_stops_at_nine(self) -> None:
        ones = grid_of("whole", "1", "1", 20, 5)
        assert places(ones, 0) == [9, 20]
        assert suggest_stops(ones, (), 0)[0].question == "“Each time it ends in 1 more.” How does the next one end?"

    def test_the_stop_is_one_count_before_an_idea_of_the_engine_dies(self) -> None:
        for grid in (ELEVENS, EIGHTHS, grid_of("whole", "85", "1", 30, 10)):
            died = {idea.dies_at for idea in ideas(grid)}
            found = dying_ideas(grid)
            assert found
            assert {idea.dies_at for idea in found} <= died
            assert places(grid, 3)[0] + 1 == found[0].dies_at

    def test_what_only_lined_up_by_chance_is_no_idea(self) -> None:
        # Column totals change whenever another line is begun; "all in row 1" ends with row 1.
        families = {idea.claim.family for idea in dying_ideas(grid_of("whole", "0", "10", 20, 5))}
        assert families <= {"digit-run", "digit", "digit-sum"}


class TestHardSpots:
    def test_counting_back_stops_before_a_thousand_is_left(self) -> None:
        assert places(grid_of("whole", "1,325", "-50", 16, 4), 4) == [7, 16]

    def test_a_new_thousand_is_waited_for(self) -> None:
        assert 10 in places(grid_of("whole", "4,990", "1", 20, 10), 4)

    def test_zero_is_stopped_at(self) -> None:
        assert 3 in places(grid_of("whole", "14", "-6", 15, 5), 6)

    def test_ninety_nine_is_stopped_at(self) -> None:
        assert 15 in places(grid_of("whole", "85", "1", 30, 10), 1)


@given(st.sampled_from(KINDS).flatmap(grids), st.integers(0, 8))
def test_zero_is_always_stopped_at(grid: Grid, level: int) -> None:
    zero = [spot.n - 1 for spot in hard_spots(grid) if spot.is_zero]
    assert set(zero) <= set(places(grid, level))


class TestTheFirstWhole:
    @pytest.mark.parametrize(
        ("kind", "start", "step", "after"),
        [
            ("fraction", "1/4", "1/4", 3),
            ("decimal", "0.3", "0.3", 3),
            ("mass", "250 g", "250 g", 3),
            ("money", "$0.35", "$0.25", 3),
            ("capacity", "150 mL", "150 mL", 6),
        ],
    )
    def test_it_gets_a_stop_of_its_own(self, kind: str, start: str, step: str, after: int) -> None:
        assert places(grid_of(kind, start, step, 20, 4), 4)[0] == after

    def test_a_count_that_begins_past_it_fills_none_for_the_first_time(self) -> None:
        for grid in (grid_of("fraction", "1 1/4", "1/4", 20, 4), grid_of("whole", "1", "1", 20, 5)):
            assert not any(spot.is_first_whole for spot in hard_spots(grid))


class TestTargets:
    def test_what_the_teacher_wants_seen_keeps_its_stop(self) -> None:
        down = a_claim("neighbour", direction="down", difference="1")
        assert places(EIGHTHS, 4, (down,))[0] == 10

    def test_a_target_is_not_looked_at_before_the_third_count(self) -> None:
        fives = a_claim("digit", place=0, along="count", blocks=[[5]])  # seen from the second count on
        assert min(places(grid_of("whole", "1,325", "-50", 16, 4), 4, (fives,))) >= 3


class TestSpread:
    @pytest.mark.parametrize("level", [0, 1])
    def test_the_youngest_stop_three_times_at_most(self, level: int) -> None:
        for grid in (grid_of("whole", "5", "1", 60, 10), grid_of("whole", "2", "2", 40, 5)):
            assert len(places(grid, level)) <= 3

    def test_a_long_stretch_gets_a_stop_of_its_own(self) -> None:
        # At 130 the third ten stands in column 3: tens are what a class names before twenties.
        assert places(grid_of("whole", "58", "6", 20, 5), 3) == [7, 13, 20]

    def test_a_short_count_has_its_end_only(self) -> None:
        assert places(grid_of("whole", "2", "2", 5, 5), 1) == [5]


class TestBelowZero:
    @staticmethod
    def end(grid: Grid, level: int) -> SpokenStop:
        return suggest_stops(grid, (), audience=Audience(level))[-1]

    def test_no_class_is_asked_for_a_number_it_has_not_met(self) -> None:
        for grid in (
            grid_of("whole", "20", "-1", 21, 10),
            grid_of("whole", "14", "-2", 8, 4),
            grid_of("fraction", "3 1/5", "-2/5", 9, 3),
            grid_of("decimal", "6.2", "-0.3", 15, 5),
        ):
            for level in range(6):
                for stop in suggest_stops(grid, (), level):
                    assert "-" not in stop.question + stop.answer, stop

    def test_it_is_asked_for_one_above_zero_instead(self) -> None:
        # 2.0 is the last on the board, 0.5 a line further on; two lines on it would be -1.
        assert "will we say 0.5" in self.end(grid_of("decimal", "6.2", "-0.3", 15, 5), 5).question

    def test_a_count_that_is_down_to_nothing_is_asked_for_what_never_comes(self) -> None:
        end = self.end(grid_of("whole", "20", "-1", 21, 10), 0)
        assert end.question == "If we go on, will we say 21? Show us."
        assert end.answer.startswith("No.")

    def test_older_classes_go_on_below_zero(self) -> None:
        assert "-" in self.end(grid_of("whole", "20", "-4", 6, 3), 6).question


def test_money_is_hard_to_go_on_with_where_its_main_unit_fills() -> None:
    for currency, start, step, full in (("USD", "0.85", "0.05", 100), ("KWD", "0.850", "0.050", 1000)):
        count = Count.parse(kind="money", start=start, step=step, terms=12, style=Style(currency=currency))
        assert [int(spot.landmark) for spot in hard_spots(Grid(count, 4))] == [full]
