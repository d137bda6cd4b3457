"""Clock times: minutes that never wrap, writing that does, halves of the day, words."""

from datetime import time

import pytest
from babel import Locale
from babel.dates import get_period_id

from routines.counting import Count, CountError, Style
from routines.counting.kinds.clock_words import part_of_day
from routines.errors import say


def clock(start: str, step: str, terms: int = 12, **style: object) -> Count:
    return Count.parse(kind="clock", start=start, step=step, terms=terms, style=Style(**style))  # type: ignore[arg-type]


def texts(count: Count, *terms: int) -> list[str]:
    return [count.text(n) for n in terms]


def test_a_twelve_hour_clock_goes_from_twelve_to_one() -> None:
    count = clock("10:50", "20 min")
    assert texts(count, 4, 5, 7, 8, 17) == ["11:50", "12:10", "12:50", "1:10", "4:10"]
    assert count.value(8) == 650 + 7 * 20
    assert count.wrap == 720


def test_a_clock_wraps_both_ways() -> None:
    assert texts(clock("1:10", "-20 min"), 1, 2, 4, 5) == ["1:10", "12:50", "12:10", "11:50"]
    assert texts(clock("00:10", "-20 min", clock=24), 1, 2) == ["00:10", "23:50"]


def test_the_end_of_a_day_is_the_start_of_the_next() -> None:
    # ISO 8601: 24:00 of one day is 00:00 of the next; minutes stay 00 to 59.
    assert texts(clock("23:45", "15 min", clock=24), 1, 2, 3) == ["23:45", "00:00", "00:15"]
    assert clock("24:00", "15 min", clock=24).text(1) == "00:00"


def test_a_start_with_its_half_of_the_day_keeps_naming_it() -> None:
    # NIST, Time Questions and Answers: noon is best written as the word.
    count = clock("11:30 a.m.", "15 min")
    assert texts(count, 1, 2, 3, 4, 7) == ["11:30 a.m.", "11:45 a.m.", "12:00 noon", "12:15 p.m.", "1:00 p.m."]
    assert texts(clock("11:45 pm", "15 min"), 2, 3) == ["12:00 midnight", "12:15 a.m."]
    assert texts(clock("11:45 pm", "15 min", clock=24), 1, 2) == ["23:45", "00:00"]


def test_hours_and_minutes_are_parts_as_written() -> None:
    count = clock("12:50", "20 min")
    assert [count.parts(n) for n in (1, 2)] == [{"hours": 12, "minutes": 50}, {"hours": 1, "minutes": 10}]
    assert count.part_names() == ("hours", "minutes")
    assert count.span(2, part="minutes") == (2, 0, 2)


@pytest.mark.parametrize(
    ("step", "jump"),
    [("20 min", "20 min"), ("-20 min", "20 min"), ("75", "1 h 15 min"), ("1 h", "1 h"), ("1:20", "1 h 20 min")],
)
def test_a_jump_is_a_length_of_time(step: str, jump: str) -> None:
    count = clock("10:50", step)
    assert count.difference_text(count.step) == jump


@pytest.mark.parametrize(
    ("start", "style", "english", "spanish"),
    [
        ("7:50", {}, "seven fifty", "las siete y cincuenta"),
        ("2:30", {}, "half past two", "las dos y media"),
        ("2:30", {"saying": "counted"}, "two thirty", "las dos y treinta"),
        ("1:05", {}, "one oh five", "la una y cinco"),
        ("2:15", {}, "two fifteen", "las dos y quince"),
        ("2:15", {"saying": "renamed"}, "quarter past two", "las dos y cuarto"),
        ("12:45", {"saying": "renamed"}, "quarter to one", "la una menos cuarto"),
        ("7:00", {}, "seven o'clock", "las siete"),
        ("12:30", {}, "half past twelve", "las doce y media"),
        ("21:30", {"clock": 24}, "twenty-one thirty", "las veintiuna y treinta"),
        ("00:00", {"clock": 24}, "midnight", "medianoche"),
        # With a.m. or p.m. US speakers read hour and minutes (common practice, no source).
        ("2:30 pm", {}, "two thirty p.m.", "las dos y media de la tarde"),
        ("2:30 am", {}, "two thirty a.m.", "las dos y media de la madrugada"),
        ("6:00 am", {}, "six a.m.", "las seis de la mañana"),
        ("2:05 pm", {}, "two oh five p.m.", "las dos y cinco de la tarde"),
        ("11:45 pm", {"saying": "renamed"}, "eleven forty-five p.m.", "las doce menos cuarto de la noche"),
        ("12:30 am", {"saying": "renamed"}, "twelve thirty a.m.", "las doce y media de la madrugada"),
        ("12:45 pm", {"saying": "renamed"}, "twelve forty-five p.m.", "la una menos cuarto de la tarde"),
        ("noon", {}, "noon", "mediodía"),
    ],
)
def test_times_are_said(start: str, style: dict[str, object], english: str, spanish: str) -> None:
    count = clock(start, "20 min", **style)
    assert count.words(1) == english
    assert count.words(1, "es") == spanish


