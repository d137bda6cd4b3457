"""One exact value as a fraction: written in pieces, and said."""

from fractions import Fraction

from ..style import Style
from .number_words import cardinal, equal_parts, joined, negative
from .numerals import write_whole
from .piece import Piece


def write_fraction(
    value: Fraction,
    over: int,
    style: Style,
    wholes: str | None = None,
    thousands: str | None = None,
    part: str = "whole",
) -> tuple[Piece, ...]:
    """The value over a denominator of its own or a multiple of it, in the style's shape.

    wholes: in place of the style's. thousands: the mark in the whole part, in place of the style's.
    part: the name of the whole part as a part.
    """
    wholes = wholes or style.wholes
    size = abs(value)
    sign = (Piece("sign", "-"),) if value < 0 else ()
    top = size.numerator * (over // size.denominator)
    if over == 1 or (top % over == 0 and wholes != "fraction"):
        whole = Piece("number", _whole(top // over, style, thousands), part)
        if over == 1 or wholes == "number":
            return (*sign, whole)
        return (*sign, *_stack(top, over), Piece("equals", "="), *sign, whole)
    if style.shape == "top-heavy" or top < over or top % over == 0:
        return (*sign, *_stack(top, over))
    return (*sign, Piece("number", _whole(top // over, style, thousands), part), *_stack(top % over, over))


def _stack(top: int, bottom: int) -> tuple[Piece, Piece]:
    return Piece("top", str(top), "top"), Piece("bottom", str(bottom), "bottom")


def _whole(value: int, style: Style, thousands: str | None) -> str:
    return write_whole(value, style) if thousands is None else str(value)


def say_fraction(value: Fraction, over: int, *, mixed: bool, language: str) -> str:
    """The value in words over this denominator: "four thirds", or mixed "one and one third"."""
    size = abs(value)
    top = size.numerator * (over // size.denominator)
    whole, rest = divmod(top, over) if mixed or over == 1 else (0, top)
    if over == 1 or (mixed and rest == 0):
        said = cardinal(whole, language)
    elif whole == 0:
        said = equal_parts(rest, over, language)
    else:
        said = joined(cardinal(whole, language), equal_parts(rest, over, language), language)
    return negative(said, language) if value < 0 else said
