"""When a phrase about runs, landmarks and how many lie between them is so."""

from fractions import Fraction
from itertools import pairwise
from typing import Any

from tests.words.number_checks import breaks, claim_of, multiple_of, own_length, signed, texts
from tests.words.sentence_checker import Context


def run_change(c: Context, h: dict[str, Any]) -> bool:
    change = claim_of(c).parameters.get("change")
    if change is None:
        line = max(c.readings.lines(claim_of(c).parameters.get("along")), key=len)
        change = c.readings.number(line[1]) - c.readings.number(line[0])
    down = any(word in h["up"].lower() for word in ("down", "baja"))
    return bool(h["d"] == abs(change) and down == (change < 0) and h.get("e", h["d"]) == h["d"])


def ends_change(c: Context, h: dict[str, Any]) -> bool:
    """The last digit goes on by so much."""
    down = str(h["way"]).lower() in ("less", "menos")
    return not claim_of(c).parameters.get("place") and run_change(c, {**h, "up": "down" if down else "up"})


def front_changes(c: Context, h: dict[str, Any]) -> bool:
    """The first digit of every count in view goes on by so much, as long as it does."""
    place, ends = claim_of(c).parameters.get("place"), c.breaks_at or c.grid.terms + 1
    lengths = {len(str(c.value(n))) for n in c.terms if n < ends and c.value(n) != 0}
    return bool(place) and lengths == {place + 1} and run_change(c, h)


def place_sum(c: Context, h: dict[str, Any]) -> bool:
    return signed(h["t"], h["more"]) == signed(h["q"] * h["m"], h["more2"])


def carry_sum(c: Context, h: dict[str, Any]) -> bool:
    parts = signed(h["x"], h["more2"]) + signed(h["y"], h["more3"])
    return signed(h["t"], h["more"]) == parts


def stride_of(c: Context) -> int:
    claim = claim_of(c)
    along = claim.parameters.get("along")
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


def marks(c: Context) -> list[int]:
    return [n for n in c.terms if c.value(n) % multiple_of(c) == 0]


def marks_lie(c: Context, h: dict[str, Any]) -> bool:
    at = 1 if h["line"].lower().startswith("col") else 0
    lines = sorted({c.place(n)[at] for n in marks(c)})
    filled = [n for n in c.terms if c.place(n)[at] in lines]
    all_of_them = h.get("all") is None or filled == marks(c)
    return h.get("m", multiple_of(c)) == multiple_of(c) and [str(line) for line in lines] == h["i"] and all_of_them


def marks_every(c: Context, h: dict[str, Any]) -> bool:
    found = marks(c)
    every = h.get("k", 1)
    gaps = {b - a for a, b in pairwise(found)}
    if "end" in h and multiple_of(c) != Fraction(10, sum(map(str.isdigit, h["end"]))):
        return False
    return h.get("m", multiple_of(c)) == multiple_of(c) and gaps <= {every} and h.get("n", found[0]) == found[0]


def these_are_marks(c: Context, h: dict[str, Any]) -> bool:
    terms = texts(c, h["l"], marks(c))
    return terms is not None and terms == marks(c)[: len(terms)] and h["m"] == multiple_of(c)


def first_marks(c: Context, h: dict[str, Any]) -> bool:
    """The first of the multiples; where a line is named, the one in which all of them stand."""
    terms = texts(c, h["l"], marks(c))
    return bool(terms) and terms == marks(c)[: len(terms)] and ("line" not in h or marks_lie(c, h))


def all_end_in(c: Context, h: dict[str, Any]) -> bool:
    """Every whole number, or amount in small coins, ends in one of the digits, and they say what it is a multiple of."""
    digits = [int(digit) for digit in h["end"] if digit.isdigit()]
    if claim_of(c).family == "digit":
        return claim_of(c).parameters.get("place") == 0 and all([abs(c.value(n)) % 10] == digits for n in c.terms)
    return all(c.value(n) % 10 in digits for n in c.terms) and multiple_of(c) == Fraction(10, len(digits))


def all_are_marks(c: Context, h: dict[str, Any]) -> bool:
    terms = texts(c, h["l"], marks(c))
    return terms is not None and h["m"] == multiple_of(c)


def mark_at_break(c: Context, h: dict[str, Any]) -> bool:
    if not breaks(c, h) or c.breaks_at is None:
        return False
    if h.get("m", multiple_of(c)) != multiple_of(c):
        return False
    is_mark = c.value(c.breaks_at) % multiple_of(c) == 0
    says_mark = h.get("not") is None
    return is_mark == says_mark and c.place(c.breaks_at) == (h["row"], h["column"])


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
    again = h.get("s2", series) == series
    return h["m"] == multiple_of(c) and fits and again and ("fills" not in h or lines_are_stretches(c, h))


def lines_are_stretches(c: Context, h: dict[str, Any]) -> bool:
    """Each line, as the grid fills, is one interval between multiples with all of its counts."""
    m = multiple_of(c)
    along = "column" if h["fills"] in ("column", "columna") else "row"
    size = m / abs(c.grid.count.step)
    lines = [{c.value(n) // m for n in line} for line in c.readings.lines(along)]
    whole = all(len(line) == size for line in c.readings.lines(along))
    return h["m"] == m and whole and all(len(line) == 1 for line in lines)


DECADES_EN = "twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties"
DECADES_ES = "veintes|treintas|cuarentas|cincuentas|sesentas|setentas|ochentas|noventas"


def so_many_in_ten(c: Context, h: dict[str, Any]) -> bool:
    names = (DECADES_EN if h["tens"] in DECADES_EN.split("|") else DECADES_ES).split("|")
    low = 10 * (names.index(h["tens"]) + 2)
    many = 1 if h["k"] in ("one", "uno") else h["k"]
    ends = sorted((c.value(1), c.value(c.grid.terms)))
    return many == len(terms_in(c, low, low + 10)) and ends[0] <= low and low + 10 <= ends[1] and multiple_of(c) == 10


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
