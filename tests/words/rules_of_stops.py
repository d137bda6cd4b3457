"""Phrases about stops: the last count on the board, the next one, a cell further on, what the next jump passes."""

import re
from fractions import Fraction
from typing import Any

from tests.words.feature_names import PARTS
from tests.words.number_checks import is_round
from tests.words.reason_checks import first_whole_stretch
from tests.words.rule_pieces import LINE_EN, LINE_ES, MORE
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


def next_is_or_what_is_asked_for(c: Context, h: dict[str, Any]) -> bool:
    """The count ahead of its colon is the next one, or what stands in the cell that is asked for."""
    return next_is(c, h) or ("goal" in c.extra and far_is(c, {"v": h["b"]}))


def cell_ahead(c: Context, h: dict[str, Any]) -> bool:
    """A cell that is still empty at the stop, on a page grown just to hold it; and what stands in it, where that is said."""
    n = int(c.extra["goal"])  # type: ignore[call-overload]
    return n > after(c) and c.place(n) == (h["row"], h["column"]) and c.same(h.get("v", c.value(n)), c.value(n))


def far_is(c: Context, h: dict[str, Any]) -> bool:
    """What stands in the cell that is asked for."""
    return c.same(h["v"], c.value(int(c.extra["goal"])))  # type: ignore[call-overload]


def sizes(c: Context) -> tuple[Fraction, Fraction]:
    """How far from zero the last count and the next one are; on a clock, which knows none, from a midnight before both."""
    wrap = c.grid.count.wrap
    if wrap:
        before, due = Fraction(c.value(after(c))), Fraction(c.value(after(c) + 1))
        earlier = min(before, due) // wrap * wrap
        return before - earlier, due - earlier
    return abs(Fraction(c.value(after(c)))), abs(Fraction(c.value(after(c) + 1)))


def fills_up(c: Context, h: dict[str, Any]) -> bool:
    """The end of the last count and the jump make what the end of the next count and a full one make."""
    before, due = sizes(c)
    made = h["r"] + h["s"] == h["t"] == h.get("u", h["t"])
    whole = h["s"] == due - before and h["r"] <= before
    # Or what both have past a full place: 9 and 1 make 10, from 89 to 100.
    past = h["s"] == (due - before) % h["t"] and h["r"] == before % h["t"]
    return bool(made) and (whole or past)


def goes_beside(c: Context, h: dict[str, Any], n: int | None = None) -> bool:
    """The next count, or the n-th, stands a line after one on the board, so much more or less."""
    n = n or after(c) + 1
    known = n - c.grid.line_length
    rise = c.value(n) - c.value(known)
    less = str(h["more"]).lower() in ("less", "menos", "earlier", "antes")
    return (
        known >= 1
        and SIDES[str(h["side"]).lower()] == c.grid.fill
        and c.same(h["k"], c.value(known))
        and h["d"] == abs(rise)
        and less == (rise < 0)
    )


SIDES = {
    "under": "across",
    "debajo": "across",
    "beside": "down",
    "al lado": "down",
    "above": "across-up",
    "encima": "across-up",
}


def far_beside(c: Context, h: dict[str, Any]) -> bool:
    """The count asked for further on stands a line after one on the board, so much more or less."""
    return far_is(c, h) and goes_beside(c, h, int(c.extra["goal"]))  # type: ignore[call-overload]


def part_changes(c: Context, h: dict[str, Any]) -> bool:
    """A part of the last count as written, and the same part of the next one."""
    before, due = (c.grid.count.parts(after(c) + k) for k in (0, 1))
    # "The number of whole ounces" names the ounces too.
    named = [part for part in before if re.search(rf"\b(?:{PARTS[part]})\b", str(h["part"]), re.IGNORECASE)]
    return [(before[part], due[part]) for part in named] == [(h["x"], h["y"])]


def next_in_line(c: Context, h: dict[str, Any]) -> bool:
    """What the next count follows in its row or column."""
    n, at = after(c) + 1, 0 if str(h["line"]).lower() in ("row", "fila") else 1
    line = [m for m in range(1, n) if c.place(m)[at] == c.place(n)[at]]
    return c.place(n)[at] == h["i"] and c.same(c.value(line[-1]), h["k"]) and next_is(c, h)


def digit_becomes(c: Context, h: dict[str, Any]) -> bool:
    """What the claim reads off the next count, and off the count ahead of it in its line, where that is said."""
    n, along = after(c) + 1, c.claim.parameters.get("along") if c.claim else None
    at = {"row": 0, "column": 1}.get(str(along))
    in_line = [m for m in range(1, n) if at is None or c.place(m, upto=n)[at] == c.place(n, upto=n)[at]]
    x, y = (c.readings.number(m) for m in (in_line[-1], n))
    return h.get("x", x) == x and h.get("y", y) == y and ("y" in h or x == y)


