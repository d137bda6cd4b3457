"""Slips that coaches hear: one counted too few, hundreds counted on past a thousand, a hundred minutes for an hour, half hours.

Sources: Secada, Fuson & Hall (1983), JRME 14(1), that counting on has to begin with the next word; Kamii & Russell (2012),
JRME 43(3), that sixty is treated as a hundred (general findings); all else common practice, no source.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Audience, Count, EqualName, Grid, Slip, classify, likely_slips
from routines.counting.kinds.names import Kind

LANGUAGES = st.sampled_from(["en", "es"])


def grid_of(kind: str, start: str, step: str, terms: int = 12) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), min(4, terms))


def slips_at(grid: Grid, level: int, language: str = "en") -> list[tuple[str, str]]:
    return [(slip.correct, slip.heard) for slip in likely_slips(grid, audience=Audience(level, language))]


class TestOneTooFew:
    @given(st.integers(1, 300), st.sampled_from([3, 4, 6, 7, 8, 9]), st.booleans(), st.integers(2, 4), LANGUAGES)
    def test_it_stands_beside_one_too_many_at_the_first_ten_that_is_crossed(
        self, start: int, step: int, down: bool, level: int, language: str
    ) -> None:
        up = Count(Kind.WHOLE, Fraction(start), Fraction(step), 12)
        count = Count(Kind.WHOLE, up.value(12), -up.step, 12) if down else up
        before = [int(count.value(n)) for n in range(1, 12)]
        crossed = [a for a in before if a % 10 and a // 10 != (a + int(count.step)) // 10]
        slips = [
            slip for slip in likely_slips(Grid(count, 4), audience=Audience(level, language)) if slip.rule == "W47"
        ]
        assert len(slips) == len({slip.n for slip in slips})
        for slip in slips:
            a, due, said = count.value(slip.n - 1), count.value(slip.n), Fraction(slip.heard.replace(",", ""))
            assert a in crossed
            # The count before is the first that is said, so there is one less to say.
            said_in_ones = [a + (-k if down else k) for k in range(step)]
            assert (said_in_ones[0], said_in_ones[-1]) == (a, said)
            assert abs(said - due) == 1
        # Tens are told of only as often as they are news; what is said is heard at all of them.
        for a in crossed:
            said = str(a + (1 - step if down else step - 1))
            heard = classify(Grid(count, 4), before.index(a) + 2, said, audience=Audience(level, language))
            assert isinstance(heard, Slip)

    @pytest.mark.parametrize(("start", "step"), [("95", "5"), ("8", "2"), ("70", "6"), ("40", "10")])
    def test_nobody_counts_a_song_in_ones_nor_a_jump_from_a_ten(self, start: str, step: str) -> None:
        assert not [slip for slip in likely_slips(grid_of("whole", start, step, 2), 3) if slip.rule == "W47"]


class TestHundredsPastAThousand:
    @pytest.mark.parametrize(
        ("start", "step", "due", "english", "spanish"),
        [
            ("240", "100", "1,040", "ten hundred forty", "diez cientos cuarenta"),
            ("700", "100", "1,000", "ten hundred", "diez cientos"),
            ("1,650", "50", "2,000", "twenty hundred", "veinte cientos"),
            ("880", "20", "1,000", "ten hundred", "diez cientos"),
        ],
    )
    @pytest.mark.parametrize("level", [2, 3, 4])
    def test_they_are_foreseen_and_are_the_same_number(
        self, start: str, step: str, due: str, english: str, spanish: str, level: int
    ) -> None:
        grid = grid_of("whole", start, step)
        assert (due, english) in slips_at(grid, level)
        assert (due, spanish) in slips_at(grid, level, "es")

    @given(st.integers(1000, 9999), st.integers(0, 8))
    def test_a_number_said_by_its_hundreds_is_that_number(self, value: int, level: int) -> None:
        grid = Grid(Count(Kind.WHOLE, Fraction(value - 1), Fraction(1), 2), 2)
        hundreds = ("ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen")
        if value // 100 - 10 < len(hundreds) and value % 100 in (0, 40):
            said = f"{hundreds[value // 100 - 10]} hundred" + (" forty" if value % 100 else "")
            assert isinstance(classify(grid, 2, said, audience=Audience(level)), EqualName)
        elsewhere = "eleven hundred" if value != 1100 else "twelve hundred"
        assert not isinstance(classify(grid, 2, elsewhere, audience=Audience(level)), EqualName)

    def test_nobody_says_a_hundred_hundred(self) -> None:
        assert not [said for _, said in slips_at(grid_of("whole", "9,740", "100"), 3) if "hundred hundred" in said]


class TestAHundredMinutes:
    @pytest.mark.parametrize("level", [2, 3, 4, 5])
    def test_a_hundred_minutes_are_taken_for_an_hour(self, level: int) -> None:
        minutes = slips_at(grid_of("elapsed", "25 min", "25 min"), level)
        assert {("100 min", "1 h"), ("200 min", "2 h")} <= set(minutes)
        assert ("110 min", "1 h 10 min") in slips_at(grid_of("elapsed", "40 min", "35 min"), level)

    @given(st.integers(1, 60), st.integers(5, 60), st.booleans(), st.integers(2, 8), LANGUAGES)
    def test_its_hours_are_hundreds(self, start: int, step: int, down: bool, level: int, language: str) -> None:
        up = Count(Kind.ELAPSED, Fraction(start), Fraction(step), 12)
        grid = Grid(Count(up.kind, up.value(12), -up.step, 12) if down else up, 4)
        for slip in likely_slips(grid, audience=Audience(level, language)):
            if slip.rule == "L17":
                hours, _, minutes = slip.heard.partition(" h")
                rest = int(minutes.removesuffix(" min")) if minutes else 0
                assert 100 * int(hours) + rest == grid.count.value(slip.n)
                assert not slip.equal_name

    def test_hours_and_minutes_are_told_otherwise(self) -> None:
        assert not [slip for slip in likely_slips(grid_of("elapsed", "1 h 35 min", "35 min"), 4) if slip.rule == "L17"]


class TestFirstClocks:
    """Grade 1 tells time in hours and half hours. Source: Common Core State Standards (2010), 1.MD.B.3."""

    @pytest.mark.parametrize("language", ["en", "es"])
    @pytest.mark.parametrize("level", [0, 1])
    def test_a_half_hour_is_said_of_the_next_hour_and_full_hours_take_over(self, level: int, language: str) -> None:
        halves = slips_at(grid_of("clock", "9:00", "30 min"), level, language)
        assert {("9:30", "10:30"), ("10:00", "9:00"), ("10:00", "9:60"), ("1:00", "13:00")} <= set(halves)
        assert ("2:30", "2:00") in slips_at(grid_of("clock", "1:30", "1 h"), level, language)
        assert ("1:00", "13:00") in slips_at(grid_of("clock", "10:00", "1 h"), level, language)

    @pytest.mark.parametrize(("start", "step"), [("9:00", "1 h"), ("9:05", "5 min"), ("9:10", "30 min")])
    def test_other_times_have_no_half(self, start: str, step: str) -> None:
        assert not [slip for slip in likely_slips(grid_of("clock", start, step), 1) if slip.rule in ("T15", "T17")]
