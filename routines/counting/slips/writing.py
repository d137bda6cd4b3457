"""Values written as a child may write them: one part changed, or two units that are not renamed."""

from fractions import Fraction
from math import lcm

from ..count import Count
from ..kinds.fraction_forms import write_fraction
from ..kinds.names import Kind
from ..kinds.numerals import places_needed, write_decimal
from ..kinds.piece import join
from ..kinds.units import Unit
from ..written_units import written_units
from .jump import Jump
from .places import places_of


def with_part(jump: Jump, value: Fraction, part: str, written: str) -> str:
    """A value as the count writes it, with other digits for one of its parts."""
    pieces = jump.count.pieces_of(value)
    return join([piece._replace(text=written) if piece.part == part else piece for piece in pieces])


def in_two_units(jump: Jump, large: Unit, small: Unit, many: Fraction | int, rest: Fraction) -> str:
    """So many of the large unit and `rest` of the small one, renamed or not; no large unit where there is none."""
    written = f"{_amount(jump, rest, metric=small.system == 'metric')} {small.symbol}"
    return f"{many} {large.symbol} {written}" if many else written


def _amount(jump: Jump, amount: Fraction, *, metric: bool) -> str:
    style = jump.count.style
    places = places_needed(amount.denominator)
    if metric and places is not None:
        return write_decimal(int(amount * 10**places), places, style)
    over = lcm(amount.denominator, style.over if style.fractions == "kept" and amount.denominator > 1 else 1)
    return join(write_fraction(amount, over, style, wholes="number"))


def in_thousands(count: Count) -> Fraction | None:
    """One of what a thousand is written together of, in the base unit: whole numbers, and metric units; None for others."""
    if count.kind == Kind.WHOLE:
        return Fraction(1)
    units = written_units(count)
    if units is None or units.small.system != "metric" or places_of(count).least < units.small.size:
        return None
    return units.small.size if units.large is None or units.large.size == 1000 * units.small.size else None
