"""One grid as an audience reads it: its written counts, names and directions, worked out once and kept."""

from collections.abc import Sequence
from fractions import Fraction
from functools import lru_cache

from ..audience import Audience
from ..grid import Grid
from ..kinds.currency import currency_named
from ..kinds.unit_names import NAMES
from ..kinds.units import UNITS
from .en import ENGLISH
from .es import SPANISH
from .numbers import listing
from .tongue import Feature, Noun, Tongue
from .words import band_of

TONGUES: dict[str, Tongue] = {"en": ENGLISH, "es": SPANISH}


class Page:
    """A grid with the tongue and the level of its reader."""

    def __init__(self, grid: Grid, audience: Audience) -> None:
        self.grid = grid
        self.count = grid.count
        self.tongue = TONGUES[audience.language]
        self.band = band_of(audience.level)
        self.on_clock = self.count.wrap is not None
        self.jump = self.difference(self.count.step)
        self._texts: dict[int, str] = {}
        self._parts: dict[int, dict[str, int]] = {}
        self._marks: dict[Fraction, tuple[Noun, bool]] = {}
        self.seed = f"{self.count.start}{self.count.step}{grid.line_length}{grid.fill}"

    def text(self, n: int) -> str:
        """The n-th count as written."""
        text = self._texts.get(n)
        if text is None:
            text = self._texts[n] = self.count.text(n)
        return text

    def value(self, n: int) -> str:
        """The n-th count as it stands in a sentence."""
        return self.tongue.value(self.text(n), clock=self.on_clock)

    def difference(self, value: Fraction) -> str:
        """A difference as written, without sign."""
        return self.count.difference_text(value)

    def amount(self, value: Fraction) -> str:
        """A sum or product as written, with its sign; on a clock it is a length of time."""
        if self.on_clock:
            return ("-" if value < 0 else "") + self.difference(value)
        return self.count.text_of(value)

    def spot(self, value: Fraction) -> str:
        """A value that need not be a count, as it stands in a sentence."""
        return self.tongue.value(self.count.text_of(value), clock=self.on_clock)

    def parts(self, n: int) -> dict[str, int]:
        """The n-th count's parts as written."""
        found = self._parts.get(n)
        if found is None:
            found = self._parts[n] = self.count.parts(n)
        return found

    def listing(self, items: Sequence[str]) -> str:
        """Items as a list that ends in "and"."""
        return listing(items, self.tongue.language)

    def jumps(self, k: int) -> str:
        """`k` jumps of the step and what they make."""
        return self.tongue.jumps(k, self.jump, self.difference(self.count.step * k))

    def more(self, difference: Fraction) -> str:
        return self.tongue.less if difference < 0 else self.tongue.more

    def up(self, difference: Fraction) -> str:
        return self.tongue.down if difference < 0 else self.tongue.up

    def named_mark(self, multiple: Fraction) -> Noun | None:
        """The multiples of `multiple` under a name of their own (tens, whole feet), or None."""
        noun, named = self._mark(multiple)
        return noun if named else None

    def mark(self, multiple: Fraction) -> Noun:
        """The multiples of `multiple`, named."""
        return self._mark(multiple)[0]

    def _mark(self, multiple: Fraction) -> tuple[Noun, bool]:
        found = self._marks.get(multiple)
        if found is None:
            own = self._own_mark(multiple)
            found = (own, True) if own else (self.tongue.multiple(self.difference(multiple)), False)
            self._marks[multiple] = found
        return found

    def _own_mark(self, multiple: Fraction) -> Noun | None:
        if self.count.kind == "money":
            currency = currency_named(self.count.style.currency, self.tongue.language)
            return self.tongue.whole_units(currency.main) if multiple == 10**currency.digits else None
        unit = self.count.base_unit or self.count.kind
        return self.tongue.landmark_nouns.get((unit, str(multiple)))

    def pure(self, value: Fraction, multiple: Fraction) -> str:
        """Write a multiple as so many of them, "3 tens" or "3 × 7"; empty where that says nothing new."""
        many = value / multiple
        if many == 0:
            return ""
        noun = self.named_mark(multiple)
        if noun is None:
            return "" if abs(many) == 1 else f"{many} × {self.difference(multiple)}"
        written = self.difference(value)
        if written.startswith(f"{many} ") and written.count(" ") == 1 and "/" not in written:
            return ""
        return f"{many} {noun.one if abs(many) == 1 else noun.many}"

    def digit(self, place: int) -> Feature:
        """The digit at a place of the base unit, named."""
        if self.count.kind != "money":
            return self.tongue.place_digit(place)
        currency = currency_named(self.count.style.currency, self.tongue.language)
        if currency.digits == 0 or self.count.style.units == "one":
            return self.tongue.place_digit(place)
        if place >= currency.digits:
            return self.tongue.large_coin_digit(place - currency.digits, currency.main)
        if currency.digits == 2 and place >= 0 and currency.small.several:
            return self.tongue.small_coin_digit(place, currency.small)
        return self.tongue.place_digit(max(place - currency.digits, -3))

    def part(self, part: str) -> Feature:
        """A part of the written counts, named."""
        feature = self.tongue.part_features.get(part)
        if feature is not None:
            return feature
        unit = next((unit.symbol for unit in UNITS.values() if unit.part == part), None)
        if unit is not None:
            name = NAMES[unit, self.tongue.language]
            return Feature(Noun(name.several, name.several, name.form == "feminine"), plural=True)
        own = currency_named(self.count.style.currency, self.tongue.language)
        english = currency_named(self.count.style.currency, "en")
        coin = own.main if part == english.main.several else own.small
        return Feature(Noun(coin.several or part, coin.several or part, coin.gender == "feminine"), plural=True)


@lru_cache(maxsize=64)
def page_of(grid: Grid, audience: Audience) -> Page:
    """The page of a grid, kept while its patterns are described one by one."""
    return Page(grid, audience)
