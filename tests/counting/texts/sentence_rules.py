"""The grammar of the sentences about patterns: every phrase that may hold a number, and when it is so.

Rules are tried in this order; the longer phrase comes before the one it contains.
"""

import itertools
import re
from collections.abc import Sequence
from fractions import Fraction
from itertools import islice
from typing import Any

from tests.counting.texts.sentence_checker import Context, Rule

MORE = r"(?P<more_W>more|less|más|menos)"


def signed(size: Fraction, more: str) -> Fraction:
    return -size if more in ("less", "menos") else size


def claim_of(c: Context) -> Any:
    assert c.claim is not None
    return c.claim


def multiple_of(c: Context) -> Fraction:
    claim = claim_of(c)
    return claim.get("multiple") or claim.get("modulus")


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


# --- what several rules ask


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
    return int(claim.length or 1)


# --- readings in lines


def along_of(h: dict[str, Any]) -> str:
    return "column" if h["line"].lower() in ("column", "columna") else "row"


def line_shows(c: Context, h: dict[str, Any]) -> bool:
    return shown(c, c.readings.line(along_of(h), h["i"]), h["s"])


def count_shows(c: Context, h: dict[str, Any]) -> bool:
    return shown(c, list(c.terms), h["s"])


def line_wrote(c: Context, h: dict[str, Any]) -> bool:
    terms = texts(c, h["l"], c.readings.line(along_of(h), h["i"]))
    if terms is None:
        return False
    return shown(c, terms, h["s"]) if "s" in h else all(c.readings.shows(h["x"][0], n) for n in terms)


def line_stays(c: Context, h: dict[str, Any]) -> bool:
    line = c.readings.line(along_of(h), h["i"]) if "i" in h else list(c.terms)
    ends = c.same(c.value(line[0]), h["a"]) and c.same(c.value(line[-1]), h["b"])
    return ends and all(c.readings.shows(h["x"][0], n) for n in line)


def count_wrote(c: Context, h: dict[str, Any]) -> bool:
    terms = texts(c, h["l"])
    if terms is None:
        return False
    return shown(c, terms, h["s"]) if "s" in h else all(c.readings.shows(h["x"][0], n) for n in terms)


def each_line_starts(c: Context, h: dict[str, Any]) -> bool:
    claim = claim_of(c)
    lines = c.readings.lines(claim.get("along"))
    if claim.get("lines"):
        lines = [c.readings.line(claim.get("along"), i) for i in claim.get("lines")]
    return shown(c, [line[0] for line in lines], h["s"])


def block_of_line(c: Context, h: dict[str, Any]) -> bool:
    claim = claim_of(c)
    line = c.readings.line(along_of(h), h["i"]) if "i" in h else max(c.readings.lines(claim.get("along")), key=len)
    return shown(c, line, h["s"]) and int(h.get("k", own_length(c))) == own_length(c)


def always_shows(c: Context, h: dict[str, Any]) -> bool:
    return all(c.readings.shows(h["x"][0], n) for n in c.terms)


def length_is(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["k"] == own_length(c))


def starts_with_two(c: Context, h: dict[str, Any]) -> bool:
    line = max(c.readings.lines(claim_of(c).get("along")), key=len)
    return shown(c, line, h["x"] + h["y"])


def parity_of(c: Context, h: dict[str, Any]) -> bool:
    odd = any(word in h["p"] for word in ("odd", "impar"))
    return (h["a"] % 2 == 1) == odd


def parities_of(c: Context, h: dict[str, Any]) -> bool:
    odd = any(word in h["p"] for word in ("odd", "impar"))
    terms = texts(c, h["l"])
    return terms is not None and all((c.value(n) % 2 == 1) == odd for n in terms)


def two_parities_in_line(c: Context, h: dict[str, Any]) -> bool:
    line = [c.value(n) for n in c.readings.line(along_of(h), h["i"])]
    return line[:2] == [h["a"], h["b"]] and parity_of(c, h) and parity_of(c, {"a": h["b"], "p": h["q"]})


def past_is(c: Context, h: dict[str, Any]) -> bool:
    modulus = multiple_of(c)
    return bool(h["m"] % modulus == 0 and 0 <= h["r"] < modulus and c.same(h["m"] + h["r"], h["a"]))


def all_past(c: Context, h: dict[str, Any]) -> bool:
    return h["m"] == multiple_of(c) and all(c.value(n) % h["m"] == h["r"] for n in c.terms)


def note_shows(c: Context, h: dict[str, Any]) -> bool:
    """The reading at the break is y, and x was due: what the term one block earlier in its line shows, moved on."""
    if not breaks(c, h) or c.breaks_at is None:
        return False
    claim, n = claim_of(c), c.breaks_at
    if not c.readings.shows(h["y"][0], n):
        return False
    if "x" not in h:
        return True
    if claim.family == "digit-run":
        before = c.readings.number(cell_before(c, n, 1))
        return before is not None and h["x"][0] == str(before + claim.get("change"))
    return c.readings.shows(h["x"][0], cell_before(c, n, own_length(c))) and h["x"] != h["y"]


def cell_before(c: Context, n: int, k: int) -> int:
    """The term k cells before the n-th in its line, when the count has gone on to the n-th."""
    along, grown = claim_of(c).get("along"), c.grid.grown(n)
    at = {"row": 0, "column": 1}.get(along)
    same_line = (m for m in range(n - 1, 0, -1) if at is None or grown.place(m)[at] == grown.place(n)[at])
    return list(islice(same_line, k))[-1]


# --- runs


