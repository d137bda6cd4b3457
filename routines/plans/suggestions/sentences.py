"""The words of suggestions, in the language of the plan."""

from routines.counting import Claim
from routines.words import LANGUAGES
from routines.words.sentences import filled


def replies_to(claim: Claim, language: str) -> tuple[str, ...]:
    """What to ask back, in every wording."""
    return LANGUAGES[language].asked_back[f"{claim.family} of a part" if "part" in claim.subject else claim.family]


def said(name: str, language: str, **values: object) -> str:
    """The first wording of a sentence."""
    return ways(name, language, **values)[0]


def ways(name: str, language: str, **values: object) -> tuple[str, ...]:
    """Every wording of a sentence."""
    facts = {key: str(value) for key, value in values.items()}
    return tuple(filled(wording, facts) for wording in LANGUAGES[language].answers[name])
