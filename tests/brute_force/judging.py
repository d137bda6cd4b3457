"""Block claims judged by listing: is it so, which term contradicts it first, and from which term on is it so for good.

Imports nothing of the engine.
"""

from dataclasses import dataclass
from typing import Any

from .board import Board
from .seeing import Claim, reader


@dataclass(frozen=True)
class Listed:
    """What listing says of a claim."""

    true: bool
    seen: bool
    first_wrong: int | None
    true_from: int | None


def judge_blocks(board: Board, claim: Claim, horizon: int, turn: int) -> Listed:
    """Judge a claim of digits, digit sums or remainders on the terms in view.

    Listing to `horizon`, a claim that is wrong within the last `turn` terms is taken to be wrong again and again.
    """
    read, along = reader(board, claim), claim["along"]
    axis = 0 if along == "row" else 1
    numbered = {board.page_place(line[0])[axis] if along != "count" else 1: line for line in board.lines(along)}
    named = claim.get("lines") or sorted(numbered)
    blocks = claim.get("blocks")
    if not set(named) <= set(numbered) or (blocks is not None and len(blocks) != len(named)):
        return Listed(False, False, None, None)
    k = claim.get("length") or max(map(len, blocks))
    block_of = {board.name_of_line(numbered[number][0], along): i for i, number in enumerate(named)}
    cells: dict[int, list[Any]] = {}
    wrong, last = [], 0
    for n in range(1, horizon + 1):
        name = board.name_of_line(n, along)
        if claim.get("lines") and name not in block_of:
            continue
        line = cells.setdefault(name, [])
        value = read(n)
        line.append((n, value))
        at = len(line) - 1
        if value is None:
            wrong.append(n)
            last = n
        elif at >= k and line[at - k][1] != value:
            last = max(last, line[at - k][0])
            wrong.append(n)
        if blocks is not None and name in block_of and value is not None:
            block = blocks[block_of[name]]
            if at % k >= len(block):
                if n <= board.terms:
                    wrong.append(n)
            elif str(block[at % k]) != str(value):
                wrong.append(n)
                last = max(last, n)
    in_view = min((n for n in wrong if n <= board.terms), default=None)
    longest = max(len(numbered[number]) for number in named)
    return Listed(
        true=in_view is None,
        seen=in_view is None and longest >= 2 * k,
        first_wrong=in_view,
        true_from=None if last > horizon - turn else last + 1,
    )