def ends_or_begins(c: Context, h: dict[str, Any]) -> bool:
    """How the next number as written ends or begins: after which end, and with how many of the smaller place it is full."""
    said, due = (str(abs(int(c.value(after(c) + k)))) for k in (0, 1))
    if "x" in h:
        z = h.get("z", 0)
        return next_is(c, h) and [said[-1], due[-1], due[-1]] == [str(h["x"]), str(h["y"]), str(z)] and len(due) > 1
    if "d" in h:
        due_there = int(said[0]) + int(due_change(c))
        return next_is(c, h) and due[0] == str(h["y"]) and len(said) == len(due) and due_there == h["d"] != h["y"]
    longer = {2: ("tens decenas", "hundred centena"), 3: ("hundreds centenas", "thousand millar")}
    small, large = longer[len(said)]
    named = str(h["small"]).lower() in small.split() and str(h["large"]).lower() in large.split()
    return next_is(c, h) and due[0] == str(h["y"]) and len(due) == len(said) + 1 and named


def due_change(c: Context) -> Fraction:
    """By how much the first digit went on ahead of the stop."""
    first = [int(str(abs(int(c.value(n))))[0]) for n in (after(c) - 1, after(c))]
    return Fraction(first[1] - first[0])


def is_opened(c: Context, h: dict[str, Any]) -> bool:
    before, due = sizes(c)
    return h["f"] - h["s"] == h["r"] and h["s"] == before - due and before % h["f"] == 0


def is_passed(c: Context, h: dict[str, Any]) -> bool:
    """So much to what lies on the way, and so much more."""
    a, b = Fraction(c.value(after(c))), Fraction(c.value(after(c) + 1))
    step = Fraction(c.grid.count.step)
    return bool(h["p"] + h["q"] == abs(step) == abs(b - a) and c.same(a + (h["p"] if step > 0 else -h["p"]), h["l"]))


def digits_change(c: Context, h: dict[str, Any]) -> bool:
    count = c.grid.count
    before, due = (re.findall(r"\d", count.text(after(c) + k)) for k in (0, 1))
    changed = sum(a != b for a, b in zip(before, due, strict=False))
    if "k" not in h and "m" not in h:
        return changed == len(before) == len(due) == 2
    return len(due) == h.get("m", h.get("k")) and ("k" not in h or (len(before) == len(due) and changed == h["k"]))


def from_zero(c: Context, h: dict[str, Any]) -> bool:
    before, due = sizes(c)
    return h["s"] == abs(due - before) and 0 in (before, due)


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
    "goes back past": "leaves",
    "goes below": "leaves",
    "baja de": "leaves",
    "retrocede más allá de": "leaves",
}

# Not "after 3: 1, 6, 1", which says how often something comes back.
NOT_MORE = r"(?!: \d|[\d.,/]*\d)"

