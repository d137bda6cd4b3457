"""The words of suggestions, in the language of the plan."""

from routines.counting import Audience, Claim
from routines.words import LANGUAGES
from routines.words.sentences import filled


def replies_to(claim: Claim, audience: Audience) -> tuple[str, ...]:
    """What to ask back, in every wording."""
    asked = LANGUAGES[audience.language].asked_back
    if "part" in claim.subject:
        return asked[f"{claim.family} of a part"]
    in_k = f"{claim.family} in K"  # before digits are met
    met = audience.level > 0 or in_k not in asked or (claim.family == "digit" and claim.parameters.get("place"))
    return asked[claim.family if met else in_k]


def said(name: str, language: str, **values: object) -> str:
    """The first wording of a sentence."""
    return ways(name, language, **values)[0]


def ways(name: str, language: str, **values: object) -> tuple[str, ...]:
    """Every wording of a sentence."""
    facts = {key: str(value) for key, value in values.items()}
    return tuple(filled(wording, facts) for wording in LANGUAGES[language].answers[name])
