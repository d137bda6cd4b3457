"""Which six patterns a teacher says first, out of a list in its order, on claims in the stored form.

Written from the wishes of coaches who read forty counts line by line. Imports nothing of the engine.
"""

import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from .board import Board
from .listening import never_hidden
from .seeing import Claim

SIX = 6
OF_THE_TABLES = [Fraction(m) for m in (3, 4, 6, 7, 8, 9, 11, 12)]
ROUND = [Fraction(m) for m in (10, 100, 1000)]


@dataclass(frozen=True)
class Listed:
    """A pattern as it is listed: its claim, how many counts show it, where it ends, from how many places it is barred."""

    claim: Claim
    cells: int
    breaks_at: int | None
    barred: int


def first_six(listed: Sequence[Listed], board: Board, level: int, read_by: Collection[Fraction]) -> list[Claim]:
    """The six to say first. read_by: the whole of the kind, and what the count is written round by; of whole numbers none."""
    wholes = ROUND if board.kind == "whole" else list(read_by)
    free = [one for one in listed if not one.barred and is_plain(one, board, level, wholes)]
    six: list[Claim] = []
    for one in free:
        if not any(is_the_same_idea(one.claim, said, board) for said in six):
            six.append(one.claim)
    six = six[:SIX]
    repeated = [one for one in free if one.claim not in six]
    repeated.sort(key=lambda one: one.claim["family"] == "landmarks")
    barred = sorted((one for one in listed if one.barred), key=lambda one: one.barred)
    unclear = [one for one in listed if one not in free and not one.barred]
    unclear.sort(key=lambda one: {"landmarks": 0, "remainder": 2}.get(one.claim["family"], 1))
    chosen = (six + [one.claim for one in (*repeated, *unclear, *barred)])[:SIX]
    chosen = written_first(chosen) if board.kind == "whole" and level < 2 else chosen
    late = [one.claim for one in barred]
    in_turns = [claim for claim in chosen if claim["family"] == "how-many" and len(claim["block"]) > 1]
    before = [claim for claim in chosen if claim not in in_turns and claim not in late]
    return before + [claim for claim in in_turns if claim not in late] + [claim for claim in chosen if claim in late]


def written_first(chosen: Sequence[Claim]) -> list[Claim]:
    """Before second grade what is said of twos and fives waits until all digits have been spoken of."""
    waiting: list[Claim] = []
    told: list[Claim] = []
    for at, claim in enumerate(chosen):
        digits_to_come = any(
            later["family"].startswith("digit") and later["family"] != "digit-sum" for later in chosen[at:]
        )
        if (
            digits_to_come
            and (claim.get("multiple") or claim.get("modulus")) in ("2", "5")
            and claim["family"] != "how-many"
        ):
            waiting.append(claim)
            continue
        if not digits_to_come:
            told, waiting = told + waiting, []
        told.append(claim)
    return told + waiting


def is_plain(one: Listed, board: Board, level: int, wholes: Collection[Fraction]) -> bool:
    """Whether it lasts well past the board, is shown often enough there, and is read as it is written."""
    claim, family = one.claim, one.claim["family"]
    if one.breaks_at is not None and one.breaks_at <= board.terms * Fraction(3, 2) and family != "opposites":
        return False
    if family == "table":
        return level > 2
    if family == "opposites":
        return level > 5
    if (
        family == "digit"
        and "place" in claim
        and all(abs(board.value(n)) < 10 ** claim["place"] for n in (1, board.terms))
    ):
        return False
    if claim.get("part") == "top" and family == "digit":
        assert board.written is not None
        on_the_board = " ".join(board.written(n) for n in range(1, board.terms + 1))
        parted = all(0 not in block or len(block) == 1 for block in claim["blocks"])
        return parted and len(set(re.findall(r"/(\d+)", on_the_board))) < 2
    if family == "landmarks":
        m, jump = Fraction(claim["multiple"]), abs(board.step)
        by_heart = m not in OF_THE_TABLES if board.kind == "whole" else m in wholes or claim["lines"]
        if not by_heart and not _goes_into(m, jump):
            return False
        return one.cells > 2 or m in wholes
    if family == "how-many":
        above = all(board.value(n) >= 0 for n in (1, board.terms))
        return above and len(claim["block"]) < 5 and Fraction(claim["multiple"]) in wholes
    if family != "remainder":
        return True
    m, lengths = Fraction(claim["modulus"]), {len(block) for block in claim["blocks"]}
    everywhere = claim["along"] == "count" and lengths == {1}
    if board.kind == "whole":
        fits = everywhere or m in (2, 5, 10, 100, 1000)
    else:
        divides = board.kind != "fraction" and level > 2
        fits = (everywhere and claim["blocks"] == [["0"]]) or (divides and (everywhere or m in wholes))
    return fits and max(lengths) < 5 and (board.kind == "clock" or not _reads_otherwise(m, board))


