"""The parameters of every family of claims: how each is read, and what is said where it is wrong.

A reader turns what was given into the checked form, or raises a CountError on the parameter's name with what to write.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

from .errors import CountError

ALONG = ("count", "row", "column")
DIRECTIONS = ("right", "down", "down-right", "down-left")
LIES = ("row", "column", "rows", "columns", "down-right", "down-left", "scattered")
SUMS = ("block-corners", "ends", "centre-mean", "line-totals")
MOST_TERMS = 200
MOST_DIGITS = 30
"""Numbers of more digits say nothing about a count whose values stay within 10^9; Python itself refuses very long ones."""

BLOCK_FAMILIES = ("digit", "digit-sum", "remainder")

Blocks = tuple[tuple[Any, ...], ...]

_EXACT = re.compile(r"-?[0-9]+(/[0-9]+|\.[0-9]+)?")


def _exact(name: str, value: Any) -> Fraction:
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


def _above_zero(name: str, value: Any) -> Fraction:
    number = _exact(name, value)
    if number <= 0:
        raise CountError(name, f"Choose a {name} above 0.")
    return number


def _remainder(name: str, value: Any) -> Fraction:
    number = _exact(name, value)
    if number < 0:
        raise CountError(name, "A remainder is never below 0; write one from 0 up to the modulus.")
    return number


def _whole(name: str, value: Any) -> int:
    if isinstance(value, bool) or not isinstance(value, int):
        raise CountError(name, f"Write the {name} as a whole number.")
    if abs(value) >= 10**MOST_DIGITS:
        raise _too_long(name)
    return value


def _from_one(name: str, value: Any) -> int:
    number = _whole(name, value)
    if number < 1:
        raise CountError(name, f"Choose a whole number from 1 up for {name}.")
    return number


def _length(name: str, value: Any) -> int:
    number = _from_one(name, value)
    if number > MOST_TERMS:
        raise CountError(name, f"Choose a block length of at most {MOST_TERMS}, the most terms of a count.")
    return number


def _not_negative(name: str, value: Any) -> int:
    number = _whole(name, value)
    if number < 0:
        raise CountError(name, f"Choose a whole number from 0 up in {name}.")
    return number


def _place(name: str, value: Any) -> int:
    number = _whole(name, value)
    if not -3 <= number <= 9:
        raise CountError(name, "Choose a place from -3 (thousandths) to 9; 0 is the ones.")
    return number


def _part(name: str, value: Any) -> str:
    if not isinstance(value, str) or not value.strip():
        raise CountError(name, "Name the part of the number, such as inches or minutes.")
    return value


def _one_of(choices: tuple[str, ...]) -> Callable[[str, Any], str]:
    def read(name: str, value: Any) -> str:
        if not isinstance(value, str) or value not in choices:
            raise CountError(name, f"Choose the {name} from: {', '.join(choices)}.")
        return value

    return read


def _list(name: str, value: Any) -> tuple[Any, ...]:
    if not isinstance(value, list | tuple):
        raise CountError(name, f"Write {name} as a list.")
    if len(value) > MOST_TERMS:
        raise CountError(name, f"Put at most {MOST_TERMS} in {name}, as many as a count has terms.")
    return tuple(value)


def _block_of(read: Callable[[str, Any], Any]) -> Callable[[str, Any], tuple[Any, ...]]:
    def read_block(name: str, value: Any) -> tuple[Any, ...]:
        block = tuple(read(name, item) for item in _list(name, value))
        if not 1 <= len(block) <= MOST_TERMS:
            raise CountError(name, f"Put from 1 to {MOST_TERMS} numbers in each of the {name}.")
        return block

    return read_block


def _blocks_of(read: Callable[[str, Any], Any]) -> Callable[[str, Any], Blocks]:
    read_block = _block_of(read)

    def read_blocks(name: str, value: Any) -> Blocks:
        blocks = tuple(read_block(name, item) for item in _list(name, value))
        if not blocks:
            raise CountError(name, f"Give {name} one repeating block for each line.")
        return blocks

    return read_blocks


def _lines(name: str, value: Any) -> tuple[int, ...]:
    lines = tuple(_from_one(name, item) for item in _list(name, value))
    if list(lines) != sorted(set(lines)):
        raise CountError(name, "Name each line once, in order, counting from 1.")
    return lines


def _pairs(name: str, value: Any) -> tuple[tuple[int, int], ...]:
    pairs: list[tuple[int, int]] = []
    for item in _list(name, value):
        pair = tuple(_from_one(name, n) for n in _list(name, item))
        if len(pair) != 2 or pair[0] >= pair[1]:
            raise CountError(name, "Write each pair as two term numbers, the earlier one first.")
        pairs.append((pair[0], pair[1]))
    if pairs != sorted(set(pairs)):
        raise CountError(name, "Name each pair once, in counting order.")
    return tuple(pairs)


_ALONG_READER = _one_of(ALONG)

PARAMETERS: dict[str, dict[str, Callable[[str, Any], Any]]] = {
    "step": {"difference": _exact},
    "neighbour": {"direction": _one_of(DIRECTIONS), "difference": _exact},
    "digit": {
        "place": _place,
        "part": _part,
        "along": _ALONG_READER,
        "blocks": _blocks_of(_not_negative),
        "length": _length,
        "lines": _lines,
    },
    "digit-run": {"place": _place, "part": _part, "along": _ALONG_READER, "change": _whole},
    "digit-sum": {"along": _ALONG_READER, "blocks": _blocks_of(_not_negative), "length": _length, "lines": _lines},
    "remainder": {
        "modulus": _above_zero,
        "along": _ALONG_READER,
        "blocks": _blocks_of(_remainder),
        "length": _length,
        "lines": _lines,
    },
    "landmarks": {
        "multiple": _above_zero,
        "every": _from_one,
        "first": _from_one,
        "lie": _one_of(LIES),
        "lines": _lines,
    },
    "how-many": {"multiple": _above_zero, "block": _block_of(_not_negative)},
    "sums": {"which": _one_of(SUMS), "along": _one_of(("row", "column")), "difference": _exact},
    "table": {"step": _exact},
    "opposites": {"pairs": _pairs},
}
"""Every family with its parameters, in the order in which they are written."""

FAMILIES = tuple(PARAMETERS)


def checked(family: str, given: Mapping[str, Any]) -> dict[str, Any]:
    """The parameters in their checked form and order, those that are None left out.

    Raises: CountError on `family` or on the name of the parameter that is wrong.
    """
    readers = PARAMETERS.get(family) if isinstance(family, str) else None
    if readers is None:
        raise CountError("family", f"Choose the family of the claim from: {', '.join(PARAMETERS)}.")
    for name in given:
        if name not in readers:
            raise CountError("family", f"A claim about {family} has no {name}; it has {', '.join(readers)}.")
    read_in_order = {name: read(name, given[name]) for name, read in readers.items() if given.get(name) is not None}
    _check_together(family, read_in_order)
    return read_in_order


def _check_together(family: str, given: dict[str, Any]) -> None:
    if "place" in given and "part" in given:
        raise CountError("part", "Name a place or a part, not both.")
    if "blocks" in given and "length" in given:
        raise CountError("length", "Give the blocks or their length, not both.")
    if family in BLOCK_FAMILIES:
        _check_blocks(given)
    elif family == "landmarks":
        _check_lie(given)
    elif family == "sums" and given.get("which") not in (None, "line-totals"):
        for name in ("along", "difference"):
            if name in given:
                raise CountError(name, f"Only line totals have a value for {name}; leave it out.")


def _check_blocks(given: dict[str, Any]) -> None:
    blocks, lines, modulus = given.get("blocks"), given.get("lines"), given.get("modulus")
    if lines is not None and not lines:
        raise CountError("lines", "Name at least one line, or leave lines out to mean all of them.")
    if lines is not None and given.get("along") == "count":
        raise CountError("lines", "Along the count there is only one line; leave lines out.")
    if blocks is not None and modulus is not None and any(r >= modulus for block in blocks for r in block):
        raise CountError("blocks", "A remainder is smaller than the modulus; write smaller ones.")


def _check_lie(given: dict[str, Any]) -> None:
    lie, lines = given.get("lie"), given.get("lines")
    if lie is None or lines is None:
        return
    if lie in ("row", "column") and len(lines) != 1:
        raise CountError("lines", f"Name the one {lie} in which all of them lie.")
    if lie in ("rows", "columns") and len(lines) < 2:
        raise CountError("lines", f"Name the two or more {lie} that they fill.")
    if lie not in ("row", "column", "rows", "columns") and lines:
        raise CountError("lines", f"Landmarks that lie {lie} have no lines; leave the list empty.")
