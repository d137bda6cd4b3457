"""Phrases of a word problem: its groups, what each holds, a landmark under its larger name."""

from typing import Any

from tests.words.sentence_checker import Context, Rule


def same_amount(c: Context, h: dict[str, Any]) -> bool:
    """Both sides name the same amount, and the left one is the count."""
    return h["a"] == h["b"] == c.value(int(c.extra["n"]))  # type: ignore[call-overload]


RULES: tuple[Rule, ...] = (
    Rule(("crate <n:N>",), ("crate <n:N>",), lambda c, h: h["n"] == c.extra["n"]),
    Rule(("each <s:D>",), ("each <s:D>",), lambda c, h: h["s"] == abs(c.grid.count.step)),
    Rule(("<a:V> = <b:V>",), ("<a:V> = <b:V>",), same_amount),
)
