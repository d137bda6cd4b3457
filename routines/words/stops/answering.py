"""What a child may answer at a stop ahead of the end: what is so, and how to tell."""

from collections.abc import Collection, Sequence

from ..sentences import MOST_WORDS_OF_A_CHILD, opening
from .filling import Filling
from .lengths import words_in


def answer_of(filling: Filling, hows: Sequence[str], taken: Collection[str]) -> str:
    """The answer that tells one of these ways, the best first; taken: the openings of the answers ahead of it."""
    reason, answers = filling.stop.reason, filling.language.stops.answers
    key = "target" if reason == "end" else "plain" if reason == "hard" and not hows else reason
    key = "dies why" if reason == "dies" and hows else key
    told = [
        filling.told(wording, "next", "far", facts={"how": how}) for how in hows or [""] for wording in answers[key]
    ]
    free = [text for text in told if opening(text) not in taken] or told
    if reason != "hard":
        return free[0]
    most = MOST_WORDS_OF_A_CHILD[filling.audience.level]
    return next((text for text in free if words_in(text) <= most), min(free, key=words_in))
