"""The words of suggestions, in the language of the plan."""

from routines.counting import Claim
from routines.words import LANGUAGES


def reply_to(claim: Claim, language: str) -> str:
    """What a teacher may ask back of a child who sees a pattern."""
    return LANGUAGES[language].asked_back[f"{claim.family} of a part" if "part" in claim.subject else claim.family]


def said(name: str, language: str, **values: object) -> str:
    return LANGUAGES[language].answers[name].format(**values)