def run_change(c: Context, h: dict[str, Any]) -> bool:
    change = claim_of(c).get("change")
    down = any(word in h["up"].lower() for word in ("down", "baja"))
    return bool(h["d"] == abs(change) and down == (change < 0) and h.get("e", h["d"]) == h["d"])


def place_sum(c: Context, h: dict[str, Any]) -> bool:
    return signed(h["t"], h["more"]) == signed(h["q"] * h["m"], h["more2"])


def carry_sum(c: Context, h: dict[str, Any]) -> bool:
    parts = signed(h["x"], h["more2"]) + signed(h["y"], h["more3"])
    return signed(h["t"], h["more"]) == parts


def stride_of(c: Context) -> int:
    claim = claim_of(c)
    along = claim.get("along")
    line = max(c.readings.lines(along), key=len)
    return line[1] - line[0] if len(line) > 1 else 0


def line_total(c: Context, h: dict[str, Any]) -> bool:
    """The change along one block of a line."""
    step = Fraction(c.grid.count.step)
    total = step * stride_of(c) * own_length(c)
    more = h.get("more")
    return abs(total) == h["t"] and (more is None or signed(h["t"], more) == total)


def parity_total(c: Context, h: dict[str, Any]) -> bool:
    stride = stride_of(c)
    return (h["t"] == abs(Fraction(c.grid.count.step)) * stride or not stride) and (h["t"] % 2 == 1) == (
        "odd" in h["p"] or "impar" in h["p"]
    )


# --- landmarks and how many


def marks(c: Context) -> list[int]:
    return [n for n in c.terms if c.value(n) % multiple_of(c) == 0]


def marks_lie(c: Context, h: dict[str, Any]) -> bool:
    at = 1 if h["line"].lower().startswith("col") else 0
    lines = sorted({c.grid.place(n)[at] for n in marks(c)})
    return h.get("m", multiple_of(c)) == multiple_of(c) and [str(line) for line in lines] == h["i"]


def marks_every(c: Context, h: dict[str, Any]) -> bool:
    found = marks(c)
    every = h.get("k", 1)
    gaps = {b - a for a, b in itertools.pairwise(found)}
    return h.get("m", multiple_of(c)) == multiple_of(c) and gaps <= {every} and h.get("n", found[0]) == found[0]


def these_are_marks(c: Context, h: dict[str, Any]) -> bool:
    terms = texts(c, h["l"], marks(c))
    return terms is not None and terms == marks(c)[: len(terms)] and h["m"] == multiple_of(c)


def all_are_marks(c: Context, h: dict[str, Any]) -> bool:
    terms = texts(c, h["l"], marks(c))
    return terms is not None and h["m"] == multiple_of(c)


def mark_at_break(c: Context, h: dict[str, Any]) -> bool:
    if not breaks(c, h) or c.breaks_at is None:
        return False
    is_mark = c.value(c.breaks_at) % multiple_of(c) == 0
    says_mark = h.get("not") is None
    return is_mark == says_mark and c.grid.grown(c.breaks_at).place(c.breaks_at) == (h["row"], h["column"])


def terms_in(c: Context, low: Fraction, high: Fraction) -> list[int]:
    return [n for n in c.terms if low <= c.value(n) < high]


