"""Days and times that are written here against CLDR, read through Babel (https://cldr.unicode.org)."""

from datetime import datetime, timedelta

import pytest

from accounts.days_written import OWN, Read, written_in

DAYS = [datetime(2023, 12, 28) + timedelta(days=number, minutes=7 * number) for number in range(800)]
HOURS = [datetime(2026, 11, 29) + timedelta(minutes=minute) for minute in range(0, 24 * 60, 7)]


@pytest.mark.parametrize("language", sorted(OWN))
def test_days_and_times_are_written_as_cldr_has_them(language):
    ours, cldr = written_in(language), Read(language)
    assert ours is OWN[language]
    for value in (*DAYS, datetime(987, 5, 1)):
        assert (ours.day(value), ours.full_day(value), ours.weekday(value)) == (
            cldr.day(value),
            cldr.full_day(value),
            cldr.weekday(value),
        )
    for value in HOURS:
        for to_24 in (False, True):
            # which blank stands before the half of the day is settled by those who show it
            assert ours.time(value, to_24=to_24).split() == cldr.time(value, to_24=to_24).split()


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("de", "29. November 2026"),
        ("en-gb", "29 November 2026"),
        ("xx", "November 29, 2026"),
        (None, "November 29, 2026"),
    ],
)
def test_other_languages_are_read(language, said):
    assert written_in(language).day(datetime(2026, 11, 29)) == said
