"""The languages that `locate` speaks."""

from __future__ import annotations

from .english import English
from .spanish import Spanish
from .wording import Wording

TONGUES: dict[str, Wording] = {"en": English(), "es": Spanish()}


def tongue(language: str) -> Wording:
    """Give the wording of a language that an Audience may have."""
    return TONGUES[language]
