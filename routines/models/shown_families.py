"""What a routine's grid shows, as one number: a bit for each family of patterns, so that the bank filters by an index."""

from collections.abc import Iterable

# A bit once given keeps its meaning in every stored row; a new family takes the next.
BIT_OF = {
    "step": 0,
    "neighbour": 1,
    "digit": 2,
    "digit-run": 3,
    "digit-sum": 4,
    "remainder": 5,
    "landmarks": 6,
    "how-many": 7,
    "sums": 8,
    "table": 9,
    "opposites": 10,
}
FOR_A_WHILE = 1 << 30
"""A pattern holds only for a while."""


def bits_of(families: Iterable[str]) -> int:
    """Any of these families."""
    return sum(1 << BIT_OF[family] for family in set(families))


def shown_bits(patterns: Iterable[tuple[str, str, str]]) -> int:
    """Of patterns as (family, holds, lie). Scattered landmarks show nothing.

    >>> shown_bits([("step", "always", ""), ("landmarks", "always", "scattered")]) == bits_of(["step"])
    True
    """
    found = 0
    for family, holds, lie in patterns:
        found |= 0 if lie == "scattered" else bits_of([family])
        found |= FOR_A_WHILE if holds == "shown" else 0
    return found
