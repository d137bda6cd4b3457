"""The words: what the counting engine finds, said for an audience, in sentences that are made when they are read.

This is the public face. Each function has the name and the parameters of the one in `routines.counting` whose answer it
says, and an audience; each answer is that of the engine with its sentences. A language is a folder (`en`, `es`) with
its line in `languages.py`.
"""

from .claims import Words
from .describing import describe
from .folds import SpokenFold, SpokenSight, compare_folds
from .languages import LANGUAGES, listing, ordinal
from .locating import SpokenLocation, SpokenRoute, locate
from .numbers import series
from .probing import SpokenProbe, probes
from .rules import SpokenRule, judge_rule, unit_of_rule
from .seen import (
    SpokenIdea,
    SpokenPattern,
    SpokenVerdict,
    check,
    ended_runs,
    explain_cells,
    find_patterns,
    ideas,
    patterns_to_say,
    show_claim,
)
from .slips import SpokenHearing, SpokenSlip, classify, likely_slips
from .standards import SpokenFit, suggest_standards
from .stops import SpokenStop, suggest_stops
from .stories import NamedLandmarks, proposed_landmarks
from .titles import title_of, title_of_count
from .variations import SpokenVariation, next_counts
from .worth_teaching import SpokenWorth, counts_worth_teaching

__all__ = [
    "LANGUAGES",
    "NamedLandmarks",
    "SpokenFit",
    "SpokenFold",
    "SpokenHearing",
    "SpokenIdea",
    "SpokenLocation",
    "SpokenPattern",
    "SpokenProbe",
    "SpokenRoute",
    "SpokenRule",
    "SpokenSight",
    "SpokenSlip",
    "SpokenStop",
    "SpokenVariation",
    "SpokenVerdict",
    "SpokenWorth",
    "Words",
    "check",
    "classify",
    "compare_folds",
    "counts_worth_teaching",
    "describe",
    "ended_runs",
    "explain_cells",
    "find_patterns",
    "ideas",
    "judge_rule",
    "likely_slips",
    "listing",
    "locate",
    "next_counts",
    "ordinal",
    "patterns_to_say",
    "probes",
    "proposed_landmarks",
    "series",
    "show_claim",
    "suggest_standards",
    "suggest_stops",
    "title_of",
    "title_of_count",
    "unit_of_rule",
]
