"""The family of a claim decides who tells it."""

from .digits import Digit, DigitSum
from .landmarks import HowMany, Landmarks
from .remainders import Remainder
from .runs import DigitRun
from .steps import Neighbour, Step, Table
from .sums import Opposites, Sums
from .telling import Life, Telling

TELLINGS: dict[str, type[Telling]] = {
    "step": Step,
    "neighbour": Neighbour,
    "digit": Digit,
    "digit-run": DigitRun,
    "digit-sum": DigitSum,
    "remainder": Remainder,
    "landmarks": Landmarks,
    "how-many": HowMany,
    "sums": Sums,
    "table": Table,
    "opposites": Opposites,
}

__all__ = ["TELLINGS", "Life", "Telling"]
