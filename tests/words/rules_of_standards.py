"""Phrases about why a count serves a standard."""

import itertools
from fractions import Fraction
from typing import Any

from tests.words.number_names import multiple_named
from tests.words.sentence_checker import Context, Rule


def goes_by(c: Context, h: dict[str, Any]) -> bool:
    up = str(h["way"]).lower() in ("up", "sube")
    step = Fraction(c.grid.count.step)
    return h["s"] == h.get("s2", h["s"]) == abs(step) and up == (step > 0)


def starts_at(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(1), h["a"])


def largest_or_smallest(c: Context, h: dict[str, Any]) -> bool:
    values = [c.value(n) for n in c.terms]
    largest = str(h["end"]).lower() in ("largest", "mayor")
    return h["a"] == (max(values) if largest else min(values))


def so_many(c: Context, h: dict[str, Any]) -> bool:
    return h["k"] == c.grid.terms


def over(c: Context, h: dict[str, Any]) -> bool:
    """Every count is so many of these parts, and with fewer parts some would not be."""
    parts = h["k"]
    return all((c.value(n) * parts).denominator == 1 for n in c.terms)


def meets(c: Context, h: dict[str, Any]) -> bool:
    """A multiple is reached or passed after the start, or none is."""
    multiple = multiple_of(c, h)
    if c.grid.count.kind == "whole" and multiple % 10:
        return False
    # Counting back from a multiple leaves it, and passes none before the next one below.
    values = [c.value(n) if c.grid.count.step > 0 else -c.value(n) for n in c.terms]
    met = any((a // multiple) != (b // multiple) or b % multiple == 0 for a, b in itertools.pairwise(values))
    return met == (h.get("not") is None)


def multiple_of(c: Context, h: dict[str, Any]) -> Fraction:
    if "m" in h:
        return h["m"]  # type: ignore[no-any-return]
    return multiple_named(str(h["name"]), c.notation) or Fraction(1)


NOT_EN, NOT_ES = "(?P<not_W>does not reach)", "(?P<not_W>no alcanza)"

RULES: tuple[Rule, ...] = (
    Rule(("goes (?P<way_W>up|down) by <s:D>",), ("(?P<way_W>sube|baja) de <s:D> en <s2:D>",), goes_by),
    Rule(("starts at <a:V>",), ("empieza con <a:V>",), starts_at),
    Rule(
        ("has <a:V> as its (?P<end_W>largest|smallest) number",),
        ("tiene <a:V> como número (?P<end_W>mayor|menor)",),
        largest_or_smallest,
    ),
    Rule(("has <k:N> numbers",), ("tiene <k:N> números",), so_many),
    Rule(("is written over <k:N>",), ("se escribe con <k:N> abajo",), over),
    Rule(
        (f"(?:{NOT_EN}|reaches or passes) a multiple of <m:D>",),
        (f"(?:{NOT_ES}|alcanza o pasa) un múltiplo de <m:D>",),
        meets,
    ),
    Rule((), (r"(?:alcanza o pasa|no alcanza) (?P<one_N>1)(?= [^\W\d]{3})",), lambda c, h: True),
)
