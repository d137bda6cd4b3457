"""The days of a planned week. A school's own holidays are not known here: every weekday is one that may be planned for."""

from datetime import date, timedelta

SCHOOL_DAYS = 5
DAYS = 7
# Weeks further away than this are no more than a number typed into the address.
FURTHEST_DAYS = 4 * 366


def monday_of(day: date) -> date:
    return day - timedelta(days=day.weekday())


def monday_now(today: date) -> date:
    """Of the week that is on, and on a weekend of the coming one.

    >>> monday_now(date(2026, 11, 27)), monday_now(date(2026, 11, 29))
    (datetime.date(2026, 11, 23), datetime.date(2026, 11, 30))
    """
    return monday_of(today + timedelta(days=DAYS - SCHOOL_DAYS))


def next_school_day(today: date) -> date:
    """The first weekday after today.

    >>> next_school_day(date(2026, 11, 27)), next_school_day(date(2026, 11, 30))
    (datetime.date(2026, 11, 30), datetime.date(2026, 12, 1))
    """
    day = today + timedelta(days=1)
    return day if day.weekday() < SCHOOL_DAYS else monday_of(day) + timedelta(days=DAYS)


def day_asked_for(text: str, today: date) -> date | None:
    """The day that was typed as year-month-day; None where it is none, or lies further off than anybody plans.

    >>> day_asked_for("2026-12-03", date(2026, 11, 30)), day_asked_for("9999-12-31", date(2026, 11, 30))
    (datetime.date(2026, 12, 3), None)
    """
    try:
        day = date.fromisoformat(text)
    except ValueError:
        return None
    return day if abs(day - today) <= timedelta(days=FURTHEST_DAYS) else None
