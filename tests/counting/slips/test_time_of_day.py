"""On a clock what is heard is held to the time of the day; a bare start from 7:00 to 11:59 is a.m., any other p.m."""

import pytest

from routines.counting import Count, EqualName, Grid, Other, Right, Slip, classify, likely_slips


def grid_of(start: str, step: str, terms: int = 16) -> Grid:
    return Grid(Count.parse(kind="clock", start=start, step=step, terms=terms), 4)


EVENING = grid_of("6:30", "30 min")  # 12:00 midnight at the 12th count, 1:00 a.m. at the 14th
SCHOOL = grid_of("10:50", "20 min", 12)  # 11:10 a.m. at the 2nd, 12:10 p.m. at the 5th, 1:10 p.m. at the 8th
HOURS = grid_of("6:00", "60 min")  # midnight at the 7th
PAST_NOON = grid_of("12:15", "60 min")  # 12:15 a.m. at the 13th


@pytest.mark.parametrize(
    ("grid", "n", "said"),
    [
        (EVENING, 12, "midnight"),
        (EVENING, 12, "0:00"),
        (EVENING, 14, "1:00 am"),
        (EVENING, 2, "7:00 pm"),
        (EVENING, 2, "19:00"),
        (HOURS, 7, "midnight"),
        (PAST_NOON, 13, "12:15 a.m."),
        (PAST_NOON, 2, "1:15 pm"),
        (PAST_NOON, 2, "13:15"),
        (SCHOOL, 2, "11:10 am"),
        (SCHOOL, 8, "1:10 pm"),
        (SCHOOL, 8, "13:10"),
        (SCHOOL, 8, "01:10"),
    ],
)
def test_a_time_that_names_its_half_of_the_day_is_another_name(grid: Grid, n: int, said: str) -> None:
    assert isinstance(classify(grid, n, said), EqualName)


@pytest.mark.parametrize(
    ("grid", "n", "said"),
    [
        (SCHOOL, 2, "11:10 pm"),
        (SCHOOL, 2, "23:10"),
        (SCHOOL, 8, "1:10 a.m."),
        (EVENING, 2, "7:00 am"),
        (EVENING, 14, "13:00 "),
        (EVENING, 3, "07:30 a. m."),
    ],
)
def test_the_other_half_of_the_day_is_told_alike_by_twelve_or_by_twenty_four_hours(
    grid: Grid, n: int, said: str
) -> None:
    heard = classify(grid, n, said)
    assert isinstance(heard, Slip) or (isinstance(heard, Other) and heard.takes == "half-day")


@pytest.mark.parametrize(
    ("grid", "n", "said", "rule"),
    [
        (EVENING, 12, "noon", "T06"),
        (EVENING, 12, "12:00 noon", "T06"),
        (HOURS, 7, "noon", "T06"),
        (PAST_NOON, 13, "12:15 pm", "T06"),
        (SCHOOL, 5, "12:10 a.m.", "T05"),
    ],
)
def test_noon_for_midnight_and_midnight_for_noon_are_slips(grid: Grid, n: int, said: str, rule: str) -> None:
    heard = classify(grid, n, said)
    assert isinstance(heard, Slip)
    assert heard.rule == rule


def test_an_evening_count_is_warned_of_noon_at_midnight_and_never_of_midnight_at_noon() -> None:
    found = [(slip.rule, slip.n, slip.heard) for slip in likely_slips(EVENING, 3) if slip.rule in ("T05", "T06")]
    assert found == [("T06", 12, "12:00 noon")]
    assert [(slip.n, slip.heard) for slip in likely_slips(PAST_NOON, 3) if slip.rule == "T06"] == [(13, "12:15 p.m.")]
    assert not [slip for slip in likely_slips(PAST_NOON, 3) if slip.rule == "T05"]


def test_thirteen_is_the_same_time_after_noon_only() -> None:
    same = {slip.n: slip.equal_name for slip in likely_slips(PAST_NOON, 3) if slip.heard == "13:15"}
    assert same == {2: True, 14: False}


@pytest.mark.parametrize("said", ["9", "nine", "Nine", "nueve", "9 o'clock", "las nueve"])
def test_a_full_hour_may_be_said_by_its_number_alone(said: str) -> None:
    assert isinstance(classify(grid_of("8:40", "20 min"), 2, said), EqualName | Right)


def test_the_number_of_another_hour_is_that_hour() -> None:
    heard = classify(grid_of("8:40", "20 min"), 2, "7")
    assert isinstance(heard, Other)
    assert heard.difference == -120
