"""When a phrase about sums, the table, opposites, steps and neighbours is so."""

from fractions import Fraction
from typing import Any

from tests.words.line_checks import along_of
from tests.words.mentions import is_against_the_count, terms_onward
from tests.words.number_checks import claim_of, signed, texts
from tests.words.sentence_checker import Context


def pair_sums(c: Context, h: dict[str, Any]) -> bool:
    return all(map(c.is_term, (h["a"], h["b"], h["x"], h["y"]))) and h["a"] + h["b"] == h["x"] + h["y"] == h["s"]


def digit_sum(c: Context, h: dict[str, Any]) -> bool:
    digits = h["digits"].split(" + ")
    return sum(map(int, digits)) == h["s"] and any(str(abs(int(c.value(n)))) == "".join(digits) for n in c.terms)


def pair_total(c: Context, h: dict[str, Any]) -> bool:
    """What the first and last count add to, or opposite corners of the first 2 by 2 block."""
    if claim_of(c).parameters.get("which") == "ends":
        return bool(c.value(1) + c.value(c.grid.terms) == h["s"])
    for row in range(1, c.grid.rows):
        for column in range(1, c.grid.columns):
            block = [c.grid.at(row + down, column + right) for down in (0, 1) for right in (0, 1)]
            if None not in block:
                first, *_, last = (c.value(n) for n in block if n)
                return first + last == h["s"]
    return False


def two_sums(c: Context, h: dict[str, Any]) -> bool:
    return h["a"] + h["b"] == h["s"] and h["x"] + h["y"] == h["t"]


def nine_total(c: Context, h: dict[str, Any]) -> bool:
    middle = next(n for n in c.terms if c.same(c.value(n), h["v"]))
    row, column = c.grid.place(middle)
    nine = [c.grid.at(row + down, column + right) for down in (-1, 0, 1) for right in (-1, 0, 1)]
    total = sum((c.value(n) for n in nine if n), Fraction(0))
    return None not in nine and total == h["s"] == h.get("t", total) and total == 9 * h["v"]


def line_adds(c: Context, h: dict[str, Any]) -> bool:
    return sum((c.value(n) for n in c.readings.line(along_of(h), h["i"])), Fraction(0)) == h["s"]


def totals_grow(c: Context, h: dict[str, Any]) -> bool:
    said = signed(h["d"], h.get("more", "less" if h.get("up", "").lower() in ("down", "baja") else "more"))
    claimed = claim_of(c).parameters.get("difference")
    return said == claimed if claimed is not None else said in growths(c)


def growths(c: Context) -> list[Fraction]:
    """What the second row adds to more than the first, and the second column."""
    lines = [[c.readings.line(along, i) for i in (1, 2)] for along in ("row", "column")]
    totals = [[sum(map(c.value, line)) for line in pair] for pair in lines]
    return [Fraction(second - first) for first, second in totals]


def totals_product(c: Context, h: dict[str, Any]) -> bool:
    difference = claim_of(c).parameters.get("difference")
    beside = [abs(c.grid.count.step) * gap for gap in (1, c.grid.line_length)]
    return (
        h["k"] * h["e"] == h["t"]
        and h["e"] in beside
        and (difference is None or h["t"] == abs(difference))
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
    return signed(h["d"], h["more"]) == difference_of(c)


def difference_of(c: Context) -> Fraction:
    """The difference a step or neighbour claim states, or what it is in the grid; said the way the count goes."""
    claim = claim_of(c)
    stated = claim.parameters.get("difference")
    if claim.family == "step":
        return Fraction(c.grid.count.step if stated is None else stated)
    direction = claim.parameters.get("direction") or "right"
    back = is_against_the_count(c.grid, direction)
    if stated is not None:
        return -Fraction(stated) if back else Fraction(stated)
    return Fraction(c.grid.count.step) * abs(terms_onward(c.grid, direction))


def step_is(c: Context, h: dict[str, Any]) -> bool:
    more = h.get("more") or ("less" if h["up"].lower() in ("down", "baja") else "more")
    return signed(h["d"], more) == difference_of(c)


def always(c: Context, h: dict[str, Any]) -> bool:
    return True
