"""Standards that a count serves, from standards given as data."""

from .features import Features, read_features
from .fitting import StandardFit, suggest_standards

__all__ = ["Features", "StandardFit", "read_features", "suggest_standards"]
