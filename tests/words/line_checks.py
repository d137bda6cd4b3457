"""When a phrase about what stands in a row or a column is so."""

from itertools import islice
from typing import Any

from tests.words.number_checks import breaks, claim_of, multiple_of, own_length, shown, texts
from tests.words.sentence_checker import Context


def along_of(h: dict[str, Any]) -> str:
    return "column" if h["line"].lower() in ("column", "columna") else "row"


def line_shows(c: Context, h: dict[str, Any]) -> bool:
    return shown(c, c.readings.line(along_of(h), h["i"]), h["s"])


def count_shows(c: Context, h: dict[str, Any]) -> bool:
    return shown(c, list(c.terms), h["s"])


def line_wrote(c: Context, h: dict[str, Any]) -> bool:
    """The counts are the first ones of the line, and each shows what is said."""
    line = c.readings.line(along_of(h), h["i"])
    terms = texts(c, h["l"], line)
    if terms is None or terms != line[: len(terms)]:
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
    lines = c.readings.lines(claim.parameters.get("along"))
    if claim.parameters.get("lines"):
        along = claim.parameters.get("along")
        lines = [c.readings.line(along, c.page_line(i, along)) for i in claim.parameters.get("lines")]
    return shown(c, [line[0] for line in lines], h["s"])


def block_of_line(c: Context, h: dict[str, Any]) -> bool:
    claim = claim_of(c)
    line = (
        c.readings.line(along_of(h), h["i"])
        if "i" in h
        else max(c.readings.lines(claim.parameters.get("along")), key=len)
    )
    return shown(c, line, h["s"]) and int(h.get("k", own_length(c))) == own_length(c)


def always_shows(c: Context, h: dict[str, Any]) -> bool:
    return all(c.readings.shows(h["x"][0], n) for n in c.terms)


def length_is(c: Context, h: dict[str, Any]) -> bool:
    return bool(h["k"] == own_length(c))


def starts_with_two(c: Context, h: dict[str, Any]) -> bool:
    line = max(c.readings.lines(claim_of(c).parameters.get("along")), key=len)
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
        return h["x"][0] == str(due_of(c, cell_before(c, n, 1)))
    return c.readings.shows(h["x"][0], cell_before(c, n, own_length(c))) and h["x"] != h["y"]


def due_of(c: Context, before: int) -> int:
    """What a run would show next, were there no end."""
    line = max(c.readings.lines(claim_of(c).parameters.get("along")), key=len)
    change = claim_of(c).parameters.get("change")
    if change is None:
        change = c.readings.number(line[1]) - c.readings.number(line[0])
    return int(c.readings.number(before) + change)


def cell_before(c: Context, n: int, k: int) -> int:
    """The term k cells before the n-th in its line, when the count has gone on to the n-th."""
    along, grown = claim_of(c).parameters.get("along"), c.grid.grown(n)
    at = {"row": 0, "column": 1}.get(along)
    same_line = (m for m in range(n - 1, 0, -1) if at is None or grown.place(m)[at] == grown.place(n)[at])
    return list(islice(same_line, k))[-1]
