"""Phrases about stops: the last count on the board, the next one, a cell further on, what the next jump passes."""

from fractions import Fraction
from typing import Any

from tests.words.number_checks import is_round
from tests.words.sentence_checker import Context, Rule

AT_EN = "row <row:N>, column <column:N>"
AT_ES = "la fila <row:N>, columna <column:N>"


def after(c: Context) -> int:
    """After how many counts the stop is."""
    return int(c.extra["after"])  # type: ignore[call-overload]


def last_said(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(after(c)), h["a"])


def next_is(c: Context, h: dict[str, Any]) -> bool:
    return c.same(c.value(after(c) + 1), h["b"])


def cell_ahead(c: Context, h: dict[str, Any]) -> bool:
    """A cell that is still empty at the stop, on a page grown just to hold it; and what stands in it, where that is said."""
    n = int(c.extra["goal"])  # type: ignore[call-overload]
    return n > after(c) and c.place(n) == (h["row"], h["column"]) and c.same(h.get("v", c.value(n)), c.value(n))


def jump_is_this(c: Context, h: dict[str, Any]) -> bool:
    step = Fraction(c.grid.count.step)
    return h["s"] == abs(step) and (h.get("back") is not None) == (step < 0)


def passes(c: Context, h: dict[str, Any]) -> bool:
    """From the last count to the next one something lies on the way, is reached, or is left behind."""
    a, b = c.value(after(c)), c.value(after(c) + 1)
    landmark, wrap = h["l"], c.grid.count.wrap
    if wrap:
        landmark += (min(a, b) - landmark + wrap - 1) // wrap * wrap
    within = {"passes": min(a, b) < landmark < max(a, b), "reaches": landmark == b, "leaves": min(a, b) < landmark <= a}
    return (
        is_round(c, h["l"])
        and last_said(c, h)
        and next_is(c, {"b": h.get("b", b)})
        and within[WAYS[str(h["way"]).lower()]]
    )


WAYS = {
    "passes": "passes",
    "pasa por": "passes",
    "reaches": "reaches",
    "llega a": "reaches",
    "leaves": "leaves",
    "deja atrás": "leaves",
}

# Not "after 3: 1, 6, 1", which says how often something comes back.
NOT_MORE = r"(?!: \d|[\d.,/]*\d)"

RULES: tuple[Rule, ...] = (
    Rule(
        (
            "the next jump, from <a:V> to <b:V>, (?P<way_W>passes|leaves) <l:V>",
            "the next jump, from <a:V>, (?P<way_W>reaches) <l:V>",
        ),
        (
            "el salto siguiente, de <a:V> a <b:V>, (?P<way_W>pasa por|deja atrás) <l:V>",
            "el salto siguiente, desde <a:V>, (?P<way_W>llega a) <l:V>",
        ),
        passes,
    ),
    Rule(
        (f"<v:V> stands in {AT_EN}", f"in {AT_EN} we will have <v:V>", AT_EN),
        (f"en {AT_ES} tendremos <v:V>", AT_ES),
        cell_ahead,
    ),
    Rule(
        ("<b:V> comes next", "the next count, <b:V>,"),
        ("llegamos a <b:V>", "el siguiente, <b:V>,"),
        next_is,
    ),
    Rule(("a jump (?P<back_W>back )?of <s:D>",), ("un salto (?P<back_W>hacia atrás )?de <s:D>",), jump_is_this),
    Rule(
        ("(?:we said|point to|stop at|after|we are at|from|up to) <a:V>" + NOT_MORE,),
        ("(?:dijimos|señala|después de|vamos por|desde|hasta) <a:V>" + NOT_MORE,),
        last_said,
    ),
)

PROBE_EN = "(?:say|is|would|whether) <v:V>"
PROBE_ES = "(?:diremos(?: alguna vez)?|vamos a decir|diríamos|si diríamos) <v:V>"
PROBES: tuple[Rule, ...] = (
    Rule((PROBE_EN,), (PROBE_ES,), lambda c, h: c.same(h["v"], Fraction(c.extra["value"]))),  # type: ignore[arg-type]
    *RULES,
)
