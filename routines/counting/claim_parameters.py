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
        raise CountError(name, f"Write the {name} as a whole number or a fraction, such as 7 or 3/4.")
    if isinstance(value, str) and not _EXACT.fullmatch(value):
        raise CountError(name, f"Write the {name} as a whole number or a fraction, such as 7 or 3/4.")
    if isinstance(value, str) and len(value) > MOST_DIGITS:
        raise _too_long(name)
    try:
        number = Fraction(value)
    except ZeroDivisionError:
        raise CountError(name, f"The bottom number of the {name} is 0; choose another.") from None
    if max(abs(number.numerator), number.denominator) >= 10**MOST_DIGITS:
        raise _too_long(name)
    return Fraction(number.numerator, number.denominator)


def _too_long(name: str) -> CountError:
    return CountError(name, f"Write the {name} with at most {MOST_DIGITS} digits.")


def above_zero(name: str, value: Any) -> Fraction:
    number = exact(name, value)
    if number <= 0:
        raise CountError(name, f"Choose a {name} above 0.")
    return number


def remainder(name: str, value: Any) -> Fraction:
    number = exact(name, value)
    if number < 0:
        raise CountError(name, "A remainder is never below 0; write one from 0 up to the modulus.")
    return number


def whole(name: str, value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        raise CountError(name, f"Write the {name} as a whole number.")
    if abs(value) >= 10**MOST_DIGITS:
        raise _too_long(name)
    return value


def from_one(name: str, value: Any) -> int:
    number = whole(name, value)
    if number < 1:
        raise CountError(name, f"Choose a whole number from 1 up for {name}.")
    return number


def block_length(name: str, value: Any) -> int:
    number = from_one(name, value)
    if number > MOST_TERMS:
        raise CountError(name, f"Choose a block length of at most {MOST_TERMS}, the most terms of a count.")
    return number


def not_negative(name: str, value: Any) -> int:
    number = whole(name, value)
    if number < 0:
        raise CountError(name, f"Choose a whole number from 0 up in {name}.")
    return number


def place(name: str, value: Any) -> int:
    number = whole(name, value)
    if not -3 <= number <= 9:
        raise CountError(name, "Choose a place from -3 (thousandths) to 9; 0 is the ones.")
    return number


def part(name: str, value: Any) -> str:
    if not isinstance(value, str) or not value.strip():
        raise CountError(name, "Name the part of the number, such as inches or minutes.")
    return value


def one_of(choices: tuple[S, ...]) -> Reader[S]:
    def read(name: str, value: Any) -> S:
        chosen = next((choice for choice in choices if isinstance(value, str) and choice == value), None)
        if chosen is None:
            raise CountError(name, f"Choose the {name} from: {', '.join(choices)}.")
        return chosen

    return read


def _list(name: str, value: Any) -> tuple[Any, ...]:
    if not isinstance(value, list | tuple):
        raise CountError(name, f"Write {name} as a list.")
    if len(value) > MOST_TERMS:
        raise CountError(name, f"Put at most {MOST_TERMS} in {name}, as many as a count has terms.")
    return tuple(value)


def block_of(read: Reader[T]) -> Reader[tuple[T, ...]]:
    def read_block(name: str, value: Any) -> tuple[T, ...]:
        block = tuple(read(name, item) for item in _list(name, value))
        if not 1 <= len(block) <= MOST_TERMS:
            raise CountError(name, f"Put from 1 to {MOST_TERMS} numbers in each of the {name}.")
        return block

    return read_block


def blocks_of(read: Reader[T]) -> Reader[tuple[tuple[T, ...], ...]]:
    read_block = block_of(read)

    def read_blocks(name: str, value: Any) -> tuple[tuple[T, ...], ...]:
        blocks = tuple(read_block(name, item) for item in _list(name, value))
        if not blocks:
            raise CountError(name, f"Give {name} one repeating block for each line.")
        return blocks

    return read_blocks


def line_numbers(name: str, value: Any) -> tuple[int, ...]:
    lines = tuple(from_one(name, item) for item in _list(name, value))
    if list(lines) != sorted(set(lines)):
        raise CountError(name, "Name each line once, in order, counting from 1.")
    return lines


def term_pairs(name: str, value: Any) -> tuple[tuple[int, int], ...]:
    pairs: list[tuple[int, int]] = []
    for item in _list(name, value):
        pair = tuple(from_one(name, n) for n in _list(name, item))
        if len(pair) != 2 or pair[0] >= pair[1]:
            raise CountError(name, "Write each pair as two term numbers, the earlier one first.")
        pairs.append((pair[0], pair[1]))
    if pairs != sorted(set(pairs)):
        raise CountError(name, "Name each pair once, in counting order.")
    return tuple(pairs)