def test_the_parts_of_the_day_are_those_of_cldr_at_every_minute() -> None:
    # Unicode CLDR, day period rules, read through Babel; midnight and noon have names of their own.
    stand_alone = {
        language: Locale.parse(language).day_periods["stand-alone"]["abbreviated"] for language in ("en", "es")
    }
    for minute in range(1, 1440):
        if minute == 720:
            continue
        for language, names in stand_alone.items():
            period = get_period_id(time(*divmod(minute, 60)), locale=language)
            assert part_of_day(minute, language) == names[period], (minute, language)


@pytest.mark.parametrize("minute", range(1, 1440, 7))
def test_a_spanish_time_is_said_with_the_part_of_the_day_that_cldr_gives_it(minute: int) -> None:
    said = clock("12:00 midnight", f"{minute} min", 2, language="es").words(2)
    period = get_period_id(time(*divmod(minute, 60)), locale="es")
    assert minute == 720 or said.endswith(Locale.parse("es").day_periods["format"]["abbreviated"][period])


@pytest.mark.parametrize("start", ["2 o'clock", "2 o\u2019clock", "2 O'Clock", "2:00"])
def test_a_full_hour_may_be_typed_with_o_clock(start: str) -> None:
    assert texts(clock(start, "1:20"), 1, 2) == ["2:00", "3:20"]
    assert clock("2 o'clock pm", "20 min").text(1) == "2:00 p.m."


@pytest.mark.parametrize(
    "start",
    [
        "10:70",
        "9:60",
        "7:5",
        "25:00",
        "24:15",
        "13:10 pm",
        "0:30 am",
        "12:30 noon",
        "10.50",
        "10:50:00",
        "10",
        "9",
        "10:50 o'clock",
        "-1:00",
        "10:50 xm",
        "ten",
    ],
)
def test_what_no_clock_shows_is_refused(start: str) -> None:
    with pytest.raises(CountError) as refused:
        clock(start, "20 min")
    assert refused.value.field == "start"


@pytest.mark.parametrize("step", ["12 h", "720", "-12 h", "24 h", "0", "45 s", "10:60", "12:00", "1.5 min", "", "9 in"])
def test_a_step_that_moves_no_hand_or_no_whole_minute_is_refused(step: str) -> None:
    with pytest.raises(CountError) as refused:
        clock("10:50", step)
    assert refused.value.field == "step"


@pytest.mark.parametrize(
    ("start", "sentence"),
    [
        ("9.30", "Type a time such as 10:50 or 2:30 pm: “9.30” cannot be read as one."),
        ("9:30 xm", "Write a.m., p.m., noon or midnight after the time, not “xm”."),
        ("13:10 pm", "Write hours from 1 to 12 with p.m."),
    ],
)
def test_a_refused_time_says_what_to_write(start: str, sentence: str) -> None:
    with pytest.raises(CountError) as refused:
        clock(start, "20 min")
    assert say(refused.value) == sentence


def test_twelve_hours_move_the_hands_of_a_day_s_clock() -> None:
    assert texts(clock("10:50", "12 h", clock=24), 1, 2, 3) == ["10:50", "22:50", "10:50"]
