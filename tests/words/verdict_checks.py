"""When an answer to a false claim is so."""

from typing import Any

from tests.words.landmark_checks import marks
from tests.words.line_checks import along_of
from tests.words.number_checks import claim_of, multiple_of, shown, term_is, texts
from tests.words.sentence_checker import Context


def claim_has_blocks(c: Context, h: dict[str, Any]) -> bool:
    claim = claim_of(c)
    return h["b"] == len(claim.parameters.get("blocks")) and h["n"] == len(
        c.readings.lines(claim.parameters.get("along"))
    )


def line_up_to(c: Context, h: dict[str, Any]) -> bool:
    line = c.readings.line(along_of(h), h["i"]) if "i" in h else list(c.terms)
    return term_is(c, h) and _ends_of(c, h, line)


def two_of_a_line(c: Context, h: dict[str, Any]) -> bool:
    """Two counts of one line, each at the place said, that read as said, and not the same."""
    across = 1 if along_of(h) == "row" else 0
    line = c.readings.line(along_of(h), h["i"])
    at = [next((n for n in line if c.place(n)[across] == h[name]), 0) for name in "rt"]
    if not all(at) or not all(c.same(c.value(n), h[name]) for n, name in zip(at, "av", strict=True)):
        return False
    return "s" not in h or (len(h["s"]) == 2 and h["s"][0] != h["s"][1] and shown(c, at, h["s"]))


def reads_there(c: Context, h: dict[str, Any]) -> bool:
    return term_is(c, h) and shown(c, [h["n"]], h["x"])


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
    places = [c.place(n) for n in numbers]
    return [
        h["rows"] == [str(row) for row in sorted({row for row, _ in places})],
        h["columns"] == [str(column) for column in sorted({column for _, column in places})],
    ] == [True, True] and numbers == found
