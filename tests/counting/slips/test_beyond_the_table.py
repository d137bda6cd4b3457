"""The slips that the table does not name: each is what a teacher of that grade would expect to hear there.

Common practice, no source, unless the rule says otherwise.
"""

import pytest

from routines.counting import Audience, Count, Grid, Style, likely_slips


def heard(
    rule: str, start: str, step: str, level: int, kind: str = "whole", terms: int = 12, **style: object
) -> list[tuple[int, str, str]]:
    """Where a rule is foreseen, with what is heard there and what is due."""
    count = Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style))
    slips = likely_slips(Grid(count, 4), audience=Audience(level))
    return [(slip.n, slip.heard, slip.correct) for slip in slips if slip.rule == rule]


class TestFirstGrades:
    def test_ninety_is_followed_by_a_ten_of_its_own_making(self) -> None:
        assert heard("W32", "0", "10", 0) == [(11, "tenty", "100")]

    def test_a_ten_sounds_like_a_teen(self) -> None:
        assert heard("W33", "0", "10", 0)[:2] == [(4, "13", "30"), (5, "14", "40")]

    def test_counting_back_turns_round_at_a_ten(self) -> None:
        assert heard("W34", "21", "-1", 0, terms=16) == [(3, "21", "19"), (13, "11", "9")]
        assert heard("W34", "30", "-2", 1) == [(7, "22", "18"), (12, "12", "8")]

    def test_counting_back_meets_the_teens_as_tens(self) -> None:
        assert (2, "90", "19") in heard("W35", "20", "-1", 0)

    def test_skip_counting_falls_back_into_ones_after_a_ten(self) -> None:
        assert heard("W36", "2", "2", 1) == [(6, "11", "12"), (11, "21", "22")]
        assert not heard("W36", "1", "2", 1)
        assert not heard("W36", "960", "10", 2)

    def test_fives_go_on_as_tens(self) -> None:
        assert heard("W37", "5", "5", 1, terms=6) == [(3, "20", "15"), (5, "30", "25")]

    def test_fifteen_is_left_out(self) -> None:
        assert heard("W39", "8", "1", 0) == [(8, "16", "15")]


class TestSongs:
    def test_a_quarter_of_a_hundred_is_doubled_after_it(self) -> None:
        assert heard("W38", "25", "25", 2) == [(5, "150", "125"), (9, "250", "225")]

    @pytest.mark.parametrize("rule", ["W28", "W30"])
    def test_nobody_works_out_what_is_known_by_heart(self, rule: str) -> None:
        assert not heard(rule, "25", "25", 2)
        assert not heard(rule, "0", "50", 2)

    def test_seventy_fives_are_worked_out(self) -> None:
        assert (2, "225", "325") in heard("W28", "250", "75", 5)

    def test_a_hundred_that_is_not_there_yet_is_not_kept(self) -> None:
        assert [n for n, _, _ in heard("W28", "67", "11", 3)] == []
        assert heard("W28", "167", "11", 3)[0] == (4, "100", "200")


def test_a_full_thousand_is_written_out_before_its_rest() -> None:
    assert heard("W40", "4,998", "1", 4)[:2] == [(4, "50001", "5,001"), (5, "50002", "5,002")]


class TestOpeningAWhole:
    def test_parts_are_taken_the_other_way_round(self) -> None:
        # 2 1/8 - 3/8: the 1 from the 3.
        assert heard("F16", "2 1/8", "-3/8", 4, "fraction", 4)[0] == (2, "2 2/8", "1 6/8")

    def test_a_whole_is_opened_into_ten(self) -> None:
        # 2 1/8 - 3/8: eleven eighths less three.
        assert heard("F17", "2 1/8", "-3/8", 4, "fraction", 4)[0] == (2, "1 8/8", "1 6/8")
        assert not heard("F17", "2 1/10", "-3/10", 4, "fraction", 4)

    def test_nobody_adds_top_and_bottom_when_counting_back(self) -> None:
        assert not heard("F01", "3 1/5", "-2/5", 5, "fraction", 8)


class TestTime:
    def test_second_grade_passes_the_hour_by_tens(self) -> None:
        assert heard("T12", "9:55", "10 min", 2, "clock")[0] == (2, "9:65", "10:05")
        assert heard("T13", "9:55", "10 min", 2, "clock")[0] == (2, "9:05", "10:05")

    def test_an_elapsed_hour_is_not_added(self) -> None:
        assert heard("T14", "1 h 35 min", "35 min", 4, "elapsed")[0] == (2, "1 h 10 min", "2 h 10 min")


class TestMeasures:
    def test_a_full_larger_unit_is_foreseen_as_an_equal_name(self) -> None:
        count = Count.parse(kind="length", start="75 cm", step="25 cm", terms=6)
        slip = next(slip for slip in likely_slips(Grid(count, 3), 3) if slip.rule == "L15")
        assert (slip.n, slip.heard, slip.correct, slip.equal_name) == (2, "1 m", "100 cm", True)

    def test_the_hundreds_are_left_as_they_were(self) -> None:
        assert heard("L16", "2 kg 940 g", "-40 g", 5, "mass", 5, units="two") == [
            (3, "2 kg 960 g", "2 kg 860 g"),
            (5, "2 kg 880 g", "2 kg 780 g"),
        ]
        assert heard("L16", "370 mL", "60 mL", 4, "capacity", 4)[0] == (2, "330 mL", "430 mL")

    def test_customary_units_have_no_hundreds(self) -> None:
        assert not heard("L16", "90 in", "30 in", 4, "length", 8)


class TestBelowZero:
    """The rules of the integers, where the count goes by decimals or fractions."""

    def test_a_decimal_jump_starts_again_at_zero(self) -> None:
        # 0.3 - 0.4
        assert heard("N03", "1.5", "-0.4", 6, "decimal") == [(5, "-0.4", "-0.1")]

    def test_a_fraction_jump_starts_again_at_zero(self) -> None:
        # 1/4 - 2/4
        assert heard("N03", "3/4", "-1/2", 6, "fraction") == [(3, "-2/4", "-1/4")]

    def test_the_sign_is_lost(self) -> None:
        assert heard("N08", "0.2", "-0.1", 6, "decimal") == [(4, "0.1", "-0.1")]
        assert heard("N08", "1/3", "-1/3", 6, "fraction", 5) == [(3, "1/3", "-1/3")]
        assert heard("N05", "0.2", "-0.1", 6, "decimal")[0] == (5, "0.2", "-0.2")

    def test_zero_is_skipped_or_is_the_end(self) -> None:
        assert heard("N02", "0.2", "-0.1", 6, "decimal") == [(3, "-0.1", "0.0")]
        assert heard("N01", "0.2", "-0.1", 6, "decimal") == [(4, "0.0", "-0.1")]

    def test_parts_start_again_where_the_whole_has_to_change(self) -> None:
        assert heard("N06", "-2 1/4", "1/4", 6, "fraction", 5) == [(3, "-2 3/4", "-1 3/4")]
        assert heard("N07", "-1 2/5", "-1/5", 6, "fraction", 5) == [(4, "-1", "-2")]
        assert heard("N06", "-2.2", "0.1", 6, "decimal", 6) == [(4, "-2.9", "-1.9")]
        assert heard("N07", "-1.7", "-0.1", 6, "decimal", 6) == [(4, "-1.0", "-2.0")]

    def test_they_wait_for_the_grade_that_knows_negative_numbers(self) -> None:
        for level in range(6):
            assert not heard("N03", "1.5", "-0.4", level, "decimal")
