"""The amounts a standard's features name: which starts or steps they allow."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from ..count import Count
from ..errors import CountError
from ..kinds.names import Kind
from ..written_units import written_units

FIELD = "count_features"
HOUR, HALF_HOUR = 60, 30
# Of a run so many numbers are named one by one.
LONGEST_RUN = 12
MEASURES = (Kind.LENGTH, Kind.MASS, Kind.CAPACITY)

# A whole number, a decimal or a fraction.
NUMBER = r"-?[0-9]{1,9}(?:\.[0-9]{1,9}|/[1-9][0-9]{0,8})?"
_UNIT = r"(?: ?(?P<unit>min|c))?"
_FRACTIONS = {"simple fraction", "fraction"}


@dataclass(frozen=True, slots=True)
class Amount:
    """One alternative of a value in the features language.

    allows: whether it allows this amount as a start or step of this count. Units: see `unit_size`.
    """

    text: str
    allows: Callable[[Fraction, Count], bool]


def read_amounts(text: str) -> tuple[Amount, ...]:
    """The alternatives of a value: "1|10", "1..9|10,20,...,90", "0|step", "any to 0.01".

    Raises: CountError on `count_features` for what is not in the language.

    >>> [amount.text for amount in read_amounts("1..9|10,20,...,90")]
    ['1..9', '10,20,...,90']
    """
    return tuple(Amount(part, _allows(part)) for part in (part.strip() for part in text.split("|")))


def numbers_named(text: str) -> tuple[Fraction, ...]:
    """The numbers that a value names one by one or as a run, of a long run the first ones; in its own units.

    >>> [int(number) for number in numbers_named("1..3|10,20,...,90|any")][:5]
    [1, 2, 3, 10, 20]
    """
    named: list[Fraction] = []
    for part in (part.strip() for part in text.split("|")):
        if found := re.fullmatch(rf"({NUMBER}){_UNIT}", part):
            named.append(Fraction(found[1]))
        elif run := _listed(part):
            named += map(Fraction, run[:LONGEST_RUN])
    return tuple(named)


def unit_size(count: Count) -> Fraction:
    """The unit that amounts are named in: the (smaller) unit a measure is written in, else the base unit."""
    units = written_units(count)
    return units.small.size if units and count.kind in MEASURES else Fraction(1)


def written_denominator(count: Count) -> int:
    """The denominator a count of fractions is written over (the common one, where each is simplified)."""
    return count.scale if count.style.fractions == "simplified" else lcm(count.scale, count.style.over)


def _allows(text: str) -> Callable[[Fraction, Count], bool]:
    for reader in (_plain_word, _number, _run, _any_limited, _part):
        allows = reader(text)
        if allows is not None:
            return allows
    raise CountError(FIELD, "amounts-unreadable", typed=text[:40])


def _plain_word(text: str) -> Callable[[Fraction, Count], bool] | None:
    words: dict[str, Callable[[Fraction, Count], bool]] = {
        "any": lambda amount, count: True,
        "step": lambda amount, count: amount == count.step / unit_size(count),
        "multiple of step": lambda amount, count: amount % (count.step / unit_size(count)) == 0,
        "hour": lambda amount, count: amount % HOUR == 0,
        "half hour": lambda amount, count: amount % HOUR == HALF_HOUR,
        "any minute": lambda amount, count: amount.denominator == 1,
        "any whole number of minutes": lambda amount, count: amount.denominator == 1,
        "decimal": lambda amount, count: amount.denominator > 1,
        "mixed": lambda amount, count: amount > 1 and amount.denominator > 1,
        # These speak of the second count of a pair.
        "(1, factor)": lambda amount, count: True,
        "conversion factor": lambda amount, count: True,
        "p": lambda amount, count: True,
    }
    if text in ("whole", "whole number", "any whole number"):
        return lambda amount, count: amount.denominator == 1
    if text in _FRACTIONS:
        return lambda amount, count: amount.denominator > 1
    return words.get(text)


def _number(text: str) -> Callable[[Fraction, Count], bool] | None:
    found = re.fullmatch(rf"(?P<multiple>multiple of )?(?P<number>{NUMBER}){_UNIT}", text)
    if found is None:
        return None
    number = Fraction(found["number"])
    if found["multiple"] and number == 0:
        return None
    if found["multiple"]:
        return lambda amount, count: amount % number == 0
    return lambda amount, count: amount == number


def _run(text: str) -> Callable[[Fraction, Count], bool] | None:
    """1..10 is every whole number from 1 to 10; 10,20,...,90 is every ten of them."""
    listed = _listed(text)
    return None if listed is None else lambda amount, count: amount in listed


def _listed(text: str) -> range | None:
    if found := re.fullmatch(r"([0-9]{1,9})\.\.([0-9]{1,9})", text):
        return range(int(found[1]), int(found[2]) + 1)
    if found := re.fullmatch(r"([0-9]{1,9}),([0-9]{1,9}),\.\.\.,([0-9]{1,9})", text):
        first, second, last = (int(found[at]) for at in (1, 2, 3))
        return None if first == second else range(first, last + 1, second - first)
    return None


def _any_limited(text: str) -> Callable[[Fraction, Count], bool] | None:
    found = re.fullmatch(rf"any(?P<sign>[<>]| to )(?P<number>{NUMBER})", text)
    if found is None:
        return None
    limit = Fraction(found["number"])
    if found["sign"] == " to " and limit == 0:
        return None
    if found["sign"] == "<":
        return lambda amount, count: amount < limit
    if found["sign"] == ">":
        return lambda amount, count: amount > limit
    return lambda amount, count: amount % limit == 0


def _part(text: str) -> Callable[[Fraction, Count], bool] | None:
    """1/b: one part. a/b, n/b: any number of the parts the count is written in. n/10: tenths."""
    if text == "1/b":
        return lambda amount, count: amount == Fraction(1, written_denominator(count))
    if text in ("a/b", "n/b"):
        return lambda amount, count: amount * written_denominator(count) % 1 == 0
    if text == "a/b with a>1":
        return lambda amount, count: amount * written_denominator(count) > 1
    if found := re.fullmatch(r"n/([1-9][0-9]{0,8})", text):
        parts = int(found[1])
        return lambda amount, count: amount * parts % 1 == 0
    return None
