"""Values as written, kept for as long as they are asked for again: a page writes the same few hundred over and over.

Each value is numerator / denominator, not necessarily in lowest terms.
"""

from fractions import Fraction
from functools import lru_cache

from .kind import NumberKind
from .piece import Piece, join

KEPT = 20_000


@lru_cache(maxsize=KEPT)
def pieces_of(form: NumberKind, numerator: int, denominator: int) -> tuple[Piece, ...]:
    """The value as pieces for a drawing."""
    return form.pieces(Fraction(numerator, denominator))


@lru_cache(maxsize=KEPT)
def text_of(form: NumberKind, numerator: int, denominator: int) -> str:
    """The value as one line of text."""
    return join(pieces_of(form, numerator, denominator))


@lru_cache(maxsize=KEPT)
def difference_of(form: NumberKind, numerator: int, denominator: int) -> str:
    """A jump of this size, without sign, as one line of text."""
    return join(form.difference_pieces(abs(Fraction(numerator, denominator))))
