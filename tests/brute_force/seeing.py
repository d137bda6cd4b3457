"""Every claim that can be seen on a board, found by looking at every cell; and what follows from what.

Imports nothing of the engine. Claims are plain data in the stored form.
"""

from collections.abc import Callable, Iterator
from fractions import Fraction
from itertools import chain, pairwise
from math import floor
from typing import Any

from .board import Board

Claim = dict[str, Any]
Reader = Callable[[int], int | Fraction | None]

ALONG = ("count", "row", "column")
MOVES = {"right": (0, 1), "down": (1, 0), "down-right": (1, 1), "down-left": (1, -1)}


def everything_seen(board: Board) -> list[Claim]:
    """Every claim true of the view and large enough to be seen, implied ones too."""
    return [
        *_step(board),
        *_neighbours(board),
        *_digits(board),
        *_digit_sums(board),
        *_remainders(board),
        *_landmarks(board),
        *_how_many(board),
        *_sums(board),
        *_opposites(board),
    ]


def reader(board: Board, claim: Claim) -> Reader:
    """What a claim of digits, sums or remainders reads off the n-th term."""
    if claim["family"] == "digit-sum":
        return lambda n: sum(int(sign) for sign in str(abs(board.value(n))))
    if claim["family"] == "remainder":
        m = Fraction(claim["modulus"])
        return lambda n: board.value(n) - m * floor(board.value(n) / m)
    if "part" in claim:
        return lambda n: board.part(n, claim["part"])
    return lambda n: board.digit(n, claim["place"])


def _step(board: Board) -> Iterator[Claim]:
    if board.terms >= 2:
        yield {"family": "step", "difference": str(board.value(2) - board.value(1))}
        if board.kind != "clock" and all(board.value(n) == n * board.step for n in range(1, board.terms + 1)):
            yield {"family": "table", "step": str(board.step)}


def _neighbours(board: Board) -> Iterator[Claim]:
    cells = {board.page_place(n): n for n in range(1, board.terms + 1)}
    for direction, (down, right) in MOVES.items():
        pairs = [(n, cells.get((row + down, column + right))) for (row, column), n in cells.items()]
        differences = [board.value(m) - board.value(n) for n, m in pairs if m is not None]
        if len(differences) >= 2 and len(set(differences)) == 1:
            yield {"family": "neighbour", "direction": direction, "difference": str(differences[0])}


def _places(board: Board) -> list[int]:
    if board.kind not in ("whole", "decimal", "money"):
        return []
    finest = 0
    while any((x * 10**finest).denominator != 1 for x in (board.start, board.step)):
        finest += 1
    largest = max(floor(abs(board.value(n))) for n in (1, board.terms))
    return list(range(-finest, len(str(largest))))


def _readings(board: Board) -> list[Claim]:
    return [{"place": p} for p in _places(board)] + [{"part": name} for name in board.part_names if board.writes(name)]


def _digits(board: Board) -> Iterator[Claim]:
    for named in _readings(board):
        yield from _blocks(board, {"family": "digit", **named})
        read = reader(board, {"family": "digit", **named})
        for along in ALONG:
            lines = board.lines(along)
            jumps = {_less(read(m), read(n)) for line in lines for n, m in pairwise(line)}
            change = next(iter(jumps)) if len(jumps) == 1 else None
            if max(map(len, lines)) >= 3 and change:
                yield {"family": "digit-run", **named, "along": along, "change": change}


def _less(now: Any, before: Any) -> Any:
    return None if now is None or before is None else now - before


def _digit_sums(board: Board) -> Iterator[Claim]:
    if board.kind == "whole":
        yield from _blocks(board, {"family": "digit-sum"})


def _remainders(board: Board) -> Iterator[Claim]:
    for m in board.friendly:
        yield from _blocks(board, {"family": "remainder", "modulus": str(m)})


