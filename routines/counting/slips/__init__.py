"""Slips: what a class will probably say wrong, where, why, and what to ask; and what was heard."""

from .classifying import classify
from .foreseeing import likely_slips
from .hearings import Carried, EqualName, Hearing, Other, Repeated, Right, SkippedAhead
from .slip import Slip

__all__ = [
    "Carried",
    "EqualName",
    "Hearing",
    "Other",
    "Repeated",
    "Right",
    "SkippedAhead",
    "Slip",
    "classify",
    "likely_slips",
]
