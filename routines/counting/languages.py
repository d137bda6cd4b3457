"""The languages in which numbers are said and a class is heard."""

from .kinds.said import SAID

LANGUAGES = tuple(SAID)
"""The languages that there are; the engine's own is the first."""
