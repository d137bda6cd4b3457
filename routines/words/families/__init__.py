"""The family of a claim decides who tells it."""

from typing import Any

from routines.counting.claims import (
    Claim,
    DigitClaim,
    DigitRunClaim,
    DigitSumClaim,
    HowManyClaim,
    LandmarksClaim,
    NeighbourClaim,
    OppositesClaim,
    RemainderClaim,
    StepClaim,
    SumsClaim,
    TableClaim,
)

from .digits import Digit, DigitSum
from .landmarks import HowMany, Landmarks
from .phrases import Life, Phrases
from .remainders import Remainder
from .runs import DigitRun
from .steps import Neighbour, Step, Table
from .sums import Opposites, Sums

PHRASES: dict[type[Claim], type[Phrases[Any]]] = {
    StepClaim: Step,
    NeighbourClaim: Neighbour,
    DigitClaim: Digit,
    DigitRunClaim: DigitRun,
    DigitSumClaim: DigitSum,
    RemainderClaim: Remainder,
    LandmarksClaim: Landmarks,
    HowManyClaim: HowMany,
    SumsClaim: Sums,
    TableClaim: Table,
    OppositesClaim: Opposites,
}

__all__ = ["PHRASES", "Life", "Phrases"]
