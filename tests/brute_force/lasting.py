"""How long a claim lasts, found by writing the next term, and the next, and looking (EXACT 4); and what follows.

Imports nothing of the engine.
"""

from fractions import Fraction
from itertools import pairwise
from math import floor, lcm
from typing import Any

from .board import Board
from .listening import met_at, never_hidden
from .seeing import Claim, intervals, reader, totals_apart


def first_break(board: Board, claim: Claim, limit: int) -> int | None:
    """The first term after those in view, up to `limit`, that makes a claim false which is true of the view."""
    family = claim["family"]
    if family in ("digit", "digit-sum", "remainder"):
        return _first_unlike(board, claim, limit)
    if family == "digit-run":
        return _first_other_change(board, claim, limit)
    if family == "landmarks":
        return _first_out_of_place(board, claim, limit)
    if family == "how-many":
        return _first_other_interval(board, claim, limit)
    if family == "opposites":
        return next((m for m in _beyond(board, limit) if _has_opposite(board, m)), None)
    if family == "sums" and claim["which"] == "line-totals":
        said = Fraction(claim["difference"])
        grown = (n for n in _beyond(board, min(limit, board.terms + 3 * board.length + 3)))
        return next((n for n in grown if totals_apart(board, claim["along"], n) - {said}), None)
    return next((n for n in _beyond(board, limit) if not _still_arithmetic(board, claim, n)), None)


def contradicts(board: Board, claim: Claim, n: int) -> bool:
    """Whether the n-th term breaks a claim of digits, sums or remainders: it is unlike the one k cells before it."""
    along = claim["along"]
    read = reader(board, {**claim, "family": "digit"} if claim["family"] == "digit-run" else claim)
    if claim["family"] != "digit-run" and read(n) is None:
        return True  # a part that is not written contradicts, whatever stands before it
    earlier = n - 1
    k = _k(claim) if claim["family"] != "digit-run" else 1
    for _ in range(k):
        while earlier and board.name_of_line(earlier, along) != board.name_of_line(n, along):
            earlier -= 1
            if n - earlier > 2 * k * board.length:
                return False
        earlier -= 1
    earlier += 1
    if earlier < 1:
        return False
    now, before = read(n), read(earlier)
    if now is None or before is None:
        return True
    return now - before != claim["change"] if claim["family"] == "digit-run" else now != before


def two_turns(board: Board, claim: Claim) -> int:
    """So many terms that whatever comes again has come again twice (a line's cells too), beyond zero where that lies ahead."""
    worth = {"fraction": 1, "clock": 1440, "elapsed": 1440, "money": 100, "length": 900, "mass": 2000, "capacity": 2000}
    if "place" in claim:
        turn = Fraction(10) ** (claim["place"] + 1)
    elif "part" in claim:
        turn = Fraction(worth[board.kind])
    else:
        turn = Fraction(claim.get("modulus") or claim.get("multiple") or 1)
    terms = abs((turn / board.step).numerator)
    return board.terms + terms_to_zero(board) + 2 * lcm(terms, board.length)


def terms_to_zero(board: Board) -> int:
    """After how many terms the count is past zero; 0 where it never comes there."""
    return max(0, floor(-board.start / board.step) + 2) if board.start * board.step < 0 else 0


def _beyond(board: Board, limit: int) -> range:
    return range(board.terms + 1, limit + 1)


def _still_arithmetic(board: Board, claim: Claim, n: int) -> bool:
    """Steps, neighbours and tables at the n-th term; the sums of blocks and ends are checked on a few larger pages."""
    if claim["family"] == "table":
        return board.value(n) == n * Fraction(claim["step"])
    return board.value(n) - board.value(n - 1) == board.step


def _first_unlike(board: Board, claim: Claim, limit: int) -> int | None:
    """A line in view goes on as its block says, a line begun later repeats with the same length."""
    read, k, along = reader(board, claim), max(map(len, claim["blocks"])), claim["along"]
    lines: dict[int, list[Any]] = {}
    for n in range(1, limit + 1):
        line = lines.setdefault(board.name_of_line(n, along), [])
        line.append(read(n))
        if n > board.terms and (line[-1] is None or (len(line) > k and line[-1] != line[-1 - k])):
            return n
    return None


def _first_other_change(board: Board, claim: Claim, limit: int) -> int | None:
    read, along = reader(board, {**claim, "family": "digit"}), claim["along"]
    last: dict[int, Any] = {}
    for n in range(1, limit + 1):
        name, now = board.name_of_line(n, along), read(n)
        if n > board.terms and name in last:
            before = last[name]
            if now is None or before is None or now - before != claim["change"]:
                return n
        last[name] = now
    return None


