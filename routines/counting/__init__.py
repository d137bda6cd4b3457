"""The counting engine: exact counts, their folds, and what can be seen in them."""

from .audience import Audience
from .count import Count
from .errors import CountError
from .grid import Cell, Grid
from .kinds.piece import Piece
from .style import Style

__all__ = ["Audience", "Cell", "Count", "CountError", "Grid", "Piece", "Style"]
