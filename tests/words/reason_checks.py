"""When a phrase about why a pattern is so, or why it ends, is so."""

import re
from fractions import Fraction
from typing import Any

from tests.words.landmark_checks import line_total
from tests.words.line_checks import cell_before, due_of, note_shows
from tests.words.number_checks import breaks, claim_of, multiple_of
from tests.words.readings_back import PART_SYMBOLS
from tests.words.sentence_checker import Context
from tests.words.sum_checks import difference_of
from tests.words.written_values import SAME_UNIT, UNIT_SIZES


def line_holds(c: Context, h: dict[str, Any]) -> bool:
    """So many counts stand in a line as the grid fills: in a row, or in a column where it fills down."""
    column = h["fills"].lower() in ("column", "columna")
    return h["n"] == c.grid.line_length and column == (c.grid.fill == "down")


def _aside(h: dict[str, Any]) -> int:
    return 1 if h["aside"] in ("more", "más") else -1


def line_and_one(c: Context, h: dict[str, Any]) -> bool:
    """A line and one count more or less is what one step of the claim moves."""
    moved = (h["n"] + _aside(h)) * abs(c.grid.count.step)
    return line_holds(c, h) and moved == abs(difference_of(c))


def beside_a_line(c: Context, h: dict[str, Any]) -> bool:
    return line_holds(c, h) and h["k"] == h["n"] + _aside(h)


def lines_hold(c: Context, h: dict[str, Any]) -> bool:
    return line_holds(c, h | {"n": c.grid.line_length}) and h["k"] == h["n"] * c.grid.line_length


def is_its_multiple(c: Context, h: dict[str, Any]) -> bool:
    """An amount is a multiple of what the claim is about; for a digit, of ten of its place."""
    place = claim_of(c).parameters.get("place")
    own = multiple_of(c) or (h["m"] if place is None else Fraction(10) ** (place + 1))
    return bool(h["m"] == own and h["t"] % own == 0)


def multiple_and_rest(c: Context, h: dict[str, Any]) -> bool:
    """A count in view is so much more than a multiple, and the rest is less than one more of it."""
    made = h["q"] * h["m"] == h["b"] == h["d"] and h["b"] + h["r"] == h["v"]
    return made and 0 < h["r"] < h["m"] == abs(claim_of(c).parameters.get("step")) and c.is_term(h["v"])


