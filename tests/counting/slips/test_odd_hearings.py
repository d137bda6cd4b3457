"""What is heard in odd forms: each is named as a teacher would name it, for every kind of number.

Forms nobody may write and their order: the rulings on classifying; the rest is common practice, no source.
"""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import (
    Audience,
    Count,
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
from routines.words import classify as spoken
from tests.counting.any_count import KINDS, grids


def grid_of(kind: str, start: str, step: str, **style: object) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=12, style=Style(**style)), 4)


SIXES = grid_of("whole", "58", "6")  # 58 64 70 76
BACK = grid_of("whole", "1,325", "-50")  # 1,325 1,275 1,225 1,175 1,125
BELOW = grid_of("whole", "14", "-6")  # 14 8 2 -4
TENTHS = grid_of("decimal", "2.7", "0.1")  # 2.7 2.8 2.9 3.0
LONG_TENTHS = grid_of("decimal", "2.9", "1.2")  # 2.9 4.1
HUNDREDTHS = grid_of("decimal", "1.97", "0.01")  # 1.97 1.98 1.99 2.00
EIGHTHS = grid_of("fraction", "1/8", "1/8")
MONEY = grid_of("money", "$0.95", "10c")  # $0.95 $1.05
CLOCK = grid_of("clock", "10:50", "20 min")  # 10:50 11:10
FEET = grid_of("length", "1 ft 3 in", "9 in")  # 1 ft 3 in, 2 ft, 2 ft 9 in, 3 ft 6 in
LITERS = grid_of("capacity", "1 L 700 mL", "150 mL")  # 1 L 700 mL, 1 L 850 mL, 2 L
GRAMS = grid_of("mass", "1200 g", "-100 g")  # 1,200 g, 1,100 g
HOURS = grid_of("elapsed", "1 h 35 min", "35 min")  # 1 h 35 min, 2 h 10 min
POUNDS = grid_of("mass", "2 lb 6 oz", "5 oz")  # 2 lb 6 oz, 2 lb 11 oz, 3 lb


@pytest.mark.parametrize(
    ("grid", "n", "said"),
    [
        (SIXES, 4, "+76"),
        (SIXES, 4, "76!"),
        (SIXES, 4, "Seventy six"),
        (SIXES, 4, "setenta y seis"),
        (BACK, 5, "1 125"),
        (BACK, 5, "1125"),
        (BELOW, 4, "minus 4"),
        (BELOW, 4, "negative four"),
        (BELOW, 4, "minus four"),
        (BELOW, 4, "\u22124"),
        (EIGHTHS, 10, " 1  2 / 8 "),
    ],
)
def test_what_is_due_is_right_however_it_is_marked_or_said(grid: Grid, n: int, said: str) -> None:
    assert isinstance(classify(grid, n, said), Right)


@pytest.mark.parametrize(
    ("grid", "n", "said"),
    [
        (SIXES, 4, "76.0"),
        (SIXES, 4, "76/1"),
        (TENTHS, 4, "3"),
        (TENTHS, 4, "thirty tenths"),
        (EIGHTHS, 8, "eight eighths"),
        (EIGHTHS, 10, "ten eighths"),
        (EIGHTHS, 10, "1.25"),
        (MONEY, 2, "105¢"),
        (CLOCK, 8, "13:10"),
        (FEET, 4, "3'6\""),
        (FEET, 4, "42 in"),
        (LITERS, 3, "2000 mL"),
        (HOURS, 2, "130 min"),
        (POUNDS, 3, "48 oz"),
    ],
)
def test_another_name_is_no_error(grid: Grid, n: int, said: str) -> None:
    assert isinstance(classify(grid, n, said), EqualName)


