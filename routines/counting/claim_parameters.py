"""How the parameters of a claim are declared, how each is read, and what is said where it is wrong.

A reader turns what was given into the checked form, or raises a CountError on the parameter's name with what to write.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import field
from fractions import Fraction
from typing import Any, TypeVar, cast

from .errors import CountError

MOST_TERMS = 200
MOST_DIGITS = 30
"""Numbers of more digits say nothing about a count whose values stay within 10^9; Python itself refuses very long ones."""

T = TypeVar("T")
S = TypeVar("S", bound=str)
Reader = Callable[[str, Any], T]

_EXACT = re.compile(r"-?[0-9]+(/[0-9]+|\.[0-9]+)?")


def about(reader: Reader[T]) -> T | None:
    """A parameter that names what a claim is about; left out unless given."""
    return cast("T | None", field(default=None, metadata={"read": reader, "about": True}))


def says(reader: Reader[T]) -> T | None:
    """A parameter that says what is so of it; left out unless given."""
    return cast("T | None", field(default=None, metadata={"read": reader, "about": False}))


def exact(name: str, value: Any) -> Fraction:
    if isinstance(value, bool) or not isinstance(value, int | Fraction | str):
        raise CountError(name, "no-exact-number", name=name)
    if isinstance(value, str) and not _EXACT.fullmatch(value):
        raise CountError(name, "no-exact-number", name=name)
    if isinstance(value, str) and len(value) > MOST_DIGITS:
        raise _too_long(name)
    try:
        number = Fraction(value)
    except ZeroDivisionError:
        raise CountError(name, "zero-denominator", name=name) from None
    if max(abs(number.numerator), number.denominator) >= 10**MOST_DIGITS:
        raise _too_long(name)
    return Fraction(number.numerator, number.denominator)


def _too_long(name: str) -> CountError:
    return CountError(name, "too-many-digits", name=name, most=MOST_DIGITS)


def above_zero(name: str, value: Any) -> Fraction:
    number = exact(name, value)
    if number <= 0:
        raise CountError(name, "not-above-zero", name=name)
    return number


def remainder(name: str, value: Any) -> Fraction:
    number = exact(name, value)
    if number < 0:
        raise CountError(name, "remainder-below-zero")
    return number


def whole(name: str, value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        raise CountError(name, "no-whole-number", name=name)
    if abs(value) >= 10**MOST_DIGITS:
        raise _too_long(name)
    return value


def from_one(name: str, value: Any) -> int:
    number = whole(name, value)
    if number < 1:
        raise CountError(name, "not-from-one", name=name)
    return number


def block_length(name: str, value: Any) -> int:
    number = from_one(name, value)
    if number > MOST_TERMS:
        raise CountError(name, "block-too-long", most=MOST_TERMS)
    return number


def not_negative(name: str, value: Any) -> int:
    number = whole(name, value)
    if number < 0:
        raise CountError(name, "negative", name=name)
    return number


def place(name: str, value: Any) -> int:
    number = whole(name, value)
    if not -3 <= number <= 9:
        raise CountError(name, "no-place")
    return number


def part(name: str, value: Any) -> str:
    if not isinstance(value, str) or not value.strip():
        raise CountError(name, "no-part")
    return value


def one_of(choices: tuple[S, ...]) -> Reader[S]:
    def read(name: str, value: Any) -> S:
        chosen = next((choice for choice in choices if isinstance(value, str) and choice == value), None)
        if chosen is None:
            raise CountError(name, "no-choice", name=name, choices=choices)
        return chosen

    return read


def _list(name: str, value: Any) -> tuple[Any, ...]:
    if not isinstance(value, list | tuple):
        raise CountError(name, "no-list", name=name)
    if len(value) > MOST_TERMS:
        raise CountError(name, "list-too-long", most=MOST_TERMS, name=name)
    return tuple(value)


def block_of(read: Reader[T]) -> Reader[tuple[T, ...]]:
    def read_block(name: str, value: Any) -> tuple[T, ...]:
        block = tuple(read(name, item) for item in _list(name, value))
        if not 1 <= len(block) <= MOST_TERMS:
            raise CountError(name, "no-block", most=MOST_TERMS, name=name)
        return block

    return read_block


def blocks_of(read: Reader[T]) -> Reader[tuple[tuple[T, ...], ...]]:
    read_block = block_of(read)

    def read_blocks(name: str, value: Any) -> tuple[tuple[T, ...], ...]:
        blocks = tuple(read_block(name, item) for item in _list(name, value))
        if not blocks:
            raise CountError(name, "no-blocks", name=name)
        return blocks

    return read_blocks


def line_numbers(name: str, value: Any) -> tuple[int, ...]:
    lines = tuple(from_one(name, item) for item in _list(name, value))
    if list(lines) != sorted(set(lines)):
        raise CountError(name, "lines-not-in-order")
    return lines


def term_pairs(name: str, value: Any) -> tuple[tuple[int, int], ...]:
    pairs: list[tuple[int, int]] = []
    for item in _list(name, value):
        pair = tuple(from_one(name, n) for n in _list(name, item))
        if len(pair) != 2 or pair[0] >= pair[1]:
            raise CountError(name, "no-pair")
        pairs.append((pair[0], pair[1]))
    if pairs != sorted(set(pairs)):
        raise CountError(name, "pairs-not-in-order")
    return tuple(pairs)
