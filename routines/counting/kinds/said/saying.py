"""What a language says of numbers: cardinals, parts, units, coins, times."""

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

LARGEST_SAID = 10**15 - 1
NOON = 720  # minutes after midnight
DOLLAR_CODES = ("USD", "CAD", "AUD", "NZD")
PESO_CODES = ("MXN", "COP", "ARS", "DOP", "UYU", "CUP", "CLP", "PHP")


class Joints(NamedTuple):
    """How what is said is put together. Between braces what goes there."""

    below_zero: str
    and_a_part: str
    or_as_well: str
    units: str
    coins: str
    part_of_one: str


class UnitName(NamedTuple):
    """One, several; "an" or "a" in English, the gender in Spanish."""

    one: str
    several: str
    form: str


@dataclass(frozen=True, slots=True)
class CoinName:
    """The name of a currency's main or smallest unit: one, several, and its Spanish gender ("" in English)."""

    one: str
    several: str
    gender: str = "masculine"


class Saying(ABC):
    """How numbers are said in one language. `form` is "alone", or the gender of what is counted, where there is one."""

    code: str
    joints: Joints
    part_written_of: str = "{}"
    """A unit's name after a part of it that is written as a fraction: 3/4 cup, 3/4 de taza."""
    units: Mapping[str, UnitName]
    """The names of the units, by their signs."""
    coins: Mapping[str, tuple[CoinName, CoinName]]
    """The names of a currency and of its smallest coin, by code, where they are not CLDR's."""
    lands: Mapping[str, str]
    """The country as which a currency of several countries is written, by code."""
    decimal_places: tuple[str, ...]
    """What one is called at 1, 2, ... places after the mark; the plural adds an s."""
    parts_of_day: tuple[tuple[int, str], ...]
    """From which minute of the day each part of the day runs. Source: Unicode CLDR, day period rules (Babel 2.18)."""
    midnight_and_noon: tuple[str, str]
    halves_of_day: tuple[str, str]

    def cardinal(self, value: int, form: str = "alone") -> str:
        """A whole number of 0 or more in words; digits from 10**15 on."""
        return str(value) if value > LARGEST_SAID else self._words(value, form)

    @abstractmethod
    def _words(self, value: int, form: str) -> str:
        """A whole number, 0 <= value < 10**15."""

    def before_what_is_counted(self, value: int) -> str:
        """What stands between a number and what is counted."""
        return " "

    @abstractmethod
    def part_of(self, bottom: int, *, several: bool) -> str:
        """What one or several of so many equal parts are called, bottom >= 2."""

    @abstractmethod
    def part_of_unit(self, whole: int, part: str, name: UnitName, *, half: bool) -> str:
        """Wholes and a part of a unit: "two and one half inches", "three fourths of a cup", "dos pulgadas y media"."""

    @abstractmethod
    def part_of_coin(self, whole: int, part: str, name: CoinName) -> str:
        """Wholes, at least one, and a part of a currency whose small coin has no name."""

    @abstractmethod
    def coin_gender(self, name: str) -> str:
        """The gender of a currency that only CLDR names."""

    @abstractmethod
    def time(self, hour: int, minute: int, *, halves: bool, quarters: bool, minute_of_day: int | None) -> str:
        """A written time. minute_of_day: minutes after midnight where the half of the day is said, else None."""

    def counted(self, value: int, name: UnitName | CoinName) -> str:
        """So many of something: "three feet", "un millón de pies"."""
        form = name.gender if isinstance(name, CoinName) else name.form
        what = name.one if value == 1 else name.several
        return f"{self.cardinal(value, form)}{self.before_what_is_counted(value)}{what}"

    def half_of_day(self, minute_of_day: int) -> str:
        """What is written after a time on a 12-hour clock.

        Source: NIST, Time Questions and Answers (noon and midnight are best written as words).
        """
        names = self.midnight_and_noon if minute_of_day in (0, NOON) else self.halves_of_day
        return names[minute_of_day >= NOON]

    def part_of_day(self, minute_of_day: Fraction | int) -> str:
        """The name of the part of the day at a number of minutes after midnight."""
        return next(name for start, name in reversed(self.parts_of_day) if start <= minute_of_day)
