"""A grid as children speak of it: amounts with the names of their units, "9 inches", and not their signs."""

import re
from fractions import Fraction
from functools import lru_cache

from routines.counting.audience import Audience
from routines.counting.count import Count
from routines.counting.grid import Grid
from routines.counting.kinds.measure import Measure
from routines.counting.kinds.said import SAID
from routines.counting.kinds.unit_names import NAMES, WRITTEN_BY_NAME
from routines.counting.kinds.units import UNITS

from .page import Page

SIGNS = sorted(UNITS.keys() - {*WRITTEN_BY_NAME}, key=len, reverse=True)
AMOUNT = re.compile(rf"(?P<many>\d[\d.,/]*(?: \d+/\d+)?) (?P<sign>{'|'.join(SIGNS)})(?![^\W\d_])")


def has_signs(count: Count) -> bool:
    """Whether the amounts of a count are written with signs of units."""
    return isinstance(count.form, Measure) or count.wrap is not None


def with_unit_names(amount: str, language: str) -> str:
    """An amount, or several in a sentence, as they are read aloud; what has no sign of a unit stays as it is.

    >>> with_unit_names("1 h 20 min", "en"), with_unit_names("3/4 in", "es")
    ('1 hour 20 minutes', '3/4 de pulgada')
    """

    def named(found: re.Match[str]) -> str:
        many, name = found["many"], NAMES[found["sign"], language]
        if "/" in many and " " not in many:
            return f"{many} {SAID[language].part_written_of.format(name.one)}"
        return f"{many} {name.one if many == '1' else name.several}"

    return AMOUNT.sub(named, amount)


class SpokenPage(Page):
    """The same page; only amounts are said otherwise."""

    def text(self, n: int) -> str:
        return self._said(super().text(n))

    def difference(self, value: Fraction) -> str:
        return self._said(super().difference(value))

    def whole_difference(self, value: Fraction) -> str:
        return self._said(super().whole_difference(value))

    def move(self, k: int) -> str:
        return self._said(super().move(k))

    def amount(self, value: Fraction) -> str:
        return self._said(super().amount(value))

    def _one_name(self, value: Fraction) -> str:
        return self._said(super()._one_name(value))

    def _said(self, amount: str) -> str:
        return with_unit_names(amount, self.language.code)


def spoken_page(page: Page) -> Page:
    """The page as children speak of it: the same one where no unit is written by a sign."""
    return _spoken(page.grid, page.audience, page.printed) if has_signs(page.count) else page


@lru_cache(maxsize=64)
def _spoken(grid: Grid, audience: Audience, printed: Grid) -> SpokenPage:
    """Kept while the patterns of a page are described one by one."""
    return SpokenPage(grid, audience, printed)
