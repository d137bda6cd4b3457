"""Clock faces: both hands where a clock has them, the hour hand moved on by the minutes."""

import re
from itertools import pairwise
from math import atan2, degrees

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routines.counting import Count, Style
from routines.drawing.pictures import draw_picture
from tests.routines.drawing.pictures.drawn import count, of_class, written

DEGREE = 0.25  # ends of hands are written to a hundredth of a pixel, some 20 px from the middle


def angles(drawn: str, hand: str) -> list[float]:
    """Clockwise from 12, read from the drawn lines."""
    found = []
    for line in of_class(drawn, hand):
        x, y, end_x, end_y = map(float, re.findall(r"-?[\d.]+", line.get("d")))
        found.append(degrees(atan2(end_x - x, y - end_y)) % 360)
    return found


def off(one: float, other: float) -> float:
    return abs((one - other + 180) % 360 - 180)


def hands_by_hour_and_minute(hour: int, minute: int) -> tuple[float, float]:
    """From the written time: 30 degrees an hour and half a degree a minute; six degrees a minute."""
    return 30 * (hour % 12) + minute / 2, 6 * minute


@given(
    st.integers(0, 1439),
    st.integers(-800, 800).filter(lambda step: step % 720),
    st.sampled_from([12, 24]),
)
def test_the_hands_stand_as_the_written_time_says(start: int, step: int, hours: int) -> None:
    of = Count("clock", start, step, 12, Style(clock=hours))
    drawn = draw_picture(of, kind="clock")
    for n, (hour_hand, minute_hand) in enumerate(
        zip(angles(drawn, "p-hour"), angles(drawn, "p-minute"), strict=True), start=1
    ):
        parts = of.parts(n)
        hour, minute = hands_by_hour_and_minute(parts["hours"], parts["minutes"])
        assert off(hour_hand, hour) < DEGREE
        assert off(minute_hand, minute) < DEGREE


def test_half_past_eight_has_the_hour_hand_between_8_and_9() -> None:
    drawn = draw_picture(count("clock", "8:00", "30 min", 2), kind="clock")
    assert angles(drawn, "p-hour") == pytest.approx([240, 255], abs=DEGREE)
    assert angles(drawn, "p-minute")[1] == pytest.approx(180, abs=DEGREE)


def test_a_face_carries_twelve_hours_and_a_24_hour_count_a_second_ring() -> None:
    twelve = [text.words for text in written(draw_picture(count("clock", "8:00", "30 min", 2)))]
    twenty_four = [text.words for text in written(draw_picture(count("clock", "8:00", "30 min", 2, clock=24)))]
    for hour in range(1, 13):
        assert twelve.count(str(hour)) == 2
    assert not {"13", "23", "00"} & set(twelve)
    for hour in ("13", "18", "23", "00"):
        assert twenty_four.count(hour) == 2


def test_the_first_face_shows_no_turn_and_every_other_the_turn_of_its_jump() -> None:
    drawn = draw_picture(count("clock", "7:10", "40 min", 12))
    assert len(of_class(drawn, "p-hour")) == 12
    assert len(of_class(drawn, "p-swept")) == len(of_class(drawn, "p-jump-tip")) == 11
    assert [text.words for text in written(drawn)].count("40 min later") == 11
    later = draw_picture(count("clock", "7:10", "40 min", 14), first=13)
    assert len(of_class(later, "p-swept")) == 2


@pytest.mark.parametrize(("step", "turned"), [("40 min", 240), ("-40 min", -240), ("5 min", 30), ("1 h 15 min", 450)])
def test_the_turn_is_as_long_as_the_jump(step: str, turned: int) -> None:
    drawn = draw_picture(count("clock", "9:20", step, 2))
    [path] = of_class(drawn, "p-jump")
    [face] = of_class(drawn, "p-face")[1:]
    x, y = float(face.get("cx")), float(face.get("cy"))
    numbers = list(map(float, re.findall(r"-?[\d.]+", path.get("d"))))
    points = list(zip(numbers[::2], numbers[1::2], strict=True))
    turns = [degrees(atan2(a - x, y - b)) for a, b in points]
    total = sum((b - a + 180) % 360 - 180 for a, b in pairwise(turns))
    assert total == pytest.approx(turned, abs=0.5)


def test_back_on_the_clock_is_told_as_earlier() -> None:
    words = [text.words for text in written(draw_picture(count("clock", "10:00", "-15 min", 4)))]
    assert words.count("15 min earlier") == 3
