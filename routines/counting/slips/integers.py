"""Slips in counts that go below zero: whole numbers, decimals and fractions alike.

Zero is where such a count is hard: what is heard there is foreseen at every level that is shown such a count, and comes
first.
"""

from fractions import Fraction

from ..grid import Grid
from ..kinds.decimal import DecimalNumber
from ..kinds.names import Kind
from .fractions import denominator
from .jump import Jump
from .rule import Area, Rule
from .sources import AQAZADE_BOFFERDING_2021, BOFFERDING_2014

# The grade that learns of numbers below zero. Source: Common Core State Standards 6.NS.C.5.
BELOW_ZERO_FROM = 6


def serves(grid: Grid) -> bool:
    count = grid.count
    return count.kind in (Kind.WHOLE, Kind.DECIMAL, Kind.FRACTION) and min(count.value(1), count.value(grid.terms)) < 0


def _leaves_zero_behind(jump: Jump) -> bool:
    """Whether the count that is due is the first on its side of zero, which is crossed or was said just before."""
    return jump.b != 0 and jump.a * jump.b <= 0 and not _goes_up_evenly(jump)


def _goes_up_evenly(jump: Jump) -> bool:
    """Up from zero, as the count that is known best, or from one number to its opposite, where a sign kept is no jump."""
    return jump.s > 0 and (jump.a == 0 or jump.a == -jump.b)


def _away_from_zero_below(jump: Jump) -> bool:
    """Counting back below zero; turning round there leads no further than zero."""
    return jump.s < 0 and jump.a < 0 and jump.a <= jump.s


def _without_sign(jump: Jump, language: str) -> str:
    return jump.text(-jump.b)


def _ten(jump: Jump) -> Fraction:
    """What the last digit fills: ten ones; with decimals ten of the last place; with fractions the parts of a whole."""
    count = jump.count
    if count.kind == Kind.FRACTION:
        return Fraction(1)
    places = count.form.places_shown if isinstance(count.form, DecimalNumber) else 0
    return Fraction(10, 10**places)


def _smallest(jump: Jump) -> Fraction:
    """One in the last place, or one part."""
    if jump.count.kind == Kind.FRACTION:
        return Fraction(1, denominator(jump))
    return _ten(jump) / 10


RULES = (
    Rule("N01", (6, 6), lambda j: j.s < 0 and j.a == 0, lambda j, _: j.said, source=BOFFERDING_2014),
    Rule("N02", (6, 6), lambda j: j.b == 0 and j.a != 0, lambda j, _: j.text(j.b + j.s), 3),
    Rule("N03", (6, 6), lambda j: j.a * j.b < 0, lambda j, _: j.text(j.s), 3),
    Rule(
        "N04",
        (6, 6),
        lambda j: j.s > 0 and j.a < 0,
        lambda j, _: j.text(j.a - j.s),
        3,
        source=BOFFERDING_2014,
        turns=True,
    ),
    Rule("N05", (6, 6), lambda j: j.s < 0 and j.b < 0, _without_sign),
    Rule(
        "N06",
        (6, 6),
        lambda j: j.s == _smallest(j) < _ten(j) and j.a < 0 and j.a % _ten(j) == 0,
        lambda j, _: j.text(j.a - _ten(j) + _smallest(j)),
        3,
    ),
    Rule(
        "N07",
        (6, 6),
        lambda j: j.s == -_smallest(j) > -_ten(j) and j.b < 0 and j.a < 0 and j.b % _ten(j) == 0,
        lambda j, _: j.text(j.a + _ten(j) - _smallest(j)),
        3,
    ),
    # Beyond the table: both ways across zero, back towards it, and the levels below the grade that learns of it.
    Rule(
        "N08",
        (0, 8),
        _leaves_zero_behind,
        _without_sign,
        4,
        source=AQAZADE_BOFFERDING_2021,
        turns=True,
    ),
    Rule(
        "N09",
        (0, 8),
        _away_from_zero_below,
        lambda j, _: j.text(j.a - j.s),
        source=AQAZADE_BOFFERDING_2021,
        turns=True,
    ),
    Rule("N13", (0, 8), _goes_up_evenly, _without_sign, 0, source=AQAZADE_BOFFERDING_2021, turns=True),
    Rule("N10", (0, 5), lambda j: j.b == 0 and j.a != 0, lambda j, _: j.text(j.b + j.s), 3),
    Rule("N11", (0, 5), lambda j: j.s < 0 and j.a == 0, lambda j, _: j.said, source=BOFFERDING_2014),
    Rule("N12", (0, 5), lambda j: j.a * j.b < 0, lambda j, _: j.text(j.s), 3),
)

AREA = Area("integers", serves, RULES)
