"""Which multiples have a name of their own, whatever the language: tens, whole feet, full hours."""

from fractions import Fraction

from .count import Count
from .kinds.currency import currency_named
from .kinds.names import Kind

NAMED: dict[str, tuple[str, ...]] = {
    "whole": (
        "2",
        "10",
        "100",
        "1000",
    ),
    "decimal": (
        "1/10",
        "1/2",
        "1",
        "10",
        "100",
    ),
    "fraction": (
        "1/2",
        "1",
    ),
    "in": (
        "1",
        "6",
        "12",
        "36",
    ),
    "cm": (
        "1",
        "50",
        "100",
    ),
    "oz": (
        "8",
        "16",
    ),
    "g": (
        "500",
        "1000",
    ),
    "fl oz": (
        "8",
        "16",
        "32",
        "128",
    ),
    "mL": (
        "250",
        "500",
        "1000",
    ),
    "min": (
        "15",
        "30",
        "60",
        "720",
    ),
}
"""By base unit, or by kind where there is none."""


def has_a_name(count: Count, multiple: Fraction) -> bool:
    """Whether the multiples of a number, in the base unit, are called by a name and not "multiples of ..."."""
    if count.kind == Kind.MONEY:
        return bool(multiple == 10 ** currency_named(count.style.currency, "en").digits)
    return str(multiple) in NAMED.get(count.base_unit or count.kind, ())
