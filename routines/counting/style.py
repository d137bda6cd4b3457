"""How a count is written and said. Values and claims never depend on it."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any, Self

from .errors import CountError
from .kinds.units import UNITS
from .languages import LANGUAGES

CHOICES: dict[str, tuple[object, ...]] = {
    "fractions": ("kept", "simplified"),
    "shape": ("mixed", "top-heavy"),
    "wholes": ("number", "fraction", "both"),
    "clock": (12, 24),
    "units": (None, "one", "two"),
    "decimal_mark": (".", ","),
    "thousands": (",", " ", ".", ""),
    "language": LANGUAGES,
    "saying": ("written", "counted", "renamed"),
}
LARGEST_DENOMINATOR = 1000
MOST_PLACES = 6


@dataclass(frozen=True, slots=True)
class Style:
    """The chosen writing of a count; every keyword may be left out.

    fractions: keep the denominator (and the decimals) of start and step, or write each value in simplest form.
    shape: 1 1/3 (mixed) or 4/3 (top-heavy). wholes: 1, 3/3, or both.
    clock: 12 or 24 hours; halves: write a.m. and p.m. (set by a start typed with them).
    units: one or two ("3 ft 6 in"); None: as typed. small, large: the two units; None: as typed.
    decimals: write parts of a unit of measure as decimals, or else as fractions; None: as typed, else customary ones as
    fractions and all others as decimals. places: decimal places always shown; None: as many as start and step need or show.
    thousands: "auto" stands for the mark that goes with the decimal mark.
    saying: as written; counted ("thirty hundredths", "four thirds", "two thirty"); renamed ("three tenths",
    "one and one third", "half past two" with quarters of an hour).
    over: a denominator kept at least (2/8 by 2/8 stays in eighths); set by what is typed.

    Raises: CountError on `style` for a value that is not on offer, or one mark for decimals and thousands.
    """

    fractions: str = "kept"
    shape: str = "mixed"
    wholes: str = "number"
    clock: int = 12
    halves: bool = False
    units: str | None = None
    small: str | None = None
    large: str | None = None
    decimals: bool | None = None
    places: int | None = None
    over: int = 1
    decimal_mark: str = "."
    thousands: str = "auto"
    language: str = "en"
    saying: str = "written"
    currency: str = "USD"

    @classmethod
    def from_dict(cls, keywords: Mapping[str, Any]) -> Self:
        """A style from stored keywords. Raises: CountError on `style`, for a keyword that is none too."""
        if not isinstance(keywords, Mapping):
            raise CountError("style", "style-not-named-choices")
        known = [field.name for field in fields(cls)]
        for name in keywords:
            if name not in known:
                raise CountError("style", "unknown-style", typed=name, choices=tuple(known))
        return cls(**keywords)

    def as_dict(self) -> dict[str, Any]:
        """The keywords in which this style is not the plain one, ready to be stored as JSON."""
        plain = type(self)()
        chosen = {field.name: getattr(self, field.name) for field in fields(self)}
        return {name: value for name, value in chosen.items() if value != getattr(plain, name)}

    def __post_init__(self) -> None:
        if self.thousands == "auto":
            object.__setattr__(self, "thousands", "," if self.decimal_mark == "." else ".")
        for name, choices in CHOICES.items():
            value = getattr(self, name)
            if isinstance(value, bool) or value not in choices:
                offered = tuple(str(choice) for choice in choices if choice is not None)
                raise CountError("style", "style-not-offered", style=name, choices=offered)
        if self.decimal_mark == self.thousands:
            raise CountError("style", "same-marks")
        if self.places is not None and not _whole_in(self.places, 0, MOST_PLACES):
            raise CountError("style", "places-out-of-range", most=MOST_PLACES)
        if not _whole_in(self.over, 1, 10**MOST_PLACES):
            raise CountError("style", "no-kept-denominator")
        if not isinstance(self.halves, bool):
            raise CountError("style", "halves-not-true-or-false")
        if self.decimals is not None and not isinstance(self.decimals, bool):
            raise CountError("style", "decimals-not-true-or-false")
        if not isinstance(self.currency, str) or not re.fullmatch("[A-Z]{3}", self.currency):
            raise CountError("style", "no-currency-code")
        for name in ("small", "large"):
            unit = getattr(self, name)
            if unit is not None and (not isinstance(unit, str) or unit not in UNITS):
                raise CountError("style", "unknown-style-unit", size=name, choices=tuple(UNITS))
        if self.small is not None and self.large is not None:
            small, large = UNITS[self.small], UNITS[self.large]
            if (small.measure, small.system) != (large.measure, large.system) or small.size >= large.size:
                raise CountError("style", "units-do-not-go-together", unit=self.large)
            if (large.size / small.size).denominator != 1:
                raise CountError("style", "units-do-not-go-together", unit=self.large)


def _whole_in(value: object, low: int, high: int) -> bool:
    return isinstance(value, int) and not isinstance(value, bool) and low <= value <= high