@pytest.mark.parametrize(
    ("grid", "n", "said", "rule"),
    [
        (CLOCK, 2, "10:70", "T02"),
        (CLOCK, 2, "11:60", "A01"),
        (CLOCK, 5, "9:99", "A01"),
        (MONEY, 2, "$0.105", "M07"),
        (MONEY, 2, "$1.355", "A02"),
        (MONEY, 5, "$1.3500", "A02"),
        (TENTHS, 4, "2.10", "D01"),
        (HUNDREDTHS, 4, "1.100", "D03"),
        (LONG_TENTHS, 2, "3.11", "A03"),  # 3 and 11 tenths, which is 4.1
    ],
)
def test_forms_nobody_may_write_are_slips(grid: Grid, n: int, said: str, rule: str) -> None:
    heard = spoken(grid, n, said).slip
    assert heard is not None
    assert isinstance(classify(grid, n, said), Slip)
    assert (heard.rule, heard.heard or said, heard.equal_name) == (rule, said, False)
    assert "?" in heard.reply
    assert "{" not in heard.why + heard.reply


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("level", range(9))
def test_their_replies_are_as_long_as_the_grade_can_take(level: int, language: str) -> None:
    least, most = ((6, 14), (12, 25), (15, 35), (15, 45), (15, 45))[level // 2]
    for grid, said in ((CLOCK, "11:60"), (MONEY, "$1.355"), (LONG_TENTHS, "3.11")):
        heard = spoken(grid, 2, said, audience=Audience(level, language)).slip
        assert heard is not None
        assert least <= len(heard.reply.split()) <= most, heard.reply


ALL = [SIXES, BACK, BELOW, TENTHS, HUNDREDTHS, EIGHTHS, MONEY, CLOCK, FEET, LITERS, HOURS, POUNDS]


@pytest.mark.parametrize("grid", ALL)
def test_one_step_more_is_skipped_ahead(grid: Grid) -> None:
    for n in (1, 5):
        heard = classify(grid, n, grid.count.text(n + 1))
        assert isinstance(heard, SkippedAhead)
        assert heard.by == 1


@pytest.mark.parametrize("grid", ALL)
def test_the_wrong_way_is_other_unless_a_slip_foresees_it(grid: Grid) -> None:
    for n in (4, 6):
        heard = classify(grid, n, grid.count.text(n - 2))
        if isinstance(heard, Slip):
            continue
        assert isinstance(heard, Other)
        assert heard.takes == "wrong-way"


@pytest.mark.parametrize("grid", ALL)
def test_the_count_before_is_repeated_however_it_is_said(grid: Grid) -> None:
    for said in (grid.count.text(4), grid.count.words(4, "en")):
        assert isinstance(classify(grid, 5, said), Repeated)


@pytest.mark.parametrize(
    ("grid", "n", "said", "takes"),
    [
        (SIXES, 4, "67", "swapped"),
        (BACK, 5, "1,152", "swapped"),
        (FEET, 4, "6 ft 3 in", "swapped"),
        (SIXES, 4, "706", "place"),
        (SIXES, 4, "760", "place"),
        (SIXES, 4, "77", "difference"),
        (TENTHS, 4, "30", "place"),
        (TENTHS, 4, "0.3", "place"),
        (MONEY, 2, "$105", "place"),
        (LITERS, 3, "20 L", "place"),
        (GRAMS, 2, "1190 g", "place"),
        (CLOCK, 2, "11:10 p.m.", "half-day"),
        (CLOCK, 2, "11:20", "difference"),
        (BACK, 5, "-1125", "difference"),
        (FEET, 4, "3 ft 5 in", "difference"),
    ],
)
def test_what_it_would_take_is_what_a_teacher_would_say(grid: Grid, n: int, said: str, takes: str) -> None:
    heard = classify(grid, n, said)
    assert isinstance(heard, Other)
    assert heard.takes == takes


@pytest.mark.parametrize("grid", ALL)
@pytest.mark.parametrize(
    "said", ["", "   ", "?", "banana", "idk", "76 6 6", "12 apples", "--4", "(4)", "25:10", "1,05,3"]
)
def test_what_cannot_be_read_is_other_without_a_difference(grid: Grid, said: str) -> None:
    heard = classify(grid, 3, said)
    assert isinstance(heard, Other)
    assert (heard.difference, heard.takes) == (None, None)


class TestFarAhead:
    """The decision inside the order: what lies more than three counts ahead is a slip of the tables first."""

    ONES = grid_of("whole", "98", "1")  # 98 99 100 101

    def test_hundreds_counted_on_are_not_ninety_nine_counts_left_out(self) -> None:
        heard = classify(self.ONES, 4, "200", audience=Audience(2))
        assert isinstance(heard, Slip)
        assert heard.rule == "W09"

    def test_up_to_three_counts_ahead_are_skipped_with_the_slip_beside_them(self) -> None:
        ones = grid_of("whole", "37", "1")
        heard = classify(ones, 4, "41", audience=Audience(1))  # 40 left out
        assert isinstance(heard, SkippedAhead)
        assert (heard.by, heard.slip and heard.slip.rule) == (1, "W03")
        for by in (2, 3):
            assert isinstance(classify(ones, 4, str(40 + by)), SkippedAhead)

    def test_four_counts_ahead_a_slip_comes_first(self) -> None:
        # 2/8 3/8 4/8: the whole and its parts run together as 12/8, four eighths past 1.
        mixed = grid_of("fraction", "7/8", "1/8")
        assert isinstance(classify(mixed, 3, "12/8"), SkippedAhead)  # 1 1/8 due: three ahead
        heard = classify(mixed, 3, "11/8")  # two ahead, and the slip of running together
        assert isinstance(heard, SkippedAhead)
        assert heard.slip is not None
        assert heard.slip.rule == "F08"
        far = classify(grid_of("fraction", "1 7/8", "1/8"), 3, "21/8")  # 2 1/8 due, 2 5/8 said: four ahead
        assert isinstance(far, Slip)
        assert far.rule == "F08"

    def test_without_a_slip_that_sounds_like_it_far_ahead_is_skipped_too(self) -> None:
        heard = classify(SIXES, 2, "94")  # five ahead
        assert isinstance(heard, SkippedAhead)
        assert heard.by == 5


@given(st.sampled_from(KINDS).flatmap(grids), st.data())
def test_the_words_of_a_count_are_named_as_its_text_is(grid: Grid, data: st.DataObject) -> None:
    n = data.draw(st.integers(2, grid.terms))
    at = data.draw(st.integers(max(1, n - 3), n + 3))
    words, text = grid.count.words(at, "en"), grid.count.text(at)
    named = classify(grid, n, words)
    if isinstance(named, Other):
        assert named.difference is None or isinstance(named.difference, Fraction)
    if at == n:
        assert isinstance(named, Right)
    elif at == n - 1:
        # The words of a clock that turns, or of rounded sayings, may be those of the count that is due.
        assert isinstance(named, Right | EqualName | Repeated), (words, text)


@pytest.mark.parametrize(
    ("mark", "said"), [(",", "3,000"), (".", "3.000"), (" ", "3 000"), ("", "3,000"), (",", "3000")]
)
def test_a_full_thousand_with_its_mark_is_no_three_with_decimals(mark: str, said: str) -> None:
    style = Style(thousands=mark, decimal_mark="," if mark == "." else ".")
    grid = Grid(Count.parse(kind="whole", start="200", step="200", terms=10, style=style), 5)
    heard = classify(grid, 9, said)
    assert isinstance(heard, SkippedAhead)
    assert heard.by == 6
