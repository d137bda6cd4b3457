"""Amounts of a unit as they are said, in each language in which numbers are said."""

from fractions import Fraction

from .number_words import decimal_parts, equal_parts
from .said import SAID, UnitName

NAMES: dict[tuple[str, str], UnitName] = {
    (unit, language): name for language, said in SAID.items() for unit, name in said.units.items()
}
"""The names of units, by their sign and the language."""

# Units without a sign of their own are written by their name.
WRITTEN_BY_NAME = ("cup", "ton")


def say_units(amount: Fraction, unit: str, language: str, *, over: int, places: int | None, mixed: bool) -> str:
    """So many of a unit: "nine inches", "two and one half inches", "three fourths of a cup", "dos pulgadas y media".

    over: the denominator a part is said in; places: decimal places in place of it; mixed: wholes are said apart.
    """
    said, name = SAID[language], NAMES[unit, language]
    parts = 10**places if places is not None else over
    top = amount.numerator * (parts // amount.denominator)
    whole, rest = divmod(top, parts) if mixed or places is not None or parts == 1 else (0, top)
    if rest == 0:
        return said.counted(whole, name)
    part = decimal_parts(rest, places, language) if places else equal_parts(rest, parts, language)
    return said.part_of_unit(whole, part, name, half=places is None and (rest, parts) == (1, 2))
