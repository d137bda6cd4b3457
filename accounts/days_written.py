"""Days and times in the words of a language, as CLDR has them.

Those of the languages that come with Countfold stand here: CLDR's data of one language, read whole, take 4 MB. Others are read
through Babel when they are first asked for. A test compares these with Babel, day by day.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Protocol


class Written(Protocol):
    def day(self, value: date) -> str: ...

    def full_day(self, value: date) -> str: ...

    def weekday(self, value: date) -> str: ...

    def time(self, value: datetime, *, to_24: bool) -> str: ...


@dataclass(frozen=True, slots=True)
class Own:
    """months from January, weekdays from Monday. long, full: with {month}, {day}, {year} and {weekday} in their places."""

    months: Sequence[str]
    weekdays: Sequence[str]
    long: str
    full: str
    halves: tuple[str, str]

    def day(self, value: date) -> str:
        return self._filled(self.long, value)

    def full_day(self, value: date) -> str:
        return self._filled(self.full, value)

    def weekday(self, value: date) -> str:
        return self.weekdays[value.weekday()]

    def time(self, value: datetime, *, to_24: bool) -> str:
        if to_24:
            return f"{value.hour}:{value.minute:02}"
        return f"{value.hour % 12 or 12}:{value.minute:02} {self.halves[value.hour >= 12]}"

    def _filled(self, pattern: str, value: date) -> str:
        month = self.months[value.month - 1]
        return pattern.format(weekday=self.weekday(value), month=month, day=value.day, year=value.year)


ENGLISH = Own(
    months=(
        *("January", "February", "March", "April", "May", "June", "July"),
        *("August", "September", "October", "November", "December"),
    ),
    weekdays=("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"),
    long="{month} {day}, {year}",
    full="{weekday}, {month} {day}, {year}",
    halves=("AM", "PM"),
)
SPANISH = Own(
    months=(
        *("enero", "febrero", "marzo", "abril", "mayo", "junio", "julio"),
        *("agosto", "septiembre", "octubre", "noviembre", "diciembre"),
    ),
    weekdays=("lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"),
    long="{day} de {month} de {year}",
    full="{weekday}, {day} de {month} de {year}",
    halves=("a. m.", "p. m."),
)
OWN = {"en": ENGLISH, "en-us": ENGLISH, "es": SPANISH}


class Read:
    """Another language, through Babel; English where Babel knows none of that name."""

    def __init__(self, language: str) -> None:
        from babel import Locale, UnknownLocaleError

        try:
            self.locale = Locale.parse(language.replace("-", "_"))
        except (UnknownLocaleError, ValueError):
            self.locale = Locale("en")

    def day(self, value: date) -> str:
        return self._date(value, "long")

    def full_day(self, value: date) -> str:
        return self._date(value, "full")

    def weekday(self, value: date) -> str:
        return self._date(value, "EEEE")

    def time(self, value: datetime, *, to_24: bool) -> str:
        from babel.dates import format_time

        return str(format_time(value, "H:mm" if to_24 else "h:mm a", locale=self.locale))

    def _date(self, value: date, pattern: str) -> str:
        from babel.dates import format_date

        return str(format_date(value, pattern, locale=self.locale))


def written_in(language: str | None) -> Written:
    """language: as Django names it, such as "en-us"; None: English."""
    return OWN.get(language or "en") or Read(language or "en")
