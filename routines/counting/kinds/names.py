"""The kinds of number, by name."""

from enum import StrEnum


class Kind(StrEnum):
    """In the order in which they are offered."""

    WHOLE = "whole"
    DECIMAL = "decimal"
    FRACTION = "fraction"
    LENGTH = "length"
    MASS = "mass"
    CAPACITY = "capacity"
    MONEY = "money"
    CLOCK = "clock"
    ELAPSED = "elapsed"
