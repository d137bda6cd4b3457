"""What a child may answer at a stop ahead of the end: what is so, and how to tell."""

from collections.abc import Collection, Sequence

from ..sentences import MOST_WORDS_OF_A_CHILD, opening
from .filling import Filling
from .hows import along_to, how_it_begins_or_ends
from .lengths import words_in


def answer_of(filling: Filling, hows: Sequence[str], taken: Collection[str]) -> str:
    """The answer that tells one of these ways, the best first; taken: the openings of the answers ahead of it."""
    reason, answers = filling.stop.reason, filling.language.stops.answers
    key = "target" if reason == "end" else "plain" if reason == "hard" and not hows else reason
    key = "dies why" if reason == "dies" and hows else key
    told = [
        filling.told(wording, "next", "far", facts={"how": how}) for how in hows or [""] for wording in answers[key]
    ]
    own, facts = how_it_begins_or_ends(filling)
    if own:
        told = [filling.told(wording, "next", facts=facts) for wording in answers[own]]
    if reason == "dies":  # where the name of a part alone takes the words of a small child
        told += [filling.told(wording, "next", facts={}) for wording in answers["dies plain"]]
    jumps = filling.stop.far - filling.stop.after
    if (
        reason == "target"
        and jumps > 1
        and filling.is_told_by_jumps(filling.grid.line_length * filling.grid.count.step)
    ):
        told = [filling.told(answers["by jumps"][0], "far", facts={"k": str(jumps)})]
    elif reason == "target" and (along := along_to(filling, filling.stop.far)):
        told.append(filling.told(answers["along"][0], "far", facts=along))
    free = [text for text in told if opening(text) not in taken] or told
    return shortly(free, filling.audience.level)


def shortly(texts: Sequence[str], level: int) -> str:
    """The first of these that a child of the level may say, else the shortest."""
    most = MOST_WORDS_OF_A_CHILD[level]
    return next((text for text in texts if words_in(text) <= most), min(texts, key=words_in))