def recount(c: Context) -> list[int]:
    """Counts in each interval between multiples that lies wholly between the first and the last count."""
    m = multiple_of(c)
    ends = sorted((c.value(1), c.value(c.grid.terms)))
    low = -(-ends[0] // m)
    high = ends[1] // m
    many = [len(terms_in(c, j * m, (j + 1) * m)) for j in range(low, high)]
    return many if c.grid.count.step > 0 else many[::-1]


def holds_so_many(c: Context, h: dict[str, Any]) -> bool:
    series = h["s"] if "s" in h else [str(h["k"])]
    dots = series[-1] == "..."
    many = [str(number) for number in recount(c)]
    said = series[:-1] if dots else series
    turns = said * (len(many) // len(said) + 1)
    fits = said == many[: len(said)] if dots or h.get("once") else turns[: len(many)] == many
    return h["m"] == multiple_of(c) and fits


def said_between(c: Context, h: dict[str, Any]) -> bool:
    low, high = h["a"], h["b"]
    terms = texts(c, h["l"])
    return terms is not None and high - low == multiple_of(c) and sorted(terms) == terms_in(c, low, high)


def so_many_between(c: Context, h: dict[str, Any]) -> bool:
    terms = terms_in(c, h["a"], h["b"])
    ends = [c.value(terms[0]), c.value(terms[-1])] if terms else []
    return len(terms) == h["n"] and h["b"] - h["a"] == multiple_of(c) and ("x" not in h or ends == [h["x"], h["y"]])


def is_own_multiple(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["m"] == multiple_of(c))


# --- sums, table, opposites


def pair_sums(c: Context, h: dict[str, Any]) -> bool:
    return all(map(c.is_term, (h["a"], h["b"], h["x"], h["y"]))) and h["a"] + h["b"] == h["x"] + h["y"] == h["s"]


def digit_sum(c: Context, h: dict[str, Any]) -> bool:
    digits = h["digits"].split(" + ")
    return sum(map(int, digits)) == h["s"] and any(str(abs(int(c.value(n)))) == "".join(digits) for n in c.terms)


def pair_total(c: Context, h: dict[str, Any]) -> bool:
    """What the first and last count add to, or opposite corners of some 2 by 2 block."""
    if claim_of(c).get("which") == "ends":
        return bool(c.value(1) + c.value(c.grid.terms) == h["s"])
    corners = ((c.grid.at(*c.grid.place(n)), c.grid.at(*(at + 1 for at in c.grid.place(n)))) for n in c.terms)
    return any(a and b and c.value(a) + c.value(b) == h["s"] for a, b in corners)


def two_sums(c: Context, h: dict[str, Any]) -> bool:
    return h["a"] + h["b"] == h["s"] and h["x"] + h["y"] == h["t"]


def nine_total(c: Context, h: dict[str, Any]) -> bool:
    middle = next(n for n in c.terms if c.same(c.value(n), h["v"]))
    row, column = c.grid.place(middle)
    nine = [c.grid.at(row + down, column + right) for down in (-1, 0, 1) for right in (-1, 0, 1)]
    return None not in nine and sum((c.value(n) for n in nine if n), Fraction(0)) == h["s"]


def line_adds(c: Context, h: dict[str, Any]) -> bool:
    return sum((c.value(n) for n in c.readings.line(along_of(h), h["i"])), Fraction(0)) == h["s"]


def totals_grow(c: Context, h: dict[str, Any]) -> bool:
    said = signed(h["d"], h.get("more", "less" if h.get("up", "").lower() in ("down", "baja") else "more"))
    return bool(said == claim_of(c).get("difference"))


def totals_product(c: Context, h: dict[str, Any]) -> bool:
    difference = claim_of(c).get("difference")
    return (
        h["k"] * h["e"] == h["t"] == abs(difference)
        and h["n"] == h["k"]
        and h["a"] == h["e"]
        and h.get("b", h["t"]) == h["t"]
    )


def ends_move(c: Context, h: dict[str, Any]) -> bool:
    return two_sums(c, {**h, "t": h["u"]}) and h["s"] == h["u"] and h["p"] == h["q"] == abs(c.grid.count.step)


def table_term(c: Context, h: dict[str, Any]) -> bool:
    return h["n"] == h["k"] and h["k"] * h["s"] == c.value(h["n"])


def opposite(c: Context, h: dict[str, Any]) -> bool:
    return h["a"] == -h["b"] and c.is_term(h["a"], c.breaks_at) and c.is_term(h["b"], c.breaks_at)


def opposite_pairs(c: Context, h: dict[str, Any]) -> bool:
    items = [item for item in h["s"] if item != "..."]
    terms = texts(c, items)
    pairs = [] if terms is None else list(zip(terms[::2], terms[1::2], strict=True))
    return bool(pairs) and all(c.value(a) == -c.value(b) for a, b in pairs)


def far_from_zero(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["a"] < 0 < h["b"] and -h["a"] == h["d"] == h["e"] == h["b"])


def neighbour_is(c: Context, h: dict[str, Any]) -> bool:
    claim = claim_of(c)
    return signed(h["d"], h["more"]) == claim.get("difference")


def step_is(c: Context, h: dict[str, Any]) -> bool:
    more = h.get("more") or ("less" if h["up"].lower() in ("down", "baja") else "more")
    return signed(h["d"], more) == claim_of(c).get("difference")


def always(c: Context, h: dict[str, Any]) -> bool:
    return True


# --- answers to false claims


def claim_has_blocks(c: Context, h: dict[str, Any]) -> bool:
    claim = claim_of(c)
    return h["b"] == len(claim.get("blocks")) and h["n"] == len(c.readings.lines(claim.get("along")))


def line_up_to(c: Context, h: dict[str, Any]) -> bool:
    line = c.readings.line(along_of(h), h["i"]) if "i" in h else list(c.terms)
    return term_is(c, h) and _ends_of(c, h, line)


def _ends_of(c: Context, h: dict[str, Any], line: list[int]) -> bool:
    upto = [n for n in line if n <= h["n"]]
    series = h["s"]
    if series[0] == "...":
        return len(series) == 7 and shown(c, upto[-6:], series[1:])
    return len(series) == len(upto) and shown(c, upto, series)


def run_goes(c: Context, h: dict[str, Any]) -> bool:
    a = next((n for n in c.terms if c.same(c.value(n), h["a"])), None)
    b = next((n for n in c.terms if c.same(c.value(n), h["b"]) and n != a), None)
    if a is None or b is None:
        return False
    return c.readings.shows(str(h["x"]), a) and c.readings.shows(str(h["y"]), b)


def marks_here(c: Context, h: dict[str, Any]) -> bool:
    found, numbers = marks(c), [int(number) for number in h["n"]]
    terms = texts(c, h["l"]) if c.grid.count.wrap is None else numbers
    if terms != numbers or numbers != found[: len(numbers)] or h.get("m", multiple_of(c)) != multiple_of(c):
        return False
    if "rows" not in h:
        return True
    places = [c.grid.place(n) for n in numbers]
    return [
        h["rows"] == [str(row) for row in sorted({row for row, _ in places})],
        h["columns"] == [str(column) for column in sorted({column for _, column in places})],
    ] == [True, True] and numbers == found


LINE_EN = r"(?P<line_W>row|column) <i:N>"
LINE_ES = r"(?P<line_W>fila|columna) <i:N>"
SERIES_END = r"(?=[.,;)]|$| en la| in )"

RULES: tuple[Rule, ...] = (
    # names that hold a number
    Rule(("remainders? by <m:D>",), ("restos? al dividir entre <m:D>",), is_own_multiple),
    Rule(("parts? past an? <m:M>",), ("partes? que pasan? de una? <m:M>",), is_own_multiple),
    # jumps
    Rule(
        (
            "<k:N> jumps of <s:D> make <t:D>, which is <q:N> <m:M>",
            "<k:N> jumps of <s:D> make <t:D>, which is <q:N> × <m:D>",
        ),
        (
            "<k:N> saltos de <s:D> hacen <t:D>, (?:o sea,|que es lo mismo que) <q:N> <m:M>",
            "<k:N> saltos de <s:D> hacen <t:D>, (?:o sea,|que es lo mismo que) <q:N> × <m:D>",
        ),
        jumps_so_many,
    ),
    Rule(
        (
            "each jump is <s:D>, which is <q:N> <m:M>",
            "each jump is <s:D>, which is <q:N> × <m:D>",
            "each jump of <s:D> is <q:N> <m:M>",
            "each jump of <s:D> is <q:N> × <m:D>",
        ),
        (
            "cada salto es de <s:D>, (?:o sea,|que es lo mismo que) <q:N> <m:M>",
            "cada salto es de <s:D>, (?:o sea,|que es lo mismo que) <q:N> × <m:D>",
            "cada salto de <s:D> es <q:N> <m:M>",
            "cada salto de <s:D> es <q:N> × <m:D>",
        ),
        jump_so_many,
    ),
    Rule(("<k:N> jumps of <s:D> make <t:D>",), ("<k:N> saltos de <s:D> hacen <t:D>",), jumps_make),
    Rule(
        ("a jump of <a:D> is (?P<p_W>even|odd): from <b:V>, (?P<q_W>even|odd), we come to <c:V>, (?P<r_W>even|odd)",),
        (
            "un salto de <a:D> es (?P<p_W>par|impar): de <b:V>, (?P<q_W>par|impar), llegamos a <c:V>, (?P<r_W>par|impar)",
        ),
        lambda c, h: (
            parity_of(c, h) and parity_of(c, {"a": h["b"], "p": h["q"]}) and parity_of(c, {"a": h["c"], "p": h["r"]})
        ),
    ),
    Rule(
        ("(?:a|each) jump of <a:D> is (?P<p_W>even|odd)",),
        ("(?:un|cada) salto de <a:D> es (?P<p_W>par|impar)",),
        lambda c, h: parity_of(c, h) and jump_is(c, {"s": h["a"]}),
    ),
    Rule(
        (r"each jump is <s:D>(?: more| less)?", "(?:a|each) jump of <s:D>"),
        (r"cada salto es de <s:D>(?: más| menos)?", "(?:un|cada) salto de <s:D>"),
        jump_is,
    ),
    # where something ends
    Rule(
        ("at <v:V> the <f:W> (?:is|are) <y:S>, not <x:S>", "at <v:V> the <f:W> (?:is|are) <y:S> where <x:S> was due"),
        (
            "en <v:V> (?:el|la|los|las) <f:W> (?:es|son) <y:S>, no <x:S>",
            "en <v:V> (?:el|la|los|las) <f:W> (?:es|son) <y:S> y tocaba <x:S>",
        ),
        note_shows,
    ),
    Rule(
        ("at <v:V> the <f:W> starts? again at <y:S>",),
        ("en <v:V> (?:el|la|los|las) <f:W> vuelven? a empezar en <y:S>",),
        note_shows,
    ),
    Rule(
        ("<v:V> is an? <m:M> too, in row <row:N>, column <column:N>",),
        ("en <v:V> también hay una? <m:M>, en la fila <row:N>, columna <column:N>",),
        mark_at_break,
    ),
    Rule(
        ("<v:V> comes in row <row:N>, column <column:N>, and it is (?P<not_W>not) an? <m:M>",),
        ("<v:V> queda en la fila <row:N>, columna <column:N>, y ahí (?P<not_W>no) hay una? <m:M>",),
        mark_at_break,
    ),
    Rule(
        ("at <v:V> one more pair comes, <a:V> and <b:V>",),
        ("en <v:V> llega una pareja más, <a:V> y <b:V>",),
        lambda c, h: breaks(c, h) and opposite(c, h),
    ),
    Rule(
        ("it stops at <v:V>", "it is different at <v:V>", "that changes at <v:V>", "until <v:V>"),
        ("deja de cumplirse en <v:V>", "en <v:V> cambia", "eso cambia en <v:V>", "hasta llegar a <v:V>"),
        breaks,
    ),
    # the table
    Rule(
        ("the <n:O> one is <k:N> jumps of <s:D>", "the <n:O> one we say is <k:N> times <s:D>"),
        ("el <n:O> número es <k:N> saltos de <s:D>", "el <n:O> número es <k:N> veces <s:D>"),
        table_term,
    ),
    # terms by their place in the count
    Rule(
        (
            "the <n:O> count is <v:V>, and in " + LINE_EN + " the <f:W> are <s:S>",
            "the <n:O> count is <v:V>, and the <f:W> go <s:S>",
        ),
        (
            "el <n:O> número es <v:V>, y en la " + LINE_ES + " (?:los|las) <f:W> son <s:S>",
            "el <n:O> número es <v:V>, y (?:los|las) <f:W> van así: <s:S>",
        ),
        line_up_to,
    ),
    Rule(
        (
            "the <n:O> count, <v:V>",
            "the <n:O> count is <v:V>",
            "<v:V> is the <n:O> count",
            "the <n:O> one we wrote, <v:V>",
        ),
        (
            "el <n:O> número, <v:V>",
            "el <n:O> número es <v:V>",
            "<v:V> es el <n:O> número",
            "el <n:O> número que escribimos, <v:V>",
        ),
        term_is,
    ),
    Rule(
        ("from the <n:O> count on it holds",),
        ("desde el <n:O> número sí se cumple",),
        lambda c, h: h["n"] == c.true_from,
    ),
    # steps and neighbours
    Rule(
        ("<a:V> and <d:D> " + MORE + " is <b:V>, then <e:D> (?:more|less) is <z:V>",),
        ("empezamos en <a:V>, con <d:D> " + MORE + " llegamos a <b:V> y con <e:D> (?:más|menos) a <z:V>",),
        lambda c, h: change_is(c, h) and change_is(c, {"a": h["b"], "d": h["e"], "b": h["z"], "more": h["more"]}),
    ),
    Rule(
        (
            "<a:V> and <d:D> " + MORE + " is <b:V>",
            r"from <a:V> to <b:V>(?:, one step [a-z ]+,)? (?:it )?is <d:D> " + MORE,
        ),
        (
            "empezamos en <a:V> y con <d:D> " + MORE + " llegamos a <b:V>",
            r"(?:mira )?de <a:V> a <b:V>(?:, un paso [a-z ]+,|:)? hay (?:otra vez |también )?<d:D> " + MORE,
        ),
        lambda c, h: change_is(c, h) and c.is_term(h["a"]) and c.is_term(h["b"]),
    ),
    # sums
    Rule(
        (
            "<a:V> \\+ <b:V> = <s:D>; one side moves (?:up|down) <p:D>, the other (?:up|down) <q:D>, and <x:V> \\+ <y:V> = <u:D>",
        ),
        (
            "<a:V> \\+ <b:V> = <s:D>; un lado (?:sube|baja) <p:D>, el otro (?:sube|baja) <q:D>, y <x:V> \\+ <y:V> = <u:D>",
        ),
        ends_move,
    ),
    Rule(
        ("<a:V> \\+ <b:V> and <x:V> \\+ <y:V> both make <s:D>",),
        ("<a:V> \\+ <b:V> y <x:V> \\+ <y:V> hacen <s:D> las dos veces",),
        pair_sums,
    ),
    Rule(
        (r"(?P<digits_W>\d(?: \+ \d)+) = <s:N>",),
        (r"(?P<digits_W>\d(?: \+ \d)+) = <s:N>",),
        digit_sum,
        family="digit-sum",
    ),
    Rule(
        ("<a:V> \\+ <b:V> = <x:V> \\+ <y:V>",),
        ("<a:V> \\+ <b:V> = <x:V> \\+ <y:V>",),
        lambda c, h: pair_sums(c, {**h, "s": h["a"] + h["b"]}),
    ),
    Rule(("<a:V> \\+ <b:V> = <s:D>",), ("<a:V> \\+ <b:V> = <s:D>",), adds),
    Rule(
        (
            "<k:N> counts, each <e:D> (?:more|less), make <t:D> (?:more|less): <n:N> × <a:D> = <b:D>",
            "<k:N> counts in a [a-z]+, each <e:D> (?:more|less) than its neighbor, and <n:N> × <a:D> = <t:D>",
        ),
        (
            "<k:N> números, cada uno <e:D> (?:más|menos), hacen <t:D> (?:más|menos): <n:N> × <a:D> = <b:D>",
            "<k:N> números en una [a-z]+, cada uno <e:D> (?:más|menos) que su vecino, y <n:N> × <a:D> = <t:D>",
        ),
        totals_product,
    ),
    Rule(
        (LINE_EN + " adds to <s:D>", LINE_EN + " to <s:D>"),
        ("la " + LINE_ES + " suma <s:D>",),
        line_adds,
    ),
    Rule(
        ("the 9 counts around <v:V> add to <s:D>", "around <v:V>, nine numbers make <s:D>"),
        ("los 9 números alrededor de <v:V> suman <s:D>", "alrededor de <v:V>, nueve números suman <s:D>"),
        nine_total,
    ),
    Rule(
        ("adds to <d:D> " + MORE + " than", "totals go (?P<up_W>up|down) <d:D> from", "the next has <d:D> " + MORE),
        ("suma <d:D> " + MORE + " que", "el total (?P<up_W>sube|baja) <d:D>", "la siguiente tiene <d:D> " + MORE),
        totals_grow,
    ),
    Rule(
        ("in every (?:2 by 2|3 by 3) block", "of every (?:2 by 2|3 by 3) block", "9 × the middle"),
        ("(?:en|de) cada bloque de (?:2 por 2|3 por 3)", "9 × el centro"),
        always,
    ),
    # more of the table
    Rule(
        ("the start is 1 × <s:D>, and each jump is one more <e:D>",),
        ("empezamos en 1 × <s:D> y cada salto es un <e:D> más",),
        lambda c, h: h["s"] == h["e"] == c.value(1) == c.grid.count.step,
    ),
    Rule(
        ("count the jumps up to <v:V>: there are <k:N>",),
        ("cuenta los saltos hasta <v:V>: hay <k:N>",),
        lambda c, h: h["k"] * c.grid.count.step == h["v"],
    ),
    Rule(
        ("that makes <v:V>", "so that one is <v:V>"),
        ("eso da <v:V>", "por eso ahí está <v:V>"),
        lambda c, h: c.is_term(h["v"]),
    ),
    Rule(
        ("here both make <s:D>", "both times I get <s:D>"),
        ("aquí las dos veces da <s:D>", "las dos veces me da <s:D>"),
        pair_total,
    ),
    Rule(("that is <n:N> × <a:D>",), ("(?<=:) es <n:N> × <a:D>",), lambda c, h: h["a"] == c.grid.count.step),
    Rule(("<n:N> × <a:D> = <b:D>",), ("<n:N> × <a:D> = <b:D>",), is_product),
    Rule(
        ("its place times <s:D>", "n jumps of <s:D>"),
        ("multiplicado por <s:D>", "n saltos de <s:D>"),
        lambda c, h: h["s"] == claim_of(c).get("step"),
    ),
    # opposites
    Rule(
        (
            "from <a:V> to 0[^,.]* is <d:D>, and from 0[^,.]* to <b:V> is <e:D>",
            "<a:V> is <d:D> below 0(?: and|,) <b:V> is <e:D> above",
        ),
        (
            "de <a:V> a 0[^,.]* hay <d:D>, y de 0[^,.]* a <b:V> hay <e:D>",
            "<a:V> está <d:D> bajo 0 y <b:V> (?:está )?<e:D> sobre",
        ),
        far_from_zero,
    ),
    Rule(("above 0",), ("sobre 0",), always),
    Rule(
        ("opposites here: <s:S>", "<s:S>: opposites pair up", "the opposites here are <s:S>"),
        ("aquí hay opuestos: <s:S>", "<s:S>: opuestos que van en pareja", "aquí los opuestos son <s:S>"),
        opposite_pairs,
    ),
    Rule(
        ("<a:V> and <b:V> are just as far", "<a:V> and <b:V> match"),
        ("<a:V> y <b:V> están igual", "<a:V> y <b:V> van juntos"),
        opposite,
    ),
    # parity
    Rule(
        (
            "in " + LINE_EN + " we wrote <l:S>: only (?P<p_W>even|odd)",
            "look in " + LINE_EN + ": <l:S>, only (?P<p_W>even|odd)",
        ),
        (
            "en la " + LINE_ES + " escribimos <l:S>, solo números (?P<p_W>pares|impares)",
            "mira en la " + LINE_ES + ": <l:S>, solo números (?P<p_W>pares|impares)",
        ),
        parities_of,
    ),
    Rule(
        ("look at <l:S>: they are (?P<p_W>even|odd)", "we said <l:S>, and they are (?P<p_W>even|odd)"),
        ("mira <l:S>: son (?P<p_W>pares|impares)", "dijimos <l:S>, y son (?P<p_W>pares|impares)"),
        parities_of,
    ),
    Rule(
        (
            "in " + LINE_EN + " <a:V> is (?P<p_W>even|odd) and <b:V> is (?P<q_W>even|odd)",
            "look in " + LINE_EN + ": <a:V> is (?P<p_W>even|odd), <b:V> is (?P<q_W>even|odd)",
        ),
        (
            "en la " + LINE_ES + ", <a:V> es (?P<p_W>par|impar) y <b:V> es (?P<q_W>par|impar)",
            "mira en la " + LINE_ES + ": <a:V> es (?P<p_W>par|impar) y <b:V> es (?P<q_W>par|impar)",
        ),
        two_parities_in_line,
    ),
    Rule(
        ("the next one, <a:V>, is (?P<p_W>even|odd)",),
        ("el siguiente, <a:V>, es (?P<p_W>par|impar)",),
        parity_of,
    ),
    Rule(
        ("<t:D> " + MORE + " keeps even numbers (?P<p_W>even)",),
        ("con <t:D> " + MORE + " un par sigue siendo (?P<p_W>par)",),
        parity_total,
    ),
    Rule(
        ("<t:D> " + MORE + " turns even into (?P<p_W>odd)",),
        ("con <t:D> " + MORE + " un par pasa a (?P<p_W>impar)",),
        parity_total,
    ),
    Rule(
        ("<a:V> is (?:again )?(?P<p_W>even|odd)",),
        ("<a:V> es (?:otra vez )?(?P<p_W>par|impar)",),
        parity_of,
    ),
    # remainders
    Rule(
        ("(?:every count|every one|each one we say) is <r:D> past an? <m:M>",),
        ("cada (?:número|uno|uno que decimos) es <r:D> más que una? <m:M>",),
        all_past,
    ),
    Rule(("<a:V> is <r:D> past <m:V>",), ("de <m:V> a <a:V> hay <r:D>",), past_is),
    # so many of a multiple
    Rule(
        ("<t:D> is <q:N> <m:M>", "<t:D> is <q:N> × <m:D>"),
        ("<t:D> es <q:N> <m:M>", "<t:D> es <q:N> × <m:D>"),
        so_many,
    ),
    # runs
    Rule(
        ("<t:D> " + MORE + " is <q:N> <m:P> (?P<more2_W>more|less)",),
        ("<t:D> " + MORE + " son <q:N> <m:P> (?P<more2_W>más|menos)",),
        place_sum,
    ),
    Rule(
        ("<t:D> " + MORE + " is <x:D> (?P<more2_W>more|less) and <y:D> (?P<more3_W>more|less)",),
        ("<t:D> " + MORE + " es lo mismo que <x:D> (?P<more2_W>más|menos) y <y:D> (?P<more3_W>más|menos)",),
        carry_sum,
    ),
    Rule(
        ("so each time it is <t:D> " + MORE, "<t:D> " + MORE + " leaves the"),
        ("así que cada vez hay <t:D> " + MORE, "con <t:D> " + MORE + " (?:los|las)"),
        line_total,
    ),
    Rule(
        ("(?P<up_W>goes? up|goes? down|go up|go down|up|down) (?:by )?<d:N>(?= (?:each|along|up|down)|,|[.]|$)",),
        (
            "(?P<up_W>suben?|bajan?) de <d:N> en <e:N>",
            "(?P<up_W>suben?|bajan?) <d:N>(?= (?:cada|a lo|al)|,|[.]|$)",
        ),
        lambda c, h: (
            run_change(c, h) if claim_of(c).family == "digit-run" else step_is(c, {**h, "d": Fraction(h["d"])})
        ),
    ),
    # how many
    Rule(
        (
            "from <a:V> to just before <b:V> we say <n:N>, first <x:V> and last <y:V>",
            "there are <n:N> from <a:V> to just before <b:V>",
            "starting at <a:V> and before <b:V> we say <n:N>, from <x:V> to <y:V>",
        ),
        (
            "desde <a:V> y antes de <b:V> decimos <n:N>, primero <x:V> y al final <y:V>",
            "hay <n:N> desde <a:V> y antes de <b:V>",
            "a partir de <a:V> y antes de <b:V> decimos <n:N>, de <x:V> a <y:V>",
        ),
        so_many_between,
    ),
    Rule(
        ("from <a:V> to just before <b:V> we say <l:S>", "starting at <a:V> and before <b:V> we say <l:S>"),
        ("(?:desde|a partir de) <a:V> y antes de <b:V> decimos <l:S>",),
        said_between,
    ),
    Rule(
        (
            "counts in each <m:M>: <s:S>, over and over",
            "each <m:M> in turn has <s:S>, then again",
            "<k:N> counts? in each <m:M>",
            "each <m:M> holds <k:N> counts?",
            "we say <k:N> in each <m:M>",
            "every <m:M> has <k:N> of our",
        ),
        (
            "números en cada <m:M>: <s:S>, una y otra vez",
            "en cada <m:M> hay por turnos <s:S>, y otra vez",
            "<k:N> números? en cada <m:M>",
            "en cada <m:M> caben? <k:N> números?",
            "en cada <m:M> siempre hay <k:N> números",
        ),
        holds_so_many,
    ),
    Rule(
        ("the counts in each <m:M> (?P<once_W>go) <s:S>",),
        ("los números en cada <m:M> (?P<once_W>van) así: <s:S>",),
        holds_so_many,
    ),
    # landmarks
    Rule(
        (
            "the <m:M> here are <l:S>: counts <n:S>, in rows <rows:S> and columns <columns:S>",
            "only <l:S> is an? <m:M> here: count <n:S>, in row <rows:S> and column <columns:S>",
            "the <m:M> here begin <l:S>: counts <n:S>",
        ),
        (
            "aquí (?:los|las) <m:M> son <l:S>: números <n:S>, en las filas <rows:S> y las columnas <columns:S>",
            "aquí hay una? <m:M> solo en <l:S>: número <n:S>, en la fila <rows:S> y la columna <columns:S>",
            "aquí (?:los|las) <m:M> empiezan así: <l:S>, los números <n:S>",
        ),
        marks_here,
    ),
    Rule(
        (
            "the <m:M> (?:stand|lie|make|are all|are) (?:in )?(?P<line_W>rows?|columns?) <i:S>",
            "(?P<line_W>rows?|columns?) <i:S> (?:are the|is where all the|have only) <m:M>",
        ),
        (
            "(?:los|las) <m:M> (?:están en|forman|son) (?:la |las )?(?P<line_W>filas?|columnas?) <i:S>",
            "(?P<line_W>filas?|columnas?) <i:S> (?:están siempre|están|son|es donde están|solo hay) (?:los |las )?<m:M>",
        ),
        marks_lie,
    ),
    Rule(
        ("look at <l:S>: these are the <m:M>", "we get <m:M> at <l:S>"),
        ("mira <l:S>: ahí están (?:los|las) <m:M>", "encontramos <m:M> en <l:S>"),
        these_are_marks,
    ),
    Rule(
        ("look at <l:S>: all of them are <m:M>", "<l:S> are all <m:M>"),
        ("mira <l:S>: todos son <m:M>", "<l:S> son <m:M>"),
        all_are_marks,
    ),
    Rule(
        (
            "every <k:O> (?:count|one we say) is an? <m:M>(?:, from the <n:O> on)?",
            "<m:M> come every <k:N> counts(?:, from the <n:O> on)?",
            "we land on an? <m:M> every <k:N> counts",
        ),
        (
            "cada <k:N> números hay una? <m:M>(?:, desde el <n:O> número)?",
            "(?:los|las) <m:M> llegan cada <k:N> números(?:, desde el <n:O> número)?",
            "cada <k:N> números (?:llegamos a|decimos) una? <m:M>",
        ),
        marks_every,
    ),
    Rule(("multiples? of <m:D>", "stretch of <m:D>"), ("múltiplos? de <m:D>", "tramo de <m:D>"), is_own_multiple),
    # readings along lines
    Rule(
        (
            "in " + LINE_EN + ", from <a:V> to <b:V>, the <f:W> stay <x:S>",
            "from <a:V> to <b:V> in " + LINE_EN + " the <f:W> stay <x:S>",
            "from <a:V> to <b:V> the <f:W> stay <x:S>",
        ),
        (
            "en la " + LINE_ES + ", de <a:V> a <b:V>, (?:los|las) <f:W> siguen en <x:S>",
            "de <a:V> a <b:V> en la " + LINE_ES + " (?:los|las) <f:W> siguen en <x:S>",
            "de <a:V> a <b:V> (?:los|las) <f:W> siguen en <x:S>",
        ),
        line_stays,
    ),
    Rule(
        ("in " + LINE_EN + " we wrote <l:S>, always with <x:S>", "look in " + LINE_EN + ": <l:S>, always with <x:S>"),
        (
            "en la " + LINE_ES + " escribimos <l:S>, siempre con <x:S>",
            "mira en la " + LINE_ES + ": <l:S>, siempre con <x:S>",
        ),
        line_wrote,
    ),
    Rule(
        ("look at <l:S>, always with <x:S>", "we wrote <l:S>, always with <x:S>"),
        ("mira <l:S>, siempre con <x:S>", "escribimos <l:S>, siempre con <x:S>"),
        count_wrote,
    ),
    Rule(
        ("in " + LINE_EN + " <l:S> have <f:W> <s:S>",),
        ("en la " + LINE_ES + ", (?:los|las) <f:W> de <l:S> son <s:S>",),
        line_wrote,
    ),
    Rule(
        ("in " + LINE_EN + " the <f:W> (?:go|are) <s:S>", "look in " + LINE_EN + ": the <f:W> (?:go|are) <s:S>"),
        (
            "en la " + LINE_ES + ", (?:los|las) <f:W> son <s:S>",
            "mira en la " + LINE_ES + ": (?:los|las) <f:W> son <s:S>",
        ),
        line_shows,
    ),
    Rule(
        ("look at <l:S>: the <f:W> are <s:S>", "<l:S> have <f:W> <s:S>"),
        ("mira <l:S>: (?:los|las) <f:W> son <s:S>", "(?:los|las) <f:W> de <l:S> son <s:S>"),
        count_wrote,
    ),
    Rule(
        ("at the start the <f:W> are <s:S>", "the <f:W> begin <s:S>"),
        ("al principio (?:los|las) <f:W> son <s:S>", "(?:los|las) <f:W> empiezan así: <s:S>"),
        count_shows,
    ),
    Rule(
        (
            "<f:W> repeat every <k:N> counts[^:]*: <s:S> in " + LINE_EN,
            "<f:W> repeat every <k:N> counts[^:,.]*: <s:S>",
            "every [a-z]+ repeats its <f:W> after <k:N>: <s:S>",
            "<f:W> take turns[^:,.]*: <s:S> in " + LINE_EN,
            "<f:W> take turns[^:,.]*: <s:S>",
        ),
        (
            "<f:W> se repiten cada <k:N> números[^:]*: <s:S> en la " + LINE_ES,
            "<f:W> se repiten cada <k:N> números[^:,.]*: <s:S>",
            "en cada [a-z]+ se repiten <f:W> después de <k:N>: <s:S>",
            "<f:W> se alternan[^:,.]*: <s:S> en la " + LINE_ES,
            "<f:W> se alternan[^:,.]*: <s:S>",
            "se alternan <f:W>: <s:S>",
        ),
        block_of_line,
    ),
    Rule(
        ("<f:W> stay in their [a-z]+: <s:S>", "each [a-z]+ keeps its <f:W>: <s:S>"),
        ("<f:W> se quedan en su [a-z]+: <s:S>", "cada [a-z]+ conserva <f:W>: <s:S>"),
        each_line_starts,
    ),
    Rule(
        (
            "<f:W> are always <x:S>",
            "the <f:W> are <x:S> in every count",
            "every time we count, the <f:W> are <x:S>",
            "<f:W> are <x:S>, every time",
        ),
        (
            "<f:W> siempre son <x:S>",
            "en todos los números <f:W> son <x:S>",
            "(?:contamos|decimos) <f:W> son <x:S>",
            "<f:W> son <x:S>, siempre",
        ),
        always_shows,
    ),
    Rule(
        ("take turns, first <x:S>, then <y:S>", "take turns, <x:S> and <y:S>"),
        ("se turnan, primero <x:S> y luego <y:S>", "se turnan: <x:S> y luego <y:S>"),
        starts_with_two,
    ),
    Rule(
        ("the <f:W> go <s:S>, then <t:S> again",),
        ("(?:los|las) <f:W> van <s:S>, y otra vez <t:S>",),
        lambda c, h: count_shows(c, {"s": h["s"] + h["t"]}),
    ),
    Rule(
        (
            "every <k:N> counts",
            "after (?:every )?<k:N> counts",
            "come around again after <k:N>",
            "come back after <k:N>",
        ),
        (
            "cada <k:N> números",
            "después de <k:N> números",
            "después de <k:N>",
            "tras <k:N>",
        ),
        length_is,
    ),
    # neighbours: one step is so many counts
    Rule(
        (r"one step [a-z ]+ (?:is|goes) <k:N> counts (?:on|back)",),
        (
            r"cada paso [a-z ]+ (?:es de|vuelve) <k:N> números hacia (?:adelante|atrás)",
            r"un paso [a-z ]+ vuelve <k:N> números hacia atrás",
        ),
        lambda c, h: h["k"] * abs(c.grid.count.step) == abs(claim_of(c).get("difference")),
    ),
    # step and neighbour lines
    Rule(
        (
            "<d:D> " + MORE + " each time",
            "each (?:count|one) is <d:D> " + MORE,
            "(?:jump|goes) (?P<up_W>up|down) <d:D>",
        ),
        ("<d:D> " + MORE + " cada vez", "cada (?:número|uno) es <d:D> " + MORE, "(?P<up_W>sube|baja) <d:D>"),
        step_is,
    ),
    Rule(
        ("<d:D> " + MORE,),
        ("<d:D> " + MORE,),
        neighbour_is,
    ),
    # how many lines
    Rule(
        ("here (?:are|is) <n:N> [a-z]+, and the claim is about <b:N>",),
        ("aquí hay <n:N> [a-z]+, y la afirmación habla de <b:N>",),
        claim_has_blocks,
    ),
    Rule(
        ("from <a:V> to <b:V> the <f:W> go from <x:N> to <y:N>",),
        ("de <a:V> a <b:V>, (?:los|las) <f:W> pasan de <x:N> a <y:N>",),
        run_goes,
    ),
    Rule(
        (r"\((?P<line_W>rows?|columns?) <s:S>\)",),
        (r"\((?P<line_W>filas?|columnas?) <s:S>\)",),
        lambda c, h: h["s"] == [str(i) for i in claim_of(c).get("lines")],
    ),
)