def first_whole_stretch(c: Context, h: dict[str, Any]) -> bool:
    """The edge, in counting order, of the first stretch between two multiples that lies wholly in view."""
    m, ends = multiple_of(c), (c.value(1), c.value(c.grid.terms))
    lowest, highest = -(-min(ends) // m), max(ends) // m
    edge = lowest if c.grid.count.step > 0 else highest
    return bool(lowest < highest and h["v"] == edge * m)


def _before_the_break(c: Context) -> tuple[int, int]:
    """The term with which the claim ends, and the one before it in its line."""
    assert c.breaks_at is not None
    return c.breaks_at, cell_before(c, c.breaks_at, 1)


def full_place(c: Context, h: dict[str, Any]) -> bool:
    """So many of a place are due where the run ends: ten of them make one of the next, and the rest stays."""
    n, before = _before_the_break(c)
    due, worth = due_of(c, before), h["p"] == Fraction(10) ** claim_of(c).parameters.get("place")
    rest = h.get("y", 0)
    stays = rest == 0 or h["r"] == h["p"]
    read = c.readings.number(n) == rest
    return breaks(c, h) and h["x"] == due == 10 + rest and worth and h["m"] == 10 * h["p"] and stays and read


def opened_place(c: Context, h: dict[str, Any]) -> bool:
    """Less than none of a place are due where the run ends, so one of the next is opened into ten."""
    n, before = _before_the_break(c)
    due = due_of(c, before)
    return note_shows(c, h) and due < 0 and c.readings.number(n) == due + 10 and h["m"] == 10 * h["p"]


def another_begins(c: Context, h: dict[str, Any]) -> bool:
    """Where a digit changes, the count comes to another of what it counts; where a run is full, to another of the next."""
    n, before = _before_the_break(c)
    worth = Fraction(10) ** (claim_of(c).parameters.get("place") or 0)
    is_run = claim_of(c).family == "digit-run"
    same = abs(c.value(n)) // h["m"] == abs(c.value(before)) // h["m"]
    shows = breaks(c, h) and c.readings.shows(h["y"][0], n) if is_run else note_shows(c, h)
    return shows and not same and h["m"] == (10 * worth if is_run else worth)


def goes_below_zero(c: Context, h: dict[str, Any]) -> bool:
    n, before = _before_the_break(c)
    return breaks(c, h) and c.value(n) < 0 <= c.value(before)


def kept_on_both_sides(c: Context, h: dict[str, Any]) -> bool:
    """Counts on both sides of zero are multiples of half of what brings a reading back: as far past one of it on either."""
    values = [c.value(n) for n in c.terms]
    multiples = all(value % h["m"] == 0 for value in values)
    return line_total(c, h) and min(values) < 0 < max(values) and multiples and h["t"] % (2 * h["m"]) == 0


def is_absent(c: Context, h: dict[str, Any]) -> bool:
    return breaks(c, h) and c.readings.number(c.breaks_at or 1) is None


def clock_turns(c: Context, h: dict[str, Any]) -> bool:
    """What the clock shows before and at the end of a run: back to a smaller number as it goes on."""
    n, before = _before_the_break(c)
    back = h["turn"] in ("back", "vuelven")
    shown = (c.readings.number(before), c.readings.number(n)) == (h["x"], h["y"])
    return breaks(c, h) and shown and back == (h["y"] < h["x"])


def alike_on_both_sides(c: Context, h: dict[str, Any]) -> bool:
    """A count above 0 and the one below with which a run ends read the same."""
    terms = {c.value(n): n for n in range(1, (c.breaks_at or 0) + 1)}
    both = h["v"] < 0 < h["a"] and terms[h["v"]] == c.breaks_at
    return both and {c.readings.number(terms[h[side]]) for side in "av"} == {h["y"]}


def stays_in_its_lines(c: Context, h: dict[str, Any]) -> bool:
    """The lines that are named are those in which the claim says the marks lie."""
    named = {"rows": "rows", "filas": "rows", "columns": "columns", "columnas": "columns"}[h["lines"].lower()]
    return bool(claim_of(c).parameters.get("lie") == named)


def ones_make_a_ten(c: Context, h: dict[str, Any]) -> bool:
    """Where a run of tens digits ends, the ones of the count before and of the move make ten or more."""
    n, before = _before_the_break(c)
    moved = abs(c.value(n) - c.value(before))
    ones = (h["x"], h["y"]) == (abs(c.value(before)) % 10, moved % 10) and h["x"] + h["y"] >= 10
    tens = abs(c.value(n)) // 10 - abs(c.value(before)) // 10
    return bool(breaks(c, h) and ones and claim_of(c).parameters.get("place") == 1 and tens % 10 == h["q"] % 10)


def start_and_jump_in_parts(c: Context, h: dict[str, Any]) -> bool:
    """The start and the jump are written over the same bottom number, which the claim is about."""
    step = c.grid.count.difference_text(c.grid.count.step)
    over = re.search(r"/(\d+)", step)
    own = c.same(h["a"], c.value(1)) and c.readings.shows(str(h["x"]), 1)
    return own and over is not None and int(over[1]) == h["x"] and h["s"] == abs(c.grid.count.step)


def nearly_of_the_run(c: Context, h: dict[str, Any]) -> bool:
    """A jump is a little more or less than the change that the run shows."""
    change = h["t"] + _aside(h) * h["r"]
    line = max(c.readings.lines(claim_of(c).parameters.get("along")), key=len)
    worth = abs(due_of(c, line[0]) - c.readings.number(line[0])) * _worth_of_one(c)
    return bool(h["s"] == abs(c.grid.count.step) == change and h["t"] == worth and 0 < h["r"] < h["t"])


def _worth_of_one(c: Context) -> Fraction:
    """What 1 of the digit or part that a claim is about is worth in the base unit."""
    claim, count = claim_of(c), c.grid.count
    part = claim.parameters.get("part")
    if part is None:
        return Fraction(10) ** (claim.parameters.get("place") or 0)
    if part == "whole":
        return Fraction(1)
    if count.kind == "money":
        return Fraction(10**c.notation.digits if part == count.part_names()[0] else 1)
    symbol = PART_SYMBOLS.get(part, part).split("|")[0].rstrip("?")
    return UNIT_SIZES[SAME_UNIT.get(symbol, symbol)]
