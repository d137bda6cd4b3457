"""The counting engine: exact counts, their folds, and what can be seen in them.

This is the public face. The parts beyond counting and folding are loaded when they are first asked for, but for those
that bear the name of their module (`ideas`, `locate`, `probes`): these are bound here, over the module's own name.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

from .audience import Audience
from .claims import Claim
from .count import Count
from .errors import CountError
from .grid import Cell, Fill, Grid
from .ideas import ideas
from .kinds.names import Kind
from .kinds.piece import Piece
from .locate import Location, Route, locate
from .outcome import Outcome
from .probes import Probe, probes
from .results import Idea, Pattern, Verdict
from .style import Style

# Raised when the engine would say something else of the same grid; stored with what it said.
ENGINE_VERSION = "4"

if TYPE_CHECKING:
    from .algebra import RuleVerdict, judge_rule
    from .checking import check
    from .designing import Designs, design_grids
    from .designing.limits import Limits
    from .ended import ended_runs
    from .explaining import explain_cells
    from .folds import FoldReport, Sight, compare_folds
    from .patterns import find_patterns
    from .showing import show_claim
    from .slips import (
        Carried,
        EqualName,
        Other,
        Repeated,
        Right,
        SkippedAhead,
        Slip,
        classify,
        likely_slips,
    )
    from .standards import StandardFit, suggest_standards
    from .stops import StopSuggestion, suggest_stops
    from .stories import proposed_landmarks
    from .variations import Variation, next_counts
    from .worth_teaching import Wanted, WorthTeaching, Worthwhile, counts_worth_teaching

_LOADED_WHEN_ASKED_FOR = {
    "Carried": "slips",
    "Designs": "designing",
    "EqualName": "slips",
    "FoldReport": "folds",
    "Limits": "designing.limits",
    "Other": "slips",
    "Repeated": "slips",
    "Right": "slips",
    "RuleVerdict": "algebra",
    "Sight": "folds",
    "SkippedAhead": "slips",
    "Slip": "slips",
    "StandardFit": "standards",
    "StopSuggestion": "stops",
    "Variation": "variations",
    "Wanted": "worth_teaching",
    "WorthTeaching": "worth_teaching",
    "Worthwhile": "worth_teaching",
    "check": "checking",
    "classify": "slips",
    "compare_folds": "folds",
    "counts_worth_teaching": "worth_teaching",
    "design_grids": "designing",
    "ended_runs": "ended",
    "explain_cells": "explaining",
    "find_patterns": "patterns",
    "judge_rule": "algebra",
    "likely_slips": "slips",
    "next_counts": "variations",
    "proposed_landmarks": "stories",
    "show_claim": "showing",
    "suggest_standards": "standards",
    "suggest_stops": "stops",
}

__all__ = [
    "ENGINE_VERSION",
    "Audience",
    "Carried",
    "Cell",
    "Claim",
    "Count",
    "CountError",
    "Designs",
    "EqualName",
    "Fill",
    "FoldReport",
    "Grid",
    "Idea",
    "Kind",
    "Limits",
    "Location",
    "Other",
    "Outcome",
    "Pattern",
    "Piece",
    "Probe",
    "Repeated",
    "Right",
    "Route",
    "RuleVerdict",
    "Sight",
    "SkippedAhead",
    "Slip",
    "StandardFit",
    "StopSuggestion",
    "Style",
    "Variation",
    "Verdict",
    "Wanted",
    "WorthTeaching",
    "Worthwhile",
    "check",
    "classify",
    "compare_folds",
    "counts_worth_teaching",
    "design_grids",
    "ended_runs",
    "explain_cells",
    "find_patterns",
    "ideas",
    "judge_rule",
    "likely_slips",
    "locate",
    "next_counts",
    "probes",
    "proposed_landmarks",
    "show_claim",
    "suggest_standards",
    "suggest_stops",
]


def __getattr__(name: str) -> Any:
    if name not in _LOADED_WHEN_ASKED_FOR:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    value = getattr(import_module(f".{_LOADED_WHEN_ASKED_FOR[name]}", __name__), name)
    globals()[name] = value
    return value
