"""Times on a 12-hour or 24-hour clock: the value is in minutes and never wraps, what is written does."""

import re
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache

from ..errors import CountError
from ..style import Style
from .clock_words import half_of_day, say_time
from .kind import NumberKind, Parsed, Ringed
from .measure import Elapsed
from .names import Kind
from .numerals import tidy
from .piece import Piece

DAY = 1440
_TIME = re.compile(r"(?P<hour>[0-9]{1,2})(?::(?P<minute>[0-9]{2}))?(?: ?(?P<half>[^\W\d_].*))?", re.IGNORECASE)
_HALVES = {
    "am": "a.m.",
    "pm": "p.m.",
    "noon": "noon",
    "mediodía": "noon",
    "midnight": "midnight",
    "medianoche": "midnight",
}


class Clock(NumberKind):
    name = Kind.CLOCK
    base_unit = "min"
    part_names = ("hours", "minutes")

    def __init__(self, style: Style, grain: Fraction) -> None:
        super().__init__(style, grain)
        self.wrap = 60 * style.clock
        self.halves = style.halves and style.clock == 12

    @classmethod
    def check(cls, value: Fraction, field: str) -> None:
        if value.denominator != 1:
            raise CountError(field, "minutes-not-whole")

    @classmethod
    def read(cls, text: str, style: Style, field: str) -> Parsed:
        plain = re.sub("^([0-9]{1,2}) ?o'?clock\\b", r"\1:00", tidy(text, field), flags=re.IGNORECASE)
        word = _HALVES.get(plain.casefold())
        if word in ("noon", "midnight"):
            return Parsed(Fraction(720 if word == "noon" else 0), halves=True)
        found = _TIME.fullmatch(plain)
        if found is None or (found["minute"] is None and found["half"] is None):
            raise CountError(field, "no-time", typed=plain)
        hour, minute = int(found["hour"]), int(found["minute"] or 0)
        if minute > 59:
            raise CountError(field, "minute-past-59")
        if found["half"] is not None:
            return Parsed(Fraction(_with_half(hour, minute, found["half"], field)), halves=True)
        if hour > 23 and (hour, minute) != (24, 0):
            raise CountError(field, "hour-past-23")
        bare_twelve = style.clock == 12 and hour == 12
        return Parsed(Fraction(minute if bare_twelve else hour % 24 * 60 + minute))

    @classmethod
    def read_step(cls, text: str, style: Style) -> Parsed:
        typed = Elapsed.read(text, style, "step")
        return Parsed(typed.value)

    @classmethod
    def settle(cls, start: Parsed, step: Parsed, style: Style) -> Style:
        return replace(style, halves=True) if start.halves and style.clock == 12 else style

    def friendly_multiples(self) -> tuple[Fraction, ...]:
        return tuple(map(Fraction, (15, 30, 60, 720)))

    def ringed_multiples(self) -> Ringed:
        return Ringed((Fraction(60), Fraction(30)), (Fraction(15),))

    def read_off(self) -> Fraction:
        return Fraction(60)

    def round_number(self) -> Fraction:
        return Fraction(60)

    def pieces(self, value: Fraction) -> tuple[Piece, ...]:
        hours, minutes = self._written(value)
        hour = str(hours) if self.style.clock == 12 else f"{hours:02d}"
        pieces = (Piece("number", hour, "hours"), Piece("symbol", ":"), Piece("number", f"{minutes:02d}", "minutes"))
        if not self.halves:
            return pieces
        return (*pieces, Piece("unit", half_of_day(int(value) % DAY, self.style.language)))

    def difference_pieces(self, size: Fraction) -> tuple[Piece, ...]:
        return elapsed_form(self.style).pieces(size)

    def _written(self, value: Fraction) -> tuple[int, int]:
        hours, minutes = divmod(int(value) % (60 * self.style.clock), 60)
        return hours or (12 if self.style.clock == 12 else 0), minutes

    def parts(self, value: Fraction) -> dict[str, int]:
        hours, minutes = self._written(value)
        return {"hours": hours, "minutes": minutes}

    def words(self, value: Fraction, language: str) -> str:
        hours, minutes = self._written(value)
        minute_of_day = int(value) % DAY if self.halves else None
        return say_time(hours, minutes, language, self.style.saying, self.style.clock, minute_of_day)


@lru_cache(maxsize=64)
def elapsed_form(style: Style) -> Elapsed:
    """How a length of time between two times of a clock is written."""
    marks = Style(decimal_mark=style.decimal_mark, thousands=style.thousands, language=style.language)
    return Elapsed(replace(marks, units="two", small="min", large="h"), Fraction(1))


def _with_half(hour: int, minute: int, half: str, field: str) -> int:
    name = _HALVES.get(re.sub("[. ]", "", half).casefold())
    if name is None:
        raise CountError(field, "unknown-half-of-day", typed=half)
    if name in ("noon", "midnight"):
        if (hour, minute) != (12, 0):
            raise CountError(field, "not-twelve", half=name)
        return 720 if name == "noon" else 0
    if not 1 <= hour <= 12:
        raise CountError(field, "hour-with-half-of-day", half=name)
    return hour % 12 * 60 + minute + (720 if name == "p.m." else 0)
