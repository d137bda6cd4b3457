"""Lengths, masses, capacities and lengths of time as teachers type them: 2'9", 1 L 50, 2 1/2 in, 1 h 35 min."""

import re
from fractions import Fraction
from functools import lru_cache

from ..errors import CountError
from ..style import LARGEST_DENOMINATOR, Style
from .kind import Parsed
from .names import Kind
from .numerals import read_numeral, split_sign, tidy
from .units import UNIT_LEFT_OUT, UNITS, Unit, units_of

_AMOUNT = re.compile(
    r"(?P<number>[0-9.,][0-9., /-]*?) ?(?P<unit>'|\"|[^\W\d_]+\.?(?: [^\W\d_]+\.?)?|$)(?= ?[0-9.,]|$) ?"
)

# What may stand between two amounts, or a whole and its part: "2 ft, 3 in", "2 feet and 3 inches", 2'-9", "2 and 1/3".
_JOINT = re.compile(
    r"(?<=[^\d\s,]) ?(?:, (?:(?:and|y) )?|(?:and|y) )(?=[0-9.])|(?<=')-(?=[0-9.])|(?<=\d) (?:and|y) (?=\d+ ?/)"
)


@lru_cache(maxsize=8)
def _spellings(measure: Kind) -> dict[str, Unit]:
    units = units_of(measure)
    return {_folded(spelling): unit for unit in units for spelling in (unit.symbol, *unit.spellings)}


def _folded(spelling: str) -> str:
    return " ".join(spelling.replace(".", " ").casefold().split())


def read_measure(text: str, measure: Kind, style: Style, field: str, *, bare: str | None) -> Parsed:
    """One typed amount in one unit or several, larger first.

    bare: the unit of a number typed without one; None asks for the unit.
    Raises: CountError on `field`.
    """
    plain = tidy(text, field)
    sign, rest = split_sign(plain)
    rest = _JOINT.sub(" ", rest)
    value = Fraction(0)
    over, decimal = 1, False
    units: list[Unit] = []
    at = 0
    while at < len(rest):
        found = _AMOUNT.match(rest, at)
        if found is None or over != 1:
            raise CountError(field, "no-amount", example=measure, typed=plain)
        unit = _unit(found["unit"], measure, units, field, bare)
        if units and (unit.size >= units[-1].size or unit.system != units[-1].system):
            raise CountError(field, "smaller-unit-first", typed=plain)
        numeral = read_numeral(found["number"], style, field, plain)
        value += numeral.value * unit.size
        over, decimal = numeral.over, numeral.decimal
        units.append(unit)
        at = found.end()
    if over > LARGEST_DENOMINATOR or value.denominator > LARGEST_DENOMINATOR:
        raise CountError(field, "amount-too-fine", most=LARGEST_DENOMINATOR)
    if not units:
        raise CountError(field, "no-amount", example=measure, typed=plain)
    return Parsed(sign * value, over, tuple(unit.symbol for unit in units), units[0].system, decimal=decimal)


def _unit(typed: str, measure: Kind, before: list[Unit], field: str, bare: str | None) -> Unit:
    symbols = tuple(unit.symbol for unit in units_of(measure))
    if not typed:
        left_out = UNIT_LEFT_OUT.get(before[-1].symbol) if before else bare
        if left_out is None:
            raise CountError(field, "no-unit", choices=symbols)
        return UNITS[left_out]
    # 3/4 de taza
    typed = typed.removeprefix("de ")
    unit = _spellings(measure).get(_folded(typed))
    if unit is not None:
        return unit
    for other in (Kind.LENGTH, Kind.MASS, Kind.CAPACITY, Kind.ELAPSED):
        if _folded(typed) in _spellings(other):
            raise CountError(field, "unit-of-another-measure", measure=measure, typed=typed, other=other)
    raise CountError(field, "unknown-unit", measure=measure, choices=symbols, typed=typed)
