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
from .kinds.names import Kind
from .kinds.piece import Piece
from .outcome import Outcome
from .style import Style
from .texts.locating import SpokenLocation, locate
from .texts.patterns import (
    SpokenIdea,
    SpokenPattern,
    SpokenVerdict,
    check,
    explain_cells,
    find_patterns,
    ideas,
    show_claim,
)
from .texts.probes import SpokenProbe, probes

Location, Idea, Pattern, Verdict, Probe = SpokenLocation, SpokenIdea, SpokenPattern, SpokenVerdict, SpokenProbe

# Raised when the engine would say something else of the same grid; stored with what it said.
ENGINE_VERSION = "2"

if TYPE_CHECKING:
    from .designing import Designs, design_grids
    from .designing.limits import Limits
    from .slips import Carried, EqualName, Other, Repeated, Right, SkippedAhead, Slip, classify
    from .texts.folds import SpokenFold, SpokenSight, compare_folds
    from .texts.next_counts import SpokenVariation, next_counts
    from .texts.slips import likely_slips
    from .texts.standards import SpokenFit, suggest_standards
    from .texts.stops import SpokenStop, suggest_stops
    from .texts.stories import proposed_landmarks

    FoldReport, Sight, StandardFit, StopSuggestion, Variation = (
        SpokenFold,
        SpokenSight,
        SpokenFit,
        SpokenStop,
        SpokenVariation,
    )

_LOADED_WHEN_ASKED_FOR = {
    "Carried": "slips",
    "Designs": "designing",
    "EqualName": "slips",
    "FoldReport": "texts.folds.SpokenFold",
    "Limits": "designing.limits",
    "Other": "slips",
    "Repeated": "slips",
    "Right": "slips",
    "Sight": "texts.folds.SpokenSight",
    "SkippedAhead": "slips",
    "Slip": "slips",
    "StandardFit": "texts.standards.SpokenFit",
    "StopSuggestion": "texts.stops.SpokenStop",
    "Variation": "texts.next_counts.SpokenVariation",
    "classify": "slips",
    "compare_folds": "texts.folds",
    "design_grids": "designing",
    "likely_slips": "texts.slips",
    "next_counts": "texts.next_counts",
    "proposed_landmarks": "texts.stories",
    "suggest_standards": "texts.standards",
    "suggest_stops": "texts.stops",
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
    "Sight",
    "SkippedAhead",
    "Slip",
    "StandardFit",
    "StopSuggestion",
    "Style",
    "Variation",
    "Verdict",
    "check",
    "classify",
    "compare_folds",
    "design_grids",
    "explain_cells",
    "find_patterns",
    "ideas",
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
    module, _, spoken = _LOADED_WHEN_ASKED_FOR[name].partition(".Spoken")
    value = getattr(import_module(f".{module}", __name__), f"Spoken{spoken}" if spoken else name)
    globals()[name] = value
    return value