def _reads_otherwise(m: Fraction, board: Board) -> bool:
    """Whether some count below zero has another part past a multiple than the one that is written."""
    return any(board.value(n) % m != abs(board.value(n)) % m for n in range(1, board.terms + 1))


def is_the_same_idea(claim: Claim, said: Claim, board: Board) -> bool:
    """Whether a class hears little new in a claim when another has been said."""
    families = {claim["family"], said["family"]}
    if families == {"neighbour"}:
        return {claim["direction"], said["direction"]} <= {"down-right", "down-left"}
    if families <= {"digit", "digit-run"}:
        return _of(claim, "place", "part") == _of(said, "place", "part")
    if families == {"how-many"}:
        return _goes_into(claim["multiple"], said["multiple"])
    if families == {"digit-sum"}:
        return True
    if families == {"landmarks"}:
        return _lie_with(claim, said, board)
    if families == {"remainder", "landmarks"} or families == {"remainder"}:
        m, other = (Fraction(one.get("modulus") or one["multiple"]) for one in (claim, said))
        everywhere = claim["family"] == "remainder" and claim["along"] == "count" and len(claim["blocks"][0]) == 1
        alone = claim["family"] == "landmarks" or everywhere or never_hidden(board) in (m, other)
        return m == other or (not alone and _goes_into(m, other))
    if families == {"remainder", "digit"} and board.kind == "whole":
        written = said["family"] == "digit" and said.get("place") and claim["along"] == said["along"]
        return bool(written) and Fraction(claim["modulus"]) == 10 ** (int(said["place"]) + 1)
    if families == {"remainder", "digit"}:
        rests, written = [
            [Fraction(x) for block in one["blocks"] for x in block]
            for one in sorted((claim, said), key=lambda one: one["family"] == "digit")
        ]
        if rests == written:
            return True
        units = {rest / digit for rest, digit in zip(rests, written, strict=False) if digit}
        nothing = [not rest for rest in rests] == [not digit for digit in written]
        return len(rests) == len(written) and nothing and len(units) == 1 and len(set(written)) > 1
    return False


def _lie_with(claim: Claim, said: Claim, board: Board) -> bool:
    m, other = Fraction(claim["multiple"]), Fraction(said["multiple"])
    if m == never_hidden(board):
        return False
    if _of(claim, "every", "first") == _of(said, "every", "first"):
        return True
    if claim["lines"] and claim["lines"] == said["lines"] and _goes_into(m, other):
        return True
    return board.kind == "whole" and m in OF_THE_TABLES and other in OF_THE_TABLES and m != abs(board.step)


def _of(claim: Mapping[str, object], *names: str) -> list[object]:
    return [claim.get(name) for name in names]


def _goes_into(one: str | Fraction, other: str | Fraction) -> bool:
    a, b = Fraction(one), Fraction(other)
    return 1 in ((a / b).denominator, (b / a).denominator)