RULES: tuple[Rule, ...] = (
    Rule(
        (
            "the next jump, from <a:V> to <b:V>, (?P<way_W>passes|goes back past|goes below) <l:V>",
            "the next jump, from <a:V>, (?P<way_W>reaches) <l:V>",
        ),
        (
            "el salto siguiente, de <a:V> a <b:V>, (?P<way_W>pasa por|retrocede más allá de|baja de) (?:la )?<l:V>",
            "el salto siguiente, desde <a:V>, (?P<way_W>llega a) <l:V>",
        ),
        passes,
    ),
    Rule(
        (
            "<b:V> ends in <y:N>: after <x:N> (?:it starts again|comes <z:N>)",
            "<b:V> begins with <y:N>, not with <d:N>",
            "<b:V> begins with <y:N>: ten (?P<small_W>[a-z-]+) make an? (?P<large_W>[a-z-]+)",
        ),
        (
            "<b:V> termina en <y:N>: después de <x:N> (?:se empieza otra vez|viene <z:N>)",
            "<b:V> empieza con <y:N>, no con <d:N>",
            "<b:V> empieza con <y:N>: diez (?P<small_W>[a-z ]+) hacen una? (?P<large_W>[a-z ]+)",
        ),
        ends_or_begins,
    ),
    Rule(
        (AT_EN,),
        (AT_ES,),
        cell_ahead,
    ),
    Rule(
        ("^<v:V>, because", "^there stands <v:V>, because", "^I say <v:V>, because"),
        ("^(?:el )?<v:V>, porque", "^ahí va (?:el )?<v:V>, porque", "^digo (?:el )?<v:V>, porque"),
        far_is,
    ),
    Rule(
        ("^<v:V>: (?P<side_W>under|beside|above) <k:V>, <d:D> " + MORE,),
        ("^(?:el )?<v:V>: (?P<side_W>debajo|al lado|encima) (?:del|de(?: las?)?) <k:V>, <d:D> " + MORE,),
        far_beside,
    ),
    Rule(
        ("^<v:V>: <k:N> more jumps from <a:V>",),
        ("^(?:el )?<v:V>: <k:N> saltos más desde <a:V>",),
        lambda c, h: far_is(c, h) and last_said(c, h) and h["k"] == int(c.extra["goal"]) - after(c),  # type: ignore[call-overload]
    ),
    Rule(
        (
            "<b:V> comes next",
            "the next count, <b:V>,",
            "^(?:next is |we get |then we get |no, )?<b:V>(?=:|, and it|[.]| next[.]| comes next:)",
            "^(?:it stops at |not at |up to here, not at )<b:V>(?=[:.])",
        ),
        (
            "llegamos a <b:V>",
            "el siguiente, <b:V>,",
            "^(?:ahora decimos |decimos |con |ya no con |hasta aquí, con )?(?:el )?<b:V>(?=:|, y ahí|[.]|$| ya no| y ya no:)",
        ),
        next_is_or_what_is_asked_for,
    ),
    Rule(
        (f"in {LINE_EN}, after <k:V> comes <b:V>",),
        (f"en la {LINE_ES}, de <k:V> a <b:V>",),
        next_in_line,
    ),
    Rule(
        (r"(?<=; )<x:D> is <y:D>(?=[.](?!\d))",),
        (r"(?<=; )<x:D> son <y:D>(?=[.](?!\d))",),
        lambda c, h: h["x"] == h["y"] == c.value(after(c)),
    ),
    Rule(
        ("(?:it goes|or) (?P<side_W>under|beside|above) <k:V>, <d:D> " + MORE,),
        ("(?:van?|o) (?P<side_W>debajo|al lado|encima) de (?:la )?<k:V>, <d:D> " + MORE,),
        goes_beside,
    ),
    Rule(
        ("(?P<part_W>the [a-z ]+), <x:N> to <y:N>",),
        ("(?P<part_W>(?:el|la|los|las) [a-záéíóúüñ ]+), de <x:N> a <y:N>",),
        part_changes,
    ),
    Rule(
        (
            "(?P<part_W>the [a-z' -]+) (?:goes|go) from <x:N> to <y:N>",
            r"(?P<part_W>the [a-z' -]+) (?:goes|go) to <y:N>",
            "(?P<part_W>the [a-z' -]+) stays? <x:N>",
            "the digits make <y:N>, not <x:N>",
        ),
        (
            "(?P<part_W>(?:el|la|los|las) [a-záéíóúüñ ]+) pasan? de <x:N> a <y:N>",
            "(?P<part_W>(?:el|la|los|las) [a-záéíóúüñ ]+) pasan? a <y:N>",
            "(?P<part_W>(?:el|la|los|las) [a-záéíóúüñ ]+) siguen? en <x:N>",
            "las cifras suman <y:N>, no <x:N>",
        ),
        digit_becomes,
    ),
    Rule(
        ("<r:D> and <s:D> more is <u:D>, that is <t:D>", "<r:D> and <s:D> make <t:D>"),
        ("<r:D> y <s:D> más son <u:D>, o sea, <t:D>", "<r:D> y <s:D> son <t:D>"),
        fills_up,
    ),
    Rule(
        ("<f:D> is <r:D> and <s:D>, so <a:V> is <b:V> and <again:D>",),
        ("<f:D> son <r:D> y <s:D>; <a:V> son <b:V> y <again:D>",),
        lambda c, h: is_opened(c, h) and last_said(c, h) and next_is(c, h) and h["again"] == h["s"],
    ),
    Rule(("<s:D> less than <f:D> is <r:D>",), ("<f:D> menos <s:D> son <r:D>",), is_opened),
    Rule(
        ("<p:D> (?:back )?to <l:V>, then <q:D> (?:more|further back)",),
        ("<p:D> (?:menos )?hasta (?:el )?<l:V> y luego <q:D> (?:más|menos)",),
        is_passed,
    ),
    Rule(
        ("<s:D> more reaches zero", "that is <s:D> below zero"),
        ("con <s:D> más llegamos a cero", "eso es <s:D> por debajo de cero"),
        from_zero,
    ),
    Rule(
        ("both digits change", "all <k:N> digits change", "<k:N> of <m:N> digits change", "now there are <m:N> digits"),
        (
            "cambian las dos cifras",
            "cambian las <k:N> cifras",
            "cambian <k:N> de <m:N> cifras",
            "ahora hay <m:N> cifras",
        ),
        digits_change,
    ),
    Rule(
        (),
        ("con <b:V> deja de cumplirse",),
        next_is,
    ),
    Rule(
        ("(?:a jump|making jumps) (?P<back_W>back )?of <s:D>",),
        ("(?:un salto|con saltos) (?P<back_W>hacia atrás )?de <s:D>",),
        jump_is_this,
    ),
    # Before "from 1 h 45 min" is taken for the last count.
    Rule(("from <v:V> on,",), ("a partir de <v:V>,",), first_whole_stretch),
    Rule(
        ("(?:we said|point to|stop at|after|we are at|from|up to) <a:V>" + NOT_MORE,),
        ("(?:dijimos|señala|después de|vamos por|desde|hasta) <a:V>" + NOT_MORE,),
        last_said,
    ),
)

PROBE_EN = "(?:say|is|will|would|whether) <v:V>"
PROBE_ES = "(?:diremos(?: alguna vez)?|vamos a decir|diríamos|si diríamos) <v:V>"
PROBES: tuple[Rule, ...] = (
    Rule((PROBE_EN,), (PROBE_ES,), lambda c, h: c.same(h["v"], Fraction(c.extra["value"]))),  # type: ignore[arg-type]
    *RULES,
)
