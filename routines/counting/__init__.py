"""The counting engine: exact counts, their folds, and what can be seen in them.

This is the public face. The parts beyond counting and folding are loaded when they are first asked for.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

from .audience import Audience
from .claims import Claim
from .count import Count
from .errors import CountError
from .grid import Cell, Grid
from .kinds.piece import Piece
from .results import Idea, Pattern, Verdict
from .style import Style

# Raised when the engine would say something else of the same grid; stored with what it said.
ENGINE_VERSION = "1"

if TYPE_CHECKING:
    from .checking import check
    from .patterns import find_patterns
    from .showing import show_claim
    from .stories import proposed_landmarks

_LOADED_WHEN_ASKED_FOR = {
    "check": "checking",
    "find_patterns": "patterns",
    "proposed_landmarks": "stories",
    "show_claim": "showing",
}

__all__ = [
    "ENGINE_VERSION",
    "Audience",
    "Cell",
    "Claim",
    "Count",
    "CountError",
    "Grid",
    "Idea",
    "Pattern",
    "Piece",
    "Style",
    "Verdict",
    "check",
    "find_patterns",
    "proposed_landmarks",
    "show_claim",
]


def __getattr__(name: str) -> Any:
    if name not in _LOADED_WHEN_ASKED_FOR:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    value = getattr(import_module(f".{_LOADED_WHEN_ASKED_FOR[name]}", __name__), name)
    globals()[name] = value
    return value