def _first_out_of_place(board: Board, claim: Claim, limit: int) -> int | None:
    m, every, first, lie = Fraction(claim["multiple"]), claim["every"], claim["first"], claim["lie"]
    named = set(claim["lines"])
    last = max(n for n in range(1, board.terms + 1) if (board.value(n) / m).denominator == 1)
    begun = board.line_and_cell(board.terms)[0] + 1
    for n in _beyond(board, limit):
        is_landmark = (board.value(n) / m).denominator == 1
        if is_landmark != (n >= first and (n - first) % every == 0):
            return n
        line, cell = board.line_and_cell(n)
        row, column = (cell, line) if board.fill == "down" else (line, cell)
        number = {"row": row + 1, "column": column + 1}
        if board.fill == "across-up":
            number["row"] = begun - line  # rows added above keep the numbers of those in view
        if lie in ("row", "column") and is_landmark and number[lie] not in named:
            return n
        if lie in ("rows", "columns") and is_landmark != (number[lie[:-1]] in named):
            return n
        if lie in ("down-right", "down-left") and is_landmark:
            (r1, c1), (r2, c2) = board.page_place(last, n), board.page_place(n, n)
            if (r2 - r1, c2 - c1) not in (((1, 1), (-1, -1)) if lie == "down-right" else ((1, -1), (-1, 1))):
                return n
            last = n
    return None


def _first_other_interval(board: Board, claim: Claim, limit: int) -> int | None:
    """Counts whole intervals afresh whenever one more lies within the terms."""
    m, block = Fraction(claim["multiple"]), claim["block"]
    seen = len(intervals(board, m, board.terms))
    counts = intervals(board, m, limit)
    for i in range(seen, len(counts)):
        if counts[i] != block[i % len(block)]:
            return next(n for n in _beyond(board, limit) if len(intervals(board, m, n)) > i)
    return None


def _has_opposite(board: Board, m: int) -> bool:
    n = (-board.value(m) - board.start) / board.step + 1
    return n.denominator == 1 and 1 <= n < m and board.value(m) != 0


def follows(b: Claim, a: Claim, board: Board, lasts: dict[int, int | None]) -> bool:
    """Whether b follows from a by the rules F1 to F7 (EXACT 11); `lasts` gives the break of each by its id."""
    end_a, end_b = lasts[id(a)], lasts[id(b)]
    if end_a is not None and (end_b is None or end_b > end_a):
        return False
    if a["family"] == "step" and b["family"] == "neighbour":
        return _pairs_are_consecutive(board, b["direction"])
    same = {key: b.get(key) for key in ("place", "part", "along", "modulus")} == {
        key: a.get(key) for key in ("place", "part", "along", "modulus")
    }
    if a["family"] == b["family"] and a["family"] in ("digit", "digit-sum", "remainder", "digit-run"):
        reads_same = all(a.get(key) == b.get(key) for key in ("place", "part", "modulus"))
        runs = all(m == n + 1 for line in board.lines(b["along"]) for n, m in pairwise(line))
        wider = reads_same and a["along"] == "count" != b["along"]
        if a["family"] == "digit-run":
            return wider and runs
        if wider and _k(a) == _k(b) and (runs or _k(a) == 1):
            return True
    named = b.get("modulus") or b.get("multiple")
    if named is not None and Fraction(named) == never_hidden(board):
        return False  # rulings F4 to F6, which follow, do not reach what a class says first
    if a["family"] == b["family"] == "remainder" and not same and a["along"] == b["along"] and _k(a) == _k(b):
        return (Fraction(a["modulus"]) / Fraction(b["modulus"])).denominator == 1
    if a["family"] == "digit" and b["family"] == "remainder" and a.get("place") == 0 and board.kind == "whole":
        positive = board.value(1) >= 0 and board.value(board.terms) >= 0
        return positive and b["modulus"] in ("10", "5", "2") and a["along"] == b["along"] and _k(a) == _k(b)
    if a["family"] == b["family"] == "landmarks" and a["multiple"] != b["multiple"]:
        divides = (Fraction(a["multiple"]) / Fraction(b["multiple"])).denominator == 1
        friendlier = met_at(b["multiple"], board) < met_at(a["multiple"], board)
        return divides and not friendlier and (a["every"], a["first"]) == (b["every"], b["first"])
    return False


def _k(claim: Claim) -> int:
    return max(map(len, claim["blocks"]))


def _pairs_are_consecutive(board: Board, direction: str) -> bool:
    down, right = {"right": (0, 1), "down": (1, 0), "down-right": (1, 1), "down-left": (1, -1)}[direction]
    cells = {board.page_place(n): n for n in range(1, board.terms + 1)}
    pairs = [(n, cells[r + down, c + right]) for (r, c), n in cells.items() if (r + down, c + right) in cells]
    return all(abs(n - m) == 1 for n, m in pairs)
