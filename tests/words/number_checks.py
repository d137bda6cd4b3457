"""When a phrase about jumps, terms and products is so; and what all checks ask of the context."""

import re
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from routines.counting.claims import BlockClaim
from tests.words.sentence_checker import Context

BACK = ("less", "menos", "earlier", "antes", "before", "baja")


def signed(size: Fraction, more: str) -> Fraction:
    return -size if more in BACK else size


# What a landmark that is passed is at least a multiple of: a ten, a whole, a dollar, an hour, a foot, a pound, a cup.
ROUND = {
    "whole": 10,
    "decimal": Fraction(1, 10),
    "fraction": 1,
    "clock": 60,
    "in": 12,
    "oz": 16,
    "fl oz": 8,
    "cm": 10,
    "g": 10,
    "mL": 10,
}


def is_round(c: Context, value: Fraction) -> bool:
    count = c.grid.count
    size = 10**c.notation.digits if count.kind == "money" else ROUND.get(count.kind, ROUND.get(count.base_unit, 60))
    return value % size == 0


def claim_of(c: Context) -> Any:
    assert c.claim is not None
    return c.claim


def multiple_of(c: Context) -> Fraction:
    claim = claim_of(c)
    return claim.parameters.get("multiple") or claim.parameters.get("modulus")


def plain(text: str) -> str:
    return re.sub(r"^las? ", "", text, flags=re.IGNORECASE)


def texts(c: Context, items: list[str], among: Sequence[int] | None = None) -> list[int] | None:
    """The terms (of some, or all in view) whose written counts are these, in order; None if one of them is missing."""
    found: list[int] = []
    for item in items:
        wanted = plain(item)
        here = [n for n in (c.terms if among is None else among) if written(c, n) == wanted]
        if not here:
            return None
        found.append(next((n for n in here if not found or n > found[-1]), here[0]))
    return found


def written(c: Context, n: int) -> str:
    """A count as it is written in a sentence: "3/3 = 1" under its shorter name."""
    return c.grid.count.text(n).split(" = ")[-1]


def shown(c: Context, terms: list[int], items: list[str]) -> bool:
    """Whether these terms show these readings, one after the other; a series may break off with dots."""
    if items and items[-1] == "...":
        items = items[:-1]
    return len(items) <= len(terms) and all(c.readings.shows(item, n) for item, n in zip(items, terms, strict=False))


def jumps_make(c: Context, h: dict[str, Any]) -> bool:
    step = abs(Fraction(c.grid.count.step))
    return h["s"] == step and (h["k"] * step == h["t"])


def jump_is(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["s"] == abs(Fraction(c.grid.count.step)))


def change_is(c: Context, h: dict[str, Any]) -> bool:
    return c.same(h["a"] + signed(h["d"], h.get("more", "more")), h["b"])


def so_many(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["t"] == h["q"] * h["m"])


def jumps_so_many(c: Context, h: dict[str, Any]) -> bool:
    return jumps_make(c, h) and so_many(c, h)


def jump_so_many(c: Context, h: dict[str, Any]) -> bool:
    return jump_is(c, h) and h["s"] == h["q"] * h["m"]


def term_is(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(h["n"]), h["v"])


def adds(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["a"] + h["b"] == h["s"])


def is_product(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["n"] * h["a"] == h["b"])


def breaks(c: Context, h: dict[str, Any]) -> bool:
    return c.breaks_at is not None and c.same(c.value(c.breaks_at), h["v"])


def own_length(c: Context) -> int:
    claim = claim_of(c)
    if claim.family == "digit-run":
        return 1
    if isinstance(claim, BlockClaim) and claim.block_length:
        return claim.block_length
    lines = c.readings.lines(claim.parameters.get("along"))
    read = [[c.readings.number(n) for n in line] for line in lines]
    return next(k for k in range(1, c.grid.terms + 1) if all(line[k:] == line[:-k] for line in read))
