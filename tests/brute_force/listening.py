"""Who is listening (EXACT 11, 28, 29): what is said first of any count, how soon a multiple is met, what may not come first.

Written from the rulings, on claims in the stored form. Imports nothing of the engine.
"""

import re
from fractions import Fraction
from math import inf, lcm

from .board import Board
from .seeing import Claim

AS_MET = [Fraction(m) for m in (10, 100, 1000, 2, 5, 25, 50, 20, 3, 4, 6, 8, 9, 7, 11, 12)]

# How much of the base unit is the whole that is read by: NIST Handbook 44, Appendix C; ISO 4217 for minor units.
WHOLE_OF = {"in": 12, "cm": 100, "oz": 16, "g": 1000, "fl oz": 128, "mL": 1000, "min": 60, "JPY": 1, "KWD": 1000}


def never_hidden(board: Board) -> Fraction:
    """Even and odd; the whole that a kind reads by; of most currencies a hundred of the smallest coin."""
    if board.kind == "whole":
        return Fraction(2)
    return Fraction(WHOLE_OF.get(board.unit, 100 if board.kind == "money" else 1))


def met_at(multiple: str | Fraction, board: Board) -> tuple[float, Fraction]:
    """How soon children meet a multiple: the smaller the friendlier."""
    m = Fraction(multiple)
    if board.kind == "whole":
        return (AS_MET.index(m) if m in AS_MET else inf), m
    whole = never_hidden(board)
    for at, size in enumerate((whole, whole / 2, whole / 4)):
        if m == size:
            return at, m
    return (3, m) if m > whole and (m / whole).denominator == 1 else (4, -m)


def may_not_come_before(claim: Claim, board: Board, level: int) -> int | None:
    """The number of first places that a claim may not have at a level, while there is something else for them.

    None where that hangs on how a digit or a part is written, which is not looked at here: of whole numbers it is.
    """
    family = claim["family"]
    most = 0
    if family == "sums":
        most = 6
        if claim["which"] == "line-totals" and level in (2, 3):
            most = 8
    if family in ("sums", "digit-sum") and level in (0, 1):
        most = 12
    if family in ("digit", "digit-run") and board.kind != "whole":
        return None
    if family in ("digit", "digit-run"):
        without = [n for n in range(1, board.terms + 1) if len(str(abs(board.value(n)))) <= claim["place"]]
        most = 6 if len(without) >= board.terms / 2 else 0
    if family == "remainder" and claim["along"] == "count" and Fraction(claim["modulus"]) <= finest_written(board):
        return 12
    if board.kind != "whole":
        return most
    m = Fraction(claim.get("modulus") or claim.get("multiple") or 0)
    if family == "remainder" and level <= 1 and m != 2:
        return 12
    if family == "remainder" and level in (2, 3) and m not in (2, 5, 10):
        return 8
    if family == "how-many" and level <= 1 and m != 10:
        return 12
    if family in ("landmarks", "how-many") and level <= 3 and m in (3, 4, 6, 7, 8, 9, 11, 12) and m != abs(board.step):
        return 6
    return most


def finest_written(board: Board) -> Fraction:
    """What all counts of a measure, or of decimals, are made of as they are written: whole centimeters, tenths; else 0."""
    if board.kind in ("length", "mass", "capacity", "elapsed"):
        return board.small / lcm(*((amount / board.small).denominator for amount in (board.start, board.step)))
    if board.kind == "decimal" and board.written is not None:
        digits, value = re.sub(r"\D", "", board.written(1)), abs(board.value(1))
        return Fraction(1, 10 ** (len(digits) - 1)) if not value else value / int(digits)
    return Fraction(0)


def waits_for_the_youngest(claim: Claim, board: Board) -> bool:
    """Whether levels K and 1 meet a claim after all about steps, neighbours, digits and the multiples 2, 5, 10 and 100."""
    if board.kind != "whole" or claim["family"] in ("step", "neighbour", "digit", "digit-run"):
        return False
    return Fraction(claim.get("modulus") or claim.get("multiple") or 0) not in (2, 5, 10, 100)
