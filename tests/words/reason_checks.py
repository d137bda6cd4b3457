"""When a phrase about why a pattern is so, or why it ends, is so."""

from fractions import Fraction
from typing import Any

from tests.words.line_checks import cell_before, due_of, note_shows
from tests.words.number_checks import breaks, claim_of, multiple_of
from tests.words.sentence_checker import Context
from tests.words.sum_checks import difference_of


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