def _blocks(board: Board, named: Claim) -> Iterator[Claim]:
    read = reader(board, named)
    for along in ALONG:
        lines = [[read(n) for n in line] for line in board.lines(along)]
        longest = max(map(len, lines))
        for k in range(1, longest // 2 + 1):
            if all(x is not None and x == line[i % k] for line in lines for i, x in enumerate(line)):
                exact = named["family"] == "remainder"
                blocks = [[str(x) if exact else x for x in line[:k]] for line in lines]
                yield {**named, "along": along, "blocks": blocks}
                break


def _landmarks(board: Board) -> Iterator[Claim]:
    for m in board.friendly:
        ns = [n for n in range(1, board.terms + 1) if (board.value(n) / m).denominator == 1]
        if len(ns) < 2 or ns[1] - ns[0] < 2:
            continue
        lie, lines = lie_of(board, ns)
        shown = {"every": ns[1] - ns[0], "first": ns[0], "lie": lie, "lines": lines}
        yield {"family": "landmarks", "multiple": str(m), **shown}


def lie_of(board: Board, ns: list[int]) -> tuple[str, list[int]]:
    """How two or more landmarks lie on the page in view."""
    places = [board.page_place(n) for n in ns]
    rows, columns = ({place[axis] for place in map(board.page_place, range(1, board.terms + 1))} for axis in (0, 1))
    begun = board.line_and_cell(board.terms)[0] + 1
    if begun == 1 or board.length == 1 or len(rows) == 1 or len(columns) == 1:
        return "scattered", []
    for axis, name in enumerate(("row", "column")):
        if len({place[axis] for place in places}) == 1:
            return name, [places[0][axis]]
    for axis, name in enumerate(("row", "column")):
        named = {place[axis] for place in places}
        lines = [line for line in board.lines(name) if board.page_place(line[0])[axis] in named]
        if len(lines) >= 2 and all(len(line) >= 2 for line in lines) and sorted(chain(*lines)) == ns:
            return name + "s", sorted(named)
    if len(ns) >= 3:
        steps = {(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(places)}
        if steps in ({(1, 1)}, {(-1, -1)}):
            return "down-right", []
        if steps in ({(1, -1)}, {(-1, 1)}):
            return "down-left", []
    return "scattered", []


def intervals(board: Board, m: Fraction, terms: int) -> list[int]:
    """How many of the first terms are in each interval [jm, (j+1)m) that lies within their values, counting order."""
    values = [board.value(n) for n in range(1, terms + 1)]
    low, high = min(values), max(values)
    counts = []
    j = -floor(-low / m)
    while (j + 1) * m <= high:
        here, there = j * m, (j + 1) * m
        counts.append(sum(here <= v < there for v in values))
        j += 1
    return counts if board.step > 0 else counts[::-1]


def _how_many(board: Board) -> Iterator[Claim]:
    if board.kind == "clock":
        return
    for m in board.friendly:
        if m < abs(board.step):
            continue  # only what holds a count or more in each interval is looked for
        counts = intervals(board, m, board.terms)
        for k in range(1, len(counts) // 2 + 1):
            if all(c == counts[i % k] for i, c in enumerate(counts)):
                yield {"family": "how-many", "multiple": str(m), "block": counts[:k]}
                break


def full_lines(board: Board, along: str, terms: int) -> list[list[int]]:
    """The lines with a count in every cell of the page's rectangle."""
    begun = board.line_and_cell(terms)[0] + 1
    runs_with_fill = (along == "column") == (board.fill == "down")
    cells = board.length if runs_with_fill else begun
    return [line for line in board.lines(along, terms) if len(line) == cells]


def totals_apart(board: Board, along: str, terms: int) -> set[Fraction]:
    """By how much the totals of full lines next to each other differ."""
    totals = [sum(map(board.value, line)) for line in full_lines(board, along, terms)]
    return {Fraction(b - a) for a, b in pairwise(totals)}


def _sums(board: Board) -> Iterator[Claim]:
    if board.kind == "clock":
        return
    cells = {board.page_place(n): board.value(n) for n in range(1, board.terms + 1)}
    for which, size in (("block-corners", 2), ("centre-mean", 3)):
        blocks = [
            [[cells[r + i, c + j] for j in range(size)] for i in range(size)]
            for r, c in cells
            if all((r + i, c + j) in cells for i in range(size) for j in range(size))
        ]
        if size == 2:
            right = all(b[0][0] + b[1][1] == b[0][1] + b[1][0] for b in blocks)
        else:
            right = all(sum(map(sum, b)) == 9 * b[1][1] for b in blocks)
        if blocks and right:
            yield {"family": "sums", "which": which}
    t = board.terms
    if t >= 4 and len({board.value(n) + board.value(t + 1 - n) for n in range(1, t + 1)}) == 1:
        yield {"family": "sums", "which": "ends"}
    for along in ("row", "column"):
        lines = full_lines(board, along, t)
        apart = totals_apart(board, along, t)
        if len(lines) >= 2 and len(lines[0]) >= 2 and len(apart) == 1:
            yield {"family": "sums", "which": "line-totals", "along": along, "difference": str(apart.pop())}


def opposite_pairs(board: Board, terms: int) -> list[list[int]]:
    ns = range(1, terms + 1)
    return [[n, m] for n in ns for m in range(n + 1, terms + 1) if board.value(n) == -board.value(m) != 0]


def _opposites(board: Board) -> Iterator[Claim]:
    pairs = opposite_pairs(board, board.terms) if board.kind != "clock" else []
    if pairs:
        yield {"family": "opposites", "pairs": pairs}
